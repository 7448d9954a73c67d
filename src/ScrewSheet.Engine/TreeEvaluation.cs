using System.Collections.Immutable;
using ScrewSheet.Engine.Evaluation;
using ScrewSheet.Engine.Graph;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine;

/// <summary>What came of a bound expression.</summary>
/// <param name="Value">Its value, or null with a fault.</param>
/// <param name="Fault">Why it has none, or null; the place is in the text of the expression.</param>
/// <param name="Cautions">The cautions met, each once.</param>
public readonly record struct Evaluated(CellValue? Value, Fault? Fault, ImmutableArray<string> Cautions);

/// <summary>Evaluates bound expressions over values handed in, with the same code cells use: for studies that evaluate the same cells again and again.</summary>
/// <remarks>For one thread at a time. The code of a tree is made once.</remarks>
/// <param name="library">The library whose functions the trees call.</param>
/// <param name="units">Which units texts show.</param>
/// <param name="stop">Stops an evaluation that takes long.</param>
public sealed class TreeEvaluation(FunctionLibrary library, UnitSystem units, CancellationToken stop = default)
{
    private readonly CodeCache codes = new(library);
    private readonly Dictionary<BoundExpression, Func<Frame, CellValue>> known = new(ReferenceEqualityComparer.Instance);

    /// <summary>The value of a tree.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="references">What its references are, by slot; null for a slot it does not read.</param>
    /// <param name="formats">How the cells referred to are shown, by slot; texts show a value as its cell does.</param>
    /// <param name="parameters">What its parameters are, by index, where it is the body of a function; null for one it does not read.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public Evaluated Run(BoundExpression tree, IReadOnlyList<CellValue?> references, DisplayFormat?[]? formats = null, IReadOnlyList<CellValue?>? parameters = null)
    {
        ArgumentNullException.ThrowIfNull(tree);
        ArgumentNullException.ThrowIfNull(references);
        // two more places, for the parameters of lambdas
        Frame frame = new(new Budget(stop), units)
        {
            Si = Numbers(references, 0), Others = Others(references, 0), Formats = formats ?? [],
            ParameterSi = Numbers(parameters ?? [], 2), ParameterOthers = Others(parameters ?? [], 2),
        };
        try
        {
            CellValue value = Code(tree)(frame);
            return new Evaluated(value, null, [.. frame.Cautions]);
        }
        catch (EvaluationException exception)
        {
            return new Evaluated(null, Placed(tree, frame, exception.Fault), []);
        }
        catch (DomainException exception)
        {
            return new Evaluated(null, Placed(tree, frame, EvaluationFaults.Domain(exception.Message)), []);
        }
    }

    /// <summary>The fault of a given outside its limits, as the engine words it.</summary>
    public static Fault OutsideLimits(string value, string limits) => CallFaults.OutsideLimits(value, limits);

    /// <summary>The fault of a cell that waits for another one.</summary>
    public static Fault Waits(string cell, string cause) => EvaluationFaults.Waits(cell) with { Cause = cause };

    private Fault Placed(BoundExpression tree, Frame frame, Fault fault) => DeepStack.Run(() => FaultPlace.Find(tree, frame, codes, fault));

    private Func<Frame, CellValue> Code(BoundExpression tree)
    {
        if (known.TryGetValue(tree, out Func<Frame, CellValue>? code)) return code;
        if (Emitter.IsNumeric(tree.Type))
        {
            Func<Frame, double> number = new Emitter(codes).Number(tree);
            code = frame => Values.Wrap(tree.Type, number(frame));
        }
        else
        {
            Func<Frame, object> other = new Emitter(codes).Other(tree);
            code = frame => Values.Wrap(tree.Type, other(frame));
        }
        known.Add(tree, code);
        return code;
    }

    private static double[] Numbers(IReadOnlyList<CellValue?> values, int spare)
    {
        double[] si = new double[values.Count + spare];
        for (int i = 0; i < values.Count; i++) si[i] = values[i] is { } value ? SiValue.Of(value) ?? double.NaN : double.NaN;
        return si;
    }

    private static object?[] Others(IReadOnlyList<CellValue?> values, int spare)
    {
        object?[] others = new object?[values.Count + spare];
        for (int i = 0; i < values.Count; i++) others[i] = values[i] is { } value ? Values.Other(value) : null;
        return others;
    }
}
