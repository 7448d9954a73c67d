using System.CommandLine;
using System.Globalization;
using System.Text;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Import;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>import</c>: a table of test results on a new sheet.</summary>
internal static class ImportCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> data = new("DATA.csv") { Description = "A text file: headings in one line, rows beneath; fields between semicolons, tabs, commas or upright strokes." };
        Option<string> into = new("--into") { HelpName = "FILE", Description = "The workbook that gets the sheet.", Required = true };
        Option<string> sheet = new("--sheet") { HelpName = "NAME", Description = "The new sheet's name; the workbook must not have it yet.", Required = true };
        Option<int?> header = new("--header") { HelpName = "LINE", Description = "The line the headings stand in; the first that is not empty otherwise. What stands above is kept as remarks." };
        Option<string?> rows = new("--rows") { HelpName = "FIRST-LAST", Description = "Take these rows only, counted from 1 beneath the headings." };
        Option<string?> sign = new("--decimal") { HelpName = "comma|point", Description = "The decimal sign, where the file does not make it clear." };
        sign.AcceptOnlyFromAmong("comma", "point");
        Verb verb = new("import", "Put a table of test results on a new sheet of a workbook, each column a series by name.")
        {
            Arguments = { data },
            Options = { into, sheet, header, rows, sign },
            Examples = ["screwsheet import batch.csv --into rating.screwsheet --sheet Tests", "screwsheet import rig.csv --into rating.screwsheet --sheet Rig --header 12 --rows 1-50000"],
            Cautions =
            [
                "A heading such as Force [kN] types its column; a column of numbers without a unit holds pure numbers. Compare the list of columns with the file.",
                "A row that cannot be read is left out of every column and kept as a note beside the table, so that nothing is lost and nothing is counted twice. Ends with 1 when there is one.",
                "Nothing else in the workbook changes, and nothing is written where anything is refused.",
            ],
        };
        verb.SetAction(parsed => Import(shell, parsed.GetRequiredValue(data), parsed.GetRequiredValue(into), parsed.GetRequiredValue(sheet),
            Wishes(parsed.GetValue(header), parsed.GetValue(rows), parsed.GetValue(sign))));
        return verb;
    }

    private static int Import(Shell shell, string data, string into, string sheet, ImportWishes wishes)
    {
        WorkbookFile file = WorkbookFile.Read(into);
        RefuseSheet(shell, file, sheet);
        DecodedText text = DecodedText.Of(BoundedRead.All(data), data);
        ImportedTable table = TableReader.Read(FileTrouble.Quoted(data), text.Text, wishes);
        byte[] bytes = With(file, table, sheet, data);
        SafeWrite.Replace(file.Path, file.Bytes, bytes);
        StyledLine.Write(shell.Output, ImportReport.Lines(table, text, sheet, data, into, shell.Width), shell.Colour);
        shell.Output.Flush();
        foreach (string line in ImportReport.BadRows(table, data)) shell.Error.Write(line + "\n");
        return table.Bad.Any() ? ExitCode.Bad : ExitCode.Fine;
    }

    private static ImportWishes Wishes(int? header, string? rows, string? sign)
    {
        if (header < 1) throw new UserMistake("--header is the number of a line, from 1.");
        char? decimals = sign switch { "comma" => ',', "point" => '.', _ => null };
        if (rows is null) return new ImportWishes(header, DecimalSign: decimals);
        string[] ends = rows.Split('-');
        int last = 0;
        bool good = ends.Length == 2 && Whole(ends[0], out int first) && Whole(ends[1], out last) && first <= last;
        return good ? new ImportWishes(header, int.Parse(ends[0], CultureInfo.InvariantCulture), last, decimals) : throw new UserMistake($"{PlainText.Of(rows)} are no rows. Write --rows 1-50000.");
    }

    private static bool Whole(string text, out int number) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number) && number > 0;

    /// <summary>A sheet of that name must be possible, new, and hide nothing of the library.</summary>
    private static void RefuseSheet(Shell shell, WorkbookFile file, string sheet)
    {
        if (CellName.SheetProblem(sheet) is { } problem) throw new UserMistake($"--sheet {PlainText.Of(sheet)}: {problem}");
        if (file.Workbook.Find(sheet) is not null) throw new UserMistake($"{FileTrouble.Quoted(file.Path)} has a sheet {sheet} already, and it was left as it is. Choose another name.");
        if (WorkbookText.Read($"screwsheet 1\nsheet {sheet}\n") is WorkbookRead alone && shell.Calculator().Calculate(alone.Workbook).Faults is [var hiding, ..]) throw new UserMistake($"--sheet {sheet}: {hiding.Sentence}");
    }

    /// <summary>The file with the sheet behind everything it has; not a byte before it changes but a line end that was missing.</summary>
    private static byte[] With(WorkbookFile file, ImportedTable table, string sheet, string data)
    {
        int before = file.Workbook.Sheets.Sum(each => each.Cells.Count), cells = TableSheet.Cells(table);
        if (before + cells > WorkbookText.MostCells)
            throw new UserMistake($"The table needs {Count(cells)} cells; {FileTrouble.Quoted(file.Path)} has {Count(before)} and holds {Count(WorkbookText.MostCells)} at most. Take fewer rows with --rows, or another workbook.");
        string newLine = file.Bytes.Span.IndexOf("\r\n"u8) >= 0 ? "\r\n" : "\n";
        string start = file.Bytes.Span.EndsWith("\n"u8) ? newLine : newLine + newLine;
        byte[] added = new UTF8Encoding(false, true).GetBytes(start + TableSheet.Write(table, sheet, Path.GetFileName(data), file.Workbook.Head.Units, newLine));
        if (file.Bytes.Length + (long)added.Length > WorkbookText.LargestFile) throw new UserMistake($"With the table {FileTrouble.Quoted(file.Path)} would be larger than 32 MB. Take fewer rows with --rows, or another workbook.");
        byte[] bytes = [.. file.Bytes.Span, .. added];
        bool sound = WorkbookText.Read(bytes) is WorkbookRead read && read.Workbook.Faults.Length == file.Workbook.Faults.Length
            && read.Workbook.Find(sheet) is { } made && made.Columns.Length == table.Columns.Count && made.Cells.Count == cells - table.Columns.Count(column => column.Heading.Text.Length == 0);
        return sound ? bytes : throw new InvalidOperationException("The sheet made from the table does not read back.");
    }

    private static string Count(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}
