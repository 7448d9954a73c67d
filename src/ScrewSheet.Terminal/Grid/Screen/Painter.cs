using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>The screen of a state: a function of the state and nothing else.</summary>
internal static class Painter
{
    /// <summary>The picture, as large as the state says the screen is.</summary>
    public static Picture Of(GridState state)
    {
        if (state.Width < GridState.LeastWidth || state.Height < GridState.LeastHeight) return TooSmall(state);
        return state.Mode switch
        {
            Listing listing => Whole(state, ListPicture.Lines(state, listing)),
            Reading reading => Whole(state, Page(state, reading)),
            Finding finding => Whole(state, StudyPicture.Page(state, finding)),
            Plotting plotting => Whole(state, PlotPicture.Lines(plotting.Plot, state.Width, state.Height)),
            _ when state.Session is null => Whole(state, ListPicture.Lines(state, new Listing("", []))),
            _ => OfGrid(state),
        };
    }

    private static Picture TooSmall(GridState state)
    {
        string[] words = [.. Wrapping.Lines($"This needs {GridState.LeastWidth} × {GridState.LeastHeight} characters; here are {state.Width} × {state.Height}. Make the window larger, or the letters smaller.", Math.Max(4, state.Width))];
        return new Picture([.. Enumerable.Range(0, Math.Max(0, state.Height)).Select(i => ScreenLine.Of(Fit.Left(i < words.Length ? words[i] : "", state.Width)))]);
    }

    private static Picture Whole(GridState state, IEnumerable<ScreenLine> lines) =>
        new([.. Exactly(lines, state.Width, state.Height - 1), state.Notice is { } notice ? NoticeLine(notice, state.Width) : KeyLine.Of(state)]);

    private static IEnumerable<ScreenLine> Page(GridState state, Reading reading) =>
        [new LineBuilder(state.Width).Add($" {reading.Title}", Ink.FrameHere).Line(Ink.Frame), .. Pages.Lines(reading.Page, state.Width).Skip(reading.Top).Select(line => Filled(line, state.Width))];

    private static Picture OfGrid(GridState state)
    {
        Session session = state.Open;
        Layout layout = Layout.Of(state);
        Detail detail = Detail.Of(session, state.Width, (state.Mode as Linking)?.Chosen);
        List<ScreenLine> lines = [TitleLine.Of(session, state.Width, state.IsStopped), .. GridPicture.Lines(session, state.Width, layout.GridRows)];
        lines.Add(Heading(state, detail));
        lines.AddRange(Exactly(Middle(state, detail, layout), state.Width, layout.DetailRows));
        int entryTop = lines.Count;
        (ImmutableArray<ScreenLine> entry, (int, int)? caret) = Entry(state, layout);
        lines.AddRange(Exactly(entry, state.Width, layout.EntryRows));
        lines.Add(KeyLine.Of(state));
        return new Picture([.. lines], caret is { } at ? (at.Item1, at.Item2 + entryTop) : null);
    }

    private static ScreenLine Heading(GridState state, Detail detail)
    {
        string heading = state.Mode switch
        {
            Entering => state.Notice?.Text ?? $"Typing into {state.Open.Cursor}",
            Commanding => "Commands",
            Linking linking when detail.Lines.Length > Layout.Of(state).DetailRows => $"{detail.Heading} · from line {detail.TopLine(linking, Layout.Of(state).DetailRows) + 1} of {detail.Lines.Length}",
            Studying studying => StudyPicture.Heading(studying),
            _ => detail.Heading,
        };
        return new LineBuilder(state.Width).Add("── ", Ink.Frame).Add(Fit.Cut(heading, state.Width - 6), Ink.FrameHere).Add(" ", Ink.Frame).To(state.Width, Ink.Frame, '─').Line(Ink.Frame);
    }

    private static IEnumerable<ScreenLine> Middle(GridState state, Detail detail, Layout layout) => state.Mode switch
    {
        Entering entering => EntryPicture.Above(entering.Entry, state.Width, layout.DetailRows),
        Commanding => CommandPanel.Lines(state.Width, layout.DetailRows),
        Confirming confirming => Answers(confirming, state.Width),
        Linking linking => detail.Lines.Skip(detail.TopLine(linking, layout.DetailRows)),
        Studying studying => StudyPicture.Middle(studying, state.Width),
        _ => Cut(detail.Lines, state.Width, layout.DetailRows),
    };

    /// <summary>Says so where there is more than has room.</summary>
    private static IEnumerable<ScreenLine> Cut(ImmutableArray<ScreenLine> lines, int width, int rows) => lines.Length <= rows ? lines
        : [.. lines.Take(rows - 1), new LineBuilder(width).Add($" … {lines.Length - rows + 1} more lines: Tab, then Page Down", Ink.Faint).Line()];

