using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>The first line: the sheets, the file, whether it is saved, which units.</summary>
internal static class TitleLine
{
    /// <summary>The line.</summary>
    public static ScreenLine Of(Session session, int width, bool stopped)
    {
        string right = Right(session, width, stopped);
        LineBuilder line = new(Math.Max(10, width - DisplayWidth.Of(right)));
        foreach ((string text, bool here, _) in Tabs(session)) line.Add(text, here ? Ink.FrameHere : Ink.Frame);
        line.To(width, Ink.Frame);
        return new ScreenLine([.. line.Line(Ink.Frame).Segments, new Segment(right, session.IsUnsaved ? Ink.FrameHere : Ink.Frame)]);
    }

    /// <summary>The sheet whose name stands there, or null.</summary>
    public static string? SheetAt(Session session, int column, int width)
    {
        int edge = 0;
        foreach ((string text, _, string name) in Tabs(session))
        {
            edge += DisplayWidth.Of(text);
            if (column < edge && column < width) return name;
        }
        return null;
    }

    // the sheet the reader is on stands in angles, so that no colour is needed to see it; the list begins near it
    private static IEnumerable<(string Text, bool Here, string Name)> Tabs(Session session)
    {
        int at = session.Workbook.Sheets.IndexOf(session.Sheet);
        foreach (Sheet sheet in session.Workbook.Sheets.Skip(Math.Max(0, at - 3)))
        {
            string name = PlainText.Of(sheet.Name);
            yield return sheet.Name == session.SheetName ? ($"‹{name}›", true, sheet.Name) : ($" {name} ", false, sheet.Name);
        }
    }

    private static string Right(Session session, int width, bool stopped)
    {
        string file = session.Path is null ? "no file yet" : PlainText.Of(Path.GetFileName(session.Path));
        string state = (session.IsUnsaved ? " · not saved" : "")
            + (!session.IsCalculated ? stopped ? " · stopped" : " · calculating" : session.Tables.Running is { } running ? $" · {running.What} {(int)(running.Share * 100)} %" : "");
        string reviewed = session is { IsCalculated: true, Known.Reviewed: { Marks.Count: > 0 } marks } ? $" · {marks.Tally.Reviewed} of {marks.Tally.Results} reviewed" : "";
        // a long name is cut before what is said of the workbook
        string rest = $"{state}{reviewed} · {session.Workbook.Head.Units} ";
        int most = Math.Max(10, width * 3 / 5);
        return Fit.Cut($" {Fit.Cut(file, Math.Max(8, most - 1 - DisplayWidth.Of(rest)))}{rest}", most);
    }
}
