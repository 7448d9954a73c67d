using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>What the mouse does: press a cell to go there, drag to select, press twice to type; press an item of a list; turn the wheel.</summary>
internal static class MouseKeys
{
    private const int FirstRow = 2;

    /// <summary>A press or a drag.</summary>
    public static GridState Click(GridState state, Click click) => state.Mode switch
    {
        Browsing or Linking => OnGrid(state with { Notice = null }, click),
        Listing listing when !click.IsDrag => OnList(state, listing, click),
        Reading reading when !click.IsDrag => ReadingKeys.Press(state, reading, new Press(KeyName.Enter)),
        _ => state,
    };

    /// <summary>The wheel.</summary>
    public static GridState Turn(GridState state, Wheel wheel) => state.Mode switch
    {
        Browsing => state.With(Moves.By(state.Open, 0, wheel.Rows)),
        Listing listing => ListingKeys.Press(state, listing, new Press(wheel.Rows < 0 ? KeyName.Up : KeyName.Down)),
        Studying studying => StudyKeys.Turn(state, studying, wheel),
        Reading reading => ReadingKeys.Press(state, reading, new Press(wheel.Rows < 0 ? KeyName.Up : KeyName.Down)),
        _ => state,
    };

    private static GridState OnGrid(GridState state, Click click)
    {
        Layout layout = Layout.Of(state);
        if (click.Line == 0 && !click.IsDrag) return Screen.TitleLine.SheetAt(state.Open, click.Column, state.Width) is { } sheet ? state.Browse().With(Moves.ToSheet(state.Open, sheet)) : state;
        if (click.Line < FirstRow || click.Line >= FirstRow + layout.GridRows || ColumnAt(state, click.Column) is not { } column) return state;
        CellAddress at = new(column, state.Open.Corner.Row + click.Line - FirstRow);
        GridState there = state.Browse().With(Moves.To(state.Open, at, click.IsDrag));
        return click.IsDouble ? BrowsingKeys.Enter(there) : there;
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
