using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Format;

/// <summary>A line being read: its text and its number, from which places are made.</summary>
/// <param name="Text">All its characters but the end.</param>
/// <param name="Number">From 1; 0 for an entry.</param>
internal readonly record struct LineText(string Text, int Number)
{
    /// <summary>The place of a piece.</summary>
    /// <param name="start">Index of its first character.</param>
    /// <param name="end">Index behind its last.</param>
    public Place At(int start, int end) => new(Number, start + 1, end - start);

    /// <summary>The first index from <paramref name="start"/> on that holds no blank, at most <paramref name="end"/>.</summary>
    public int SkipBlanks(int start, int end)
    {
        while (start < end && Blank.Is(Text[start])) start++;
        return start;
    }

    /// <summary>The index behind the last character before <paramref name="end"/> that is no blank, at least <paramref name="start"/>.</summary>
    public int TrimEnd(int start, int end)
    {
        while (end > start && Blank.Is(Text[end - 1])) end--;
        return end;
    }

    /// <summary>The index of the first blank from <paramref name="start"/> on, at most <paramref name="end"/>.</summary>
    public int WordEnd(int start, int end)
    {
        while (start < end && !Blank.Is(Text[start])) start++;
        return start;
    }

    /// <summary>The piece.</summary>
    public string Piece(int start, int end) => Text[start..end];

    /// <summary>The piece, not copied.</summary>
    public ReadOnlySpan<char> Span(int start, int end) => Text.AsSpan(start, end - start);
}

/// <summary>What counts as a blank: space, tab, and the no-break spaces that text pasted from elsewhere brings.</summary>
internal static class Blank
{
    public static bool Is(char c) => c is ' ' or '\t' or '\u00A0' or '\u202F';
}
