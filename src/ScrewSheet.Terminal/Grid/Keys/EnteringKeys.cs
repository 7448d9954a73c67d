using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Keys while a line is typed into a cell.</summary>
internal static class EnteringKeys
{
    /// <summary>Begins an entry with what stands there, or with a first text in its place.</summary>
    public static GridState Begin(GridState state, string? first, int? firstColumn = null)
    {
        GridState one = state.With(state.Open with { Anchor = state.Open.Cursor });
        return Ask(one with { Mode = new Entering(Entry.Begin(one.Open, one.Lexicon, first, firstColumn)) });
    }

    /// <summary>With another line.</summary>
    public static GridState Put(GridState state, Entry entry, TypedText typed)
    {
        if (typed.Text == entry.Typed.Text) return state with { Mode = new Entering(entry with { Typed = typed, Suggestions = [], Chosen = -1, Call = CallHelp.At(typed.Before, state.Open, state.Lexicon) }) };
        return Ask(state with { Mode = new Entering(entry.Edited(typed, state.Open, state.Lexicon)) });
    }

    /// <summary>One key.</summary>
    public static GridState Press(GridState state, Entry entry, Press press)
    {
        if (LineKeys.Edit(entry.Typed, press) is { } line) return Put(state, entry, line);
        return press.Key switch
        {
            KeyName.Text => Control(state, entry, press.Text),
            KeyName.Down => Choose(state, entry, 1),
            KeyName.Up => Choose(state, entry, -1),
            KeyName.Enter or KeyName.Tab when entry.Chosen >= 0 => Ask(state with { Mode = new Entering(entry.Accept(state.Open, state.Lexicon)) }),
            KeyName.Enter => Finish(state, entry, entry.FirstColumn - state.Open.Cursor.Column, 1, null),
            KeyName.Tab => Finish(state, entry, 1, 0, entry.FirstColumn),
            KeyName.BackTab => Finish(state, entry, -1, 0, entry.FirstColumn),
            KeyName.Escape when entry.Chosen >= 0 => state with { Mode = new Entering(entry with { Chosen = -1 }) },
            KeyName.Escape => Abandon(state, entry),
            _ => state,
        };
    }

    private static GridState Control(GridState state, Entry entry, string letter) => letter switch
    {
        "z" => Ask(state with { Mode = new Entering(entry.Undo(state.Open, state.Lexicon)) }),
        "y" => Ask(state with { Mode = new Entering(entry.Redo(state.Open, state.Lexicon)) }),
        _ => state,
    };

    private static GridState Choose(GridState state, Entry entry, int by)
    {
        int count = entry.Suggestions.Length;
        if (count == 0) return state;
        int next = entry.Chosen + by;
        return state with { Mode = new Entering(entry with { Chosen = next >= count ? 0 : next < -1 ? count - 1 : next }) };
    }

    /// <summary>Puts the line in and goes on, where there is another cell to type into with <paramref name="path"/>.</summary>
    private static GridState Finish(GridState state, Entry entry, int columns, int rows, int? path)
    {
        Session done = Edits.Commit(state.Open, entry.Typed.Text, out Fault? fault);
        if (fault is not null) return (state with { Mode = new Entering(entry with { Preview = new Preview(entry.Typed.Text, null, null, fault, []) }) }).Say("Not put in: " + Output.PlainText.Of(fault.Sentence), trouble: true);
        GridState next = state.Browse().With(Moves.By(done, columns, rows));
        return path is null ? next with { LeftEntry = null } : Begin(next, next.Open.Cell is null ? "" : null, path);
    }

    private static GridState Abandon(GridState state, Entry entry)
    {
        string was = Entry.Begin(state.Open, state.Lexicon, null).Typed.Text;
        GridState left = state.Browse();
        return entry.Typed.Text == was || entry.Typed.Text.Length == 0 ? left : (left with { LeftEntry = entry.Typed.Text }).Say("Left as it was. Space and then E brings the line back.");
    }

    /// <summary>Has the line tried out where its text alone does not say what it is.</summary>
    private static GridState Ask(GridState state)
    {
        Entry entry = ((Entering)state.Mode).Entry;
        return entry.IsPreviewed ? state : state.And(new TryOut(state.Open.Workbook, new CellId(state.Open.SheetName, state.Open.Cursor), entry.Typed.Text));
    }
}
