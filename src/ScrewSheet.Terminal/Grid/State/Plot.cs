using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>One run of values over another.</summary>
/// <param name="Across">What the horizontal axis shows, with its unit.</param>
/// <param name="Up">What the vertical axis shows, with its unit.</param>
/// <param name="Points">The points, in those units.</param>
/// <param name="LeftOut">Rows without two figures.</param>
/// <param name="IsJoined">True where the points follow each other and are joined by dots.</param>
internal sealed record Plot(string Across, string Up, ImmutableArray<(double X, double Y)> Points, int LeftOut, bool IsJoined = false)
{
    /// <summary>The last selected column over the first; of one column, over the number of its row.</summary>
    /// <param name="session">The session.</param>
    /// <param name="problem">Why there is none, or null.</param>
    public static Plot? Of(Session session, out string? problem)
    {
        CellBlock block = session.Block;
        problem = block.Rows < 2 ? "Select two columns of figures first, two rows at least: hold Shift and move. The last column is drawn over the first." : null;
        if (problem is not null) return null;
        Column up = new(session, block.Last.Column, block), across = new(session, block.First.Column, block);
        bool counted = block.Columns == 1;
        var points = ImmutableArray.CreateBuilder<(double, double)>();
        int leftOut = 0;
        foreach (int row in Enumerable.Range(block.First.Row, block.Rows))
        {
            double? y = up.At(row), x = counted ? row : across.At(row);
            if (x is { } there && y is { } high) points.Add((there, high));
            else leftOut++;
        }
        if (points.Count < 2) problem = up.Problem ?? (counted ? null : across.Problem) ?? "Fewer than two of the selected rows hold a figure in both columns.";
        return problem is not null ? null : new Plot(counted ? "row" : across.Title, up.Title, points.ToImmutable(), leftOut);
    }

    /// <summary>A column of figures of one unit: that of its first.</summary>
    private sealed class Column
    {
        private readonly Session session;
        private readonly int column;
        private readonly Unit unit = UnitTable.Number;
        private readonly Quantities.Dimension? dimension;

        public Column(Session session, int column, CellBlock block)
        {
            (this.session, this.column) = (session, column);
            for (int row = block.First.Row; row <= block.Last.Row && dimension is null; row++)
            {
                if (Result(row) is not { Value: NumberValue or QuantityValue } first) continue;
                unit = PrintedText.UnitOf(first.Value, first.Cell.Format, session.Workbook.Head.Units) ?? UnitTable.Number;
                dimension = unit.Dimension;
            }
            string head = Head(block.First.Row);
            Title = UnitLabel.Of(head, unit);
        }

        public string Title { get; }

        public string? Problem => dimension is null ? $"The column {CellAddress.ColumnName(column)} holds no figures in these rows." : null;

        /// <summary>The figure of a row; null where it has none, or one of another dimension.</summary>
        public double? At(int row) => Result(row)?.Value switch
        {
            NumberValue number when dimension?.IsNone == true => unit.FromSi(number.Value),
            QuantityValue quantity when quantity.Quantity.Dimension == dimension => unit.FromSi(quantity.Si),
            _ => null,
        };

        private CellResult? Result(int row) => session.Result(new CellId(session.SheetName, new CellAddress(column, row)));

        /// <summary>The words at the top of the column, or its letter.</summary>
        private string Head(int first)
        {
            for (int row = first; row >= Math.Max(1, first - 1); row--)
            {
                if (session.Sheet.Cells.GetValueOrDefault(new CellAddress(column, row))?.Content is NoteContent note) return PlainText.Of(note.Text);
            }
            return CellAddress.ColumnName(column);
        }
    }
}
