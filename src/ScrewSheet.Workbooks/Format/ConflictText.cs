using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>One version in a conflict.</summary>
/// <param name="Text">What follows <c>ours</c> or <c>theirs</c>: a cell's text without its address; empty where that version has no such cell.</param>
/// <param name="Start">Where it begins in the text of the whole conflict, from 0.</param>
internal readonly record struct ConflictSide(string Text, int Start);

/// <summary>Two versions that a merge could not choose between: <c>B3 conflict</c> and the indented lines <c>ours …</c> and <c>theirs …</c> after it, taken as one text with line ends in it.</summary>
internal static class ConflictText
{
    /// <summary>The word after the address, or alone before whole lines.</summary>
    public const string Word = "conflict", Ours = "ours", Theirs = "theirs";

    /// <summary>True for a text whose first line is an address and the word.</summary>
    public static bool IsCell(string text)
    {
        if (!text.Contains(Word, StringComparison.Ordinal)) return false;
        LineText first = FirstLine(text);
        int start = first.SkipBlanks(0, first.Text.Length), end = CellLine.AddressEnd(first.Text, start);
        return CellAddress.TryParse(first.Span(start, end), out _) && IsAlone(first, end);
    }

    /// <summary>True for a text whose first line is the word alone.</summary>
    public static bool IsLines(string text) => text.Contains(Word, StringComparison.Ordinal) && IsAlone(FirstLine(text), 0);

    /// <summary>The cell: in fault, with the name both versions give it, so that whoever reads it waits for it.</summary>
    public static CellReading Read(LineText text)
    {
        LineText first = FirstLine(text.Text) with { Number = text.Number };
        int start = first.SkipBlanks(0, first.Text.Length), end = CellLine.AddressEnd(first.Text, start);
        CellAddress.TryParse(first.Span(start, end), out CellAddress address);
        Place place = first.At(start, end);
        (string ours, string theirs) = Versions(text.Text);
        string? name = NameOf(ours, address) ?? NameOf(theirs, address);
        Fault fault = MergeFaults.Conflict(first.At(start, first.TrimEnd(start, first.Text.Length)), Shown(ours), Shown(theirs));
        return new CellReading(new Cell { Address = address, Name = name, Content = new BrokenContent(text.Text, fault), Place = place }, null, place);
    }

    /// <summary>Both versions of a cell: what follows its address; empty where that version has no such cell.</summary>
    public static (string Ours, string Theirs) Versions(string text) => (SideOf(text, Ours), SideOf(text, Theirs));

    /// <summary>What is wrong with whole lines in two versions.</summary>
    public static Fault LinesFault(string text, int number)
    {
        LineText first = FirstLine(text) with { Number = number };
        return MergeFaults.LinesInConflict(first.At(0, first.Text.Length), Shown(SideOf(text, Ours)), Shown(SideOf(text, Theirs)));
    }

    /// <summary>The conflict of a cell, or of whole lines where <paramref name="address"/> is null.</summary>
    /// <param name="address">The address.</param>
    /// <param name="ours">The lines of one version; none where it has none.</param>
    /// <param name="theirs">Those of the other.</param>
    /// <param name="newLine">How lines end.</param>
    public static string Write(CellAddress? address, IReadOnlyList<string> ours, IReadOnlyList<string> theirs, string newLine) =>
        string.Join(newLine, [address is null ? Word : $"{address} {Word}", .. Lines(Ours, ours), .. Lines(Theirs, theirs)]);

    /// <summary>The text with the expressions of both versions written as told.</summary>
    public static string Rewrite(string text, Func<string, string> write)
    {
        foreach (ConflictSide side in Sides(text).Select(pair => pair.Side).Reverse())
        {
            LineText entry = new(side.Text, 0);
            if (CellLine.ReadAfter(entry, 0, new CellAddress(1, 1), default).Cell?.Content is not ResultContent result) continue;
            int at = side.Start + result.ExpressionColumn - 1;
            text = string.Concat(text.AsSpan(0, at), write(result.Expression), text.AsSpan(at + result.Expression.Length));
        }
        return text;
    }

    private static IEnumerable<string> Lines(string word, IReadOnlyList<string> lines) => lines.Count == 0 ? [$"  {word}"] : lines.Select(line => $"  {word} {line}");

    private static string Shown(string side) => side.Length == 0 ? "nothing" : side;

    private static string SideOf(string text, string word) => string.Join("; ", Sides(text).Where(pair => pair.Word == word).Select(pair => pair.Side.Text).Where(line => line.Length > 0));

    private static string? NameOf(string entry, CellAddress address) =>
        entry.Length == 0 ? null : CellLine.ReadAfter(new LineText(entry, 0), 0, address, default).Cell?.Name;

    private static IEnumerable<(string Word, ConflictSide Side)> Sides(string text)
    {
        int at = text.IndexOf('\n', StringComparison.Ordinal) + 1;
        while (at > 0)
        {
            int feed = text.IndexOf('\n', at), end = feed < 0 ? text.Length : feed;
            LineText whole = new(text, 0);
            int start = whole.SkipBlanks(at, end), wordEnd = Math.Min(end, whole.WordEnd(start, end)), rest = whole.SkipBlanks(wordEnd, end);
            string word = text[start..wordEnd].TrimEnd('\r');
            if (word is Ours or Theirs) yield return (word, new ConflictSide(text[rest..end].TrimEnd('\r', ' ', '\t'), rest));
            at = feed + 1;
        }
    }

    private static bool IsAlone(LineText line, int from)
    {
        int start = line.SkipBlanks(from, line.Text.Length);
        return (from == 0 || start > from) && line.Span(start, line.TrimEnd(start, line.Text.Length)).SequenceEqual(Word);
    }

    private static LineText FirstLine(string text)
    {
        int feed = text.IndexOf('\n', StringComparison.Ordinal);
        return new LineText(feed < 0 ? text : text[..feed].TrimEnd('\r'), 0);
    }
}
