using System.Globalization;
using System.Text;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Import;

/// <summary>Writes a table as a sheet of a workbook.</summary>
internal static class TableSheet
{
    /// <summary>The narrowest and the widest a column is made.</summary>
    private const int Narrow = 8, Wide = 34;

    /// <summary>How many cells the sheet will have.</summary>
    public static int Cells(ImportedTable table)
    {
        int bad = table.Bad.Count();
        return table.Columns.Count + (bad > 0 ? 1 + bad : 0) + table.Rows.Where(row => row.Problem is null).Sum(row => row.Values.Count(value => value.Length > 0));
    }

    /// <summary>The lines from <c>sheet</c> to the last cell.</summary>
    /// <param name="table">The table.</param>
    /// <param name="sheet">The sheet's name.</param>
    /// <param name="source">The file it came from.</param>
    /// <param name="units">What a cell that says nothing is shown in.</param>
    /// <param name="newLine">How lines end.</param>
    public static string Write(ImportedTable table, string sheet, string source, UnitSystem units, string newLine)
    {
        StringBuilder text = new();
        void Line(string line) => text.Append(line).Append(newLine);
        Line($"sheet {sheet} {CellText.Quote($"from {source}")}");
        Line("widths " + string.Join(", ", table.Columns.Select((_, i) => string.Create(CultureInfo.InvariantCulture, $"{CellAddress.ColumnName(i + 1)} {Width(table, i)}"))));
        foreach (string line in table.Preamble) Line("// " + OneLine(line));
        for (int i = 0; i < table.Columns.Count; i++) Line($"column {CellAddress.ColumnName(i + 1)} {table.Columns[i].Name}{(table.Columns[i].Heading.Unit is { } unit ? $" [{unit.Symbol}]" : "")}");
        Line("");
        string[] starts = [.. table.Columns.Select((column, i) => Start(column, units))], letters = [.. Enumerable.Range(1, table.Columns.Count + 1).Select(CellAddress.ColumnName)];
        for (int i = 0; i < table.Columns.Count; i++)
            if (table.Columns[i].Heading.Text.Length > 0) Line($"{letters[i]}1 {CellText.Quote(table.Columns[i].Heading.Text)}");
        if (table.Bad.Any()) Line($"{letters[^1]}1 \"Rows that could not be read\"");
        for (int row = 0; row < table.Rows.Count; row++) Row(text, table, row, starts, letters, newLine);
        return text.ToString();
    }

    private static void Row(StringBuilder text, ImportedTable table, int at, string[] starts, string[] letters, string newLine)
    {
        TableRow row = table.Rows[at];
        if (row.Problem is not null)
        {
            string note = string.Create(CultureInfo.InvariantCulture, $"line {row.Line}: {row.Problem} It reads: {string.Join(" | ", row.Values)}");
            text.Append(letters[^1]).Append(at + 2).Append(' ').Append(CellText.Quote(note)).Append(newLine);
            return;
        }
        for (int i = 0; i < row.Values.Length; i++)
        {
            if (row.Values[i].Length == 0) continue;
            TableColumn column = table.Columns[i];
            text.Append(letters[i]).Append(at + 2).Append(starts[i]).Append(column.IsNumber ? row.Values[i] : CellText.Quote(row.Values[i]));
            if (column.Heading.Unit is { } unit) text.Append(' ').Append(unit.Symbol);
            text.Append(newLine);
        }
    }

    /// <summary>What stands between address and value: the unit in brackets where the workbook would show another.</summary>
    private static string Start(TableColumn column, UnitSystem units) =>
        column.Heading.Unit is { } unit && DisplayUnits.For(unit.Dimension, unit.Kind, units).Symbol != unit.Symbol ? $" [{unit.Symbol}] = " : " = ";

    private static int Width(ImportedTable table, int column)
    {
        int longest = Math.Max(table.Columns[column].Heading.Text.Length, table.Rows.Where(row => row.Problem is null).Select(row => row.Values[column].Length).DefaultIfEmpty().Max() + (table.Columns[column].Heading.Unit?.Symbol.Length + 1 ?? 0));
        return Math.Clamp(longest + 2, Narrow, Wide);
    }

    private static string OneLine(string text) => string.Concat(text.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' ? ' ' : c));
}
