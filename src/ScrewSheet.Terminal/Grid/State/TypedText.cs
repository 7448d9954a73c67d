using System.Globalization;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>A line being typed and where the caret is; moves and deletes whole characters as people see them.</summary>
/// <param name="Text">The line.</param>
/// <param name="Caret">Index of the character behind the caret, 0 to the length.</param>
internal readonly record struct TypedText(string Text, int Caret)
{
    /// <summary>A line with the caret at its end.</summary>
    public static TypedText Of(string text) => new(text, text.Length);

    /// <summary>The part before the caret.</summary>
    public string Before => Text[..Caret];

    /// <summary>With a text put in at the caret; line breaks become blanks.</summary>
    public TypedText Insert(string text)
    {
        string line = text.ReplaceLineEndings(" ");
        return new TypedText(Text[..Caret] + line + Text[Caret..], Caret + line.Length);
    }

    /// <summary>With everything from an index up to the caret replaced.</summary>
    public TypedText Replace(int from, string text) => new(Text[..from] + text + Text[Caret..], from + text.Length);

    /// <summary>Without the character before the caret.</summary>
    public TypedText Backspace() => new(Text[..Previous] + Text[Caret..], Previous);

    /// <summary>Without the character behind the caret.</summary>
    public TypedText Delete() => new(Text[..Caret] + Text[Next..], Caret);

    /// <summary>The caret one character back.</summary>
    public TypedText Left() => this with { Caret = Previous };

    /// <summary>The caret one character on.</summary>
    public TypedText Right() => this with { Caret = Next };

    /// <summary>The caret at the beginning.</summary>
    public TypedText Home() => this with { Caret = 0 };

    /// <summary>The caret at the end.</summary>
    public TypedText End() => this with { Caret = Text.Length };

    /// <summary>The caret at the beginning of the word before it.</summary>
    public TypedText WordLeft()
    {
        int at = Caret;
        while (at > 0 && !char.IsLetterOrDigit(Text[at - 1])) at--;
        while (at > 0 && char.IsLetterOrDigit(Text[at - 1])) at--;
        return this with { Caret = at };
    }

    /// <summary>The caret behind the word after it.</summary>
    public TypedText WordRight()
    {
        int at = Caret;
        while (at < Text.Length && !char.IsLetterOrDigit(Text[at])) at++;
        while (at < Text.Length && char.IsLetterOrDigit(Text[at])) at++;
        return this with { Caret = at };
    }

    private int Previous
    {
        get
        {
            int at = 0;
            for (int next = 0; next < Caret; next += StringInfo.GetNextTextElementLength(Text, next)) at = next;
            return at;
        }
    }

    private int Next => Caret < Text.Length ? Caret + StringInfo.GetNextTextElementLength(Text, Caret) : Caret;
}
