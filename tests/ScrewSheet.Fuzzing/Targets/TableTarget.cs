using System.Globalization;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Terminal;
using ScrewSheet.Terminal.Import;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Fuzzing;

/// <summary>A table from elsewhere: refused in a sentence, or a sheet that holds each of its rows once, read or refused, and reads back.</summary>
internal sealed class TableTarget : Target
{
    /// <inheritdoc/>
    public override string Name => "table";

    /// <inheritdoc/>
    protected override void Run(byte[] input)
    {
        Import(input, new ImportWishes());
        int sum = 0;
        foreach (byte each in input) sum = (sum + each) & 0xFF;
        Import(input, new ImportWishes(sum % 3 == 0 ? null : sum % 3, 1 + (sum / 3 % 3), sum % 7 == 0 ? 3 : null, (sum % 5) switch { 0 => ',', 1 => '.', _ => null }));
    }

    private static void Import(byte[] input, ImportWishes wishes)
    {
        string text = "";
        try
        {
            text = DecodedText.Of(input, "data.csv").Text;
            ImportedTable table = TableReader.Read("data.csv", text, wishes);
            if (wishes == new ImportWishes()) CheckRows(table, text);
            CheckSheet(table);
        }
        catch (UserMistake mistake)
        {
            Sentences.CheckWords(mistake.Message, [text]);
        }
    }

    /// <summary>Rows in are rows out, read or refused.</summary>
    private static void CheckRows(ImportedTable table, string text)
    {
        bool said = Separator.Said(text) is not null;
        string body = said ? Separator.Beneath(text) : text;
        bool plain = !text.Contains('"', StringComparison.Ordinal);
        List<(int Line, string[] Fields)> rows = plain ? Split(body, table.Separator, said ? 2 : 1) : [.. CsvRows.Read(body, table.Separator, said ? 2 : 1).Select(row => (row.Line, row.Fields))];
        Promise(table.Rows.Count == rows.Count - 1, $"{rows.Count - 1} rows in, {table.Rows.Count} out");
        for (int i = 0; i < table.Rows.Count; i++)
        {
            TableRow row = table.Rows[i];
            (int line, string[] fields) = rows[i + 1];
            Promise(row.Line == line, $"a row of line {line} is said to stand in line {row.Line}");
            if (row.Problem is not null)
            {
                Promise(row.Values.SequenceEqual(fields), $"a refused row reads {string.Join('|', row.Values)}, not {string.Join('|', fields)}");
                Sentences.CheckWords(row.Problem, [text]);
                continue;
            }
            for (int column = 0; column < row.Values.Length; column++)
                if (table.Columns[column].IsNumber && fields[column].Length > 0) SameNumber(row.Values[column], fields[column]);
                else Promise(row.Values[column] == fields[column], $"{fields[column]} became {row.Values[column]}");
        }
    }

    /// <summary>The rows of a text without quotes, found in the plainest way.</summary>
    private static List<(int Line, string[] Fields)> Split(string text, char separator, int firstLine)
    {
        char[] blanks = [.. " \t\r\n\f\u00A0\u202F\u001A\uFEFF"];
        string[] lines = text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        return [.. lines.Select((line, i) => (firstLine + i, line.Split(separator).Select(field => field.Trim(blanks)).ToArray())).Where(row => row.Item2.Any(field => field.Length > 0))];
    }

    private static void SameNumber(string read, string field)
    {
        double expected = double.Parse(field.Replace(',', '.').Replace('−', '-'), NumberStyles.Float, CultureInfo.InvariantCulture), value = double.Parse(read, NumberStyles.Float, CultureInfo.InvariantCulture);
        Promise(expected.Equals(value), $"{field} became {read}");
    }

    /// <summary>The sheet made of it reads back: each value in its cell, each refused row in a note.</summary>
    private static void CheckSheet(ImportedTable table)
    {
        string written = "screwsheet 1\n\n" + TableSheet.Write(table, "Tests", "data.csv", UnitSystem.SI, "\n");
        if (WorkbookText.Read(written) is not WorkbookRead { Workbook: { Faults.IsEmpty: true } workbook } || workbook.Find("Tests") is not { } sheet) throw new BrokenPromiseException("the sheet has a line in fault");
        Promise(sheet.Columns.Length == table.Columns.Count, $"{table.Columns.Count} columns became {sheet.Columns.Length}");
        Promise(sheet.Cells.Count == TableSheet.Cells(table) - table.Columns.Count(column => column.Heading.Text.Length == 0), "the sheet has other cells than it was to have");
        Promise(!sheet.Cells.Values.Any(cell => cell.Content is BrokenContent), "the sheet has a cell in fault");
        for (int i = 0; i < table.Rows.Count; i++)
        {
            TableRow row = table.Rows[i];
            if (row.Problem is not null)
            {
                Promise(sheet.Cells.TryGetValue(new CellAddress(table.Columns.Count + 1, i + 2), out Cell? note) && note.Content is NoteContent, "a refused row has no note");
                continue;
            }
            for (int column = 0; column < row.Values.Length; column++)
                CheckCell(sheet.Cells.GetValueOrDefault(new CellAddress(column + 1, i + 2)), row.Values[column], table.Columns[column]);
        }
    }

    private static void CheckCell(Cell? cell, string value, TableColumn column)
    {
        if (value.Length == 0)
        {
            Promise(cell is null, "an empty field became a cell");
            return;
        }
        Literal? literal = (cell?.Content as GivenContent)?.Literal;
        if (column.IsNumber) Promise(literal is NumberLiteral number && Equals(number.Unit?.Symbol, column.Heading.Unit?.Symbol), $"{value} became no number of its unit");
        else Promise(literal is TextLiteral text && text.Value == value, $"the text {value} became another");
    }
}
