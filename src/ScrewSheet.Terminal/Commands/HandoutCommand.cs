using System.CommandLine;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Handouts;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>handout</c>: a workbook as pages to read, with every number worked out in front of the reader.</summary>
internal static class HandoutCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> file = Verb.FileArgument();
        Option<string> output = new("--output", "-o") { HelpName = "OUT", Description = "The file to write: .html, .md or .pdf.", Required = true };
        Option<bool> blanks = new("--blanks") { Description = "Leave every number that is worked out for the reader to fill in." };
        Option<bool> us = new("--us") { Description = "Show lbf, in, ft·lbf and ksi, also where cells ask for SI units." };
        Option<bool> si = new("--si") { Description = "Show kN, mm, N·m and MPa, also where cells ask for US units." };
        Option<string?> author = new("--author") { HelpName = "NAME", Description = "Who hands it out; otherwise whom the file names." };
        Option<string?> date = new("--date") { HelpName = "DATE", Description = "The date to print; otherwise that of the file, or none." };
        Option<bool> replace = new("--replace") { Description = "Write over OUT where it is there already." };
        Verb verb = new("handout", "Write a workbook as pages to read: cautions, givens, every result worked out, what-if tables, plots, checks, sources.")
        {
            Arguments = { file },
            Options = { output, blanks, us, si, author, date, replace },
            Examples =
            [
                "screwsheet handout short-screw.screwsheet -o short-screw.html",
                "screwsheet handout short-screw.screwsheet -o exercise.pdf --blanks --author \"Winter course\" --date 2026-12-05",
                "screwsheet handout standing-out.screwsheet -o standing-out.md --us",
            ],
            Cautions =
            [
                "A file that is there already is left as it is, unless --replace is given.",
                $"A PDF is printed by a Chromium or Chrome on this machine; {Printing.Variable} says where it is if PATH does not.",
                "With --blanks, what the author wrote in notes, remarks and formulas stays, numbers in it included.",
                "Ends with 1 when the workbook has a fault, a failing check, or a result that is not what the file says it was; the handout says so too.",
                TextReport.Caution,
            ],
        };
        verb.SetAction(parsed =>
        {
            if (parsed.GetValue(us) && parsed.GetValue(si)) throw new UserMistake("--us and --si exclude each other. Choose one.");
            UnitSystem? system = parsed.GetValue(us) ? UnitSystem.US : parsed.GetValue(si) ? UnitSystem.SI : null;
            Wanted wanted = new(parsed.GetRequiredValue(output), system, parsed.GetValue(blanks), parsed.GetValue(author), parsed.GetValue(date), parsed.GetValue(replace));
            return Write(shell, parsed.GetRequiredValue(file), wanted);
        });
        return verb;
    }

    private sealed record Wanted(string Output, UnitSystem? System, bool Blanks, string? Author, string? Date, bool Replace);

    private static int Write(Shell shell, string path, Wanted wanted)
    {
        HandoutFile handout = HandoutFile.At(wanted.Output);
        Workbook workbook = WorkbookFile.Read(path).Workbook;
        OutputFile target = OutputFile.Claim(wanted.Output, wanted.Replace);
        if (wanted.System is { } chosen) workbook = workbook with { Head = workbook.Head with { Units = chosen } };
        ICalculator calculator = shell.Calculator();
        Calculation calculation = calculator.Calculate(workbook);
        HandoutRequest request = Request(calculator, calculation, new UnitChoice(workbook.Head.Units, wanted.System is not null), wanted.Blanks, shell.Stop) with { Author = wanted.Author, Date = wanted.Date };
        shell.Output.Write(target.Write(handout.Bytes(request, shell.Stop)) + "\n");
        WorkbookFile.ReportFaults(shell, path, calculation);
        return !calculation.Faults.IsEmpty || workbook.Sheets.SelectMany(calculation.Of).Any(Verdict.IsBad) ? ExitCode.Bad : ExitCode.Fine;
    }

    /// <summary>What a handout is made from.</summary>
    public static HandoutRequest Request(ICalculator calculator, Calculation calculation, UnitChoice units, bool blanks, CancellationToken stop, IProgress<double>? progress = null) => new()
    {
        Tools = new StepTools
        {
            Calculation = calculation,
            Library = calculator.Library,
            Evaluate = new StepEvaluation(calculation, calculator.Library).Value,
            FormatOf = ShownDigits.Of(calculation).FormatOf,
            Units = units,
            Blanks = blanks,
        },
        Tables = TablesForExport.Of(calculator.Studies, calculation, units, stop, progress),
        MadeWith = $"screwsheet {ProductVersion.Text}",
    };
}
