using System.Collections.Immutable;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Steps;

/// <summary>Worked steps as lines of text for a terminal.</summary>
public static class StepText
{
    /// <summary>The lines of a step in a width, each led by a word that says what it is: <c>formula</c>, <c>by</c>, <c>with</c>, <c>numbers</c>, <c>result</c>; empty where the line before goes on.</summary>
    /// <param name="step">The step.</param>
    /// <param name="width">Columns for the text; a fraction, a root or a power is not broken.</param>
    public static IEnumerable<(string Word, string Text)> Lines(WorkedStep step, int width) => [.. Formula(step, width), .. Calls(step, width), .. Numbers(step, width), .. Result(step, width)];

    /// <summary>The formula alone; nothing where the result could not be bound.</summary>
    /// <param name="step">The step.</param>
    /// <param name="width">Columns for the text.</param>
    public static IEnumerable<(string Word, string Text)> Formula(WorkedStep step, int width)
    {
        ArgumentNullException.ThrowIfNull(step);
        return Chain("formula", null, [step.Formula], width);
    }

    /// <summary>The formula with the numbers put in; nothing where that would only repeat it.</summary>
    /// <param name="step">The step.</param>
    /// <param name="width">Columns for the text.</param>
    public static IEnumerable<(string Word, string Text)> Numbers(WorkedStep step, int width)
    {
        ArgumentNullException.ThrowIfNull(step);
        return Chain("numbers", null, [step.Numbers], width);
    }

    /// <summary>The library functions it calls, with their own numbers.</summary>
    /// <param name="step">The step.</param>
    /// <param name="width">Columns for the text.</param>
    public static IEnumerable<(string Word, string Text)> Calls(WorkedStep step, int width)
    {
        ArgumentNullException.ThrowIfNull(step);
        foreach (CallStep call in step.Calls)
            foreach (var line in Of(call, width)) yield return line;
        if (step.MoreCalls > 0) yield return ("by", $"and {step.MoreCalls} more");
    }

    private static IEnumerable<(string Word, string Text)> Result(WorkedStep step, int width) => Chain("result", null, [step.Result], width);

    /// <summary>The pieces side by side in lines of a width; lines after the first begin with as many blanks as asked for.</summary>
    internal static ImmutableArray<string> Wrapped(ImmutableArray<Notation> pieces, int width, int indent = 2)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        string line = "";
        foreach (Notation piece in pieces)
        {
            string text = LinearText.Of(piece), longer = LinearText.Of(new RunNotation([new WordNotation(line.Trim()), piece]));
            bool first = lines.Count == 0;
            if (line.Length > 0 && longer.Length + (first ? 0 : indent) > width)
            {
                lines.Add(line);
                line = new string(' ', indent) + text;
            }
            else line = line.Length == 0 ? text : (first ? "" : new string(' ', indent)) + longer;
        }
        if (line.Length > 0) lines.Add(line);
        return lines.ToImmutable();
    }

    private static IEnumerable<(string, string)> Of(CallStep call, int width)
    {
        yield return ("by", VisibleText.Of($"{call.Function}: {call.Method ?? call.Answers}"));
        foreach (ParameterStep parameter in call.Parameters)
            foreach (var line in Chain("with", parameter.Symbol, [parameter.Argument, parameter.Value], width)) yield return line;
        foreach (FormulaStep formula in call.Lets.Concat(call.Formulas))
            foreach (var line in Chain("", formula.Symbol, [formula.Formula, formula.Numbers, formula.Result], width)) yield return line;
    }

    private static IEnumerable<(string, string)> Chain(string word, Notation? symbol, Notation?[] links, int width)
    {
        ImmutableArray<string> lines = Wrapped(Pieces.OfChain(symbol, links, width - 2), width);
        for (int i = 0; i < lines.Length; i++) yield return (i == 0 ? word : "", lines[i]);
    }
}
