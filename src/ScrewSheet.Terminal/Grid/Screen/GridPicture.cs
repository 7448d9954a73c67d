using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>The cells of a sheet that are on the screen, with the heads of their rows and columns.</summary>
internal static class GridPicture
{
    /// <summary>How many columns left of the screen words may begin that are still seen on it.</summary>
    private const int FarthestLeft = 12;

    /// <summary>The head line and one line for each row.</summary>
    public static IEnumerable<ScreenLine> Lines(Session session, int width, int rows)
    {
        (int Column, int Width)[] columns = [.. Columns(session, width - Layout.HeadWidth)];
        yield return Heads(session, columns, width);
        for (int i = 0; i < rows; i++)
        {
            int row = session.Corner.Row + i;
            yield return row > CellAddress.LastRow ? new LineBuilder(width).Line() : Row(session, row, columns, width);
        }
    }

    private static IEnumerable<(int, int)> Columns(Session session, int room)
    {
        for (int column = session.Corner.Column; room > 2 && column <= CellAddress.LastColumn; column++)
        {
            int wide = Math.Min(session.Width(column), room);
            yield return (column, wide);
            room -= wide;
        }
    }

    private static ScreenLine Heads(Session session, (int Column, int Width)[] columns, int width)
    {
        LineBuilder line = new LineBuilder(width).To(Layout.HeadWidth, Ink.Frame);
        CellBlock block = session.Block;
        foreach ((int column, int wide) in columns)
        {
            bool here = column == session.Cursor.Column, inside = column >= block.First.Column && column <= block.Last.Column;
            string name = (here ? "▾" : " ") + State.Columns.Head(session.Sheet, column, wide - 1);
            line.Add(Fit.Left(name, wide), here || inside ? Ink.FrameHere : Ink.Frame);
        }
        return line.Line(Ink.Frame);
    }

    private static ScreenLine Row(Session session, int row, (int Column, int Width)[] columns, int width)
    {
        bool here = row == session.Cursor.Row;
        CellBlock block = session.Block;
        string head = DisplayWidth.PadLeft(row.ToString(CultureInfo.InvariantCulture), Layout.HeadWidth - 1) + (here ? "▸" : " ");
        LineBuilder line = new LineBuilder(width).Add(head, here || (row >= block.First.Row && row <= block.Last.Row) ? Ink.FrameHere : Ink.Frame);
        Sheet sheet = session.Sheet;
        SheetTables? tables = sheet.WhatIfs.IsEmpty ? null : session.Tables.On(session);
        int next = Flowing(line, session, tables, row, columns);
        while (next < columns.Length)
        {
            (int column, int wide) = columns[next];
            CellAddress at = new(column, row);
            Ink? over = at == session.Cursor ? Ink.Here : block.Contains(at) ? Ink.Selected : null;
            if (sheet.Cells.GetValueOrDefault(at) is { } cell)
            {
                next = Put(line, session, tables, cell, columns, next, over);
                continue;
            }
            next++;
            if (tables?.Face(session, at) is { } face) face.Put(line, wide, over);
            else if (over is { } ink) line.Add(new string(' ', wide - 1), ink).Add(" ", ink == Ink.Selected ? ink : Ink.Plain);
            else line.Add(new string(' ', wide));
        }
        return line.Line();
    }

    /// <summary>A cell, with words that have no room flowing over the empty cells beside them.</summary>
    /// <returns>The first column it leaves free.</returns>
    private static int Put(LineBuilder line, Session session, SheetTables? tables, Cell cell, (int Column, int Width)[] columns, int at, Ink? over)
    {
        CellFace face = CellFace.Of(session, new CellId(session.SheetName, cell.Address), cell);
        int room = columns[at].Width, next = at + 1;
        if (cell.Content is NoteContent)
        {
            int needs = face.Needs;
            for (; needs > room && next < columns.Length && IsFree(session, tables, new CellAddress(columns[next].Column, cell.Address.Row)); next++) room += columns[next].Width;
        }
        if (next == at + 1) face.Put(line, room, over);
        else face.PutFlowing(line, columns[at].Width, room, over);
        return next;
    }

    /// <summary>What flows in from words that begin left of the screen.</summary>
    /// <returns>The first column it leaves free.</returns>
    private static int Flowing(LineBuilder line, Session session, SheetTables? tables, int row, (int Column, int Width)[] columns)
    {
        if (columns.Length == 0 || session.Corner.Column == 1) return 0;
        int left = 0, column = session.Corner.Column;
        if (!IsFree(session, tables, new CellAddress(column, row))) return 0;
        while (--column >= Math.Max(1, session.Corner.Column - FarthestLeft))
        {
            left += session.Width(column);
            CellAddress at = new(column, row);
            if (session.Sheet.Cells.GetValueOrDefault(at) is not { } cell)
            {
                if (at == session.Cursor) return 0;
                continue;
            }
            if (cell.Content is not NoteContent) return 0;
            CellFace face = CellFace.Of(session, new CellId(session.SheetName, at), cell);
            int room = 0, next = 0;
            for (; left + room < face.Needs && next < columns.Length && IsFree(session, tables, new CellAddress(columns[next].Column, row)); next++) room += columns[next].Width;
            if (next > 0) line.Add(Fit.Left(Fit.From(face.Text, left - 1), room - 1)).Add(" ");
            return next;
        }
        return 0;
    }

    /// <summary>True where words from the left may be shown: nothing stands there, and the cursor does not.</summary>
    private static bool IsFree(Session session, SheetTables? tables, CellAddress at) =>
        at != session.Cursor && !session.Block.Contains(at) && !session.Sheet.Cells.ContainsKey(at) && tables?.Face(session, at) is null;
}
