using System.Globalization;
using System.Text;

namespace ScrewSheet.Terminal.Tests.Harmless;

/// <summary>Text that means to do something to whoever shows it.</summary>
internal static class HostileText
{
    // a terminal's own sequences: clear the screen, name the window, a link, the clipboard, a device string, colour; then every control character by itself, one-byte introducers included
    private const string Steering = "\e[2J\e]0;t\a\e]8;;http://x.example\e\\\e]52;c;QQ==\a\eP1$r\e\\\e[31m\0\b\t\n\v\f\r\u007f\u0085\u008d\u0090\u009b2J\u009d0;t\u009c";

    // order of reading; no width; blank letters; tags; line and paragraph ends; halves of pairs, private use, no characters
    private const string Unseen = "\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069\u200e\u200f\u061c\u00ad\u034f\u115f\u180b\u180e\u200b\u200d\u2028\u2029\u2060\u206a\u2800\u3164\ufe0f\ufeff\ufff9\U000e0041\U000e007f\U000e0100\ue000\ufdd0\ud800";

    // those of them that may stand bare in a line
    private const string Quiet = "\u00ad\u034f\u061c\u115f\u180b\u180e\u200b\u200d\u2060\u2800\u3164\ufe0f\ufff9\U000e0041\U000e007f\U000e0100\ue000\ufdd0";

    // tags, entities, links, images, tables, and the way a spreadsheet file writes characters by number
    private const string Markup = "<script>alert(1)</script></title><img src=x onerror=alert(1)>&lt;&#60;\"'`|*_~[x](javascript:x)![x](http://x.example/y)<!-- ]]> --> http://x.example _x001B__x202E_ $x$ # 1. \\ %0A\u00a0";

    private const string Formula = "=cmd|'/c calc'!A0";

    /// <summary>The kinds, each a text.</summary>
    public static IReadOnlyDictionary<string, string> Kinds { get; } = new Dictionary<string, string>
    {
        ["steering"] = Steering, ["unseen"] = Unseen, ["quiet"] = Quiet, ["markup"] = Markup,
        ["equals"] = Formula, ["plus"] = "+1+1", ["at"] = "@SUM(A1)", ["minus"] = "-2+3", ["wide equals"] = "\uff1d1+1", ["blank equals"] = "\u00a0 =1+1",
    };

    /// <summary>True for what may not stand bare in a line of a workbook: controls, line separators, marks of direction.</summary>
    public static bool SpoilsALine(char c) => char.IsControl(c) || c is '\u2028' or '\u2029' or '\u200e' or '\u200f' or (>= '\u202a' and <= '\u202e') or (>= '\u2066' and <= '\u2069');

    /// <summary>As it stands between quotes in a workbook: whatever is not plain is written by number.</summary>
    public static string InQuotes(string text)
    {
        StringBuilder quoted = new();
        foreach (char c in text)
        {
            if (c is '"' or '\\') quoted.Append('\\').Append(c);
            else if (c is >= ' ' and <= '~') quoted.Append(c);
            else quoted.Append(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}");
        }
        return quoted.ToString();
    }

    /// <summary>As it can stand in a line: no end of a line, no half of a pair.</summary>
    public static string InALine(string text)
    {
        StringBuilder line = new();
        for (int i = 0; i < text.Length; i++)
        {
            if (text[i] == '\n') continue;
            if (!char.IsSurrogate(text[i])) line.Append(text[i]);
            else if (i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1])) line.Append(text[i]).Append(text[++i]);
        }
        return line.ToString();
    }

    /// <summary>As it can stand in the name of a file.</summary>
    public static string InAName(string text) => InALine(text).Replace("\0", "", StringComparison.Ordinal).Replace('/', '\u2215');
}
