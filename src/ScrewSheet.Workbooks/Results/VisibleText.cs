using System.Globalization;
using System.Text;

namespace ScrewSheet.Workbooks.Results;

/// <summary>
/// Makes text from a file harmless to whoever shows it: a character that would move the cursor, change the order of reading
/// or not be seen at all is shown by its number, such as <c>‹U+202E›</c>.
/// </summary>
public static class VisibleText
{
    /// <summary>The same text when nothing in it is dangerous.</summary>
    public static string Of(string text)
    {
        int first = IndexOfHidden(text);
        if (first < 0) return text;
        StringBuilder plain = new(text, 0, first, text.Length + 32);
        for (int at = first; at < text.Length;)
        {
            bool whole = Rune.TryGetRuneAt(text, at, out Rune rune);
            if (whole && !IsHidden(rune)) plain.Append(rune.ToString());
            else plain.Append(CultureInfo.InvariantCulture, $"‹U+{(whole ? rune.Value : text[at]):X4}›");
            at += whole ? rune.Utf16SequenceLength : 1;
        }
        return plain.ToString();
    }

    /// <summary>True for what a reader would not see, or what a terminal would obey.</summary>
    public static bool IsHidden(Rune rune) => Rune.GetUnicodeCategory(rune) switch
    {
        UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator => true,
        UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned or UnicodeCategory.Surrogate => true,
        _ => IsBlankLetter(rune.Value),
    };

    // letters and marks by category, blank on the screen
    private static bool IsBlankLetter(int code) => code is 0x034F or 0x115F or 0x1160 or 0x17B4 or 0x17B5 or (>= 0x180B and <= 0x180F) or 0x2800 or 0x3164 or 0xFFA0 or (>= 0xFE00 and <= 0xFE0F) or (>= 0xE0100 and <= 0xE01EF);

    private static int IndexOfHidden(string text)
    {
        int plain = text.AsSpan().IndexOfAnyExceptInRange(' ', '~');
        for (int at = plain < 0 ? text.Length : plain; at < text.Length;)
        {
            if (!Rune.TryGetRuneAt(text, at, out Rune rune) || IsHidden(rune)) return at;
            at += rune.Utf16SequenceLength;
        }
        return -1;
    }
}
