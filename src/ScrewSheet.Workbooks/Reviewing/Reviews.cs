using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>
/// The review marks of a calculated workbook. A mark holds while the result's expression and everything it depends on, through any number of cells, is what it was:
/// givens with tolerances and limits, expressions, the author's functions, and the formulas the library declares. Addresses, names, remarks and how values are shown do not count,
/// unless a text shows them.
/// </summary>
/// <remarks>Not safe for use by several threads at once.</remarks>
/// <param name="calculation">All results.</param>
public sealed class Reviews(Calculation calculation)
{
    private readonly ReviewContents contents = new(calculation);

    /// <summary>The marks of a cell, in order, each with whether it holds; empty where it has none.</summary>
    public ImmutableArray<CellReview> Of(CellId id) =>
        calculation.Workbook.Find(id.Sheet)?.Cells.GetValueOrDefault(id.Address) is { } cell ? [.. ReviewLine.Above(cell).Select(mark => new CellReview(mark, BrokenBy(id, mark)))] : [];

    /// <summary>How much of the workbook is reviewed.</summary>
    public ReviewTally Tally()
    {
        int results = 0, reviewed = 0, broken = 0;
        foreach (CellResult cell in calculation.Cells.Values)
        {
            ImmutableArray<CellReview> marks = Of(cell.Id);
            broken += marks.Count(mark => !mark.Holds);
            if (cell.Cell.Content is not ResultContent) continue;
            results++;
            if (marks.Any(mark => mark.Holds)) reviewed++;
        }
        return new ReviewTally(results, reviewed, broken);
    }

    /// <summary>The workbook with a mark above a cell; an earlier one of the same person is replaced.</summary>
    /// <param name="id">The cell; a result with a value.</param>
    /// <param name="initials">Who: one to twelve letters, points or hyphens between them.</param>
    /// <param name="date">When: year, month and day, such as 2026-11-25.</param>
    /// <param name="fault">Why it cannot be marked, or null.</param>
    /// <exception cref="ArgumentException">The initials or the date are none.</exception>
    public Workbook Mark(CellId id, string initials, string date, out Fault? fault)
    {
        if (!AreInitials(initials)) throw new ArgumentException("They are no initials.", nameof(initials));
        if (!IsDate(date)) throw new ArgumentException("It is no date.", nameof(date));
        Workbook workbook = calculation.Workbook;
        fault = null;
        if (calculation.Cells.GetValueOrDefault(id)?.Value is null || contents.HashOf(id) is not { } hash)
        {
            fault = MergeFaults.NotReviewable(id.ToString());
            return workbook;
        }
        Sheet sheet = workbook.Find(id.Sheet)!;
        Sheet marked = MarkEditing.With(sheet, id.Address, new ReviewMark(initials, date, hash.ToString()), workbook.Source.Value?.NewLine ?? LineEnd.Lf);
        Workbook changed = workbook with { Sheets = workbook.Sheets.Replace(sheet, marked) };
        return WorkbookText.Read(WorkbookText.Write(changed)) is WorkbookRead read ? read.Workbook : throw new InvalidOperationException("A workbook with a mark cannot be read again.");
    }

    /// <summary>True for one to twelve letters, points or hyphens between them.</summary>
    public static bool AreInitials(string text) => ReviewLine.AreInitials(text);

    /// <summary>True for a day written as year, month and day.</summary>
    public static bool IsDate(string text) => ReviewLine.IsDate(text);

    /// <summary>How many marks stand directly above no cell and so hold for nothing.</summary>
    public static int Unattached(Workbook workbook)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        IEnumerable<ReservedLine> lines = workbook.Reserved.Concat(workbook.Sheets.SelectMany(sheet => sheet.Reserved));
        return lines.Count(line => line.Word == "reviewed" && ReviewLine.Read(line.Text) is not null) - workbook.Sheets.Sum(sheet => sheet.Cells.Values.Sum(cell => ReviewLine.Above(cell).Length));
    }

    private string? BrokenBy(CellId id, ReviewMark mark)
    {
        if (calculation.Cells.GetValueOrDefault(id) is not { Cell.Content: ResultContent } cell) return "the cell is no result any more";
        if (cell.Fault is not null) return "the cell is in fault";
        return contents.HashOf(id) is { } hash ? hash.Change(mark.Hash) : "the cell is in fault";
    }
}
