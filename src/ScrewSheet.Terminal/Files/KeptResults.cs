using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Files;

/// <summary>Present results as a file keeps them.</summary>
internal static class KeptResults
{
    /// <summary>The workbook with every result it has a value for after <c>gives</c>, and the version that computed them in its head. Results in fault keep what stands there.</summary>
    public static Workbook In(Selection selection)
    {
        Dictionary<CellId, string?> kept = [];
        foreach (CellResult cell in selection.Cells.Where(cell => cell.Cell.Content is ResultContent))
        {
            if (Text(selection, cell) is string text) kept[cell.Id] = text;
        }
        Workbook workbook = selection.Calculation.Workbook;
        return kept.Count == 0 ? workbook : workbook.WithKept(kept).WithHead(workbook.Head with { MadeWith = ProductVersion.Text });
    }

    // a series or a record is not kept; the cells that read its parts are
    private static string? Text(Selection selection, CellResult cell) =>
        cell.Value is null ? null : KeptText.Write(cell.Value, selection.Digits.FormatOf(cell), selection.Calculation.Workbook.Head.Units, cell.IsCheck);
}
