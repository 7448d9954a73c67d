using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>The line of a review mark.</summary>
internal static class ReviewLine
{
    /// <summary>The most letters initials have.</summary>
    private const int MostInitials = 12;

    /// <summary>The mark a line holds; null where it cannot be read.</summary>
    public static ReviewMark? Read(string line)
    {
        string[] words = line[..LineScan.Of(line, 0).Remark].Split([' ', '\t'], StringSplitOptions.RemoveEmptyEntries);
        return words is ["reviewed", var initials, var date, var hash] && AreInitials(initials) && IsDate(date) && ReviewHash.IsHash(hash) ? new ReviewMark(initials, date, hash) : null;
    }

    /// <summary>The line.</summary>
    public static string Write(ReviewMark mark) => $"reviewed {mark.Initials} {mark.Date} {mark.Hash}";

    /// <summary>The marks directly above a cell, as they stand.</summary>
    public static ImmutableArray<ReviewMark> Above(Cell cell)
    {
        ImmutableArray<FileLine> leading = cell.Source.Value?.Leading ?? [];
        return [.. leading[SheetEditing.RemarksFrom(leading)..].Where(line => line.IsReviewed).Select(line => Read(line.Text)).OfType<ReviewMark>()];
    }

    /// <summary>Letters, with points or hyphens between them perhaps.</summary>
    public static bool AreInitials(string text) =>
        text.Length is > 0 and <= MostInitials && text.All(c => char.IsLetter(c) || c is '.' or '-') && char.IsLetter(text[0]);

    /// <summary>A day such as <c>2026-11-25</c>.</summary>
    public static bool IsDate(string text) => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _);
}
