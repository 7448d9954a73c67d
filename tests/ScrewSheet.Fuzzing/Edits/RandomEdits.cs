using System.Globalization;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using GridEdits = ScrewSheet.Terminal.Grid.State.Edits;

namespace ScrewSheet.Fuzzing.Edits;

/// <summary>One edit after another, done to both books.</summary>
internal static class RandomEdits
{
    private const int Columns = 5, Rows = 8;

    private static readonly string[] Names = ["first", "peak", "low", "total", "other"], SheetNames = ["S", "T", "Fall", "Extra"];

    /// <summary>Does the next edit.</summary>
    /// <returns>The session after it, and what it was; its first word is the kind.</returns>
    public static (Session Session, string What) Next(Random random, Session session, SlowSession slow, Calculation calculation)
    {
        Session there = Somewhere(random, session);
        return random.Next(30) switch
        {
            < 9 => Type(random, there, slow),
            < 11 => Clear(there, slow),
            < 13 => Insert(there, slow, random.Next(2) == 0),
            < 15 => Remove(there, slow, random.Next(2) == 0),
            < 17 => Move(random, there, slow, random.Next(2) == 0),
            < 19 => Fill(there, slow, random.Next(2) == 0),
            19 => Copy(random, there, slow),
            < 22 => Cut(random, there, slow),
            22 => Rename(random, there, slow),
            23 => random.Next(3) switch { 0 => RenameSheet(random, there, slow), 1 => AddSheet(random, there, slow), _ => RemoveSheet(there, slow) },
            < 26 => Sort(random, there, slow, calculation),
            < 29 => Undo(there, slow),
            _ => Redo(there, slow),
        };
    }

    /// <summary>On any sheet, at any cell, with a small block selected.</summary>
    private static Session Somewhere(Random random, Session session)
    {
        CellAddress cursor = new(1 + random.Next(Columns), 1 + random.Next(Rows)), anchor = new(Math.Max(1, cursor.Column - random.Next(3)), Math.Max(1, cursor.Row - random.Next(4)));
        return session with { SheetName = session.Workbook.Sheets[random.Next(session.Workbook.Sheets.Length)].Name, Cursor = cursor, Anchor = random.Next(3) == 0 ? cursor : anchor };
    }

    /// <summary>Both books must change, or neither.</summary>
    private static (Session, string) Both(Session before, Session after, SlowSession slow, string what, Action<SlowBook> edit)
    {
        if (!ReferenceEquals(before.Workbook, after.Workbook))
        {
            slow.Do(edit);
            return (after, what);
        }
        SlowBook tried = slow.Now.Copy();
        edit(tried);
        tried.TakeHalfRuns(before.Workbook);
        Target.Promise(tried.Difference(before.Workbook) is null, $"{what} is not done");
        return (after, what);
    }

    private static (Session, string) Type(Random random, Session there, SlowSession slow)
    {
        SlowCell cell = NewCell(random, there, slow.HasForces);
        string entry = (cell.Name is null ? "" : cell.Name + " ") + cell.Kind switch { SlowKind.Note => cell.Text, SlowKind.Given => "= " + cell.Text, _ => "=> " + cell.Text };
        Session after = GridEdits.Commit(there, entry, out Fault? fault);
        bool taken = cell.Name is not null && slow.Now.IsTaken(there.At, cell.Name);
        Target.Promise(fault is not null == taken, $"{entry} in {there.At}: {fault?.Sentence ?? "no fault"}");
        if (fault is not null) return (after, $"type {entry} in {there.At}, refused");
        return Both(there, after, slow, $"type {entry} in {there.At}", book => book.Set(there.At, cell));
    }

    private static SlowCell NewCell(Random random, Session there, bool forces)
    {
        string? name = random.Next(6) == 0 ? Names[random.Next(Names.Length)] : null;
        string prefix = random.Next(4) == 0 ? there.Workbook.Sheets[random.Next(there.Workbook.Sheets.Length)].Name + "." : "";
        string Ref() => random.Next(8) == 0 ? Names[random.Next(Names.Length)] : prefix + Any(random);
        string Run()
        {
            CellBlock run = CellBlock.Between(Any(random), Any(random));
            return $"Sum(Series({prefix}{run.First}, {prefix}{run.Last}))";
        }

        return random.Next(16) switch
        {
            0 => new SlowCell(SlowKind.Note, "words " + random.Next(5)),
            < 4 => new SlowCell(SlowKind.Given, random.Next(-3, 9).ToString(CultureInfo.InvariantCulture), name),
            < 6 => new SlowCell(SlowKind.Given, random.Next(1, 9).ToString(CultureInfo.InvariantCulture) + (forces ? " kN" : ""), name),
            < 8 => new SlowCell(SlowKind.Result, Run(), name),
            8 => new SlowCell(SlowKind.Result, Ref(), name),
            9 => new SlowCell(SlowKind.Result, $"{Ref()} * {Ref()}", name),
            10 => new SlowCell(SlowKind.Result, $"{Ref()} - {Ref()}", name),
            11 => new SlowCell(SlowKind.Result, $"{Ref()} / {Ref()}", name),
            12 => new SlowCell(SlowKind.Result, $"{Ref()} > {Ref()} ? {Ref()} : {Ref()}", name),
            13 when forces => new SlowCell(SlowKind.Result, $"{Ref()} * 2 + 1 kN", name),
            _ => new SlowCell(SlowKind.Result, $"{Ref()} + {Ref()}", name),
        };
    }

