using System.Collections.Immutable;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Exports.Xlsx.Pages;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Charts;

/// <summary>
/// Charts of what-if tables that read the table's own cells. Of one given: its results over it, one chart for each unit. Of two givens: one chart for each result, a line for
/// each value of the second.
/// </summary>
internal static class ChartBuilder
{
    /// <summary>How many rows of a sheet a chart covers.</summary>
    public const int Rows = 18;

    private const int MostSeries = 24;

    /// <summary>The charts of a table, one below the other from a cell on; none where nothing in it is a number over a number.</summary>
    public static IEnumerable<Chart> Of(TableShape shape, string sheet, CellAddress at, string? title)
    {
        ComputedTable table = shape.Table;
        if (table.Axes.Length is < 1 or > 2 || table.Axes[0].Values.Length < 2 || !table.Axes[0].IsNumeric) return [];
        string words = VisibleText.Of(title ?? table.Title ?? "");
        IEnumerable<(string Y, ImmutableArray<ChartSeries> Series, int Column)> charts = table.Axes.Length == 1 ? OneGiven(shape, sheet) : TwoGivens(shape, sheet);
        return charts.Select((chart, i) => new Chart(at with { Row = at.Row + (i * (Rows + 1)) }, words.Length > 0 ? words : chart.Y, shape.Axis(0), chart.Y, Range(shape, sheet, chart.Column), chart.Series));
    }

    private static IEnumerable<(string, ImmutableArray<ChartSeries>, int)> OneGiven(TableShape shape, string sheet) =>
        from column in Numeric(shape.Table)
        group column by shape.Table.Columns[column].Unit?.Symbol ?? "" into same
        let y = same.Count() == 1 ? TableShape.Named(shape.Table.Columns[same.First()].Label, same.Key) : same.Key
        select (y, same.Take(MostSeries).Select(column => Series(shape, sheet, column, 0, TableShape.Named(shape.Table.Columns[column].Label, same.Key))).ToImmutableArray(), same.First());

    private static IEnumerable<(string, ImmutableArray<ChartSeries>, int)> TwoGivens(TableShape shape, string sheet) =>
        from column in Numeric(shape.Table)
        let y = TableShape.Named(shape.Table.Columns[column].Label, shape.Table.Columns[column].Unit?.Symbol)
        let across = shape.Table.Axes[1]
        select (y, Enumerable.Range(0, Math.Min(MostSeries, across.Values.Length)).Select(value => Series(shape, sheet, column, value, VisibleText.Of($"{across.Label} {across.Values[value].Text} {across.Unit?.Symbol}".TrimEnd()))).ToImmutableArray(), column);

    private static IEnumerable<int> Numeric(ComputedTable table) => Enumerable.Range(0, table.Columns.Length).Where(column => table.Columns[column].Entries.Any(entry => entry.Number is not null));

    private static ChartSeries Series(TableShape shape, string sheet, int column, int value, string name)
    {
        bool isGrid = shape.Table.Axes.Length == 2;
        int[] scenarios = [.. Enumerable.Range(0, shape.Table.Axes[0].Values.Length).Select(row => isGrid ? shape.Table.Scenario(row, value) : row)];
        TableColumn shown = shape.Table.Columns[column];
        return new ChartSeries(name, new ChartRange(Reference(sheet, shape.Entry(column, scenarios[0]), shape.Entry(column, scenarios[^1])), [.. scenarios.Select(scenario => Held(shown.Entries[scenario], shown.Unit?.Symbol))]));
    }

    private static ChartRange Range(TableShape shape, string sheet, int column)
    {
        TableAxis axis = shape.Table.Axes[0];
        CellAddress Place(int value) => shape.Head(column, 0, shape.Table.Axes.Length == 2 ? [value, 0] : [value]);
        return new ChartRange(Reference(sheet, Place(0), Place(axis.Values.Length - 1)), [.. axis.Values.Select(entry => Held(entry, axis.Unit?.Symbol))]);
    }

    private static double? Held(TableEntry entry, string? unit) => unit == "%" ? entry.Number / 100 : entry.Number;

    private static string Reference(string sheet, CellAddress first, CellAddress last) =>
        $"{SheetNames.Quoted(sheet)}!${CellAddress.ColumnName(first.Column)}${first.Row}:${CellAddress.ColumnName(last.Column)}${last.Row}";
}
