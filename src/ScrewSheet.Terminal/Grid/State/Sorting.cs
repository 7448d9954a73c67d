using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>Puts the rows of a selected block in order.</summary>
internal static class Sorting
{
    /// <summary>By the values in the cursor's column; figures before words, rows without a value last. Every reference follows its cell.</summary>
    public static Session Rows(Session session, bool falling)
    {
        CellBlock block = session.Block;
        int column = session.Cursor.Column;
        var rows = Enumerable.Range(block.First.Row, block.Rows).Select(row => (Row: row, Key: Key.Of(session, new CellAddress(column, row)))).ToList();
        var filled = rows.Where(row => row.Key.Rank < 2);
        List<int> order = [.. (falling ? filled.OrderByDescending(row => row.Key) : filled.OrderBy(row => row.Key)).Concat(rows.Where(row => row.Key.Rank == 2)).Select(row => row.Row)];
        if (order.SequenceEqual(rows.Select(row => row.Row))) return session;
        Dictionary<int, int> to = order.Select((row, i) => (row, i)).ToDictionary(pair => pair.row, pair => block.First.Row + pair.i);
        return session.Changed(Relocation.Apply(session.Workbook, (id, corner) => corner == 0 && id.Sheet == session.SheetName && block.Contains(id.Address) ? id with { Address = id.Address with { Row = to[id.Address.Row] } } : id), $"sorting {block}");
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