    private static CellAddress Any(Random random) => new(1 + random.Next(Columns), 1 + random.Next(Rows));

    private static (Session, string) Clear(Session there, SlowSession slow) =>
        Both(there, GridEdits.Clear(there, there.Block), slow, $"clear {there.SheetName}.{there.Block}", book => book.Clear(there.SheetName, there.Block));

    private static (Session, string) Insert(Session there, SlowSession slow, bool rows)
    {
        (int at, int count) = rows ? (there.Block.First.Row, there.Block.Rows) : (there.Block.First.Column, Math.Min(2, there.Block.Columns));
        Workbook changed = rows ? RowsAndColumns.InsertRows(there.Workbook, there.SheetName, at, count) : RowsAndColumns.InsertColumns(there.Workbook, there.SheetName, at, count);
        return Both(there, there.Changed(changed, "inserting"), slow, $"insert {count} {(rows ? "rows" : "columns")} of {there.SheetName} before {at}", book => book.Insert(there.SheetName, rows, at, count));
    }

    private static (Session, string) Remove(Session there, SlowSession slow, bool rows)
    {
        (int first, int last) = rows ? (there.Block.First.Row, there.Block.Last.Row) : (there.Block.First.Column, there.Block.Last.Column);
        Workbook changed = rows ? RowsAndColumns.RemoveRows(there.Workbook, there.SheetName, first, last) : RowsAndColumns.RemoveColumns(there.Workbook, there.SheetName, first, last);
        return Both(there, there.Changed(changed, "removing"), slow, $"remove {(rows ? "rows" : "columns")} {first} to {last} of {there.SheetName}", book => book.Remove(there.SheetName, rows, first, last));
    }

    private static (Session, string) Move(Random random, Session there, SlowSession slow, bool rows)
    {
        (int first, int last) = rows ? (there.Block.First.Row, there.Block.Last.Row) : (there.Block.First.Column, there.Block.Last.Column);
        int by = random.Next(-4, 5);
        Workbook changed = rows ? RowsAndColumns.MoveRows(there.Workbook, there.SheetName, first, last, by) : RowsAndColumns.MoveColumns(there.Workbook, there.SheetName, first, last, by);
        return Both(there, there.Changed(changed, "moving"), slow, $"move {(rows ? "rows" : "columns")} {first} to {last} of {there.SheetName} by {by}", book => book.Move(there.SheetName, rows, first, last, by));
    }

    private static (Session, string) Fill(Session there, SlowSession slow, bool down)
    {
        CellAddress at = there.Cursor;
        there = there with { Anchor = down ? there.Anchor with { Row = at.Row + 2 } : there.Anchor with { Column = at.Column + 1 } };
        return Both(there, Pasting.Fill(there, down), slow, $"fill {there.SheetName}.{there.Block} {(down ? "down" : "right")}", book => book.Fill(there.SheetName, there.Block, down));
    }

    private static (Session, string) Copy(Random random, Session there, SlowSession slow)
    {
        Session to = Somewhere(random, there);
        (int columns, int rows) = (to.Cursor.Column - there.Block.First.Column, to.Cursor.Row - there.Block.First.Row);
        return Both(there, Pasting.Copy(to, Clip.Of(there, cut: false)), slow, $"copy {there.SheetName}.{there.Block} to {to.At}", book => book.CopyBlock(there.SheetName, there.Block, to.SheetName, columns, rows));
    }

    private static (Session, string) Cut(Random random, Session there, SlowSession slow)
    {
        Session to = Somewhere(random, there);
        if (to.SheetName != there.SheetName && slow.Now.In(there.SheetName, there.Block).Any(id => slow.Now.Cells[id].Name is { } name && (slow.Now.Named(to.SheetName, name) is not null || slow.Now.Columns.ContainsKey((to.SheetName, name))))) to = to with { SheetName = there.SheetName };
        (int columns, int rows) = (to.Cursor.Column - there.Block.First.Column, to.Cursor.Row - there.Block.First.Row);
        return Both(there, Pasting.Move(to, Clip.Of(there, cut: true)), slow, $"cut {there.SheetName}.{there.Block} to {to.At}", book => book.MoveBlock(there.SheetName, there.Block, to.SheetName, columns, rows));
    }

