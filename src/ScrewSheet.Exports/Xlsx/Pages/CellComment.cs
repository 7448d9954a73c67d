using System.Text;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>What stands beside a cell as its comment: the line of the workbook it comes from, what it is here, where its formulas come from, faults and cautions.</summary>
internal static class CellComment
{
    private const int Longest = 2_000, MostSources = 4;

    /// <summary>The comment; null for a note.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="whyFixed">Why a result is a value and no formula, or null.</param>
    public static string? Of(CellResult cell, string? whyFixed)
    {
        StringBuilder text = new();
        switch (cell.Cell.Content)
        {
            case GivenContent given: Given(text, given); break;
            case ResultContent result: text.Append("=> ").Append(VisibleText.Of(result.Expression)); break;
            case BrokenContent broken: text.Append(VisibleText.Of(broken.Text.Trim())); break;
            default: return null;
        }
        if (!string.IsNullOrWhiteSpace(cell.Cell.Remark)) text.Append('\n').Append(VisibleText.Of(cell.Cell.Remark.Trim()));
        if (whyFixed is not null) text.Append("\nA value, no formula: ").Append(VisibleText.Of(whyFixed)).Append(". It does not follow when givens change here.");
        if (cell.Fault is { } fault) text.Append("\nFault: ").Append(VisibleText.Of(fault.Sentence));
        foreach (string source in Sources(cell.Bound)) text.Append('\n').Append(VisibleText.Of(source));
        foreach (Caution caution in cell.Cautions) text.Append("\nCaution: ").Append(VisibleText.Of(caution.Message));
        return text.Length <= Longest ? text.ToString() : text.ToString(0, Longest) + " …";
    }

    private static void Given(StringBuilder text, GivenContent given)
    {
        text.Append("= ").Append(VisibleText.Of(given.Text));
        if (given.Tolerance is { } tolerance) text.Append(" ± ").Append(VisibleText.Of(tolerance.Text));
        if (given.Within is { } within) text.Append(" within ").Append(VisibleText.Of(within.Text));
        if (given.Source is { } source) text.Append("\nSource: ").Append(VisibleText.Of(source));
    }

    private static IEnumerable<string> Sources(BoundExpression? tree) => tree is null ? [] :
        BoundChildren.All(tree).OfType<BoundCall>().Select(call => call.Function).Distinct().Take(MostSources)
            .Where(function => !function.Sources.IsEmpty).Select(function => $"{function.Name}: {function.Sources[0].Work}");
}
