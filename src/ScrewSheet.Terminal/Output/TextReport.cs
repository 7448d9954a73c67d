using ScrewSheet.Exports;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>A calculated workbook for people: title, one table a sheet, a count of what matters, and the caution that stands under every page.</summary>
internal static class TextReport
{
    /// <summary>The sentence under every printed workbook.</summary>
    public const string Caution = StandingCaution.Sentence;

    /// <summary>The lines in a width.</summary>
    public static IEnumerable<StyledLine> Lines(Selection selection, int width)
    {
        Head head = selection.Calculation.Workbook.Head;
        foreach (string line in HeadLines(head, width)) yield return new StyledLine(line, Tone.Strong);
        CellPresenter presenter = new(selection);
        bool first = head.Title.Length == 0;
        foreach (SelectedSheet part in selection.Sheets)
        {
            if (!first) yield return new StyledLine("");
            first = false;
            foreach (string line in Wrapping.Hanging(PlainText.Of(part.Sheet.Name) + "  ", PlainText.Of(part.Sheet.Title ?? ""), width)) yield return new StyledLine(line, Tone.Strong);
            foreach (StyledLine line in SheetLayout.Lines([.. part.Cells.Select(presenter.Present)], width)) yield return line;
        }
        yield return new StyledLine("");
        foreach (string line in Wrapping.Lines(Tally.Of(selection.Cells) + ReviewWords.Broken(presenter.Reviews.Tally()), width)) yield return new StyledLine(line);
        foreach (string line in Wrapping.Lines(Caution, width)) yield return new StyledLine(line);
    }

    private static IEnumerable<string> HeadLines(Head head, int width)
    {
        string by = string.Join(", ", new[] { head.Author, head.Date }.Where(part => part.Length > 0).Select(PlainText.Of));
        string title = PlainText.Of(head.Title);
        if (title.Length == 0) return [];
        return Wrapping.Lines(by.Length == 0 ? title : $"{title} ({by})", width);
    }
}

/// <summary>How many results there are of each sort.</summary>
internal readonly record struct Tally(int Results, int Hold, int Fail, int Faults, int Changed, int Cautions)
{
    /// <summary>Of some cells.</summary>
    public static Tally Of(IEnumerable<CellResult> cells)
    {
        Tally tally = default;
        foreach (CellResult cell in cells)
        {
            tally = new Tally(
                tally.Results + (cell.Cell.Content is ResultContent ? 1 : 0),
                tally.Hold + (Verdict.Holds(cell) ? 1 : 0),
                tally.Fail + (Verdict.Fails(cell) ? 1 : 0),
                tally.Faults + (cell.Fault is null ? 0 : 1),
                tally.Changed + (Verdict.Changed(cell) ? 1 : 0),
                tally.Cautions + cell.Cautions.Length);
        }
        return tally;
    }

    /// <summary>Such as <c>12 results; 3 checks hold, 1 FAILS; 1 fault; 2 cautions</c>.</summary>
    public override string ToString()
    {
        List<string> parts = [Count(Results, "result", "results")];
        if (Hold + Fail > 0) parts.Add(Checks());
        if (Faults > 0) parts.Add(Count(Faults, "fault", "faults"));
        if (Changed > 0) parts.Add($"{Count(Changed, "result", "results")} changed");
        if (Cautions > 0) parts.Add(Count(Cautions, "caution", "cautions"));
        return string.Join("; ", parts) + ".";
    }

    private string Checks()
    {
        string holds = $"{Count(Hold, "check holds", "checks hold")}";
        string fails = Fail == 1 ? "1 FAILS" : $"{Fail} FAIL";
        return Fail == 0 ? holds : Hold == 0 ? $"{Count(Fail, "check FAILS", "checks FAIL")}" : $"{holds}, {fails}";
    }

    private static string Count(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";
}
