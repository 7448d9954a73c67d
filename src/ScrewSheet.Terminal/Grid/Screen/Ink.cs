using System.Collections.Immutable;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>What a piece of the screen is; how that looks, the terminal decides. No meaning hangs on it alone.</summary>
internal enum Ink
{
    /// <summary>As it comes.</summary>
    Plain,

    /// <summary>Beside the point: units, hints.</summary>
    Faint,

    /// <summary>A title, a name.</summary>
    Strong,

    /// <summary>The frame: heads of rows and columns, lines between the parts.</summary>
    Frame,

    /// <summary>The part of the frame where the cursor is.</summary>
    FrameHere,

    /// <summary>Where the cursor is.</summary>
    Here,

    /// <summary>What is selected besides.</summary>
    Selected,

    /// <summary>A given.</summary>
    Given,

    /// <summary>A check that holds.</summary>
    Good,

    /// <summary>A fault, a failing check, a changed result.</summary>
    Bad,

    /// <summary>A caution.</summary>
    Careful,

    /// <summary>A key to press.</summary>
    Key,
}

/// <summary>Characters of one ink.</summary>
/// <param name="Text">Text.</param>
/// <param name="Ink">How it looks.</param>
internal readonly record struct Segment(string Text, Ink Ink)
{
    /// <summary>Its characters, harmless wherever they come from.</summary>
    public string Text { get; } = PlainText.Of(Text);
}

/// <summary>One line of the screen.</summary>
/// <param name="Segments">From the left.</param>
internal readonly record struct ScreenLine(ImmutableArray<Segment> Segments)
{
    /// <summary>Its characters.</summary>
    public string Text => string.Concat(Segments.Select(segment => segment.Text));

    /// <summary>A line of one ink.</summary>
    public static ScreenLine Of(string text, Ink ink = Ink.Plain) => new([new Segment(text, ink)]);
}

/// <summary>A whole screen.</summary>
/// <param name="Lines">From the top.</param>
/// <param name="Caret">Column and line of the text cursor, or null where nothing is typed.</param>
internal sealed record Picture(ImmutableArray<ScreenLine> Lines, (int Column, int Line)? Caret = null)
{
    /// <summary>Its characters, line by line.</summary>
    public override string ToString() => string.Join('\n', Lines.Select(line => line.Text.TrimEnd()));
}

/// <summary>Puts a line together and keeps it within its width.</summary>
/// <param name="width">Columns.</param>
internal sealed class LineBuilder(int width)
{
    private readonly ImmutableArray<Segment>.Builder segments = ImmutableArray.CreateBuilder<Segment>();

    /// <summary>Columns used.</summary>
    public int Used { get; private set; }

    /// <summary>Columns left.</summary>
    public int Left => width - Used;

    /// <summary>Adds a text, cut with an ellipsis where it has no room.</summary>
    public LineBuilder Add(string text, Ink ink = Ink.Plain)
    {
        if (text.Length == 0 || Left <= 0) return this;
        string cut = Fit.Cut(PlainText.Of(text), Left);
        segments.Add(new Segment(cut, ink));
        Used += DisplayWidth.Of(cut);
        return this;
    }

    /// <summary>Adds blanks up to a column.</summary>
    public LineBuilder To(int column, Ink ink = Ink.Plain, char fill = ' ')
    {
        int blanks = Math.Min(column, width) - Used;
        return blanks > 0 ? Add(new string(fill, blanks), ink) : this;
    }

    /// <summary>The line, filled to its width.</summary>
    public ScreenLine Line(Ink fill = Ink.Plain)
    {
        To(width, fill);
        return new ScreenLine(segments.ToImmutable());
    }
}

/// <summary>Makes texts fit into columns.</summary>
internal static class Fit
{
    /// <summary>The text, or its beginning with an ellipsis.</summary>
    public static string Cut(string text, int width)
    {
        if (width <= 0) return "";
        if (text.Length <= width && System.Text.Ascii.IsValid(text)) return text;
        if (DisplayWidth.Of(text) <= width) return text;
        System.Text.StringBuilder cut = new();
        int used = 0;
        foreach (System.Text.Rune rune in text.EnumerateRunes())
        {
            int wide = DisplayWidth.Of(rune);
            if (used + wide > width - 1) break;
            cut.Append(rune.ToString());
            used += wide;
        }
        return cut.Append('…').ToString();
    }

    /// <summary>The beginning of a text, in so many columns at the most and none half.</summary>
    public static string Upto(string text, int width)
    {
        int used = 0, end = 0;
        foreach (System.Text.Rune rune in text.EnumerateRunes())
        {
            used += DisplayWidth.Of(rune);
            if (used > width) break;
            end += rune.Utf16SequenceLength;
        }
        return text[..end];
    }

    /// <summary>What comes behind so many columns of a text; where they cut a wide character, a blank stands for its rest.</summary>
    public static string From(string text, int column)
    {
        string before = Upto(text, column);
        if (DisplayWidth.Of(before) == column || before.Length == text.Length) return text[before.Length..];
        _ = System.Text.Rune.TryGetRuneAt(text, before.Length, out System.Text.Rune cut);
        return " " + text[(before.Length + cut.Utf16SequenceLength)..];
    }

    /// <summary>Cut or filled on the right to exactly that width.</summary>
    public static string Left(string text, int width) => DisplayWidth.PadRight(Cut(text, width), width);

    /// <summary>Filled on the left to that width; a figure that has no room is an ellipsis, never a part of itself.</summary>
    public static string Figure(string text, int width) => DisplayWidth.PadLeft(DisplayWidth.Of(text) <= width ? text : "…", width);
}
