using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Keys in a list.</summary>
internal static class ListingKeys
{
    /// <summary>One key.</summary>
    public static GridState Press(GridState state, Listing listing, Press press)
    {
        int count = listing.Shown.Length, at = Math.Clamp(listing.Chosen, 0, Math.Max(0, count - 1));
        if (press is { Ctrl: true, Key: KeyName.Text }) return press.Text == "q" ? GridCommands.LeaveProgram(state) : state;
        return press.Key switch
        {
            KeyName.Down => At(state, listing, at + 1),
            KeyName.Up => At(state, listing, at - 1),
            KeyName.PageDown => At(state, listing, at + 10),
            KeyName.PageUp => At(state, listing, at - 10),
            KeyName.Home => At(state, listing, 0),
            KeyName.End => At(state, listing, count - 1),
            KeyName.Enter when count > 0 => Choose(state, listing.Shown[at].Choice),
            KeyName.Escape when listing.Filter.Length > 0 => state with { Mode = listing with { Filter = "", Chosen = 0 } },
            KeyName.Escape => listing.IsStart ? GridCommands.LeaveProgram(state) : state.Browse(),
            KeyName.Backspace when listing.Filter.Length > 0 => state with { Mode = listing with { Filter = TypedText.Of(listing.Filter).Backspace().Text, Chosen = 0 } },
            KeyName.Text => state with { Mode = listing with { Filter = listing.Filter + press.Text, Chosen = 0 } },
            _ => state,
        };
    }

    /// <summary>Does what an item stands for.</summary>
    public static GridState Choose(GridState state, Choice choice) => choice switch
    {
        GoTo to => state.Browse().With(Moves.Jump(state.Open, to.Id)),
        PutIn put => EnteringKeys.Begin(state.Browse(), Call(state, put.Call)),
        Begin begin => state.And(begin.Effect),
        Take take => take.Do(state),
        BeginNew => StartPage.New(state),
        _ => state,
    };

    private static GridState At(GridState state, Listing listing, int at) => state with { Mode = listing with { Chosen = Math.Clamp(at, 0, Math.Max(0, listing.Shown.Length - 1)) } };

    /// <summary>Behind what stands in the cell already, where that is an expression; else as a new result.</summary>
    private static string Call(GridState state, string call) =>
        state.Open.Cell?.Content is Workbooks.Model.ResultContent ? $"{Entry.Begin(state.Open, state.Lexicon, null).Typed.Text} {call}" : $"=> {call}";
}

/// <summary>Keys while a question is answered.</summary>
internal static class AskingKeys
{
    /// <summary>One key of a line.</summary>
    public static GridState Press(GridState state, Asking asking, Press press)
    {
        if (LineKeys.Edit(asking.Typed, press) is { } line) return state with { Mode = asking with { Typed = line } };
        return press.Key switch
        {
            KeyName.Enter => asking.Answer(Home(state), asking.Typed.Text),
            KeyName.Escape => Home(state),
            _ => state,
        };
    }

    /// <summary>One key of an answer.</summary>
    public static GridState Press(GridState state, Confirming confirming, Press press)
    {
        if (press.Key == KeyName.Escape) return Home(state);
        foreach (var answer in confirming.Answers)
        {
            if (press.Key == KeyName.Text && press.Text.Equals(answer.Letter.ToString(), StringComparison.OrdinalIgnoreCase)) return answer.Do(Home(state));
        }
        return state;
    }

    private static GridState Home(GridState state) => state.Session is null ? StartPage.Show(state) : state.Browse();
}

/// <summary>Keys while a page is read.</summary>
internal static class ReadingKeys
{
    /// <summary>Opens a page.</summary>
    public static GridState Open(GridState state, PageName page) =>
        state with { Mode = new Reading(page == PageName.Help ? "Help" : "Before you begin", page, 0, state.Mode is Reading or Commanding ? new Browsing() : state.Mode) };

    /// <summary>One key.</summary>
    public static GridState Press(GridState state, Reading reading, Press press) => press.Key switch
    {
        KeyName.Down => To(state, reading, reading.Top + 1),
        KeyName.Up => To(state, reading, reading.Top - 1),
        KeyName.PageDown => To(state, reading, reading.Top + state.Height - 4),
        KeyName.PageUp => To(state, reading, reading.Top - state.Height + 4),
        KeyName.Home => To(state, reading, 0),
        KeyName.Text when press.Text == " " && reading.Page == PageName.Help => To(state, reading, reading.Top + state.Height - 4),
        KeyName.Enter or KeyName.Escape or KeyName.Text => Close(state, reading),
        _ => state,
    };

    private static GridState Close(GridState state, Reading reading)
    {
        GridState closed = state with { Mode = state.Session is null && reading.After is Browsing ? StartPage.Show(state).Mode : reading.After };
        return reading.Page == PageName.Cautions ? closed.And(new RememberCautions()) : closed;
    }

    private static GridState To(GridState state, Reading reading, int top)
    {
        int last = Math.Max(0, Screen.Pages.Lines(reading.Page, state.Width).Count - (state.Height - 3));
        return state with { Mode = reading with { Top = Math.Clamp(top, 0, last) } };
    }
}
