using System.CommandLine;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>keep</c>: write present results into the file.</summary>
internal static class KeepCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> file = Verb.FileArgument();
        Verb verb = new("keep", "Write the present results into the file, so that the next reader sees whether anything changed.")
        {
            Arguments = { file },
            Examples = ["screwsheet keep short-screw.screwsheet"],
            Cautions =
            [
                "What the file said before is replaced; every result that changes is listed first. Read the list.",
                "A result in fault keeps what the file says of it. Ends with 1 when there is a fault or a failing check.",
                "Nothing else in the file changes; a file that says results omitted stays without.",
            ],
        };
        verb.SetAction(parsed => Keep(shell, parsed.GetRequiredValue(file)));
        return verb;
    }

    private static int Keep(Shell shell, string path)
    {
        WorkbookFile file = WorkbookFile.Read(path);
        if (file.Workbook.Head.ResultsOmitted)
        {
            shell.Output.Write($"{PlainText.Of(path)} says results omitted, so nothing was kept.\n");
            return ExitCode.Fine;
        }
        Selection selection = Selection.Of(shell.Calculator().Calculate(file.Workbook), file.Workbook.Sheets);
        file.Save(KeptResults.In(selection));
        StyledLine.Write(shell.Output, Lines(selection, shell.Width), shell.Colour);
        WorkbookFile.ReportFaults(shell, path, selection.Calculation);
        return !selection.Calculation.Faults.IsEmpty || selection.Cells.Any(cell => cell.Fault is not null || Verdict.Fails(cell)) ? ExitCode.Bad : ExitCode.Fine;
    }

    private static IEnumerable<StyledLine> Lines(Selection selection, int width)
    {
        CellPresenter presenter = new(selection);
        foreach (CellResult cell in selection.Cells.Where(cell => cell.Cell.Content is ResultContent))
        {
            string place = PlainText.Of(cell.Cell.Name is null ? cell.Id.ToString() : $"{cell.Id} {cell.Cell.Name}");
            string? text = cell.Fault is not null ? $"{place}: {OriginText.Of(cell.Fault)}" : Verdict.Changed(cell) ? $"{place}: {presenter.Difference(cell)}" : null;
            if (text is null) continue;
            foreach (string line in Wrapping.Hanging(cell.Fault is null ? "changed: " : "fault: ", text, width)) yield return new StyledLine(line, Tone.Bad);
        }
        int kept = selection.Cells.Count(cell => cell.Cell.Content is ResultContent && cell.Value is not null);
        yield return new StyledLine($"Kept {kept} {(kept == 1 ? "result" : "results")}.");
    }
}
