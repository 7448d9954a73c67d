using System.CommandLine;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>run</c>: compute a workbook and print it.</summary>
internal static class RunCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> file = Verb.FileArgument();
        Option<string[]> set = new("--set") { HelpName = "NAME=VALUE", Description = "Compute with another value of a given; may be repeated. The file stays as it is.", DefaultValueFactory = _ => [] };
        Option<string[]> cell = new("--cell") { HelpName = "NAME", Description = "Print this cell only; may be repeated.", DefaultValueFactory = _ => [] };
        Option<string> format = new("--format") { HelpName = "text|json|csv", Description = "How it is printed.", DefaultValueFactory = _ => "text" };
        Option<string?> sheet = new("--sheet") { HelpName = "NAME", Description = "Print this sheet only." };
        format.AcceptOnlyFromAmong("text", "json", "csv");
        Verb verb = new("run", "Compute a workbook and print every cell with its unit, its faults and its cautions.")
        {
            Arguments = { file },
            Options = { set, cell, format, sheet },
            Examples =
            [
                "screwsheet run short-screw.screwsheet",
                "screwsheet run short-screw.screwsheet --set \"exposed=60 mm\" --cell moment",
                "screwsheet run short-screw.screwsheet --format json",
            ],
            Cautions =
            [
                "Ends with 1 when it prints a fault, a failing check, or a result that is not what the file says it was; with 2 when it could not do what was asked.",
                "With --set, results that change by it are not compared with what the file kept.",
                TextReport.Caution,
            ],
        };
        verb.SetAction(parsed => Run(shell, parsed.GetRequiredValue(file), parsed.GetRequiredValue(set), parsed.GetRequiredValue(cell), parsed.GetRequiredValue(format), parsed.GetValue(sheet)));
        return verb;
    }

    private static int Run(Shell shell, string path, string[] sets, string[] cells, string format, string? sheet)
    {
        Workbook workbook = WorkbookFile.Read(path).Workbook;
        Sheet[] sheets = sheet is null ? [.. workbook.Sheets] : [CellNames.Sheet(workbook, sheet)];
        CellId[] wanted = [.. cells.Select(name => CellNames.Find(workbook, name))];
        Calculation calculation = Scenario.Calculate(shell, workbook, sets);
        Selection selection = Selection.Of(calculation, sheets);
        if (wanted.Length > 0) selection = selection.Only(wanted.ToHashSet());
        Print(shell, selection, format);
        WorkbookFile.ReportFaults(shell, path, calculation);
        foreach (string sentence in NotComputed.Sentences(workbook)) shell.Say(sentence);
        return !selection.Calculation.Faults.IsEmpty || selection.Cells.Any(Verdict.IsBad) ? ExitCode.Bad : ExitCode.Fine;
    }

    private static void Print(Shell shell, Selection selection, string format)
    {
        switch (format)
        {
            case "json": JsonReport.Write(selection, shell.Output); break;
            case "csv": CsvReport.Write(selection, shell.Output); break;
            default: StyledLine.Write(shell.Output, TextReport.Lines(selection, shell.Width), shell.Colour); break;
        }
        shell.Output.Flush();
    }
}
