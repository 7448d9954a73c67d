using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>What the program does with what the reader does: a function of state and input, nothing else.</summary>
internal static class Dispatch
{
    /// <summary>The next state. Its effects are those of this step alone.</summary>
    public static GridState Next(GridState state, Input input)
    {
        GridState fresh = state with { Effects = [] };
        return input switch
        {
            Press press => Key(fresh with { Notice = null }, press),
            Paste paste => Pasted(fresh with { Notice = null }, paste.Text),
            Click click => MouseKeys.Click(fresh, click),
            Wheel wheel => MouseKeys.Turn(fresh, wheel),
            Resize resize => Resized(fresh, resize),
            Calculated calculated => fresh.Session is null ? fresh : StudyState.Calculated(fresh with { Session = fresh.Session with { Known = calculated.Known } }),
            StudyNews news => StudyState.Take(fresh, news),
            Slowed slowed => fresh with { Slow = slowed.Cell },
            Stopped stopped => Halted(fresh with { IsStopped = true, Slow = null }, stopped.Why),
            Previewed previewed => Tried(fresh, previewed.Preview),
            Written written => (fresh with { Session = written.Session, IsStopped = false }).And(new Calculate(written.Session.Workbook)).Say(written.Said),
            Opened opened => StartPage.Open(fresh, opened.Session),
            Offered offered => Recovering.Offer(fresh, offered.Left),
            Said said => fresh.Say(said.Text, said.IsTrouble),
            _ => throw new ArgumentOutOfRangeException(nameof(input), input, "No such input."),
        };
    }

    private static GridState Key(GridState state, Press press) => state.Mode switch
    {
        Browsing => BrowsingKeys.Press(state, press),
        Entering entering => EnteringKeys.Press(state, entering.Entry, press),
        Shifting => ShiftingKeys.Press(state, press),
        Linking linking => LinkingKeys.Press(state, linking, press),
        Commanding => GridCommands.Press(state, press),
        Listing listing => ListingKeys.Press(state, listing, press),
        Asking asking => AskingKeys.Press(state, asking, press),
        Confirming confirming => AskingKeys.Press(state, confirming, press),
        Reading reading => ReadingKeys.Press(state, reading, press),
        Studying studying => StudyKeys.Press(state, studying, press),
        Plotting => press.Key is KeyName.Escape or KeyName.Enter || press.Text == "q" ? state.Browse() : state,
        _ => throw new ArgumentOutOfRangeException(nameof(state), state.Mode, "No such mode."),
    };

    private static GridState Pasted(GridState state, string text) => state.Mode switch
    {
        Browsing => ClipCommands.PasteText(state, text),
        Entering entering => EnteringKeys.Put(state, entering.Entry, entering.Entry.Typed.Insert(text)),
        Asking asking => state with { Mode = asking with { Typed = asking.Typed.Insert(text) } },
        Studying studying => StudyKeys.Paste(state, studying, text),
        _ => state,
    };

    private static GridState Resized(GridState state, Resize resize)
    {
        GridState next = state with { Width = resize.Width, Height = resize.Height };
        return next.Session is null ? next : next.With(next.Session);
    }

    private static GridState Halted(GridState state, string? why) => why is null ? state : state.Say(why, trouble: true);

    private static GridState Tried(GridState state, Preview preview) =>
        state.Mode is Entering entering && entering.Entry.Typed.Text == preview.Typed ? state with { Mode = new Entering(entering.Entry with { Preview = preview }) } : state;
}
