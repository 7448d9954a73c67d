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
    public ReviewTally Tally() => Overview().Tally;

    /// <summary>All marks, and how much of the workbook is reviewed.</summary>
    public ReviewOverview Overview()
    {
        Dictionary<CellId, ImmutableArray<CellReview>> all = [];
        int results = 0, reviewed = 0, broken = 0;
        foreach (CellResult cell in calculation.Cells.Values)
        {
            bool isResult = cell.Cell.Content is ResultContent;
            if (isResult) results++;
            ImmutableArray<CellReview> marks = Of(cell.Id);
            if (marks.IsEmpty) continue;
            all.Add(cell.Id, marks);
            broken += marks.Count(mark => !mark.Holds);
            if (isResult && marks.Any(mark => mark.Holds)) reviewed++;
        }
        return new ReviewOverview(all, new ReviewTally(results, reviewed, broken));
    }

    /// <summary>The workbook with a mark above a cell; an earlier one of the same person is replaced.</summary>
    /// <param name="id">The cell; a result with a value.</param>
    /// <param name="initials">Who: one to twelve letters, points or hyphens between them.</param>
    /// <param name="date">When: year, month and day, such as 2026-11-25.</param>
    /// <param name="fault">Why it cannot be marked, or null.</param>
    /// <exception cref="ArgumentException">The initials or the date are none.</exception>
    public Workbook Mark(CellId id, string initials, string date, out Fault? fault)
    {
        Workbook marked = Mark([id], initials, date, out ImmutableArray<CellId> left);
        fault = left.IsEmpty ? null : MergeFaults.NotReviewable(id.ToString());
        return marked;
    }

    /// <summary>The same for several cells.</summary>
    /// <param name="ids">The cells.</param>
    /// <param name="initials">Who.</param>
    /// <param name="date">When.</param>
    /// <param name="left">Those that cannot be marked: no result, or one without a value.</param>
    /// <exception cref="ArgumentException">The initials or the date are none.</exception>
    public Workbook Mark(IEnumerable<CellId> ids, string initials, string date, out ImmutableArray<CellId> left)
    {
        ArgumentNullException.ThrowIfNull(ids);
        if (!AreInitials(initials)) throw new ArgumentException("They are no initials.", nameof(initials));
        if (!IsDate(date)) throw new ArgumentException("It is no date.", nameof(date));
        Workbook workbook = calculation.Workbook;
        var unmarked = ImmutableArray.CreateBuilder<CellId>();
        foreach (CellId id in ids)
        {
            if (calculation.Cells.GetValueOrDefault(id)?.Value is not null && contents.HashOf(id) is { } hash)
                workbook = Change(workbook, id.Sheet, (sheet, newLine) => MarkEditing.With(sheet, id.Address, new ReviewMark(initials, date, hash.ToString()), newLine));
            else unmarked.Add(id);
        }
        left = unmarked.ToImmutable();
        return workbook;
    }

    /// <summary>A workbook without the marks of some cells; the same one where they have none.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="ids">The cells.</param>
    /// <param name="only">The one mark that goes; null for all.</param>
    public static Workbook Without(Workbook workbook, IEnumerable<CellId> ids, ReviewMark? only = null)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        ArgumentNullException.ThrowIfNull(ids);
        foreach (CellId id in ids) workbook = Change(workbook, id.Sheet, (sheet, newLine) => MarkEditing.Without(sheet, id.Address, mark => only is null || mark == only, newLine));
        return workbook;
    }

    private static Workbook Change(Workbook workbook, string name, Func<Sheet, LineEnd, Sheet> change)
    {
        if (workbook.Find(name) is not { } sheet) return workbook;
        Sheet changed = change(sheet, workbook.Source.Value?.NewLine ?? LineEnd.Lf);
        return ReferenceEquals(changed, sheet) ? workbook : workbook with { Sheets = workbook.Sheets.Replace(sheet, changed) };
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
