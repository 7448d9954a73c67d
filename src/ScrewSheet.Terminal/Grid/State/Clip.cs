using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>A block that was copied or cut.</summary>
/// <param name="Workbook">The workbook it was taken from, as it was.</param>
/// <param name="Sheet">The sheet.</param>
/// <param name="Block">The block.</param>
/// <param name="IsCut">Pasting moves it.</param>
/// <param name="Text">What other programs are given: shown values, tabs between columns.</param>
internal sealed record Clip(Workbook Workbook, string Sheet, CellBlock Block, bool IsCut, string Text)
{
    /// <summary>Of what is selected.</summary>
    public static Clip Of(Session session, bool cut) => new(session.Workbook, session.SheetName, session.Block, cut, TextOf(session));

    /// <summary>The block as other programs read it; a text that another program would take for a formula gets an apostrophe before it.</summary>
    private static string TextOf(Session session)
    {
        CellBlock block = Clipped(session);
        return string.Join('\n', Enumerable.Range(block.First.Row, block.Rows).Select(row =>
            string.Join('\t', Enumerable.Range(block.First.Column, block.Columns).Select(column => Harmless(TextOf(session, new CellAddress(column, row)))))));
    }

    /// <summary>No further than the sheet holds something.</summary>
    private static CellBlock Clipped(Session session)
    {
        CellAddress extent = session.Tables.On(session).Extent(Moves.Extent(session.Sheet));
        CellBlock block = session.Block;
        return CellBlock.Between(block.First, new CellAddress(Math.Max(block.First.Column, Math.Min(block.Last.Column, extent.Column)), Math.Max(block.First.Row, Math.Min(block.Last.Row, extent.Row))));
    }

    private static string TextOf(Session session, CellAddress at)
    {
        if (session.Sheet.Cells.GetValueOrDefault(at) is not { } cell) return session.Tables.On(session).Text(session, at);
        if (cell.Content is NoteContent note) return PlainText.Of(note.Text);
        CellResult? result = session.Result(new CellId(session.SheetName, at));
        return result is not null && session.Known!.Shown(result) is { } shown ? shown.ToString() : cell.Content is GivenContent given ? PlainText.Of(given.Text) : "";
    }

    private static string Harmless(string text) => text.Length > 0 && text[0] is '=' or '@' ? "'" + text : text;
}

/// <summary>Puts blocks and texts into a sheet.</summary>
internal static class Pasting
{
    /// <summary>The most cells one command writes.</summary>
    public const int MostCells = 100_000;

    /// <summary>A copy of the block with its top left corner under the cursor: addresses move along, names of cells are left behind since they would be there twice.</summary>
    public static Session Copy(Session session, Clip clip)
    {
        Sheet source = clip.Workbook.Find(clip.Sheet)!;
        int columns = session.Cursor.Column - clip.Block.First.Column, rows = session.Cursor.Row - clip.Block.First.Row;
        Workbook workbook = session.Workbook;
        foreach (Cell cell in clip.Block.CellsOf(source).ToList()) workbook = Put(workbook, session.SheetName, Copied(cell, clip.Workbook, clip.Sheet, session.SheetName, columns, rows));
        return session.Changed(workbook, $"pasting at {session.Cursor}");
    }

    /// <summary>The block itself, moved under the cursor; every reference to its cells follows. Cells that were there are gone, and with them what their addresses led to.</summary>
    public static Session Move(Session session, Clip clip)
    {
        int columns = session.Cursor.Column - clip.Block.First.Column, rows = session.Cursor.Row - clip.Block.First.Row;
        if (columns == 0 && rows == 0 && clip.Sheet == session.SheetName) return session;
        CellBlock target = new(session.Cursor, new CellAddress(clip.Block.Last.Column + columns, clip.Block.Last.Row + rows));
        if (!target.Last.IsValid) return session;
        bool Moves(CellId id) => id.Sheet == clip.Sheet && clip.Block.Contains(id.Address);
        // gone, so that whoever named one of these by its address is in fault and does not read what came in its place
        HashSet<CellId> covered = [.. target.CellsOf(session.Sheet).Select(cell => new CellId(session.SheetName, cell.Address)).Where(id => !Moves(id))];
        Workbook moved = Relocation.Apply(session.Workbook, (id, corner) => Moves(id)
            ? new CellId(session.SheetName, new CellAddress(id.Address.Column + columns, id.Address.Row + rows)) : corner == 0 && covered.Contains(id) ? null : id);
        return session.Changed(moved, $"moving {clip.Block} to {session.Cursor}");
    }

    /// <summary>Copies the first row of a block into those below it, or its first column into those at its right.</summary>
    public static Session Fill(Session session, bool down)
    {
        CellBlock block = session.Block;
        Sheet sheet = session.Sheet;
        Workbook workbook = session.Workbook;
        foreach (CellAddress at in block.Addresses())
        {
            CellAddress from = down ? at with { Row = block.First.Row } : at with { Column = block.First.Column };
            if (from == at || sheet.Cells.GetValueOrDefault(from) is not { } cell) continue;
            workbook = Put(workbook, session.SheetName, Copied(cell, session.Workbook, session.SheetName, session.SheetName, at.Column - from.Column, at.Row - from.Row));
        }
        return session.Changed(workbook, $"filling {block}");
    }

    /// <summary>Lines with tabs between columns, each piece put in as if it had been typed.</summary>
    /// <param name="session">The session.</param>
    /// <param name="text">The text.</param>
    /// <param name="refused">How many pieces could not be read and were put in as words.</param>
    public static Session Text(Session session, string text, out int refused)
    {
        refused = 0;
        Workbook workbook = session.Workbook;
        string[] lines = text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        for (int row = 0; row < lines.Length; row++)
        {
            string[] pieces = lines[row].Split('\t');
            for (int column = 0; column < pieces.Length; column++)
            {
                CellAddress at = new(session.Cursor.Column + column, session.Cursor.Row + row);
                if (pieces[column].Trim().Length == 0 || !at.IsValid) continue;
                workbook = workbook.WithCell(session.SheetName, Typed(workbook.Find(session.SheetName)!, pieces[column], at, ref refused));
            }
        }
        return session.Changed(workbook, $"pasting text at {session.Cursor}");
    }

    private static Cell Typed(Sheet sheet, string piece, CellAddress at, ref int refused)
    {
        if (CellText.ReadEntry(piece, at) is EntryRead { Cell: var cell } && (cell.Name is null || !sheet.IsTaken(cell.Name, at))) return cell;
        refused++;
        return new Cell { Address = at, Content = new NoteContent(string.Concat(piece.Trim().Select(c => char.IsControl(c) ? ' ' : c))) };
    }

    private static Workbook Put(Workbook workbook, string sheet, Cell? cell) => cell is null ? workbook : workbook.WithCell(sheet, cell);

    /// <summary>A copy at its new place; null where that is outside the sheet, and for a line that is no cell.</summary>
    private static Cell? Copied(Cell cell, Workbook workbook, string from, string to, int columns, int rows)
    {
        CellAddress at = new(cell.Address.Column + columns, cell.Address.Row + rows);
        if (!at.IsValid || cell.Content is BrokenContent) return null;
        CellContent content = cell.Content is ResultContent result
            ? result with { Expression = ReferenceShift.Copied(result.Expression, workbook, from, to, columns, rows), Kept = null } : cell.Content;
        // a type is written before a name only, so it stays behind with the name
        return new Cell { Address = at, Format = cell.Format, Content = content, Remark = cell.Remark };
    }
}
