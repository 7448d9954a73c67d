using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>What the mouse does: press a cell to go there, drag to select, press twice to type; press an item of a list; turn the wheel.</summary>
internal static class MouseKeys
{
    private const int HeadRow = 1, FirstRow = 2;

    /// <summary>A press or a drag.</summary>
    public static GridState Click(GridState state, Click click) => state.Mode switch
    {
        Browsing or Linking => OnGrid(state with { Notice = null, Widening = click.IsDrag ? state.Widening : null }, click),
        Listing listing when !click.IsDrag => OnList(state, listing, click),
        Reading reading when !click.IsDrag => ReadingKeys.Press(state, reading, new Press(KeyName.Enter)),
        _ => state,
    };

    /// <summary>The wheel.</summary>
    public static GridState Turn(GridState state, Wheel wheel) => state.Mode switch
    {
        Browsing => state.With(Moves.By(state.Open, 0, wheel.Rows)),
        Linking linking => LinkingKeys.Scroll(state, linking, Math.Sign(wheel.Rows)),
        Listing listing => ListingKeys.Press(state, listing, new Press(wheel.Rows < 0 ? KeyName.Up : KeyName.Down)),
        Studying studying => StudyKeys.Turn(state, studying, wheel),
        Reading reading => ReadingKeys.Press(state, reading, new Press(wheel.Rows < 0 ? KeyName.Up : KeyName.Down)),
        _ => state,
    };

    private static GridState OnGrid(GridState state, Click click)
    {
        Layout layout = Layout.Of(state);
        if (click.Line == 0 && !click.IsDrag) return Screen.TitleLine.SheetAt(state.Open, click.Column, state.Width) is { } sheet ? state.Browse().With(Moves.ToSheet(state.Open, sheet)) : state;
        if (state.Widening is { } held && click.IsDrag) return Widened(state, held.Column, click.Column, held.IsDrawn);
        if (click.Line == HeadRow && !click.IsDrag && EdgeAt(state, click.Column) is { } edge) return state.Browse() with { Widening = (edge, false) };
        if (click.Line < FirstRow || click.Line >= FirstRow + layout.GridRows || ColumnAt(state, click.Column) is not { } column) return state;
        CellAddress at = new(column, state.Open.Corner.Row + click.Line - FirstRow);
        GridState there = state.Browse().With(Moves.To(state.Open, at, click.IsDrag));
        return click.IsDouble ? BrowsingKeys.Enter(there) : there;
    }

    /// <summary>The column whose head ends there.</summary>
    private static int? EdgeAt(GridState state, int x) => ColumnAt(state, x) is { } column && (ColumnAt(state, x + 1) != column || x + 1 == state.Width) ? column : null;

    private static GridState Widened(GridState state, int column, int x, bool further)
    {
        int left = Layout.HeadWidth + Enumerable.Range(state.Open.Corner.Column, Math.Max(0, column - state.Open.Corner.Column)).Sum(state.Open.Width);
        return (state with { Widening = (column, true) }).With(Columns.Draw(state.Open, column, x - left + 1, further));
    }

    private static int? ColumnAt(GridState state, int x)
    {
        int edge = Layout.HeadWidth;
        if (x < edge) return null;
        for (int column = state.Open.Corner.Column; edge < state.Width && column <= CellAddress.LastColumn; column++)
        {
            edge += state.Open.Width(column);
            if (x < edge) return column;
        }
        return null;
    }

    private static GridState OnList(GridState state, Listing listing, Click click)
    {
        int at = Screen.ListPicture.ItemAt(state, listing, click.Line);
        if (at < 0) return state;
        return at == listing.Chosen || click.IsDouble ? ListingKeys.Choose(state, listing.Shown[at].Choice) : state with { Mode = listing with { Chosen = at } };
    }
}
