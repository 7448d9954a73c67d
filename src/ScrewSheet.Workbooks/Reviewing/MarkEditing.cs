using System.Collections.Immutable;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>Puts marks above cells and takes them away.</summary>
internal static class MarkEditing
{
    /// <summary>The sheet with the mark directly above a cell, in the place of one by the same person.</summary>
    public static Sheet With(Sheet sheet, CellAddress address, ReviewMark mark, LineEnd newLine) =>
        Change(sheet, address, other => other.Initials == mark.Initials, [ReviewLine.Write(mark)], newLine);

    /// <summary>The sheet without those of a cell's marks; the same sheet where it has none of them.</summary>
    public static Sheet Without(Sheet sheet, CellAddress address, Func<ReviewMark, bool> leaves, LineEnd newLine) =>
        sheet.Cells.TryGetValue(address, out Cell? cell) && ReviewLine.Above(cell).Any(leaves) ? Change(sheet, address, leaves, [], newLine) : sheet;

    private static Sheet Change(Sheet sheet, CellAddress address, Func<ReviewMark, bool> leaves, ImmutableArray<string> added, LineEnd newLine)
    {
        Cell cell = sheet.Cells[address];
        ImmutableArray<FileLine> leading = cell.Source.Value?.Leading ?? [];
        int from = SheetEditing.RemarksFrom(leading);
        bool Goes(FileLine line) => line.IsReviewed && ReviewLine.Read(line.Text) is { } mark && leaves(mark);
        ImmutableArray<FileLine> gone = [.. leading[from..].Where(Goes)];
        ImmutableArray<FileLine> above = [.. leading[..from], .. leading[from..].Where(line => !Goes(line)), .. added.Select(line => new FileLine(line, newLine))];
        Cell changed = cell.Source.Value is { } source ? cell with { Source = new(source.With(above)) } : CellSource.Attach(cell, new FileLine(CellTextWriter.Line(cell), newLine), above);
        return SheetEditing.Set(sheet with { Reserved = Reserved(sheet, gone, added) }, cell, changed);
    }

    private static ImmutableArray<ReservedLine> Reserved(Sheet sheet, ImmutableArray<FileLine> gone, ImmutableArray<string> added)
    {
        List<ReservedLine> lines = [.. sheet.Reserved];
        foreach (FileLine line in gone)
        {
            int at = lines.FindIndex(reserved => reserved.Text == line.Text);
            if (at >= 0) lines.RemoveAt(at);
        }
        return [.. lines, .. added.Select(line => new ReservedLine("reviewed", line, [], default))];
    }
}