    private static IEnumerable<ScreenLine> Answers(Confirming confirming, int width)
    {
        foreach (string line in Wrapping.Hanging(" ", confirming.Question, width - 1)) yield return new LineBuilder(width).Add(line, Ink.Strong).Line();
        foreach (var answer in confirming.Answers) yield return new LineBuilder(width).Add($"   {char.ToUpperInvariant(answer.Letter)}", Ink.Key).Add("  " + answer.Meaning).Line();
    }

    private static (ImmutableArray<ScreenLine>, (int, int)?) Entry(GridState state, Layout layout)
    {
        switch (state.Mode)
        {
            case Entering entering:
                (ImmutableArray<ScreenLine> lines, int column, int line) = EntryPicture.Typed(entering.Entry, state.Width, layout.EntryRows);
                return (lines, (column, line));
            case Asking asking:
                string lead = $" {asking.Question}: ";
                (ImmutableArray<ScreenLine> answer, int at, _) = EntryPicture.Typed(lead, asking.Typed, state.Width, 1);
                return ([asking.Typed.Text.Length == 0 ? new LineBuilder(state.Width).Add(lead, Ink.Key).Add(" " + asking.Hint, Ink.Faint).Line() : answer[0]], (at, 0));
            case Stepping step:
                string question = $" {step.Question}: ";
                (ImmutableArray<ScreenLine> typed, int caretAt, _) = EntryPicture.Typed(question, step.Typed, state.Width, 1);
                return (typed, (caretAt, 0));
            default:
                return (state.Notice is { } notice ? [.. NoticeLines(notice, state.Width)] : [state.Slow is { } slow ? SlowLine(state, slow) : Resting(state)], null);
        }
    }

    private static ScreenLine SlowLine(GridState state, CellId slow) =>
        new LineBuilder(state.Width).Add(" … ", Ink.Careful).Add($"{PlainText.Of(state.Open.NameOf(slow))} takes long to compute. Space and then the full stop ends that.", Ink.Careful).Line();

    /// <summary>What the cell under the cursor says, as it would be typed.</summary>
    private static ScreenLine Resting(GridState state)
    {
        Session session = state.Open;
        string text = session.Cell is { } cell ? Workbooks.Format.CellText.WriteEntry(cell) : "";
        return new LineBuilder(state.Width).Add("  ").Add(PlainText.Of(text), Ink.Faint).Line();
    }

    private static ScreenLine NoticeLine(Notice notice, int width) =>
        new LineBuilder(width).Add(notice.IsTrouble ? " ! " : " • ", notice.IsTrouble ? Ink.Bad : Ink.Good).Add(notice.Text, notice.IsTrouble ? Ink.Bad : Ink.Strong).Line();

    private static IEnumerable<ScreenLine> NoticeLines(Notice notice, int width) =>
        Wrapping.Lines(notice.Text, Math.Max(8, width - Layout.NoticeLead)).Select((text, i) => i == 0 ? NoticeLine(notice with { Text = text }, width) : new LineBuilder(width).Add("   ").Add(text, notice.IsTrouble ? Ink.Bad : Ink.Strong).Line());

    private static ScreenLine Filled(ScreenLine line, int width)
    {
        int used = line.Segments.Sum(segment => DisplayWidth.Of(segment.Text));
        return used >= width ? line : new ScreenLine(line.Segments.Add(new Segment(new string(' ', width - used), Ink.Plain)));
    }

    private static IEnumerable<ScreenLine> Exactly(IEnumerable<ScreenLine> lines, int width, int count)
    {
        int i = 0;
        foreach (ScreenLine line in lines)
        {
            if (i++ == count) yield break;
            yield return line;
        }
        for (; i < count; i++) yield return new LineBuilder(width).Line();
    }
}

/// <summary>The commands with their letters, in as many columns as have room.</summary>
internal static class CommandPanel
{
    /// <summary>The lines; what has no room in them is in the help.</summary>
    public static IEnumerable<ScreenLine> Lines(int width, int rows)
    {
        int columns = Math.Max(1, (GridCommands.All.Count + rows - 1) / rows), wide = width / columns;
        for (int row = 0; row < rows; row++)
        {
            LineBuilder line = new(width);
            for (int column = 0; column < columns; column++)
            {
                int at = (column * rows) + row;
                if (at >= GridCommands.All.Count) continue;
                Command command = GridCommands.All[at];
                line.To(column * wide).Add($" {char.ToUpperInvariant(command.Letter)}", Ink.Key).Add(" " + Fit.Cut(command.Title, wide - 4));
            }
            yield return line.Line();
        }
    }
}
