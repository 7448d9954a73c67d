using System.Collections.Immutable;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>Puts marks above cells.</summary>
internal static class MarkEditing
{
    /// <summary>The sheet with the mark directly above a cell, in the place of one by the same person.</summary>
    public static Sheet With(Sheet sheet, CellAddress address, ReviewMark mark, LineEnd newLine)
    {
        Cell cell = sheet.Cells[address];
        ImmutableArray<FileLine> leading = cell.Source.Value?.Leading ?? [];
        int from = SheetEditing.RemarksFrom(leading);
        IEnumerable<FileLine> staying = leading[from..].Where(line => !line.IsReviewed || ReviewLine.Read(line.Text)?.Initials != mark.Initials);
        ImmutableArray<FileLine> above = [.. leading[..from], .. staying, new FileLine(ReviewLine.Write(mark), newLine)];
        Cell marked = cell.Source.Value is { } source ? cell with { Source = new(source.With(above)) } : CellSource.Attach(cell, new FileLine(CellTextWriter.Line(cell), newLine), above);
        return SheetEditing.Set(sheet, cell, marked);
    }
}
