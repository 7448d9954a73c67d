using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Output;

/// <summary>What a reviewer must look at in one workbook, and nothing else.</summary>
internal static class CheckReport
{
    /// <summary>The lines for one file: its name, what to look at, and a count.</summary>
    public static IEnumerable<StyledLine> Lines(string path, Selection selection, int width)
    {
        yield return new StyledLine(PlainText.Of(path), Tone.Strong);
        foreach (Fault fault in selection.Calculation.Faults)
        {
            foreach (StyledLine line in Entry("fault", OriginText.Of(fault), Tone.Bad, width)) yield return line;
        }
        CellPresenter presenter = new(selection);
        foreach (StyledLine line in selection.Cells.SelectMany(cell => Of(cell, presenter, width))) yield return line;
        foreach (string source in FromMemory.In(selection.Cells))
        {
            foreach (StyledLine line in Entry("from memory", source, Tone.Careful, width)) yield return line;
        }
        foreach (string line in Wrapping.Hanging("  ", Summary(selection, presenter.Reviews), width)) yield return new StyledLine(line);
    }

    /// <summary>True when something in the workbook asks for an exit status of 1.</summary>
    public static bool IsBad(Selection selection) => !selection.Calculation.Faults.IsEmpty || selection.Cells.Any(Verdict.IsBad);

    private static IEnumerable<StyledLine> Of(CellResult cell, CellPresenter presenter, int width)
    {
        string place = PlainText.Of(cell.Label);
        List<StyledLine> lines = [];
        if (cell.Fault is Fault fault) lines.AddRange(Entry(fault.Kind == FaultKind.Waiting ? "waits" : "fault", $"{place}: {OriginText.Of(fault)}", Tone.Bad, width));
        if (Verdict.Fails(cell)) lines.AddRange(Entry("FAILS", $"{place}: {PlainText.Of(((ResultContent)cell.Cell.Content).Expression)}", Tone.Bad, width));
        if (Verdict.Changed(cell)) lines.AddRange(Entry("changed", $"{place}: {presenter.Difference(cell)}", Tone.Bad, width));
        foreach (CellReview review in presenter.Reviews.Of(cell.Id).Where(review => !review.Holds)) lines.AddRange(Entry("review", $"{place}: {PlainText.Of(review.ToString())}", Tone.Careful, width));
        foreach (Caution caution in cell.Cautions) lines.AddRange(Entry("caution", $"{place}: {OriginText.Of(caution)}", Tone.Careful, width));
        return lines;
    }

    private static IEnumerable<StyledLine> Entry(string word, string text, Tone tone, int width) =>
        Wrapping.Hanging($"  {word}: ", text, width).Select(line => new StyledLine(line, tone));

    private static string Summary(Selection selection, Reviews reviews)
    {
        int faults = selection.Calculation.Faults.Length;
        string outside = faults == 0 ? "" : $" {(faults == 1 ? "1 fault" : $"{faults} faults")} outside cells.";
        ReviewTally reviewed = reviews.Tally();
        return Tally.Of(selection.Cells) + outside + (reviewed.Results == 0 ? "" : " " + ReviewWords.Summary(reviewed));
    }
}
