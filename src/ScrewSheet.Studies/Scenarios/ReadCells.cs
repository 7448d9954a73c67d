using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>The cells a reference reads.</summary>
internal static class ReadCells
{
    /// <summary>The cell itself, there or not; of a run or column those that are there, row by row, without a column's headings.</summary>
    public static IEnumerable<CellId> Of(Workbook workbook, CellReference reference)
    {
        IEnumerable<CellId> cells = reference.In(workbook);
        // notes in a column that a cell reads without fault are its headings
        return reference.Column is null ? cells : cells.Where(id => workbook.Find(id.Sheet)!.Cells[id.Address].Content is not NoteContent);
    }
}
