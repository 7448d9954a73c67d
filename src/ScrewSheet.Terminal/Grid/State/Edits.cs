using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>Changes of the workbook; each can be taken back.</summary>
internal static class Edits
{
    /// <summary>Puts a typed line into the cell under the cursor.</summary>
    /// <param name="session">The session.</param>
    /// <param name="typed">The line; a blank one clears the cell.</param>
    /// <param name="fault">Why it was not put in, or null.</param>
    public static Session Commit(Session session, string typed, out Fault? fault)
    {
        fault = null;
        if (typed.Trim().Length == 0) return Clear(session, new CellBlock(session.Cursor, session.Cursor));
        if (session.Cell is { } old && CellText.WriteEntry(old) == typed) return session;
        switch (CellText.ReadEntry(typed, session.Cursor))
        {
            case EntryRefused refused:
                fault = refused.Fault;
                return session;
            case EntryRead when session.Cell is null && session.Workbook.Sheets.Sum(sheet => sheet.Cells.Count) >= WorkbookText.MostCells:
                fault = WorkbookText.TooManyCells;
                return session;
            case EntryRead read when NameTaken(session, read.Cell) is { } taken:
                fault = taken;
                return session;
            case EntryRead read:
                return session.Changed(session.Workbook.WithCell(session.SheetName, Keep(session.Cell, read.Cell)), $"the entry in {session.Cursor}", session.At);
            default: throw new InvalidOperationException("An entry is read or refused.");
        }
    }

    /// <summary>Clears every cell of a block.</summary>
    public static Session Clear(Session session, CellBlock block)
    {
        Workbook workbook = session.Workbook;
        foreach (Cell cell in block.CellsOf(session.Sheet)) workbook = workbook.WithoutCell(session.SheetName, cell.Address);
        return session.Changed(workbook, $"clearing {block}");
    }

    /// <summary>Takes the last change back.</summary>
    public static Session Undo(Session session, out Step? step)
    {
        step = null;
        if (session.Done.IsEmpty) return session;
        Session shorter = session with { Done = session.Done.Pop(out step) };
        return Restore(shorter with { TakenBack = session.TakenBack.Push(step with { Workbook = session.Workbook }) }, step);
    }

    /// <summary>Does the change last taken back again.</summary>
    public static Session Redo(Session session, out Step? step)
    {
        step = null;
        if (session.TakenBack.IsEmpty) return session;
        Session shorter = session with { TakenBack = session.TakenBack.Pop(out step) };
        return Restore(shorter with { Done = session.Done.Push(step with { Workbook = session.Workbook }) }, step);
    }

    private static Session Restore(Session session, Step step)
    {
        Session other = session with { Workbook = step.Workbook, Only = null };
        string sheet = step.Workbook.Find(step.Place.Sheet) is null ? step.Workbook.Sheets[0].Name : step.Place.Sheet;
        Session there = other.Workbook.Find(other.SheetName) is null ? other with { SheetName = sheet, Corner = new(1, 1) } : Moves.ToSheet(other, sheet);
        return Moves.To(there, step.Place.Address);
    }

    /// <summary>A result typed anew keeps what the file said it was, as long as its expression is the same.</summary>
    private static Cell Keep(Cell? old, Cell cell) =>
        old?.Content is ResultContent { Kept: { } kept } was && cell.Content is ResultContent now && was.Expression == now.Expression && now.Kept is null
            ? cell with { Content = now with { Kept = kept } } : cell;

    private static Fault? NameTaken(Session session, Cell cell) =>
        cell.Name is { } name && session.Sheet.IsTaken(name, cell.Address)
            ? new Fault(2010, FaultKind.Name, $"{name} is the name of {(session.Sheet.Column(name) is { } column ? "column " + CellAddress.ColumnName(column.Column) : session.Sheet.Names[name])} already.", "Choose another name.") : null;
}
