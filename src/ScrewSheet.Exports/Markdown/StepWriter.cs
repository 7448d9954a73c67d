using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Markdown;

/// <summary>Worked steps as Markdown.</summary>
internal sealed class StepWriter(StringBuilder text)
{
    /// <summary>A step: its formula, what it calls, the numbers, the result.</summary>
    public void Write(StepBlock block)
    {
        WorkedStep step = block.Step;
        string label = block.Label.Length > 0 ? block.Label : LinearText.Of(step.Name);
        text.Append(CultureInfo.InvariantCulture, $"### {block.Number} {MarkdownText.Of(label)} ({block.Address})\n\n");
        bool alone = step.Calls.IsEmpty;
        foreach (ImmutableArray<Notation> line in step.Opening(BlockWriter.Width)) Line(line);
        foreach (CallStep call in step.Calls) Write(call, block.CallSources.GetValueOrDefault(call.Function, []));
        if (step.MoreCalls > 0) text.Append(CultureInfo.InvariantCulture, $"And {step.MoreCalls} more calls of the library.\n\n");
        if (!alone) foreach (ImmutableArray<Notation> line in step.Closing(BlockWriter.Width)) Line(line);
        if (block.Words is { } words) Paragraph(words);
        foreach ((string name, string value, string meaning) in block.Members) text.Append(CultureInfo.InvariantCulture, $"- {MarkdownText.Of(name)}: {MarkdownText.Of(value)} ({MarkdownText.Of(meaning)})\n");
        if (!block.Members.IsEmpty) text.Append('\n');
        if (block.Fault is { } fault) text.Append(CultureInfo.InvariantCulture, $"**No value:** {MarkdownText.Of(fault)}\n\n");
        foreach (string caution in block.Cautions) text.Append(CultureInfo.InvariantCulture, $"**Caution:** {MarkdownText.Of(caution)}\n\n");
        foreach (string remark in block.Remarks) Paragraph(remark);
        if (!block.Sources.IsEmpty) text.Append(CultureInfo.InvariantCulture, $"Sources {References(block.Sources)}\n\n");
    }

    private void Write(CallStep call, ImmutableArray<int> sources)
    {
        string cited = sources.IsEmpty ? "" : " " + References(sources);
        string how = call.Method is { } method ? $" It has no closed formula: {MarkdownText.Of(method)}" : call.IsCoherent ? " The formula takes numbers in coherent SI units." : "";
        text.Append(CultureInfo.InvariantCulture, $"> **{MarkdownText.Of(call.Function)}**{(call.EarlierStep > 0 ? $" as in step {call.EarlierStep}" : $": {MarkdownText.Of(call.Answers)}")}{how}{cited}\n>\n");
        foreach (ParameterStep parameter in call.Parameters)
            text.Append(CultureInfo.InvariantCulture, $"> - {MarkdownText.Of(LinearText.Of(new RunNotation(Pieces.OfChain(parameter.Symbol, [parameter.Argument, parameter.Value], BlockWriter.Width))))} ({MarkdownText.Of(parameter.Meaning)})\n");
        foreach (FormulaStep formula in call.Lets.Concat(call.Formulas))
            text.Append(CultureInfo.InvariantCulture, $">\n> {BlockWriter.Lines(Pieces.OfChain(formula.Symbol, [formula.Formula, formula.Numbers, formula.Result], BlockWriter.Width)).Replace("\n", "\n> ", StringComparison.Ordinal)}\n");
        text.Append('\n');
    }

    private void Line(ImmutableArray<Notation> pieces) => text.Append(BlockWriter.Lines(pieces)).Append("\n\n");

    private void Paragraph(string words) => text.Append(MarkdownText.Of(words)).Append("\n\n");

    private static string References(ImmutableArray<int> sources) => string.Join(' ', sources.Select(number => string.Create(CultureInfo.InvariantCulture, $"\\[{number}\\]")));
}
