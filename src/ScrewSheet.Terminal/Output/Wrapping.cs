using System.Text;
using System.Text.RegularExpressions;

namespace ScrewSheet.Terminal.Output;

/// <summary>Breaks text into lines of a width.</summary>
internal static partial class Wrapping
{
    /// <summary>
    /// Lines of at most <paramref name="width"/> columns, broken at blanks; a single word wider than that stands in pieces.
    /// A number is never cut, nor the number of a character that cannot be seen.
    /// </summary>
    public static IReadOnlyList<string> Lines(string text, int width)
    {
        List<string> lines = [];
        StringBuilder line = new();
        int used = 0;
        foreach (string piece in Words(text, width))
        {
            int wide = DisplayWidth.Of(piece);
            if (used > 0 && used + 1 + wide > width)
            {
                lines.Add(line.ToString());
                line.Clear();
                used = 0;
            }
            if (used > 0) line.Append(' ');
            line.Append(piece);
            used += wide + (used > 0 ? 1 : 0);
        }
        if (used > 0 || lines.Count == 0) lines.Add(line.ToString());
        return lines;
    }

    /// <summary>The lines with a first word before the first and as many blanks before the others.</summary>
    public static IEnumerable<string> Hanging(string lead, string text, int width)
    {
        int indent = DisplayWidth.Of(lead);
        string blanks = new(' ', indent);
        return Lines(text, Math.Max(8, width - indent)).Select((line, index) => ((index == 0 ? lead : blanks) + line).TrimEnd());
    }

    private static IEnumerable<string> Words(string text, int width)
    {
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (DisplayWidth.Of(word) <= width) yield return word;
            else foreach (string piece in Pieces(word, width)) yield return piece;
        }
    }

    private static List<string> Pieces(string word, int width)
    {
        List<string> pieces = [];
        int from = 0, used = 0;
        // a word may have millions of letters, so that none of them may leave anything behind
        foreach (ValueMatch whole in Whole().EnumerateMatches(word))
        {
            int wide = DisplayWidth.Of(word.Substring(whole.Index, whole.Length));
            if (used + wide > width && used > 0)
            {
                pieces.Add(word[from..whole.Index]);
                (from, used) = (whole.Index, 0);
            }
            used += wide;
        }
        pieces.Add(word[from..]);
        return pieces;
    }

    // what stands on one line: a character by its number, a numeral with its sign, a pair, a character
    [GeneratedRegex(@"‹U\+[0-9A-F]{4,6}›|[+\-−±]?[0-9][0-9.,]*(?:[eE][+\-]?[0-9]+)?|[\uD800-\uDBFF][\uDC00-\uDFFF]|.", RegexOptions.Singleline)]
    private static partial Regex Whole();
}
