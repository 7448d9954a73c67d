using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>What programs are told of a cell, in JSON and CSV alike.</summary>
/// <param name="Kind"><c>note</c>, <c>given</c> or <c>result</c>; a line that cannot be read is a note in fault.</param>
/// <param name="Type">The type of the value, as the cell declares it where it does; null for a note and where nothing could be bound.</param>
/// <param name="Unit">The unit of the value; null where it has none.</param>
/// <param name="Si">The value in coherent SI; null where it is no number.</param>
/// <param name="Tolerance">The half-width behind ±, in the unit of the value.</param>
/// <param name="Text">The words of a note, or the value as people are shown it.</param>
internal sealed record PlainCell(string Kind, string? Type, Unit? Unit, double? Si, double? Tolerance, string? Text)
{
    /// <summary>From a result.</summary>
    public static PlainCell Of(Selection selection, CellResult cell)
    {
        double? si = SiValue.Of(cell.Value);
        Unit? unit = cell.Value is null ? null : PrintedText.UnitOf(cell.Value, cell.Cell.Format, selection.Calculation.Workbook.Head.Units);
        return new PlainCell(KindOf(cell.Cell.Content), (cell.Value?.Type ?? cell.Type)?.Name, unit, si, ToleranceOf(cell.Cell.Content, si, unit), TextOf(selection, cell));
    }

    private static string KindOf(CellContent content) => content switch
    {
        GivenContent => "given",
        ResultContent => "result",
        _ => "note",
    };

    private static string? TextOf(Selection selection, CellResult cell) => cell.Cell.Content switch
    {
        NoteContent note => note.Text,
        BrokenContent broken => broken.Shown,
        _ when cell.Value is null => null,
        _ => cell.Value is TextValue text ? text.Value : selection.Shown(cell).ToString(),
    };

    private static double? ToleranceOf(CellContent content, double? si, Unit? unit)
    {
        if (content is not GivenContent { Tolerance: Tolerance tolerance } || si is not double value) return null;
        double halfWidth = tolerance.Relative ? Math.Abs(value) * tolerance.HalfWidthSi : tolerance.HalfWidthSi;
        return unit is null ? halfWidth : halfWidth * unit.Divisor / unit.Multiplier;
    }
}
