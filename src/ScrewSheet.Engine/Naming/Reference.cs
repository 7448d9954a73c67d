using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Naming;

/// <summary>What a name, address or run in an expression refers to.</summary>
internal abstract record Reference
{
    private Reference() { }

    /// <summary>As results say it.</summary>
    public abstract CellReference Said { get; }

    /// <summary>One cell.</summary>
    public sealed record ToCell(CellId Cell) : Reference
    {
        /// <inheritdoc/>
        public override CellReference Said => new(Cell);
    }

    /// <summary>A run of cells, both corners included, on one sheet.</summary>
    public sealed record ToRun(CellId First, CellId Last) : Reference
    {
        /// <summary>The column's line, when the run is a column by name, from the sheet's first row to its last.</summary>
        public SheetColumn? Column { get; init; }

        /// <inheritdoc/>
        public override CellReference Said => new(First, Last) { Column = Column?.Name };

        /// <summary>The most cells of a run.</summary>
        public const int Maximum = 200_000;

        public long Size => (long)(Math.Abs(Last.Address.Column - First.Address.Column) + 1) * (Math.Abs(Last.Address.Row - First.Address.Row) + 1);

        public bool Contains(CellId cell) => cell.Sheet == First.Sheet
            && Between(cell.Address.Column, First.Address.Column, Last.Address.Column)
            && Between(cell.Address.Row, First.Address.Row, Last.Address.Row);

        /// <summary>The addresses row by row.</summary>
        public IEnumerable<CellId> Cells()
        {
            (int left, int right) = Ordered(First.Address.Column, Last.Address.Column);
            (int top, int bottom) = Ordered(First.Address.Row, Last.Address.Row);
            for (int row = top; row <= bottom; row++)
                for (int column = left; column <= right; column++)
                    yield return new CellId(First.Sheet, new CellAddress(column, row));
        }

        private static bool Between(int value, int a, int b) => value >= Math.Min(a, b) && value <= Math.Max(a, b);

        private static (int, int) Ordered(int a, int b) => (Math.Min(a, b), Math.Max(a, b));
    }
}
