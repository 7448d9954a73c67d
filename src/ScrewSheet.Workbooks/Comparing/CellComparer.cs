using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Workbooks.Comparing;

/// <summary>Finds the cells an author changed.</summary>
internal sealed class CellComparer(WorkbookPairs pairs)
{
    private readonly SameMeaning meaning = new(pairs);

    /// <summary>Changed and new cells in the order of the later version, then those that are gone.</summary>
    public ImmutableArray<CellChange> Changes()
    {
        var changes = ImmutableArray.CreateBuilder<CellChange>();
        HashSet<CellId> staying = [];
        foreach (Sheet sheet in pairs.After.Sheets)
        {
            foreach (Cell cell in sheet.CellsInOrder)
            {
                CellId id = new(sheet.Name, cell.Address);
                if (pairs.Backward(id) is not { } before) changes.Add(new CellChange(null, id, cell.Name, [new TextChange(KindOf(cell), null, Text(cell))]));
                else
                {
                    staying.Add(before);
                    if (Of(before, id, cell) is { IsEmpty: false } texts) changes.Add(new CellChange(before, id, cell.Name, texts));
                }
            }
        }
        changes.AddRange(
            from sheet in pairs.Before.Sheets
            from cell in sheet.CellsInOrder
            let id = new CellId(sheet.Name, cell.Address)
            where !staying.Contains(id)
            select new CellChange(id, null, cell.Name, [new TextChange(KindOf(cell), Text(cell), null)]));
        return changes.ToImmutable();
    }

    private ImmutableArray<TextChange> Of(CellId before, CellId after, Cell now)
    {
        Cell was = pairs.Before.Find(before.Sheet)!.Cells[before.Address];
        if (ReferenceEquals(was, now)) return [];
        bool same = was.Name == now.Name && was.DeclaredType == now.DeclaredType && was.Remark == now.Remark && Equals(was.Format, now.Format)
            && IsSame(was.Content, before.Sheet, now.Content, after.Sheet) && pairs.IsInPlace(before, after) && ReviewsOf(was) == ReviewsOf(now);
        return same ? [] : Differences(was, before, now, after);
    }

    private ImmutableArray<TextChange> Differences(Cell was, CellId before, Cell now, CellId after)
    {
        List<TextChange> changes = [];
        void Add(string what, string? old, string? late)
        {
            if (old != late) changes.Add(new TextChange(what, old, late));
        }
        if (!pairs.IsInPlace(before, after)) Add("place", before.ToString(), after.ToString());
        Add("name", was.Name, now.Name);
        Add("type", was.DeclaredType, now.DeclaredType);
        Add("shown in", FormatOf(was), FormatOf(now));
        if (!IsSame(was.Content, before.Sheet, now.Content, after.Sheet)) changes.Add(new TextChange(KindOf(now), Content(was), Content(now)));
        Add("remark", was.Remark, now.Remark);
        Add("review", ReviewsOf(was), ReviewsOf(now));
        return [.. changes];
    }

    private bool IsSame(CellContent was, string before, CellContent now, string after) => (was, now) switch
    {
        (ResultContent early, ResultContent late) => meaning.Of(early.Expression, before, late.Expression, after),
        (GivenContent early, GivenContent late) => early.Text == late.Text && early.Source == late.Source && early.Tolerance?.Text == late.Tolerance?.Text && early.Within?.Text == late.Within?.Text,
        (NoteContent early, NoteContent late) => early.Text == late.Text,
        (BrokenContent early, BrokenContent late) => early.Text == late.Text,
        _ => false,
    };

    private static string? ReviewsOf(Cell cell)
    {
        if (cell.Source.Value is not { Leading.IsEmpty: false }) return null;
        ImmutableArray<ReviewMark> marks = ReviewLine.Above(cell);
        return marks.IsEmpty ? null : string.Join(", ", marks.Select(mark => $"{mark.Initials} {mark.Date} {mark.Hash[..4]}"));
    }

    private static string? FormatOf(Cell cell) => cell.Format is null ? null : DisplayFormatText.Write(cell.Format);

    private static string KindOf(Cell cell) => cell.Content switch { NoteContent => "note", GivenContent => "given", ResultContent => "expression", _ => "line" };

    /// <summary>The content as it stands behind the sign.</summary>
    private static string Content(Cell cell) => cell.Content switch
    {
        NoteContent note => QuotedText.Write(note.Text),
        ResultContent result => result.Expression,
        BrokenContent broken => broken.Shown.Trim(),
        _ => CellTextWriter.Entry(new Cell { Address = cell.Address, Content = cell.Content })["= ".Length..],
    };

    /// <summary>The whole text without the address and what was kept.</summary>
    private static string Text(Cell cell) => CellTextWriter.Entry(cell.Content is ResultContent result ? cell with { Content = result with { Kept = null } } : cell);
}
