using System.Globalization;
using System.Text;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Texts in quotes: what stands between them and how it is escaped.</summary>
internal static class QuotedText
{
    /// <summary>Reads the text whose quotes stand at <paramref name="open"/> and <paramref name="close"/>.</summary>
    /// <returns>The text, or null with a fault.</returns>
    public static string? Read(LineText line, int open, int close, out Fault? fault)
    {
        fault = null;
        if (line.Span(open + 1, close).IndexOf('\\') < 0) return line.Piece(open + 1, close);
        StringBuilder text = new();
        for (int i = open + 1; i < close; i++)
        {
            if (line.Text[i] != '\\') text.Append(line.Text[i]);
            else if (Escaped(line.Span(i + 1, close)) is { Length: > 0 } escape)
            {
                text.Append(escape.Character);
                i += escape.Length;
            }
            else
            {
                fault = FormatFaults.BadEscape(line.At(i, i + 1));
                return null;
            }
        }
        return text.ToString();
    }

    /// <summary>In quotes; what cannot be seen or would end the line is escaped.</summary>
    public static string Write(string text)
    {
        StringBuilder quoted = new(text.Length + 2);
        quoted.Append('"');
        for (int i = 0; i < text.Length; i++)
        {
            bool pair = char.IsHighSurrogate(text[i]) && i + 1 < text.Length && char.IsLowSurrogate(text[i + 1]);
            if (pair) quoted.Append(text[i]).Append(text[++i]);
            else Append(quoted, text[i]);
        }
        return quoted.Append('"').ToString();
    }

    /// <summary>True for characters that steer a terminal or the direction of writing.</summary>
    public static bool IsUnseen(char c) =>
        char.IsControl(c) || c is '\u2028' or '\u2029' or '\u200E' or '\u200F' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\uFEFF';

    private static void Append(StringBuilder quoted, char c)
    {
        switch (c)
        {
            case '"' or '\\': quoted.Append('\\').Append(c); break;
            case '\n': quoted.Append("\\n"); break;
            case '\t': quoted.Append("\\t"); break;
            default:
                if (IsUnseen(c) || char.IsSurrogate(c)) quoted.Append("\\u").Append(((int)c).ToString("X4", CultureInfo.InvariantCulture));
                else quoted.Append(c);
                break;
        }
    }

    private static (char Character, int Length) Escaped(ReadOnlySpan<char> after) => after switch
    {
        ['\\', ..] => ('\\', 1),
        ['"', ..] => ('"', 1),
        ['n', ..] => ('\n', 1),
        ['t', ..] => ('\t', 1),
        ['u', _, _, _, _, ..] when ushort.TryParse(after[1..5], NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out ushort code) => ((char)code, 5),
        _ => default,
    };
}
