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
            string name = here ? $"▾{CellAddress.ColumnName(column)}" : $" {CellAddress.ColumnName(column)}";
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
        SheetTables? tables = session.Sheet.WhatIfs.IsEmpty ? null : session.Tables.On(session);
        foreach ((int column, int wide) in columns)
        {
            CellAddress at = new(column, row);
            Ink? over = at == session.Cursor ? Ink.Here : block.Contains(at) ? Ink.Selected : null;
            Cell? cell = session.Sheet.Cells.GetValueOrDefault(at);
            if (cell is not null) CellFace.Of(session, new CellId(session.SheetName, at), cell).Put(line, wide, over);
            else if (tables?.Face(session, at) is { } face) face.Put(line, wide, over);
            else if (over is { } ink) line.Add(new string(' ', wide - 1), ink).Add(" ", ink == Ink.Selected ? ink : Ink.Plain);
            else line.Add(new string(' ', wide));
        }
        return line.Line();
    }
}
