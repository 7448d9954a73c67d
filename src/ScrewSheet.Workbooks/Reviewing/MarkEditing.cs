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
        int from = leading.Length;
        while (from > 0 && leading[from - 1].IsOfNextCell) from--;
        IEnumerable<FileLine> staying = leading[from..].Where(line => !line.IsReviewed || ReviewLine.Read(line.Text)?.Initials != mark.Initials);
        ImmutableArray<FileLine> above = [.. leading[..from], .. staying, new FileLine(ReviewLine.Write(mark), newLine)];
        Cell marked = cell.Source.Value is { } source ? cell with { Source = new(source.With(above)) } : CellSource.Attach(cell, new FileLine(CellTextWriter.Line(cell), newLine), above);
        // taken out first: the dictionary takes a cell of which only the lines above differ for the same
        return sheet with { Cells = sheet.Cells.Remove(address).Add(address, marked) };
    }
}
