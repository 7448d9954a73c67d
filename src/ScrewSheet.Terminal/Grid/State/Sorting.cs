using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>What is sorted.</summary>
internal enum SortWhat
{
    /// <summary>The rows of the selected block.</summary>
    Rows,

    /// <summary>The same rows over the whole width of the sheet.</summary>
    WholeRows,

    /// <summary>The columns of the selected block.</summary>
    Columns,

    /// <summary>The same columns over the whole height of the sheet.</summary>
    WholeColumns,
}

/// <summary>Puts rows or columns in order.</summary>
internal static class Sorting
{
    /// <summary>By the values in the cursor's column or row; figures before words, what has no value last. Every reference follows its cell.</summary>
    public static Session Apply(Session session, SortWhat what, bool falling)
    {
        bool columns = what is SortWhat.Columns or SortWhat.WholeColumns;
        CellBlock block = Stretched(session, what);
        CellAddress cursor = session.Cursor;
        int first = columns ? block.First.Column : block.First.Row;
        var items = Enumerable.Range(first, columns ? block.Columns : block.Rows).Select(at => (At: at, Key: Key.Of(session, columns ? cursor with { Column = at } : cursor with { Row = at }))).ToList();
        var filled = items.Where(item => item.Key.Rank < 2);
        List<int> order = [.. (falling ? filled.OrderByDescending(item => item.Key) : filled.OrderBy(item => item.Key)).Concat(items.Where(item => item.Key.Rank == 2)).Select(item => item.At)];
        if (order.SequenceEqual(items.Select(item => item.At))) return session;
        Dictionary<int, int> to = order.Select((at, i) => (at, i)).ToDictionary(pair => pair.at, pair => first + pair.i);
        CellAddress Moved(CellAddress at) => columns ? at with { Column = to[at.Column] } : at with { Row = to[at.Row] };
        return session.Changed(Relocation.Apply(session.Workbook, (id, corner) => corner == 0 && id.Sheet == session.SheetName && block.Contains(id.Address) ? id with { Address = Moved(id.Address) } : id), $"sorting {block}");
    }

    /// <summary>The block that is put in order.</summary>
    public static CellBlock Stretched(Session session, SortWhat what)
    {
        CellBlock block = session.Block;
        CellAddress extent = Moves.Extent(session.Sheet);
        return what switch
        {
            SortWhat.WholeRows => new(block.First with { Column = 1 }, block.Last with { Column = Math.Max(extent.Column, block.Last.Column) }),
            SortWhat.WholeColumns => new(block.First with { Row = 1 }, block.Last with { Row = Math.Max(extent.Row, block.Last.Row) }),
            _ => block,
        };
    }

    private readonly record struct Key(int Rank, double Figure, string Words) : IComparable<Key>
    {
        public static Key Of(Session session, CellAddress at) => session.Sheet.Cells.GetValueOrDefault(at)?.Content is NoteContent note
            ? new Key(1, 0, note.Text)
            : session.Result(new CellId(session.SheetName, at))?.Value switch
            {
                NumberValue number => new Key(0, number.Value, ""),
                QuantityValue quantity => new Key(0, quantity.Si, ""),
                TextValue text => new Key(1, 0, text.Value),
                TruthValue truth => new Key(0, truth.Value ? 1 : 0, ""),
                _ => new Key(2, 0, ""),
            };

        public int CompareTo(Key other)
        {
            int rank = Rank.CompareTo(other.Rank);
            if (rank != 0) return rank;
            int figure = Figure.CompareTo(other.Figure);
            return figure != 0 ? figure : string.CompareOrdinal(Words, other.Words);
        }
    }
}
