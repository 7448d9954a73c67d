using ScrewSheet.Exports.Steps;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Pages;

/// <summary>Makes the rows of givens: what they are, how well they are known, where they come from.</summary>
internal sealed class GivenRows(StepTools tools)
{
    private readonly Figures figures = new(tools);

    /// <summary>The row of a given.</summary>
    public GivenRow Of(CellResult cell, string label, SourceList sources)
    {
        GivenContent given = (GivenContent)cell.Cell.Content;
        Notation name = CellNaming.Of(tools.Calculation.Workbook, cell.Id, cell.Id.Sheet);
        Notation value = figures.OfCell(cell, isAnswer: false) ?? new WordNotation(cell.Value is TextValue text ? text.Value : cell.Fault is { } fault ? $"fault: {fault.Sentence}" : given.Text);
        string[] from = [.. new[] { Source(cell, given, sources), cell.Cell.Remark ?? "" }.Where(part => part.Length > 0)];
        return new GivenRow(label, name, value, given.Tolerance is { } tolerance ? Tolerance(cell, tolerance) : "", given.Within is { } limits ? Limits(cell, limits) : "", string.Join("; ", from));
    }

    private static string Source(CellResult cell, GivenContent given, SourceList sources)
    {
        if (given.Source is not { Length: > 0 } source) return "";
        return $"[{sources.Add(cell.Cell.Name ?? cell.Id.ToString(), source)}]";
    }

    private string Tolerance(CellResult cell, Tolerance tolerance)
    {
        string words = Joined(tolerance.Text);
        if (!tolerance.Relative && Other(cell) is { } unit)
        {
            string shape = string.Join(' ', tolerance.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SkipWhile(word => !IsWord(word)));
            words = $"{QuantityText.WriteDifference(tolerance.HalfWidthSi, unit, new Digits(3, true))} {shape}".Trim();
        }
        return $"±\u00A0{words}{(tolerance.Shape == ToleranceShape.Normal ? " (95\u00A0%)" : "")}";
    }

    private string Limits(CellResult cell, Limits limits) => Other(cell) is { } unit
        ? $"{QuantityText.Write(limits.FromSi, unit, new Digits(3, true))} to {QuantityText.Write(limits.ToSi, unit, new Digits(3, true))}" : limits.Text;

    /// <summary>The unit the given is shown in where that is not the one it was written in; else null.</summary>
    private Unit? Other(CellResult cell)
    {
        if (cell.Value is not QuantityValue value || !tools.Units.All) return null;
        Unit written = (cell.Cell.Content as GivenContent)?.Literal is NumberLiteral { Unit: { } unit } ? unit : ValueText.UnitOf(value.Quantity, cell.Cell.Format, tools.Units.System);
        return tools.Units.Unit(value.Quantity, written);
    }

    // number and unit stay on one line, the words after them need not
    private static string Joined(string text)
    {
        int blank = text.IndexOf(' ', StringComparison.Ordinal);
        return blank < 0 || IsWord(text[(blank + 1)..]) ? text : $"{text[..blank]}\u00A0{text[(blank + 1)..]}";
    }

    private static bool IsWord(string word) => word.StartsWith("rectangular", StringComparison.Ordinal) || word.StartsWith("triangular", StringComparison.Ordinal) || word.StartsWith("dof", StringComparison.Ordinal) || word.StartsWith("k=", StringComparison.Ordinal);
}
