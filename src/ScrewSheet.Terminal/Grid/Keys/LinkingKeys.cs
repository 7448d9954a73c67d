using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Keys in the detail: a cell it speaks of is chosen, or it is scrolled.</summary>
internal static class LinkingKeys
{
    /// <summary>Steps into the detail.</summary>
    public static GridState Begin(GridState state)
    {
        Detail detail = Detail.Of(state.Open, state.Width);
        return detail.Links.IsEmpty && detail.Lines.Length <= Layout.Of(state).DetailRows
            ? state.Say("This cell uses no other cell, and none uses it.") : state with { Mode = new Linking(0) };
    }

    /// <summary>One key.</summary>
    public static GridState Press(GridState state, Linking linking, Press press)
    {
        Detail detail = Detail.Of(state.Open, state.Width);
        int count = detail.Links.Length, rows = Layout.Of(state).DetailRows, at = Math.Min(linking.Chosen, Math.Max(0, count - 1));
        return press.Key switch
        {
            KeyName.PageDown => Scroll(state, detail, linking, rows - 1),
            KeyName.PageUp => Scroll(state, detail, linking, 1 - rows),
            KeyName.Down when count == 0 => Scroll(state, detail, linking, 1),
            KeyName.Up when count == 0 => Scroll(state, detail, linking, -1),
            KeyName.Right or KeyName.Down or KeyName.Tab when count > 0 => state with { Mode = new Linking((at + 1) % count) },
            KeyName.Left or KeyName.Up or KeyName.BackTab when count > 0 => state with { Mode = new Linking((at + count - 1) % count) },
            KeyName.Enter when count > 0 => state.Browse().With(Moves.Jump(state.Open, detail.Links[at])),
            KeyName.Escape or KeyName.Enter => state.Browse(),
            _ => BrowsingKeys.Press(state.Browse(), press),
        };
    }

    /// <summary>So many lines further down.</summary>
    public static GridState Scroll(GridState state, Linking linking, int by) => Scroll(state, Detail.Of(state.Open, state.Width), linking, by);

    private static GridState Scroll(GridState state, Detail detail, Linking linking, int by)
    {
        int rows = Layout.Of(state).DetailRows;
        return state with { Mode = linking with { Top = Math.Clamp(detail.TopLine(linking, rows) + by, 0, Math.Max(0, detail.Lines.Length - rows)) } };
    }
}
