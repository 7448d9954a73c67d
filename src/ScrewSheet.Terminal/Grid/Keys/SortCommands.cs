using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Sorting: asks what goes with what, since rows torn apart look as good as rows in order.</summary>
internal static class SortCommands
{
    /// <summary>Asks what to sort of the selected block.</summary>
    public static GridState Ask(GridState state, bool falling)
    {
        Session session = state.Open;
        CellBlock block = session.Block;
        if (block.IsOne) return state.Say("Select what to sort first, ending in the column or row that decides: hold Shift and move.");
        if (!session.IsCalculated) return state.Say("The results are not all in yet; sort when they are.");
        var answers = ImmutableArray.CreateBuilder<(char, string, Func<GridState, GridState>)>();
        string column = CellAddress.ColumnName(session.Cursor.Column);
        if (block.Rows > 1)
        {
            answers.Add(('w', $"rows {block.First.Row} to {block.Last.Row} over the whole width of the sheet, by column {column}", next => Sort(next, SortWhat.WholeRows, falling)));
            answers.Add(('r', $"only what is selected of these rows, by column {column}", next => Sort(next, SortWhat.Rows, falling)));
        }
        if (block.Columns > 1)
        {
            answers.Add(('h', $"columns {CellAddress.ColumnName(block.First.Column)} to {CellAddress.ColumnName(block.Last.Column)} over the whole height of the sheet, by row {session.Cursor.Row}", next => Sort(next, SortWhat.WholeColumns, falling)));
            answers.Add(('c', $"only what is selected of these columns, by row {session.Cursor.Row}", next => Sort(next, SortWhat.Columns, falling)));
        }
        return state with { Mode = new Confirming($"What is sorted, {(falling ? "falling" : "rising")}?", answers.ToImmutable()) };
    }

    private static GridState Sort(GridState state, SortWhat what, bool falling)
    {
        CellAddress cursor = state.Open.Cursor;
        string by = what is SortWhat.Rows or SortWhat.WholeRows ? $"column {CellAddress.ColumnName(cursor.Column)}" : $"row {cursor.Row}";
        return state.With(Sorting.Apply(state.Open, what, falling)).Say($"Sorted {Sorting.Stretched(state.Open, what)} by {by}; every reference follows its cell.");
    }
}
