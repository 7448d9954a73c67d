using System.Text.RegularExpressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Editing;

/// <summary>The lines of what-if tables and plots, which name cells without being cells.</summary>
internal static partial class TableLines
{
    private static readonly string[] Words = ["what-if", "vary", "show", "plot", "correlate"];

    /// <summary>The line with each address outside quotes and remark written as told, or left where that gives null; other lines as they are.</summary>
    public static string Rewrite(string line, Func<CellAddress, string?> write) =>
        RewriteWords(line, word => CellAddress.TryParse(word, out CellAddress address) ? write(address) : null);

    /// <summary>The same for any word.</summary>
    public static string RewriteWords(string line, Func<string, string?> write)
    {
        string trimmed = line.TrimStart(' ', '\t');
        if (!Array.Exists(Words, word => trimmed.StartsWith(word + " ", StringComparison.Ordinal))) return line;
        int end = Format.LineScan.Of(line, 0).Remark;
        return Pieces().Replace(line[..end], match => match.Value[0] == '"' ? match.Value : write(match.Value) ?? match.Value) + line[end..];
    }

    // a text in quotes, or a whole word that belongs to no path
    [GeneratedRegex("\"(?:\\\\.|[^\"\\\\])*\"?|(?<![\\w.])\\w+(?![\\w.(])")]
    private static partial Regex Pieces();
}
