using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>Ways through a workbook.</summary>
internal static class Moves
{
    /// <summary>To an address of the same sheet; with <paramref name="extend"/> the selection's other corner stays.</summary>
    public static Session To(Session session, CellAddress address, bool extend = false)
    {
        CellAddress inside = new(Math.Clamp(address.Column, 1, CellAddress.LastColumn), Math.Clamp(address.Row, 1, CellAddress.LastRow));
        return session with { Cursor = inside, Anchor = extend ? session.Anchor : inside };
    }

    /// <summary>By so many columns and rows.</summary>
    public static Session By(Session session, int columns, int rows, bool extend = false) =>
        To(session, new CellAddress(session.Cursor.Column + columns, session.Cursor.Row + rows), extend);

    /// <summary>To the first column that holds something in this row, or to the last one.</summary>
    public static Session RowEnd(Session session, bool last, bool extend)
    {
        int row = session.Cursor.Row;
        IEnumerable<int> columns = Enumerable.Range(1, CellAddress.LastColumn);
        var cells = session.Sheet.Cells;
        int column = (last ? columns.Reverse() : columns).FirstOrDefault(at => cells.ContainsKey(new CellAddress(at, row)), 1);
        return To(session, new CellAddress(column, row), extend);
    }

    /// <summary>To the first cell of the sheet, or to the corner beyond which nothing stands.</summary>
    public static Session SheetEnd(Session session, bool last, bool extend)
    {
        CellAddress corner = last ? Extent(session.Sheet) : new CellAddress(1, 1);
        return To(session, corner, extend);
    }

    /// <summary>The last column and row that hold something; A1 of an empty sheet.</summary>
    public static CellAddress Extent(Sheet sheet)
    {
        int column = 1, row = 1;
        foreach (CellAddress address in sheet.Cells.Keys) (column, row) = (Math.Max(column, address.Column), Math.Max(row, address.Row));
        return new CellAddress(column, row);
    }

    /// <summary>To the sheet so many places on, where the reader was on it.</summary>
    public static Session Sheets(Session session, int by)
    {
        int count = session.Workbook.Sheets.Length, at = session.Workbook.Sheets.IndexOf(session.Sheet);
        return ToSheet(session, session.Workbook.Sheets[(((at + by) % count) + count) % count].Name);
    }

    /// <summary>To a sheet, where the reader was on it.</summary>
    public static Session ToSheet(Session session, string name)
    {
        if (name == session.SheetName || session.Workbook.Find(name) is null) return session;
        Session left = session with { Places = session.Places.SetItem(session.SheetName, session.Cursor), SheetName = name, Corner = new(1, 1) };
        return To(left, session.Places.GetValueOrDefault(name, new CellAddress(1, 1)));
    }

    /// <summary>To a cell anywhere, so that <see cref="Back"/> returns here.</summary>
    public static Session Jump(Session session, CellId id)
    {
        if (session.Workbook.Find(id.Sheet) is null || id == session.At) return session;
        return To(ToSheet(session with { Trail = session.Trail.Push(session.At) }, id.Sheet), id.Address);
    }

    /// <summary>To where the last jump came from.</summary>
    public static Session Back(Session session)
    {
        if (session.Trail.IsEmpty) return session;
        Session shorter = session with { Trail = session.Trail.Pop(out CellId from) };
        return To(ToSheet(shorter, from.Sheet), from.Address);
    }

    /// <summary>With the corner moved so that the cursor is among so many columns of characters and rows.</summary>
    public static Session Follow(Session session, int width, int rows)
    {
        int top = Math.Clamp(session.Corner.Row, Math.Max(1, session.Cursor.Row - rows + 1), session.Cursor.Row);
        int left = Math.Min(session.Corner.Column, session.Cursor.Column);
        int used = 0, first = session.Cursor.Column + 1;
        while (first > left && used + session.Width(first - 1) <= width) used += session.Width(--first);
        CellAddress corner = new(Math.Max(left, Math.Min(first, session.Cursor.Column)), top);
        return corner == session.Corner ? session : session with { Corner = corner };
    }
}
