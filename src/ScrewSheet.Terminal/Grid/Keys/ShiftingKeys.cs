using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Keys while the arrows move whole rows and columns.</summary>
internal static class ShiftingKeys
{
    /// <summary>From now on the arrows move what is selected.</summary>
    public static GridState Begin(GridState state) => (state with { Mode = new Shifting() }).Say($"The arrows move {What(state.Open.Block)}; every reference follows. Enter ends.");

    /// <summary>One key.</summary>
    public static GridState Press(GridState state, Press press) => press.Key switch
    {
        KeyName.Up => Move(state, 0, -1),
        KeyName.Down => Move(state, 0, 1),
        KeyName.Left => Move(state, -1, 0),
        KeyName.Right => Move(state, 1, 0),
        KeyName.Enter or KeyName.Escape => state.Browse(),
        _ => BrowsingKeys.Press(state.Browse(), press),
    };

    private static GridState Move(GridState state, int columns, int rows)
    {
        Session session = state.Open;
        CellBlock block = session.Block;
        Workbook moved = rows != 0 ? RowsAndColumns.MoveRows(session.Workbook, session.SheetName, block.First.Row, block.Last.Row, rows)
            : RowsAndColumns.MoveColumns(session.Workbook, session.SheetName, block.First.Column, block.Last.Column, columns);
        if (ReferenceEquals(moved, session.Workbook)) return state.Say("There is no room further on.");
        Session changed = session.Changed(moved, rows != 0 ? "moving rows" : "moving columns");
        CellAddress Along(CellAddress at) => new(at.Column + columns, at.Row + rows);
        return state.With(changed with { Cursor = Along(session.Cursor), Anchor = Along(session.Anchor) }).Say($"Moved; now {What(CellBlock.Between(Along(session.Anchor), Along(session.Cursor)))}. Enter ends.");
    }

    private static string What(CellBlock block)
    {
        string first = CellAddress.ColumnName(block.First.Column), last = CellAddress.ColumnName(block.Last.Column);
        return $"{(block.Rows == 1 ? $"row {block.First.Row}" : $"rows {block.First.Row} to {block.Last.Row}")} up and down, {(block.Columns == 1 ? $"column {first}" : $"columns {first} to {last}")} left and right";
    }
}
