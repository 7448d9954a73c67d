using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Html;

/// <summary>Worked steps as HTML.</summary>
internal sealed class StepWriter(StringBuilder html)
{
    /// <summary>A step: its formula, what it calls, the numbers, the result.</summary>
    public void Write(StepBlock block)
    {
        WorkedStep step = block.Step;
        string label = block.Label.Length > 0 ? HtmlText.Of(block.Label) : MathWriter.Inline(step.Name);
        html.Append(CultureInfo.InvariantCulture, $"<section class=\"step\" id=\"step-{block.Number}\">\n<h3><span class=\"number\">{block.Number}</span> {label} <span class=\"cell\">{block.Address}</span></h3>\n");
        bool alone = step.Calls.IsEmpty;
        foreach (ImmutableArray<Notation> line in step.Opening(BlockWriter.PieceWidth)) Line(line);
        foreach (CallStep call in step.Calls) Write(call, block.CallSources.GetValueOrDefault(call.Function, []));
        if (step.MoreCalls > 0) html.Append(CultureInfo.InvariantCulture, $"<p class=\"small\">And {step.MoreCalls} more calls of the library.</p>\n");
        if (!alone) foreach (ImmutableArray<Notation> line in step.Closing(BlockWriter.PieceWidth)) Line(line);
        if (block.Words is { } words) html.Append(CultureInfo.InvariantCulture, $"<p class=\"words\">{HtmlText.Of(words)}</p>\n");
        Members(block);
        if (block.Fault is { } fault) html.Append(CultureInfo.InvariantCulture, $"<p class=\"caution\"><strong>No value:</strong> {HtmlText.Of(fault)}</p>\n");
        foreach (string caution in block.Cautions) html.Append(CultureInfo.InvariantCulture, $"<p class=\"caution\"><strong>Caution:</strong> {HtmlText.Of(caution)}</p>\n");
        foreach (string remark in block.Remarks) html.Append(CultureInfo.InvariantCulture, $"<p class=\"small\">{HtmlText.Of(remark)}</p>\n");
        if (!block.Sources.IsEmpty) html.Append(CultureInfo.InvariantCulture, $"<p class=\"small\">Sources {References(block.Sources)}</p>\n");
        html.Append("</section>\n");
    }

    private void Write(CallStep call, ImmutableArray<int> sources)
    {
        string cited = sources.IsEmpty ? "" : " " + References(sources);
        string how = call.Method is { } method ? $" It has no closed formula: {HtmlText.Of(method)}" : call.IsCoherent ? " The formula takes numbers in coherent SI units." : "";
        html.Append(CultureInfo.InvariantCulture, $"<div class=\"by-call\">\n<p><b>{HtmlText.Of(call.Function)}</b>{(call.EarlierStep > 0 ? $" as in <a href=\"#step-{call.EarlierStep}\">step {call.EarlierStep}</a>" : $": {HtmlText.Of(call.Answers)}")}{how}{cited}</p>\n");
        if (!call.Parameters.IsEmpty)
        {
            html.Append("<ul class=\"with\">\n");
            foreach (ParameterStep parameter in call.Parameters)
                html.Append(CultureInfo.InvariantCulture, $"<li>{MathWriter.Of(Pieces.OfChain(parameter.Symbol, [parameter.Argument, parameter.Value], BlockWriter.PieceWidth))} <span class=\"small\">{HtmlText.Of(parameter.Meaning)}</span></li>\n");
            html.Append("</ul>\n");
        }
        foreach (FormulaStep formula in call.Lets.Concat(call.Formulas)) Line(Pieces.OfChain(formula.Symbol, [formula.Formula, formula.Numbers, formula.Result], BlockWriter.PieceWidth));
        html.Append("</div>\n");
    }

    private void Line(ImmutableArray<Notation> pieces) => html.Append(CultureInfo.InvariantCulture, $"<p class=\"math\">{MathWriter.Of(pieces)}</p>\n");

    private void Members(StepBlock block)
    {
        if (block.Members.IsEmpty) return;
        html.Append("<div class=\"wide\"><table class=\"members\">\n<caption>What it gives</caption>\n<thead><tr><th scope=\"col\">Part</th><th scope=\"col\">Value</th><th scope=\"col\">Meaning</th></tr></thead>\n<tbody>\n");
        foreach ((string name, string value, string meaning) in block.Members)
            html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{HtmlText.Of(name)}</th><td class=\"figure\">{HtmlText.Of(value)}</td><td>{HtmlText.Of(meaning)}</td></tr>\n");
        html.Append("</tbody>\n</table></div>\n");
    }

    private static string References(ImmutableArray<int> sources) => string.Join(' ', sources.Select(number => string.Create(CultureInfo.InvariantCulture, $"<a href=\"#source-{number}\">[{number}]</a>")));
}
