using System.Globalization;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Commands on blocks.</summary>
internal static class ClipCommands
{
    /// <summary>Copies what is selected, here and for other programs.</summary>
    public static GridState Copy(GridState state)
    {
        Clip clip = Clip.Of(state.Open, cut: false);
        return (state with { Clip = clip }).And(new SetClipboard(clip.Text)).Say($"Copied {clip.Block}. Ctrl+V puts it under the cursor.");
    }

    /// <summary>Marks what is selected for moving; it stays where it is until it is pasted.</summary>
    public static GridState Cut(GridState state)
    {
        Clip clip = Clip.Of(state.Open, cut: true);
        return (state with { Clip = clip }).And(new SetClipboard(clip.Text)).Say($"{clip.Block} moves with Ctrl+V; until then it stays.");
    }

    /// <summary>Pastes what was copied or cut here.</summary>
    public static GridState Paste(GridState state)
    {
        if (state.Clip is not { } clip) return state.Say("Nothing was copied here. Text from another program comes with that terminal's own paste.");
        if ((long)clip.Block.Rows * clip.Block.Columns > Pasting.MostCells && clip.Block.CellsOf(clip.Workbook.Find(clip.Sheet)!).Count() > Pasting.MostCells) return TooMany(state);
        if (!clip.IsCut) return state.With(Pasting.Copy(state.Open, clip)).Say($"Pasted {clip.Block}.");
        if (!ReferenceEquals(clip.Workbook, state.Open.Workbook)) return (state with { Clip = null }).Say("The workbook changed since that was cut. Cut it again.", trouble: true);
        return (state with { Clip = null }).With(Pasting.Move(state.Open, clip)).Say($"Moved {clip.Block} to {state.Open.Cursor}; every reference follows.");
    }

    /// <summary>Pastes text from another program.</summary>
    public static GridState PasteText(GridState state, string text)
    {
        if (text.Contains('\uFFFD')) return state.Say("A character of that text arrived broken, so nothing was pasted. Paste it in smaller pieces.", trouble: true);
        if (text.Count(c => c is '\t' or '\n') > Pasting.MostCells) return TooMany(state);
        Session pasted = Pasting.Text(state.Open, text, out int refused);
        return state.With(pasted).Say(refused == 0 ? "Pasted." : $"Pasted; {refused} {(refused == 1 ? "piece" : "pieces")} could not be read as a cell and stand as words.", refused > 0);
    }

    /// <summary>Fills the selection from its first row or column.</summary>
    public static GridState Fill(GridState state, bool down)
    {
        CellBlock block = state.Open.Block;
        if (down ? block.Rows == 1 : block.Columns == 1) return state.Say($"Select from the cell to copy {(down ? "downward" : "to the right")} first: hold Shift and move.");
        if ((long)block.Rows * block.Columns > Pasting.MostCells) return TooMany(state);
        return state.With(Pasting.Fill(state.Open, down)).Say($"Filled {block}; addresses moved along, names stayed.");
    }

    /// <summary>Inserts as many rows or columns as are selected.</summary>
    public static GridState Insert(GridState state, bool rows)
    {
        Session session = state.Open;
        CellBlock block = session.Block;
        try
        {
            Workbook changed = rows ? RowsAndColumns.InsertRows(session.Workbook, session.SheetName, block.First.Row, block.Rows) : RowsAndColumns.InsertColumns(session.Workbook, session.SheetName, block.First.Column, block.Columns);
            return state.With(session.Changed(changed, rows ? $"inserting rows at {block.First.Row}" : $"inserting columns at {CellAddress.ColumnName(block.First.Column)}"))
                .Say($"Inserted {Count(rows ? block.Rows : block.Columns, rows)}; every reference follows.");
        }
        catch (ArgumentException noRoom)
        {
            return state.Say(noRoom.Message, trouble: true);
        }
    }

    /// <summary>Removes the rows or columns that are selected.</summary>
    public static GridState Remove(GridState state, bool rows)
    {
        Session session = state.Open;
        CellBlock block = session.Block;
        Workbook changed = rows ? RowsAndColumns.RemoveRows(session.Workbook, session.SheetName, block.First.Row, block.Last.Row) : RowsAndColumns.RemoveColumns(session.Workbook, session.SheetName, block.First.Column, block.Last.Column);
        Session removed = session.Changed(changed, rows ? $"removing rows from {block.First.Row}" : $"removing columns from {CellAddress.ColumnName(block.First.Column)}");
        return state.With(Moves.To(removed, block.First)).Say($"Removed {Count(rows ? block.Rows : block.Columns, rows)}. Ctrl+Z takes it back.");
    }

    private static string Count(int count, bool rows) => $"{count} {(rows ? "row" : "column")}{(count == 1 ? "" : "s")}";

    private static GridState TooMany(GridState state) => state.Say(string.Create(CultureInfo.InvariantCulture, $"That is more than {Pasting.MostCells:N0} cells at once."), trouble: true);
}
