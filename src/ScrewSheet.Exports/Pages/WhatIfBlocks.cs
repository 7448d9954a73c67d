using System.Collections.Immutable;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Exports.Pages;

/// <summary>What-if tables as tables of a page: a list, or of two givens one table for each shown cell in parts that fit the paper.</summary>
internal static class WhatIfBlocks
{
    private const int MostRows = 1000, MostAcross = 8;

    /// <summary>The blocks of a table.</summary>
    public static IEnumerable<Block> Of(ComputedTable table, Answers answers)
    {
        string title = table.Title ?? "What if";
        if (table.Fault is { } fault) return [new MissingBlock($"{title}: {fault}")];
        return table.Axes.Length == 2 ? Crossed(table, title, answers) : [List(table, title, answers)];
    }

    private static TableBlock List(ComputedTable table, string title, Answers answers)
    {
        TableHead[] heads = [.. table.Axes.Select(axis => new TableHead(UnitLabel.Of(axis.Label, axis.Unit))), .. table.Columns.Select(column => new TableHead(UnitLabel.Of(column.Label, column.Unit)))];
        int count = Math.Min(table.Scenarios, MostRows);
        IEnumerable<TableRow> rows = Enumerable.Range(0, count).Select(scenario => new TableRow(
            [.. table.Places(scenario).Select((place, i) => table.Axes[i].Values[place].Text)], [.. table.Columns.Select(column => Entry(column, scenario, answers))]));
        return new TableBlock(title, [[.. heads]], [.. rows]) { Remarks = [.. Cut(table, count), .. Remarks(table, table.Columns, answers)] };
    }

    private static IEnumerable<Block> Crossed(ComputedTable table, string title, Answers answers)
    {
        (TableAxis down, TableAxis across) = (table.Axes[0], table.Axes[1]);
        foreach (TableColumn column in table.Columns)
        {
            for (int from = 0; from < across.Values.Length; from += MostAcross)
            {
                int wide = Math.Min(MostAcross, across.Values.Length - from), first = from, deep = Math.Min(down.Values.Length, MostRows);
                ImmutableArray<TableHead> over = [new TableHead(""), new TableHead(UnitLabel.Of(across.Label, across.Unit), wide)], heads = [new TableHead(UnitLabel.Of(down.Label, down.Unit)), .. across.Values.Skip(from).Take(wide).Select(value => new TableHead(value.Text))];
                IEnumerable<TableRow> rows = Enumerable.Range(0, deep).Select(row => new TableRow([down.Values[row].Text], [.. Enumerable.Range(first, wide).Select(at => Entry(column, table.Scenario(row, at), answers))]));
                bool last = from + wide == across.Values.Length;
                yield return new TableBlock($"{title}: {UnitLabel.Of(column.Label, column.Unit)}{(from > 0 ? ", continued" : "")}", [over, heads], [.. rows]) { Remarks = last ? [.. Remarks(table, [column], answers)] : [] };
            }
        }
    }

    private static IEnumerable<string> Cut(ComputedTable table, int count) => count < table.Scenarios ? [$"The first {count} of {table.Scenarios} rows."] : [];

    private static IEnumerable<string> Remarks(ComputedTable table, ImmutableArray<TableColumn> columns, Answers answers) =>
        columns.SelectMany(column => column.Remarks.Select(remark => $"{column.Label}: {remark}")).Concat(table.Notes).Select(remark => answers.Hidden(remark));

    private static string Entry(TableColumn column, int scenario, Answers answers)
    {
        TableEntry entry = column.Entries[scenario];
        string text = entry.Fault is not null ? "fault" : column.IsCheck && entry.Truth == false ? "FAILS" : entry.Text;
        return answers.Figure(text);
    }
}
