using System.CommandLine;
using System.Globalization;
using System.Text;
using ScrewSheet.Engine;
using ScrewSheet.Exports;
using ScrewSheet.Exports.Csv;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Exports.Xlsx;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>export</c>: the workbook as an xlsx that recalculates, or a sheet or table of it as CSV.</summary>
internal static class ExportCommand
{
    private const int MostReasons = 12;

    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> file = Verb.FileArgument();
        Option<string> output = new("--output", "-o") { HelpName = "OUT.xlsx|.csv", Description = "The file to write; its ending says what.", Required = true };
        Option<string?> sheet = new("--sheet") { HelpName = "NAME", Description = "The sheet to write as CSV; needed where the workbook has several." };
        Option<string?> table = new("--table") { HelpName = "ADDRESS", Description = "The what-if table with this top left cell, as CSV." };
        Option<bool> replace = new("--replace") { Description = "Write over OUT where it is there already." };
        Verb verb = new("export", "Write the workbook as an xlsx that recalculates, or a sheet or what-if table of it as CSV.")
        {
            Arguments = { file },
            Options = { output, sheet, table, replace },
            Examples =
            [
                "screwsheet export short-screw.screwsheet -o short-screw.xlsx",
                "screwsheet export batch-rating.screwsheet -o tests.csv --sheet Tests",
                "screwsheet export standing-out.screwsheet -o moments.csv --table D2",
            ],
            Cautions =
            [
                "In the xlsx a result is a formula wherever the formula language of ECMA-376 has a form for it; every other one is a value that says so beside it and does not follow when givens change there.",
                "Cautions are those of the values as exported. Whoever types other givens into the xlsx sees no new ones.",
                "A file that is there already is left as it is, unless --replace is given. Ends with 1 when a cell is in fault or a check fails.",
                TextReport.Caution,
            ],
        };
        verb.SetAction(parsed => Run(shell, parsed.GetRequiredValue(file), parsed.GetRequiredValue(output), parsed.GetValue(sheet), parsed.GetValue(table), parsed.GetValue(replace)));
        return verb;
    }

    private static int Run(Shell shell, string path, string output, string? sheet, string? table, bool replace)
    {
        bool isXlsx = Path.GetExtension(output).Equals(".xlsx", StringComparison.OrdinalIgnoreCase);
        if (!isXlsx && !Path.GetExtension(output).Equals(".csv", StringComparison.OrdinalIgnoreCase)) throw new UserMistake($"{FileTrouble.Quoted(output)} ends in neither .xlsx nor .csv, which says what to write.");
        if (isXlsx && (sheet ?? table) is not null) throw new UserMistake("--sheet and --table go with .csv: an xlsx holds the whole workbook, since its formulas read across sheets.");
        Workbook workbook = WorkbookFile.Read(path).Workbook;
        OutputFile target = OutputFile.Claim(output, replace);
        ICalculator calculator = shell.Calculator();
        Calculation calculation = calculator.Calculate(workbook);
        List<string> said = [];
        byte[] bytes = isXlsx ? Xlsx(Request(calculator, calculation, shell.Stop), said) : Csv(shell, calculator, calculation, sheet, table, said);
        shell.Output.Write(target.Write(bytes) + "\n");
        foreach (string line in said.SelectMany(line => Wrapping.Lines(line, shell.Width))) shell.Output.Write(line + "\n");
        shell.Output.Flush();
        WorkbookFile.ReportFaults(shell, path, calculation);
        return !calculation.Faults.IsEmpty || calculation.Cells.Values.Any(cell => cell.Fault is not null || Verdict.Fails(cell)) ? ExitCode.Bad : ExitCode.Fine;
    }

    /// <summary>What an xlsx is made from.</summary>
    public static XlsxRequest Request(ICalculator calculator, Calculation calculation, CancellationToken stop, IProgress<double>? progress = null)
    {
        Selection selection = Selection.Of(calculation, calculation.Workbook.Sheets);
        return new XlsxRequest
        {
            Calculation = calculation,
            Library = calculator.Library,
            Math = new LibraryMath(calculator, calculation.Workbook.Head.Units),
            Tables = TablesForExport.Of(calculator.Studies, calculation, new UnitChoice(calculation.Workbook.Head.Units, All: false), stop, progress),
            FormatOf = selection.Digits.FormatOf,
            Warnings = [.. StandingCaution.Usual, StandingCaution.Sentence, .. FromMemory.In(selection.Cells).Select(line => $"From memory, not compared with its source: {line}")],
        };
    }

    /// <summary>The bytes of an xlsx, and what became of its results.</summary>
    public static (byte[] Bytes, XlsxReport Report) Xlsx(XlsxRequest request)
    {
        using MemoryStream bytes = new();
        XlsxReport report = Calculator.WithRoom(() => XlsxExport.Write(request, bytes));
        return (bytes.ToArray(), report);
    }

    /// <summary>How many of its results are formulas, in a sentence.</summary>
    public static string Live(XlsxReport report) =>
        $"{Count(report.LiveResults)} of {Count(report.Results)} results are formulas{(report.Entries == 0 ? "" : $", and {Count(report.LiveEntries)} of {Count(report.Entries)} entries of what-if tables")}.";

    private static byte[] Xlsx(XlsxRequest request, List<string> said)
    {
        (byte[] bytes, XlsxReport report) = Xlsx(request);
        said.Add(Live(report));
        said.AddRange(report.Fixed.Take(MostReasons).Select(result => PlainText.Of($"value: {result.Label}: {result.Why}")));
        if (report.Fixed.Length > MostReasons) said.Add($"and {Count(report.Fixed.Length - MostReasons)} more, all listed on the first sheet.");
        said.AddRange(report.Left.Select(PlainText.Of));
        return bytes;
    }

    private static byte[] Csv(Shell shell, ICalculator calculator, Calculation calculation, string? sheet, string? table, List<string> said)
    {
        if (table is not null)
        {
            using StringWriter text = new(CultureInfo.InvariantCulture);
            CsvExport.Write(Table(calculation, TablesForExport.Of(calculator.Studies, calculation, new UnitChoice(calculation.Workbook.Head.Units, All: false), shell.Stop), sheet, table), text);
            return new UTF8Encoding(false).GetBytes(text.ToString());
        }
        Sheet wanted = sheet is not null ? CellNames.Sheet(calculation.Workbook, sheet) : calculation.Workbook.Sheets is [{ } only] ? only
            : throw new UserMistake($"A CSV file holds one sheet: say which with --sheet. There are: {string.Join(", ", calculation.Workbook.Sheets.Select(each => PlainText.Of(each.Name)))}.");
        return Csv(calculation, wanted, said);
    }

    /// <summary>The bytes of a sheet as CSV.</summary>
    /// <param name="calculation">The workbook, calculated.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="said">What a reader must be told about it.</param>
    public static byte[] Csv(Calculation calculation, Sheet sheet, List<string> said)
    {
        using StringWriter text = new(CultureInfo.InvariantCulture);
        int outside = CsvExport.Write(calculation, sheet, text);
        if (outside > 0) said.Add($"{Count(outside)} {(outside == 1 ? "cell stands" : "cells stand")} outside the named columns and {(outside == 1 ? "is" : "are")} not in the table; run --format csv prints every cell.");
        return new UTF8Encoding(false).GetBytes(text.ToString());
    }

    private static ComputedTable Table(Calculation calculation, IReadOnlyList<ComputedTable> tables, string? sheet, string anchor)
    {
        int dot = anchor.IndexOf('.', StringComparison.Ordinal);
        string? on = dot < 0 ? sheet : anchor[..dot];
        if (on is not null) CellNames.Sheet(calculation.Workbook, on);
        ComputedTable[] found = [.. tables.Where(table => (on is null || table.Sheet == on) && table.Anchor?.ToString() == anchor[(dot + 1)..])];
        return found switch
        {
            [{ Fault: { } fault }] => throw new UserMistake(PlainText.Of(fault)),
            [var one] => one,
            [] => throw new UserMistake($"No what-if table has its top left cell at {PlainText.Of(anchor)}. {(tables.Count == 0 ? "The file has none." : $"There are: {string.Join(", ", tables.Select(table => $"{PlainText.Of(table.Sheet)}.{table.Anchor}"))}.")}"),
            _ => throw new UserMistake($"{PlainText.Of(anchor)} could be {string.Join(" or ", found.Select(table => $"{PlainText.Of(table.Sheet)}.{table.Anchor}"))}. Write the sheet's name and a dot before it."),
        };
    }

    private static string Count(int count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}
