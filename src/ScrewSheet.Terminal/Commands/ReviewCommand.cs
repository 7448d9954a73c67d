using System.CommandLine;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>review</c>: mark results as checked by a person.</summary>
internal static class ReviewCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> file = Verb.FileArgument();
        Option<string[]> cell = new("--cell") { HelpName = "NAME", Description = "The result you have checked; may be repeated.", Required = true };
        Option<string> by = new("--by") { HelpName = "INITIALS", Description = "Who you are: one to twelve letters.", Required = true };
        Option<string> date = new("--date") { HelpName = "DATE", Description = "The day you checked it, such as 2026-11-25.", Required = true };
        Verb verb = new("review", "Mark results as checked by you. The mark falls when the expression changes, or anything it depends on.")
        {
            Arguments = { file },
            Options = { cell, by, date },
            Examples = ["screwsheet review short-screw.screwsheet --cell moment --by KM --date 2026-11-25"],
            Cautions =
            [
                "A mark says that a person has looked; it is no proof. Anybody who can write the file can write a mark.",
                "A mark is bound to expressions, givens with their tolerances and limits, functions of the workbook and the library's declared formulas. Names, addresses and remarks may change.",
            ],
        };
        verb.SetAction(parsed => Review(shell, parsed.GetRequiredValue(file), parsed.GetRequiredValue(cell), parsed.GetRequiredValue(by), parsed.GetRequiredValue(date)));
        return verb;
    }

    private static int Review(Shell shell, string path, string[] names, string by, string date)
    {
        if (!Reviews.AreInitials(by)) throw new UserMistake($"{PlainText.Of(by)} are no initials. Write one to twelve letters, like --by KM.");
        if (!Reviews.IsDate(date)) throw new UserMistake($"{PlainText.Of(date)} is no day. Write year, month and day, like --date 2026-11-25.");
        WorkbookFile file = WorkbookFile.Read(path);
        CellId[] cells = [.. names.Select(name => CellNames.Find(file.Workbook, name))];
        Calculation calculation = shell.Calculator().Calculate(file.Workbook);
        foreach (CellId id in cells)
        {
            Workbook marked = new Reviews(calculation).Mark(id, by, date, out Fault? fault);
            if (fault is not null) throw new UserMistake($"{OriginText.Of(fault)} Nothing was written.");
            calculation = calculation with { Workbook = marked };
        }
        file.Save(calculation.Workbook);
        foreach (CellId id in cells) shell.Output.Write($"Marked {Named(calculation, id)} as reviewed by {PlainText.Of(by)}, {date}.\n");
        foreach (string line in Wrapping.Lines(ReviewWords.Summary(new Reviews(calculation).Tally()), shell.Width)) shell.Output.Write(line + "\n");
        return ExitCode.Fine;
    }

    private static string Named(Calculation calculation, CellId id) => PlainText.Of(calculation.Cells[id].Label);
}
