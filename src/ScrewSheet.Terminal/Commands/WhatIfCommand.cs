using System.CommandLine;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>what-if</c>: the file's what-if tables, or one given on the command line.</summary>
internal static class WhatIfCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> file = Verb.FileArgument();
        Option<string[]> vary = new("--vary") { HelpName = "SPEC", Description = "A given and its values: NAME: A to B step S, NAME: A to B over N steps, with log before over for equal ratios, or a list. May be repeated.", DefaultValueFactory = _ => [] };
        Option<string[]> show = new("--show") { HelpName = "NAMES", Description = "The results to show, with commas between.", DefaultValueFactory = _ => [] };
        Option<string> format = Verb.FormatOption();
        Verb verb = new("what-if", "Print the file's what-if tables, or one table given here.")
        {
            Arguments = { file },
            Options = { vary, show, format },
            Examples =
            [
                "screwsheet what-if short-screw.screwsheet",
                "screwsheet what-if short-screw.screwsheet --vary \"exposed: 0 mm to 60 mm step 10 mm\" --show moment,strong",
                "screwsheet what-if short-screw.screwsheet --vary \"exposed: 0 mm to 60 mm over 12 steps\" --vary \"peak: 4 kN, 6 kN\" --show moment --format csv",
            ],
            Cautions =
            [
                "Every entry is what the workbook computes with those givens; a fault stays in its own entry and its sentence stands below.",
                "Ends with 1 when an entry is in fault or a shown check fails, with 2 when what was asked for cannot be done or was stopped.",
                TextReport.Caution,
            ],
        };
        verb.SetAction(parsed => Run(shell, parsed.GetRequiredValue(file), parsed.GetRequiredValue(vary), parsed.GetRequiredValue(show), parsed.GetRequiredValue(format)));
        return verb;
    }

    private static int Run(Shell shell, string path, string[] vary, string[] show, string format)
    {
        Workbook workbook = WorkbookFile.Read(path).Workbook;
        ICalculator calculator = shell.Calculator();
        Calculation calculation = calculator.Calculate(workbook);
        var tables = vary.Length + show.Length > 0 ? [(null, Asked(calculator.Studies, calculation, vary, show, shell.Stop))] : OfFile(calculator.Studies, calculation, shell.Stop);
        if (tables.Count == 0) throw new UserMistake("The file has no what-if table. Give one here: --vary \"NAME: A to B step S\" --show NAME.");
        switch (format)
        {
            case "json": WhatIfData.WriteJson(workbook.Head, tables, shell.Output); break;
            case "csv": WhatIfData.WriteCsv(tables, workbook.Head.Units, shell.Output); break;
            default: StyledLine.Write(shell.Output, Lines(workbook, tables, shell.Width), shell.Colour); break;
        }
        shell.Output.Flush();
        WorkbookFile.ReportFaults(shell, path, calculation);
        if (format == "csv") foreach (var (_, table) in tables.Where(each => !each.Table.IsAnswered)) shell.Say(OriginText.Of(table.Fault!));
        return !calculation.Faults.IsEmpty || tables.Any(each => IsBad(each.Table)) ? ExitCode.Bad : ExitCode.Fine;
    }

    private static StudyOutcome<WhatIfTable> Asked(StudyRunner studies, Calculation calculation, string[] vary, string[] show, CancellationToken stop)
    {
        StudyOutcome<WhatIfRequest> request = WhatIfRequest.Read(vary.Select(AskedStudy.At), show.Select(AskedStudy.At));
        StudyOutcome<WhatIfTable> table = request.IsAnswered ? studies.WhatIf(calculation, request.Answer, null, stop) : request.Fault;
        return table.IsAnswered ? table : throw new UserMistake(PlainText.Of(table.Fault.Sentence));
    }

    private static List<(Sheet? Sheet, StudyOutcome<WhatIfTable> Table)> OfFile(StudyRunner studies, Calculation calculation, CancellationToken stop)
    {
        List<(Sheet?, StudyOutcome<WhatIfTable>)> tables = [];
        foreach (Sheet sheet in calculation.Workbook.Sheets)
        {
            foreach (WhatIfBlock block in sheet.WhatIfs)
            {
                StudyOutcome<WhatIfRequest> request = WhatIfRequest.Of(block, sheet.Name);
                tables.Add((sheet, request.IsAnswered ? studies.WhatIf(calculation, request.Answer, null, stop) : request.Fault));
            }
        }
        return tables;
    }

    private static IEnumerable<StyledLine> Lines(Workbook workbook, IReadOnlyList<(Sheet? Sheet, StudyOutcome<WhatIfTable> Table)> tables, int width)
    {
        if (workbook.Head.Title.Length > 0) foreach (string line in Wrapping.Lines(PlainText.Of(workbook.Head.Title), width)) yield return new StyledLine(line, Tone.Strong);
        foreach (var (sheet, table) in tables)
        {
            yield return new StyledLine("");
            if (sheet is not null && workbook.Sheets.Length > 1) yield return new StyledLine(PlainText.Of(sheet.Name), Tone.Strong);
            IEnumerable<StyledLine> lines = table.IsAnswered ? WhatIfText.Lines(table.Answer, workbook.Head.Units, width) : Wrapping.Hanging("fault: ", OriginText.Of(table.Fault), width).Select(line => new StyledLine(line, Tone.Bad));
            foreach (StyledLine line in lines) yield return line;
        }
        yield return new StyledLine("");
        foreach (string line in Wrapping.Lines(TextReport.Caution, width)) yield return new StyledLine(line);
    }

    private static bool IsBad(StudyOutcome<WhatIfTable> table) => !table.IsAnswered || table.Answer.Columns.Any(column =>
        column.FaultCount > 0 || (column.IsCheck && Enumerable.Range(0, table.Answer.Scenarios).Any(scenario => column.Value(scenario) is TruthValue { Value: false })));
}
