using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Commands that write the workbook.</summary>
internal static class Saving
{
    private const string Ending = ".screwsheet";

    /// <summary>Under its own name, or asks for one.</summary>
    public static GridState Save(GridState state) => state.Open.Path is null ? SaveAs(state) : state.And(new WriteFile(state.Open, null));

    /// <summary>Asks for another name.</summary>
    public static GridState SaveAs(GridState state) => Ask(state, leave: false);

    /// <summary>Saves, then leaves where that worked.</summary>
    public static GridState SaveAndLeave(GridState state) => state.Open.Path is null ? Ask(state, leave: true) : state.And(new WriteFile(state.Open, null)).And(new Leave());

    private static GridState Ask(GridState state, bool leave) => state with
    {
        Mode = new Asking("Save as", TypedText.Of(""), $"a file that is not there yet; {Ending} is added", (next, typed) => Named(next, typed, leave)),
    };

    private static GridState Named(GridState state, string typed, bool leave)
    {
        string name = typed.Trim();
        if (name.Length == 0) return state.Say("Nothing was saved: a file needs a name.", trouble: true);
        GridState saving = state.And(new WriteFile(state.Open, name.EndsWith(Ending, StringComparison.Ordinal) ? name : name + Ending));
        return leave ? saving.And(new Leave()) : saving;
    }
}
