using System.Text.RegularExpressions;

namespace ScrewSheet.Workbooks.Editing;

/// <summary>A word of such a line that may name a cell.</summary>
/// <param name="Sheet">The sheet written before it, or null.</param>
/// <param name="Name">The name or address.</param>
/// <param name="IsPlace">True where the line says where something stands, false where it says which cell is varied, shown or correlated.</param>
internal readonly record struct TableWord(string? Sheet, string Name, bool IsPlace);

/// <summary>The lines of what-if tables and plots, which name cells without being cells.</summary>
internal static partial class TableLines
{
    private static readonly string[] Places = ["what-if", "plot"], Cells = ["vary", "show", "correlate"];

    /// <summary>The line with each word outside quotes and remark written as told, its sheet included, or left where that gives null; other lines as they are.</summary>
    /// <param name="line">The line.</param>
    /// <param name="isSheet">True for the name of a sheet; what stands before a point otherwise is no sheet, and neither word is asked for.</param>
    /// <param name="write">The word as it shall read.</param>
    public static string Rewrite(string line, Func<string, bool> isSheet, Func<TableWord, string?> write)
    {
        string trimmed = line.TrimStart(' ', '\t');
        bool Begins(string word) => trimmed.StartsWith(word + " ", StringComparison.Ordinal);
        bool place = Array.Exists(Places, Begins);
        if (!place && !Array.Exists(Cells, Begins)) return line;
        int end = Format.LineScan.Of(line, 0).Remark;
        string Piece(Match match)
        {
            if (match.Value[0] == '"') return match.Value;
            string? sheet = match.Groups["sheet"].Success ? match.Groups["sheet"].Value : null;
            return sheet is null || isSheet(sheet) ? write(new TableWord(sheet, match.Groups["name"].Value, place)) ?? match.Value : match.Value;
        }

        return Pieces().Replace(line[..end], Piece) + line[end..];
    }

    // a text in quotes, or a whole word, perhaps with its sheet, that belongs to no longer path
    [GeneratedRegex("\"(?:\\\\.|[^\"\\\\])*\"?|(?<![\\w.])(?:(?<sheet>\\w+)\\.)?(?<name>\\w+)(?![\\w.(])")]
    private static partial Regex Pieces();
}
