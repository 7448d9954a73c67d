using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>What is shown while a line is typed: what it would be, the call around the caret, what could stand there, and the line itself.</summary>
internal static class EntryPicture
{
    private const string Lead = "» ";

    /// <summary>The lines above the typed one: exactly so many.</summary>
    public static IEnumerable<ScreenLine> Above(Entry entry, int width, int rows)
    {
        List<ScreenLine> lines = [.. PreviewLines(entry, width)];
        if (entry.Call is { } call) lines.AddRange(CallLines(call, width));
        lines = [.. lines.Take(Math.Max(1, rows - Math.Min(3, entry.Suggestions.Length)))];
        lines.AddRange(Suggestions(entry, width, rows - lines.Count));
        while (lines.Count < rows) lines.Add(new LineBuilder(width).Line());
        return lines;
    }

    /// <summary>The typed line broken over so many, and where the caret is in them.</summary>
    public static (ImmutableArray<ScreenLine> Lines, int Column, int Line) Typed(string lead, TypedText typed, int width, int rows)
    {
        List<string> pieces = [""];
        int used = DisplayWidth.Of(lead), column = used, line = 0, at = 0;
        foreach (System.Text.Rune rune in typed.Text.EnumerateRunes())
        {
            string shown = PlainText.Of(rune.ToString());
            int wide = DisplayWidth.Of(shown);
            if (used + wide > width - 1)
            {
                pieces.Add("");
                used = 0;
            }
            if (at == typed.Caret) (column, line) = (used, pieces.Count - 1);
            pieces[^1] += shown;
            used += wide;
            at += rune.Utf16SequenceLength;
        }
        if (typed.Caret >= at) (column, line) = (used, pieces.Count - 1);
        int first = Math.Clamp(line - rows + 1, 0, Math.Max(0, pieces.Count - rows));
        var shownLines = Enumerable.Range(first, rows).Select(i => new LineBuilder(width).Add(i == 0 ? lead : "", Ink.Key).Add(i < pieces.Count ? pieces[i] : "", Ink.Strong).Line());
        return ([.. shownLines], column, line - first);
    }

    /// <summary>The typed line of an entry.</summary>
    public static (ImmutableArray<ScreenLine> Lines, int Column, int Line) Typed(Entry entry, int width, int rows) => Typed(Lead, entry.Typed, width, rows);

    private static IEnumerable<ScreenLine> PreviewLines(Entry entry, int width)
    {
        if (!entry.IsPreviewed || entry.Preview is not { } preview) return [ScreenLine.Of(Fit.Left(" …", width), Ink.Faint)];
        if (preview.Fault is { IsOpen: true } open && entry.Typed.Caret == entry.Typed.Text.Length)
        {
            // a bracket or quote that is not closed while its inside is still being typed is no mistake yet
            return Wrapping.Hanging(" so far   ", PlainText.Of(open.Sentence), width).Take(2).Select(text => ScreenLine.Of(Fit.Left(text, width), Ink.Faint));
        }
        if (preview.Fault is { } fault) return Wrapping.Hanging(" fault    ", PlainText.Of(fault.Sentence), width).Take(2).Select(text => ScreenLine.Of(Fit.Left(text, width), Ink.Bad));
        string type = preview.Type is null ? "" : string.IsNullOrEmpty(preview.Value) ? preview.Type : $"  {preview.Type}";
        List<ScreenLine> lines = [new LineBuilder(width).Add(" gives    ", Ink.Faint).Add(PlainText.Of(preview.Value ?? ""), Ink.Good).Add(PlainText.Of(type), Ink.Faint).Line()];
        lines.AddRange(preview.Cautions.Take(1).Select(caution => new LineBuilder(width).Add(" caution  ", Ink.Careful).Add(PlainText.Of(caution), Ink.Careful).Line()));
        return lines;
    }

    private static IEnumerable<ScreenLine> CallLines(CallHelp call, int width)
    {
        LineBuilder line = new LineBuilder(width).Add($" {call.Name}(", Ink.Faint);
        for (int i = 0; i < call.Parameters.Length; i++)
        {
            bool here = i == call.Current;
            line.Add(here ? $"[{call.Parameters[i]}]" : call.Parameters[i], here ? Ink.Strong : Ink.Faint).Add(i + 1 < call.Parameters.Length ? ", " : "", Ink.Faint);
        }
        yield return line.Add(")", Ink.Faint).Line();
        if (call.Current >= call.Parameters.Length && !call.Parameters.IsEmpty && !call.Parameters[^1].Contains('…')) yield return new LineBuilder(width).Add($"   takes {call.Parameters.Length}, this is one more", Ink.Careful).Line();
        else yield return new LineBuilder(width).Add("   " + call.Meaning, Ink.Faint).Line();
    }

    private static IEnumerable<ScreenLine> Suggestions(Entry entry, int width, int rows)
    {
        if (entry.Suggestions.IsEmpty || rows <= 0) yield break;
        int first = Math.Clamp(entry.Chosen - rows + 1, 0, Math.Max(0, entry.Suggestions.Length - rows));
        int wide = Math.Min(26, entry.Suggestions.Skip(first).Take(rows).Max(suggestion => DisplayWidth.Of(suggestion.Shown)));
        for (int i = first; i < Math.Min(entry.Suggestions.Length, first + rows); i++)
        {
            Suggestion suggestion = entry.Suggestions[i];
            bool here = i == entry.Chosen;
            string more = i == first + rows - 1 && i + 1 < entry.Suggestions.Length ? $"  (+{entry.Suggestions.Length - i - 1})" : "";
            yield return new LineBuilder(width).Add(here ? " ▸ " : "   ", Ink.Key).Add(Fit.Left(PlainText.Of(suggestion.Shown), wide), here ? Ink.Here : Ink.Strong).Add("  ")
                .Add(Fit.Cut(suggestion.Meaning, Math.Max(4, width - wide - 6 - more.Length)), Ink.Faint).Add(more, Ink.Faint).Line();
        }
    }
}
