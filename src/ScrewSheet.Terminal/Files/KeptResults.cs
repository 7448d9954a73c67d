using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Format;
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

    /// <summary>What stands after <c>gives</c>; null for a fault, and for a series or a record, whose parts are kept by the cells that read them.</summary>
    private static string? Text(Selection selection, CellResult cell) => cell.Value switch
    {
        null or SeriesValue or RecordValue => null,
        TextValue text => CellText.Quote(text.Value),
        TruthValue truth when cell.IsCheck => truth.Value ? "holds" : "fails",
        _ => selection.Shown(cell).ToString(),
    };
}
