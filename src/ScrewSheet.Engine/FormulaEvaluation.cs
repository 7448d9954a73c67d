using ScrewSheet.Engine.Evaluation;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine;

/// <summary>
/// Evaluates what library functions declare about themselves, formulas and cautions, with the same reader and the same code that cells use.
/// </summary>
/// <remarks>For one thread at a time. Arguments are in coherent SI and in the order of the parameters; what is no number or quantity is NaN.</remarks>
/// <param name="library">The library whose functions the formulas may call.</param>
public sealed class FormulaEvaluation(FunctionLibrary library)
{
    private readonly CodeCache codes = new(library);
    private readonly Dictionary<(LibraryFunction Function, string Text), Runnable> read = [];

    /// <summary>The value of a declared formula in coherent SI; one that holds or fails gives 1 or 0.</summary>
    /// <param name="function">The function.</param>
    /// <param name="formula">One of its formulas.</param>
    /// <param name="si">Its arguments.</param>
    /// <exception cref="FormatException">The declaration cannot be read: a mistake in the library.</exception>
    /// <exception cref="DomainException">The formula has no value there, such as a root of a negative number.</exception>
    public double Value(LibraryFunction function, FormulaAttribute formula, params IReadOnlyList<double> si)
    {
        Runnable code = Read(function, formula.Text);
        double[] values = [.. si, .. new double[code.Lets.Length]];
        Frame frame = Begin(values);
        try
        {
            for (int i = 0; i < code.Lets.Length; i++) values[si.Count + i] = code.Lets[i](frame);
            return code.Value(frame);
        }
        catch (EvaluationException exception)
        {
            throw new DomainException(exception.Fault.Sentence);
        }
    }

    /// <summary>The cautions that ride with an answer: arguments outside their usual range, and declared conditions that hold.</summary>
    /// <param name="function">The function.</param>
    /// <param name="si">Its arguments.</param>
    /// <param name="answer">What it gave: its value in coherent SI, or the record itself.</param>
    /// <returns>Sentences that begin with the function's name.</returns>
    /// <exception cref="FormatException">A condition cannot be read: a mistake in the library.</exception>
    public IReadOnlyCollection<string> Cautions(LibraryFunction function, IReadOnlyList<double> si, object answer)
    {
        if (codes.GuardOf(function) is not { } guard) return [];
        Frame frame = Begin([]);
        if (answer is double value) guard.Consider(frame, [.. si, value]);
        else guard.ConsiderRecord(frame, [.. si], answer);
        return frame.Cautions;
    }

    private static Frame Begin(double[] values) => new(new Budget(CancellationToken.None), UnitSystem.SI) { ParameterSi = values };

    private Runnable Read(LibraryFunction function, string text)
    {
        if (read.TryGetValue((function, text), out Runnable? known)) return known;
        DeclaredFormula formula = DeclaredFormula.Read(function, text, library);
        Runnable code = new([.. formula.Lets.Select(let => Code(let.Value))], Code(formula.Value));
        read.Add((function, text), code);
        return code;
    }

    private Func<Frame, double> Code(BoundExpression tree)
    {
        if (tree.Type is not TruthType) return new Emitter(codes).Number(tree);
        Func<Frame, object> holds = new Emitter(codes).Other(tree);
        return frame => (bool)holds(frame) ? 1 : 0;
    }

    private sealed record Runnable(Func<Frame, double>[] Lets, Func<Frame, double> Value);
}
