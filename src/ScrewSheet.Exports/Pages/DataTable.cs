using System.Collections.Immutable;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Pages;

/// <summary>The givens that stand in the named columns of a sheet, as one table.</summary>
internal static class DataTable
{
    private const int MostRows = 500;

    /// <summary>The table; null where the sheet has no columns with givens.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="tools">What shows its values.</param>
    /// <param name="tabled">Takes the cells that stand in the table.</param>
    public static TableBlock? Of(Sheet sheet, StepTools tools, HashSet<CellId> tabled)
    {
        if (sheet.Columns.IsEmpty) return null;
        SheetColumn[] columns = [.. sheet.Columns.OrderBy(column => column.Column)];
        HashSet<int> numbers = [.. columns.Select(column => column.Column)];
        Figures figures = new(tools);
        int[] rows = [.. sheet.Cells.Values.Where(cell => cell.Content is GivenContent && numbers.Contains(cell.Address.Column)).Select(cell => cell.Address.Row).Distinct().Order()];
        if (rows.Length == 0) return null;
        List<TableRow> shown = [];
        foreach (int row in rows)
        {
            CellResult?[] cells = [.. columns.Select(column => tools.Calculation.Cells.GetValueOrDefault(new CellId(sheet.Name, new CellAddress(column.Column, row))))];
            if (cells.All(cell => cell is null or { Cell.Content: GivenContent }))
            {
                foreach (CellResult cell in cells.OfType<CellResult>()) tabled.Add(cell.Id);
                if (shown.Count < MostRows) shown.Add(new TableRow([Text(cells[0], columns[0], figures)], [.. cells.Zip(columns).Skip(1).Select(pair => Text(pair.First, pair.Second, figures))]));
            }
        }
        foreach (CellAddress heading in sheet.Cells.Keys.Where(at => numbers.Contains(at.Column) && at.Row < rows[0] && sheet.Cells[at].Content is NoteContent)) tabled.Add(new CellId(sheet.Name, heading));
        TableHead[] heads = [.. columns.Select(column => new TableHead(UnitLabel.Of(column.Name, column.Unit)))];
        return new TableBlock($"{sheet.Name}: the values as they stand in the file", [[.. heads]], [.. shown])
        {
            Remarks = rows.Length > MostRows ? [$"The first {MostRows} of {rows.Length} rows."] : [],
        };
    }

    private static string Text(CellResult? cell, SheetColumn column, Figures figures)
    {
        if (cell?.Value is null) return cell?.Fault is null ? "" : "fault";
        if (cell.Value is TextValue text) return text.Value;
        if (cell.Value is not { } value || figures.Shown(value, cell.Cell.Format ?? new(column.Unit, null), cell.IsCheck) is not { } shown) return "";
        return shown.Unit == (column.Unit?.Symbol ?? "") ? shown.Figure : $"{shown.Figure}\u00A0{shown.Unit}";
    }
}
