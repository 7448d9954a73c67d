using System.Globalization;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Import;

/// <summary>What was read, and how: the user checks it against the file.</summary>
internal static class ImportReport
{
    /// <summary>Bad rows named one by one; the others stand on the sheet.</summary>
    private const int NamedRows = 20;

    /// <summary>The summary.</summary>
    public static IEnumerable<StyledLine> Lines(ImportedTable table, DecodedText text, string sheet, string file, string into, int width)
    {
        int bad = table.Bad.Count(), good = table.Rows.Count - bad;
        string kept = bad == 0 ? "" : $" {Count(bad)} could not be read and {(bad == 1 ? "is kept as a note" : "are kept as notes")} in column {CellAddress.ColumnName(table.Columns.Count + 1)}.";
        yield return new StyledLine($"{Rows(good)} of {FileTrouble.Quoted(file)} put on the sheet {PlainText.Of(sheet)} of {FileTrouble.Quoted(into)}.{kept}");
        string sign = table.DecimalSign is null ? "" : table.DecimalSign == ',' ? ", decimal comma" : ", decimal point";
        yield return new StyledLine($"Read as {text.Encoding}{(table.Columns.Count > 1 ? $", fields between {Separator.Name(table.Separator)}" : "")}{sign}.");
        foreach (string line in Columns(table)) yield return new StyledLine(line);
        foreach (string caution in Cautions(table, text))
            foreach (string line in Wrapping.Hanging("caution: ", caution, width)) yield return new StyledLine(line, Tone.Careful);
        if (Example(table, sheet) is { } example) yield return new StyledLine($"In a cell: {example}");
    }

    /// <summary>The rows that could not be read, one a line.</summary>
    public static IEnumerable<string> BadRows(ImportedTable table, string file)
    {
        foreach (TableRow row in table.Bad.Take(NamedRows)) yield return string.Create(CultureInfo.InvariantCulture, $"{FileTrouble.Quoted(file)}, line {row.Line}: {row.Problem}");
        int more = table.Bad.Count() - NamedRows;
        if (more > 0) yield return $"{FileTrouble.Quoted(file)}: {Count(more)} more rows could not be read; each is a note on the sheet.";
    }

    private static IEnumerable<string> Columns(ImportedTable table)
    {
        string[][] cells = [.. table.Columns.Select((column, i) => (string[])[CellAddress.ColumnName(i + 1), Named(column), Kind(column), Filled(table, i), From(column)])];
        int[] widths = [.. Enumerable.Range(0, 4).Select(part => cells.Max(row => DisplayWidth.Of(row[part])))];
        foreach (string[] row in cells) yield return ("  " + string.Concat(row.Select((cell, part) => part < 4 ? cell + new string(' ', widths[part] - DisplayWidth.Of(cell) + 2) : cell))).TrimEnd();
    }

    private static string Named(TableColumn column) => UnitLabel.Of(column.Name, column.Heading.Unit);

    private static string Kind(TableColumn column) => !column.IsNumber ? "texts" : column.Heading.Unit?.Kind?.Name ?? (column.Heading.Unit is { Dimension.IsNone: false } unit ? $"in {unit.Symbol}" : "numbers");

    private static string Filled(ImportedTable table, int column)
    {
        int good = table.Rows.Count(row => row.Problem is null), filled = table.Rows.Count(row => row.Problem is null && row.Values[column].Length > 0);
        string values = filled == 1 ? "1 value" : $"{Count(filled)} values";
        return filled == good ? values : $"{values}, {Count(good - filled)} empty";
    }

    private static string From(TableColumn column) => column.Heading.Text.Length == 0 ? "without a heading"
        : column.Heading.Words == column.Name ? "" : $"from \"{PlainText.Of(column.Heading.Text.ReplaceLineEndings(" "))}\"";

    private static IEnumerable<string> Cautions(ImportedTable table, DecodedText text)
    {
        if (text.IsGuessed) yield return "The file is not UTF-8; letters beyond A to Z are read as Western European ones. Look at them.";
        if (table.IsDoubtful) yield return "Every decimal comma stands before three digits, so 12,345 was read as 12.345. Where commas group digits, say --decimal point and take them out.";
        if (!table.Columns.Any(column => column.IsNumber)) yield return "No column holds numbers. Where the headings stand in another line, say --header LINE.";
        foreach (TableColumn column in table.Columns.Where(column => column.Remark is not null)) yield return $"{column.Name}: {column.Remark}.";
    }

    /// <summary>An expression to begin with.</summary>
    private static string? Example(ImportedTable table, string sheet)
    {
        int number = Measured(table);
        if (number < 0) return null;
        (string Name, string Text, int Rows) common = table.Columns.Select((column, i) => Commonest(table, column, i)).MaxBy(found => found.Rows);
        string series = $"{sheet}.{table.Columns[number].Name}";
        return common.Rows < 2 ? $"Mean({series})" : $"Mean({series}.Where({sheet}.{common.Name}, {PlainText.Of(Workbooks.Format.CellText.Quote(common.Text))}))";
    }

    /// <summary>The text most rows of a column say.</summary>
    private static (string Name, string Text, int Rows) Commonest(ImportedTable table, TableColumn column, int index)
    {
        if (column.IsNumber) return (column.Name, "", 0);
        var most = table.Rows.Where(row => row.Problem is null && row.Values[index].Length is > 0 and < 30).CountBy(row => row.Values[index]).DefaultIfEmpty().MaxBy(pair => pair.Value);
        return (column.Name, most.Key ?? "", most.Value);
    }

    private static int Measured(ImportedTable table)
    {
        int force = table.Columns.ToList().FindIndex(column => column.Heading.Unit?.Kind?.Name == "Force"), any = table.Columns.ToList().FindIndex(column => column.Heading.Unit is not null);
        return force >= 0 ? force : any >= 0 ? any : table.Columns.ToList().FindIndex(column => column.IsNumber);
    }

    private static string Rows(int count) => count == 1 ? "1 row" : $"{Count(count)} rows";

    private static string Count(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}
