using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Editing;

/// <content>Moves whole rows and columns among the others.</content>
public static partial class RowsAndColumns
{
    /// <summary>With the rows from one to another, both included, so many rows further down; negative for up. Those they pass make room.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="first">The first row.</param>
    /// <param name="last">The last row.</param>
    /// <param name="by">How far; the same workbook where that leads out of the sheet.</param>
    public static Workbook MoveRows(Workbook workbook, string sheet, int first, int last, int by)
    {
        Passage passage = new(first, last, by);
        if (!passage.IsInside(CellAddress.LastRow)) return workbook;
        return Relocation.Apply(workbook,
            (id, _) => id.Sheet == sheet ? id with { Address = id.Address with { Row = passage.Cell(id.Address.Row) } } : id,
            (one, other) => one.Sheet != sheet ? null : passage.Run(one.Address.Row, other.Address.Row) is var (from, to)
                ? (one with { Address = one.Address with { Row = from } }, other with { Address = other.Address with { Row = to } }) : null);
    }

    /// <summary>With the columns from one to another, both included, so many columns further right; negative for left. Those they pass make room; widths move along.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="first">The first column.</param>
    /// <param name="last">The last column.</param>
    /// <param name="by">How far; the same workbook where that leads out of the sheet.</param>
    public static Workbook MoveColumns(Workbook workbook, string sheet, int first, int last, int by)
    {
        Passage passage = new(first, last, by);
        if (!passage.IsInside(CellAddress.LastColumn)) return workbook;
        Workbook moved = Relocation.Apply(workbook,
            (id, _) => id.Sheet == sheet ? id with { Address = id.Address with { Column = passage.Cell(id.Address.Column) } } : id,
            (one, other) => one.Sheet != sheet ? null : passage.Run(one.Address.Column, other.Address.Column) is var (from, to)
                ? (one with { Address = one.Address with { Column = from } }, other with { Address = other.Address with { Column = to } }) : null);
        return Widths(moved, sheet, old => passage.Cell(old));
    }

    /// <summary>Rows or columns on their way past others.</summary>
    private readonly record struct Passage(int First, int Last, int By)
    {
        private int Count => Last - First + 1;

        public bool IsInside(int most) => By != 0 && First + By >= 1 && Last + By <= most;

        /// <summary>Where one of them, or one that makes room, comes to stand.</summary>
        public int Cell(int at)
        {
            if (at >= First && at <= Last) return at + By;
            if (By > 0 && at > Last && at <= Last + By) return at - Count;
            return By < 0 && at < First && at >= First + By ? at + Count : at;
        }

        /// <summary>A run goes along where all of it moves; else it keeps those of its own that stay inside and closes up where one left it.</summary>
        public (int From, int To) Run(int from, int to) => from >= First && to <= Last ? (from + By, to + By)
            : (Opened(from >= First && from <= Last ? First : Closed(from)), Opened(to >= First && to <= Last ? First - 1 : Closed(to)));

        /// <summary>Once they are taken out.</summary>
        private int Closed(int at) => at > Last ? at - Count : at;

        /// <summary>Once they are put in again.</summary>
        private int Opened(int at) => at >= First + By ? at + Count : at;
    }
}
