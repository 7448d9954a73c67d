using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>The results of a sheet that are printed.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Cells">Its results, in file order.</param>
internal sealed record SelectedSheet(Sheet Sheet, IReadOnlyList<CellResult> Cells);

/// <summary>What of a calculation is printed.</summary>
/// <param name="Calculation">All results.</param>
/// <param name="Sheets">The printed ones.</param>
/// <param name="Digits">How each printed value is shown.</param>
internal sealed record Selection(Calculation Calculation, IReadOnlyList<SelectedSheet> Sheets, ShownDigits Digits)
{
    /// <summary>Everything on these sheets.</summary>
    public static Selection Of(Calculation calculation, IEnumerable<Sheet> sheets) =>
        new(calculation, [.. sheets.Select(sheet => new SelectedSheet(sheet, [.. calculation.Of(sheet)]))], ShownDigits.Of(calculation));

    /// <summary>These cells only, in file order.</summary>
    public Selection Only(IReadOnlySet<CellId> cells) => this with
    {
        Sheets = [.. Sheets.Select(part => part with { Cells = [.. part.Cells.Where(cell => cells.Contains(cell.Id))] }).Where(part => part.Cells.Count > 0)],
    };

    /// <summary>All printed results.</summary>
    public IEnumerable<CellResult> Cells => Sheets.SelectMany(sheet => sheet.Cells);

    /// <summary>The value of a cell as it is shown.</summary>
    public PrintedValue Shown(CellResult cell) => PrintedText.Of(cell.Value!, Digits.FormatOf(cell), Calculation.Workbook.Head.Units, cell.IsCheck);
}
