using ScrewSheet.Terminal.Grid.Passing;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Something a reader can have done in the grid.</summary>
/// <param name="Letter">The letter after Space.</param>
/// <param name="Group">What it is about.</param>
/// <param name="Title">What it does.</param>
/// <param name="Ctrl">The letter that does it at once with Ctrl, or null.</param>
/// <param name="Do">Does it.</param>
internal sealed record Command(char Letter, string Group, string Title, char? Ctrl, Func<GridState, GridState> Do);

/// <summary>Every command of the grid: what the panel shows, the help lists and the keys do.</summary>
internal static class GridCommands
{
    /// <summary>All of them, in the order shown.</summary>
    public static IReadOnlyList<Command> All { get; } =
    [
        new('s', "File", "save", 's', Saving.Save),
        new('w', "File", "save under a new name", null, Saving.SaveAs),
        new('6', "File", "pass it on as a file", null, PassMenu.Open),
        new('q', "File", "leave", 'q', LeaveProgram),
        new('z', "Change", "take back", 'z', TakeBack),
        new('y', "Change", "do again", 'y', DoAgain),
        new('e', "Change", "line left with Esc", null, BringBack),
        new('c', "Block", "copy", 'c', ClipCommands.Copy),
        new('x', "Block", "cut", 'x', ClipCommands.Cut),
        new('v', "Block", "paste", 'v', ClipCommands.Paste),
        new('d', "Block", "fill down", null, state => ClipCommands.Fill(state, down: true)),
        new('r', "Block", "fill right", null, state => ClipCommands.Fill(state, down: false)),
        new('i', "Rows", "insert rows above", null, state => ClipCommands.Insert(state, rows: true)),
        new('o', "Rows", "remove rows", null, state => ClipCommands.Remove(state, rows: true)),
        new('j', "Rows", "insert columns before", null, state => ClipCommands.Insert(state, rows: false)),
        new('k', "Rows", "remove columns", null, state => ClipCommands.Remove(state, rows: false)),
        new('4', "Rows", "move rows or columns", null, ShiftingKeys.Begin),
        new('2', "Rows", "sort, rising", null, state => SortCommands.Ask(state, falling: false)),
        new('3', "Rows", "sort, falling", null, state => SortCommands.Ask(state, falling: true)),
        new('+', "Columns", "columns wider", null, state => state.With(Columns.Widen(state.Open, 2))),
        new('-', "Columns", "columns narrower", null, state => state.With(Columns.Widen(state.Open, -2))),
        new('=', "Columns", "columns to fit", null, state => state.With(Columns.Fit(state.Open))),
        new('m', "Cell", "rename everywhere", null, Questions.Rename),
        new('u', "Cell", "unit and digits", null, Questions.Format),
        new('n', "Sheet", "new sheet", null, SheetCommands.Add),
        new('t', "Sheet", "rename sheet", null, SheetCommands.Rename),
        new('5', "Sheet", "remove sheet", null, SheetCommands.Remove),
        new('<', "Sheet", "move sheet left", null, state => SheetCommands.Move(state, -1)),
        new('>', "Sheet", "move sheet right", null, state => SheetCommands.Move(state, 1)),
        new('g', "Go", "go to a cell or name", 'g', Questions.Go),
        new('b', "Go", "back from a jump", 'b', state => state.With(Moves.Back(state.Open))),
        new('f', "Go", "find", 'f', Questions.Find),
        new('h', "Go", "replace", null, Questions.Replace),
        new('a', "Look", "what needs attention", 'a', Lists.Attention),
        new('l', "Look", "library functions", 'l', Lists.Catalogue),
        new('9', "Ask", "ask what if, how sure", 't', StudyMenu.Open),
        new('7', "Look", "compare versions", null, CompareSteps.Open),
        new('8', "Look", "review marks", null, ReviewMenu.Open),
        new('p', "Look", "plot columns or table", null, Draw),
        new('1', "Look", "SI or US units", null, SwitchUnits),
        new('.', "Look", "stop calculating", null, StopOrGoOn),
        new('?', "Look", "help", null, state => ReadingKeys.Open(state, PageName.Help)),
    ];

    /// <summary>The command a key with Ctrl does at once, or null.</summary>
    public static Command? Shortcut(Press press) =>
        press is { Key: KeyName.Text, Ctrl: true, Text.Length: 1 } ? All.FirstOrDefault(command => command.Ctrl == press.Text[0]) ?? All[^1] with { Do = state => state.Say($"Ctrl+{press.Text.ToUpperInvariant()} does nothing here. Space lists what can be done.") } : null;

    /// <summary>One key in the panel.</summary>
    public static GridState Press(GridState state, Press press)
    {
        GridState browsing = state.Browse();
        if (press.Key != KeyName.Text) return press.Key == KeyName.Escape ? browsing : BrowsingKeys.Press(browsing, press);
        return All.FirstOrDefault(command => command.Letter == char.ToLowerInvariant(press.Text[0])) is { } command ? command.Do(browsing) : browsing.Say($"No command has the letter {press.Text}.");
    }

    /// <summary>Leaves, after a question where something is not saved.</summary>
    public static GridState LeaveProgram(GridState state)
    {
        if (state.Session is not { IsUnsaved: true }) return state.And(new Leave());
        return state with
        {
            Mode = new Confirming("This workbook has changes that are not saved.",
            [
                ('s', "save and leave", Saving.SaveAndLeave),
                ('d', "drop the changes and leave", next => next.And(new Leave())),
                ('b', "go back to the grid", next => next),
            ]),
        };
    }

    private static GridState TakeBack(GridState state)
    {
        Session back = Edits.Undo(state.Open, out Step? step);
        return step is null ? state.Say("There is nothing to take back.") : state.With(back).Say($"Took back {step.What}.");
    }

    private static GridState DoAgain(GridState state)
    {
        Session again = Edits.Redo(state.Open, out Step? step);
        return step is null ? state.Say("There is nothing to do again.") : state.With(again).Say($"Did {step.What} again.");
    }

    private static GridState BringBack(GridState state) => state.LeftEntry is { } line ? EnteringKeys.Begin(state with { LeftEntry = null }, line) : state.Say("No line was left with Esc.");

    private static GridState Draw(GridState state) => state.Open.Block.IsOne && TableDetail.Under(state.Open) is { } table ? TableMenu.Plot(state, table) : Plot.Of(state.Open, out string? problem) is { } plot ? state with { Mode = new Plotting(plot) } : state.Say(problem!);

    private static GridState StopOrGoOn(GridState state) => state is { IsStopped: true, Open.IsCalculated: false }
        ? (state with { IsStopped = false }).And(new Calculate(state.Open.Workbook)).Say("Calculating again.") : StudyState.Stop(state);

    private static GridState SwitchUnits(GridState state)
    {
        var head = state.Open.Workbook.Head;
        var other = head.Units == Quantities.Units.UnitSystem.SI ? Quantities.Units.UnitSystem.US : Quantities.Units.UnitSystem.SI;
        return state.With(state.Open.Changed(state.Open.Workbook.WithHead(head with { Units = other }), $"the change to {other} units"))
            .Say($"{other} units where a cell does not say its own.");
    }
}
