using ScrewSheet.Terminal.Grid.Passing;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>The last line: the keys that apply now.</summary>
internal static class KeyLine
{
    /// <summary>As many as have room.</summary>
    public static ScreenLine Of(GridState state)
    {
        LineBuilder line = new(state.Width);
        foreach ((string key, string what) in Keys(state))
        {
            if (line.Left < key.Length + what.Length + 4) break;
            line.Add(" " + key, Ink.Key).Add($" {what} ", Ink.Frame);
        }
        return line.Line(Ink.Frame);
    }

    private static (string, string)[] Keys(GridState state) => state.Mode switch
    {
        Entering { Entry.Chosen: >= 0 } => [("Enter", "take it"), ("↑↓", "choose"), ("Esc", "back to the line")],
        Entering { Entry.Suggestions.IsEmpty: false } => [("Enter", "done"), ("Tab", "done, next cell"), ("↓", "choose from the list"), ("Esc", "leave as it was")],
        Entering => [("Enter", "done, down"), ("Tab", "done, right"), ("Esc", "leave as it was"), ("Ctrl+U", "empty")],
        Linking => [("Tab", "next cell"), ("Enter", "go there"), ("Page Up, Page Down", "scroll"), ("Esc", "back to the grid")],
        Shifting => [("↑↓", "move rows"), ("←→", "move columns"), ("Enter", "done")],
        Commanding => [("letter", "do it"), ("Esc", "back to the grid")],
        Listing { IsStart: true } => [("↑↓", "choose"), ("Enter", "open"), ("Esc", "leave")],
        Listing { Items: [{ Choice: Take }, ..] } => [("↑↓", "choose"), ("Enter", "take it"), ("letters", "narrow"), ("Esc", "leave, change nothing")],
        Listing => [("↑↓", "choose"), ("Enter", "go there"), ("letters", "narrow"), ("Esc", "back")],
        Asking => [("Enter", "done"), ("Esc", "never mind")],
        Confirming => [("letter", "answer"), ("Esc", "back")],
        Reading { Page: PageName.Cautions } => [("Enter", "understood")],
        Studying studying => StudyPicture.Keys(studying),
        Plotting => [("Esc", "back to the grid")],
        Reading => [("↑↓", "scroll"), ("Esc", "back")],
        _ => InGrid(state),
    };

    private static (string, string)[] InGrid(GridState state) => state.Open.Block.IsOne
        ? [("Enter", state.Open.Cell is null && TableDetail.Under(state.Open) is not null ? "table" : ConflictChoice.Of(state.Open) is not null ? "choose" : "edit"), ("Space", "commands"), ("Ctrl+T", "ask"), ("Ctrl+S", "save"), ("Ctrl+Q", "leave"), ("?", "help"), ("Tab", "detail"), ("< >", "sheet"), ("Ctrl+A", "attention"), ("Ctrl+G", "go to"), ("Ctrl+F", "find"), ("Ctrl+Z", "take back"), ("Shift+arrows", "select"), ("Del", "clear")]
        : [("Ctrl+C", "copy"), ("Ctrl+X", "cut"), ("Ctrl+V", "paste"), ("Space d", "fill down"), ("Space r", "fill right"), ("Del", "clear"), ("Space", "commands"), ("Esc", "one cell")];
}
