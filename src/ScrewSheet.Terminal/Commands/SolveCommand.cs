using System.CommandLine;
using ScrewSheet.Studies.Solving;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>solve</c>: the given that makes a result so.</summary>
internal static class SolveCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> file = Verb.FileArgument();
        Option<string> cell = new("--cell") { HelpName = "NAME", Description = "The result: a number, a quantity or a check.", Required = true };
        Option<string> equal = new("--equals") { HelpName = "VALUE", Description = "What it is to be, with its unit; for a check: holds.", Required = true };
        Option<string> by = new("--by") { HelpName = "NAME", Description = "The given that may change.", Required = true };
        Option<string?> from = new("--between") { HelpName = "A", Description = "The lower end of what is searched; otherwise the limits of the given, or what grows from its value." };
        Option<string?> to = new("--and") { HelpName = "B", Description = "The upper end." };
        Option<string> format = Verb.FormatOption();
        Verb verb = new("solve", "Find the value of a given that makes a result equal a value, or a check turn.")
        {
            Arguments = { file },
            Options = { cell, equal, by, from, to, format },
            Examples =
            [
                "screwsheet solve short-screw.screwsheet --cell moment --equals \"186.9 N·m\" --by lost",
                "screwsheet solve screw.screwsheet --cell strong --equals holds --by exposed --between \"0 mm\" --and \"120 mm\"",
            ],
            Cautions =
            [
                "The file stays as it is. Of several values the one nearest to the file's own is the answer; the others are named.",
                "Between the places it tries a search sees nothing: an interval that suits the question is worth more than a wide one.",
                "Ends with 1 when there is no such value, with 2 when what was asked for cannot be done or was stopped.",
            ],
        };
        verb.SetAction(parsed => Run(shell, parsed.GetRequiredValue(file), parsed.GetRequiredValue(format), new SolveRequest
        {
            Cell = AskedStudy.At(parsed.GetRequiredValue(cell)), Equal = AskedStudy.At(parsed.GetRequiredValue(equal)), By = AskedStudy.At(parsed.GetRequiredValue(by)),
            From = parsed.GetValue(from) is { } low ? AskedStudy.At(low) : null, To = parsed.GetValue(to) is { } high ? AskedStudy.At(high) : null,
        }));
        return verb;
    }

    private static int Run(Shell shell, string path, string format, SolveRequest request)
    {
        AskedStudy<Solution> solved = AskedStudy.Of(shell, path, (studies, calculation) => studies.Solve(calculation, request, shell.Stop));
        SolveReport report = new(solved.Answer, solved.Calculation.Workbook.Head);
        switch (format)
        {
            case "json": report.WriteJson(shell.Output); break;
            case "csv": report.WriteCsv(shell.Output); break;
            default: StyledLine.Write(shell.Output, report.Lines(shell.Width), shell.Colour); break;
        }
        shell.Output.Flush();
        return solved.Exit(solved.Answer.Answer is null);
    }
}
