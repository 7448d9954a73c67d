using System.Text;
using System.Text.RegularExpressions;

namespace ScrewSheet.Terminal.Tests.Harmless;

/// <summary>
/// What must never reach a reader, by the lists of the Unicode Character Database and not by the program's own:
/// controls, surrogates, private use, line and paragraph separators (UnicodeData.txt, General_Category Cc, Cs, Co, Zl, Zp), the braille pattern without dots, Bidi_Control
/// (PropList.txt), Default_Ignorable_Code_Point (DerivedCoreProperties.txt), interlinear annotation, noncharacters. Unicode Standard Annex 44; the lists themselves from memory.
/// </summary>
internal static partial class Seen
{
    private static readonly (int First, int Last)[] Unseen =
    [
        (0x0000, 0x001F), (0x007F, 0x009F), (0xD800, 0xDFFF), (0x2028, 0x2029),
        (0x061C, 0x061C), (0x200E, 0x200F), (0x202A, 0x202E), (0x2066, 0x2069),
        (0x00AD, 0x00AD), (0x034F, 0x034F), (0x115F, 0x1160), (0x17B4, 0x17B5), (0x180B, 0x180F), (0x200B, 0x200F), (0x2060, 0x206F), (0x3164, 0x3164),
        (0xFE00, 0xFE0F), (0xFEFF, 0xFEFF), (0xFFA0, 0xFFA0), (0xFFF0, 0xFFFB), (0x1BCA0, 0x1BCA3), (0x1D173, 0x1D17A), (0xE0000, 0xE0FFF),
        (0xFDD0, 0xFDEF), (0xE000, 0xF8FF), (0x2800, 0x2800),
    ];

    /// <summary>All code points that must not be shown as themselves.</summary>
    public static IEnumerable<int> All => Unseen.SelectMany(range => Enumerable.Range(range.First, range.Last - range.First + 1)).Concat(Enumerable.Range(0, 17).SelectMany(plane => (int[])[(plane << 16) | 0xFFFE, (plane << 16) | 0xFFFF]));

    /// <summary>Fails where a text that goes to a terminal or into a file holds anything else than characters that are seen, and line ends.</summary>
    /// <param name="what">What it is, for the message.</param>
    /// <param name="text">The text.</param>
    /// <param name="coloured">True where the program's own colours may stand in it.</param>
    public static void Only(string what, string text, bool coloured = false)
    {
        string plain = coloured ? Colours().Replace(text, "") : text;
        for (int i = 0; i < plain.Length; i++)
        {
            int code = i + 1 < plain.Length && char.IsSurrogatePair(plain[i], plain[i + 1]) ? char.ConvertToUtf32(plain[i], plain[i + 1]) : plain[i];
            if (code > 0xFFFF) i++;
            if (code != '\n' && Is(code)) Assert.Fail($"{what} holds U+{code:X4} near: {Around(plain, i)}");
        }
    }

    private static bool Is(int code) => (code & 0xFFFE) == 0xFFFE || Array.Exists(Unseen, range => code >= range.First && code <= range.Last);

    private static string Around(string text, int at)
    {
        StringBuilder shown = new();
        foreach (char c in text[Math.Max(0, at - 60)..Math.Min(text.Length, at + 20)]) shown.Append(c is >= ' ' and <= '~' ? c.ToString() : $"[{(int)c:X4}]");
        return shown.ToString();
    }

    // the four the program writes, and no other
    [GeneratedRegex("\e\\[(0|1|1;31|33)m")]
    private static partial Regex Colours();
}
