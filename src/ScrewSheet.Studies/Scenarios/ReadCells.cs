using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>The cells a reference reads.</summary>
internal static class ReadCells
{
    /// <summary>The cell itself, there or not; of a run or column those that are there, row by row, without a column's headings.</summary>
    public static IEnumerable<CellId> Of(Workbook workbook, CellReference reference)
    {
        if (reference.Last is not { } last) return [reference.First];
        (int left, int right) = Ordered(reference.First.Address.Column, last.Address.Column);
        (int top, int bottom) = Ordered(reference.First.Address.Row, last.Address.Row);
        // notes in a column that a cell reads without fault are its headings
        return (workbook.Find(reference.First.Sheet)?.Cells.Values ?? []).Where(cell => reference.Column is null || cell.Content is not NoteContent).Select(cell => cell.Address)
            .Where(at => at.Column >= left && at.Column <= right && at.Row >= top && at.Row <= bottom)
            .Order().Select(at => new CellId(reference.First.Sheet, at));
    }

    private static (int, int) Ordered(int a, int b) => (Math.Min(a, b), Math.Max(a, b));
}
