using System.Globalization;
using System.Text;

namespace ScrewSheet.Terminal.Output;

/// <summary>How many columns of a terminal a text takes.</summary>
internal static class DisplayWidth
{
    // East Asian wide and full-width blocks and the pictographs terminals draw two columns wide
    private static readonly (int From, int To)[] Wide =
    [
        (0x1100, 0x115F), (0x2E80, 0x303E), (0x3041, 0x33FF), (0x3400, 0x4DBF), (0x4E00, 0x9FFF), (0xA000, 0xA4CF), (0xA960, 0xA97F),
        (0xAC00, 0xD7A3), (0xF900, 0xFAFF), (0xFE30, 0xFE6F), (0xFF00, 0xFF60), (0xFFE0, 0xFFE6), (0x1F300, 0x1F64F), (0x1F680, 0x1F6FF),
        (0x1F900, 0x1F9FF), (0x20000, 0x3FFFD),
    ];

    /// <summary>Of a text that went through <see cref="PlainText"/>.</summary>
    public static int Of(string text)
    {
        int width = 0;
        foreach (Rune rune in text.EnumerateRunes()) width += Of(rune);
        return width;
    }

    /// <summary>Of one character: 0 for a mark that sits on the one before, 2 for a wide one.</summary>
    public static int Of(Rune rune)
    {
        if (rune.Value < 0x300) return 1;
        if (Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark) return 0;
        foreach ((int from, int to) in Wide)
        {
            if (rune.Value >= from && rune.Value <= to) return 2;
        }
        return 1;
    }

    /// <summary>Filled with blanks on the right.</summary>
    public static string PadRight(string text, int width) => text + Blanks(width - Of(text));

    /// <summary>Filled with blanks on the left.</summary>
    public static string PadLeft(string text, int width) => Blanks(width - Of(text)) + text;

    private static string Blanks(int count) => new(' ', Math.Max(0, count));
}