    private static (Session, string) Rename(Random random, Session there, SlowSession slow)
    {
        if (there.Cell is null or { Content: BrokenContent or NoteContent }) return (there, "rename nothing");
        string name = Names[random.Next(Names.Length)];
        Workbook renamed = Renaming.Cell(there.Workbook, there.At, name, out Fault? fault);
        Target.Promise(fault is not null == slow.Now.IsTaken(there.At, name), $"{there.At} renamed {name}: {fault?.Sentence ?? "no fault"}");
        if (fault is not null) return (there, "rename refused");
        return Both(there, there.Changed(renamed, "renaming"), slow, $"rename {there.At} {name}", book => book.Rename(there.At, name));
    }

    private static (Session, string) RenameSheet(Random random, Session there, SlowSession slow)
    {
        string name = SheetNames[random.Next(SheetNames.Length)];
        Workbook renamed = Renaming.Sheet(there.Workbook, there.SheetName, name, out Fault? fault);
        Target.Promise(fault is not null == (name != there.SheetName && slow.Now.Sheets.Contains(name)), $"{there.SheetName} renamed {name}: {fault?.Sentence ?? "no fault"}");
        if (fault is not null) return (there, "sheet refused");
        return Both(there, (there with { SheetName = name }).Changed(renamed, "renaming"), slow, $"sheet {there.SheetName} renamed {name}", book => book.RenameSheet(there.SheetName, name));
    }

    private static (Session, string) AddSheet(Random random, Session there, SlowSession slow)
    {
        string name = SheetNames[random.Next(SheetNames.Length)];
        if (there.Workbook.Find(name) is not null || there.Workbook.Sheets.Length == 3) return (there, "sheet none added");
        return Both(there, there.Changed(there.Workbook.WithSheet(new Sheet { Name = name, Order = [] }), "adding"), slow, $"sheet {name} added", book => book.AddSheet(name));
    }

    private static (Session, string) RemoveSheet(Session there, SlowSession slow)
    {
        if (there.Workbook.Sheets.Length == 1) return (there, "sheet none removed");
        return Both(there, there.Changed(there.Workbook.WithoutSheet(there.SheetName), "removing"), slow, $"sheet {there.SheetName} removed", book => book.RemoveSheet(there.SheetName));
    }

    private static (Session, string) Sort(Random random, Session there, SlowSession slow, Calculation calculation)
    {
        SortWhat what = (SortWhat)random.Next(4);
        bool falling = random.Next(2) == 0, columns = what is SortWhat.Columns or SortWhat.WholeColumns;
        there = there with { Anchor = columns ? there.Anchor with { Column = 1 + random.Next(2) } : there.Anchor with { Row = 1 + random.Next(3) } };
        CellBlock block = Sorting.Stretched(there, what);
        List<int> order = Order(there, calculation, block, columns, falling);
        Session sorted = Sorting.Apply(there with { Known = Known.Of(calculation, FunctionLibrary.Of()) }, what, falling) with { Known = null };
        return Both(there, sorted, slow, $"sort {there.SheetName}.{block} {(columns ? "columns" : "rows")} by {there.Cursor}{(falling ? " falling" : "")}", book => book.Sort(there.SheetName, block, columns, order));
    }

    /// <summary>Figures before words before nothing, each put behind the last that is not after it.</summary>
    private static List<int> Order(Session there, Calculation calculation, CellBlock block, bool columns, bool falling)
    {
        List<(int At, int Rank, double Figure, string Words)> sorted = [];
        for (int at = columns ? block.First.Column : block.First.Row; at <= (columns ? block.Last.Column : block.Last.Row); at++)
        {
            CellId id = new(there.SheetName, columns ? there.Cursor with { Column = at } : there.Cursor with { Row = at });
            CellResult? result = calculation.Cells.GetValueOrDefault(id);
            (int Rank, double Figure, string Words) = result?.Cell.Content is NoteContent note ? (1, 0, note.Text) : result?.Value switch { NumberValue number => (0, number.Value, ""), QuantityValue quantity => (0, quantity.Si, ""), _ => (2, 0.0, "") };
            int place = sorted.Count;
            while (place > 0 && Before((Rank, Figure, Words), (sorted[place - 1].Rank, sorted[place - 1].Figure, sorted[place - 1].Words), falling)) place--;
            sorted.Insert(place, (at, Rank, Figure, Words));
        }
        return [.. sorted.Select(item => item.At)];
    }

    private static bool Before((int Rank, double Figure, string Words) one, (int Rank, double Figure, string Words) other, bool falling)
    {
        if (one.Rank == 2 || other.Rank == 2) return one.Rank < other.Rank;
        int sign = one.Rank != other.Rank ? one.Rank - other.Rank : one.Figure != other.Figure ? one.Figure.CompareTo(other.Figure) : string.CompareOrdinal(one.Words, other.Words);
        return falling ? sign > 0 : sign < 0;
    }

    private static (Session, string) Undo(Session there, SlowSession slow)
    {
        slow.Undo();
        return (GridEdits.Undo(there, out _), "undo");
    }

    private static (Session, string) Redo(Session there, SlowSession slow)
    {
        slow.Redo();
        return (GridEdits.Redo(there, out _), "redo");
    }
}
