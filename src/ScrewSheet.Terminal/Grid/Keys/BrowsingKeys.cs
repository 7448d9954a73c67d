using ScrewSheet.Terminal.Grid.Passing;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Keys in the grid.</summary>
internal static class BrowsingKeys
{
    /// <summary>One key.</summary>
    public static GridState Press(GridState state, Press press)
    {
        if (GridCommands.Shortcut(press) is { } command) return command.Do(state);
        if (Move(state.Open, press, Layout.Of(state).GridRows) is { } moved) return state.With(moved);
        return press.Key switch
        {
            KeyName.Enter => Enter(state),
            KeyName.Tab => LinkingKeys.Begin(state),
            KeyName.Delete or KeyName.Backspace => Clear(state),
            KeyName.Escape => state.With(state.Open with { Anchor = state.Open.Cursor }),
            KeyName.Text => Typed(state, press.Text),
            _ => state,
        };
    }

    /// <summary>Types into the cell under the cursor, beginning with what stands there; a place of a what-if table is computed, so there it asks what to do with the table; where a merge left two versions, which one counts.</summary>
    public static GridState Enter(GridState state) => OnTable(state) ? StudyMenu.Open(state)
        : ConflictChoice.Of(state.Open) is { } versions ? ConflictChoice.Open(state.With(state.Open with { Anchor = state.Open.Cursor }), versions) : EnteringKeys.Begin(state, null);

    private static bool OnTable(GridState state) => state.Open.Cell is null && TableDetail.Under(state.Open) is not null;

    private static GridState Typed(GridState state, string text) => text switch
    {
        " " => state with { Mode = new Commanding() },
        "<" => state.With(Moves.Sheets(state.Open, -1)),
        ">" => state.With(Moves.Sheets(state.Open, 1)),
        "?" => ReadingKeys.Open(state, PageName.Help),
        _ when OnTable(state) => state.Say("A what-if table is computed here; nothing can be typed into it. Enter changes it."),
        _ => EnteringKeys.Begin(state, text),
    };

    private static GridState Clear(GridState state)
    {
        if (state.Open.Block.IsOne && OnTable(state)) return state.Say("A what-if table is computed here. Enter, then R, takes it off the sheet.");
        Session cleared = Edits.Clear(state.Open, state.Open.Block);
        return ReferenceEquals(cleared, state.Open) ? state : state.With(cleared).Say($"Cleared {state.Open.Block}. Ctrl+Z takes it back.");
    }

    private static Session? Move(Session session, Press press, int page) => press.Key switch
    {
        KeyName.Up => Moves.By(session, 0, press.Ctrl ? -10 : -1, press.Shift),
        KeyName.Down => Moves.By(session, 0, press.Ctrl ? 10 : 1, press.Shift),
        KeyName.Left => Moves.By(session, press.Ctrl ? -5 : -1, 0, press.Shift),
        KeyName.Right => Moves.By(session, press.Ctrl ? 5 : 1, 0, press.Shift),
        KeyName.PageUp => Moves.By(session, 0, -page, press.Shift),
        KeyName.PageDown => Moves.By(session, 0, page, press.Shift),
        KeyName.Home when press.Ctrl => Moves.SheetEnd(session, false, press.Shift),
        KeyName.End when press.Ctrl => Moves.SheetEnd(session, true, press.Shift),
        KeyName.Home => Moves.RowEnd(session, false, press.Shift),
        KeyName.End => Moves.RowEnd(session, true, press.Shift),
        _ => null,
    };
}
