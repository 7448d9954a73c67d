using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Commands on whole sheets.</summary>
internal static class SheetCommands
{
    /// <summary>A sheet at the end.</summary>
    public static GridState Add(GridState state) => Questions.Ask(state, "Name of the new sheet", "", "begins with a capital", (next, typed) =>
    {
        string name = typed.Trim();
        if (next.Open.Workbook.Find(name) is not null) return next.Say($"There is a sheet {PlainText.Of(name)} already.", trouble: true);
        Workbook probe = next.Open.Workbook.WithSheet(new Sheet { Name = "Sheet_new", Order = [] });
        Workbook named = Renaming.Sheet(probe, "Sheet_new", name, out Fault? fault);
        return fault is not null ? next.Say(PlainText.Of(fault.Sentence), trouble: true) : next.With(Moves.ToSheet(next.Open.Changed(named, "the new sheet"), name));
    });

    /// <summary>Another name for the sheet.</summary>
    public static GridState Rename(GridState state) => Questions.Ask(state, "New name of the sheet " + PlainText.Of(state.Open.SheetName), state.Open.SheetName, "begins with a capital", (next, typed) =>
    {
        string name = typed.Trim();
        Workbook renamed = Renaming.Sheet(next.Open.Workbook, next.Open.SheetName, name, out Fault? fault);
        if (fault is not null) return next.Say(PlainText.Of(fault.Sentence), trouble: true);
        Session session = next.Open with { SheetName = name, Places = next.Open.Places.Remove(next.Open.SheetName) };
        return next.With(session with { Workbook = renamed, Done = next.Open.Done.Push(new Step(next.Open.Workbook, next.Open.At, "renaming the sheet")), TakenBack = [], Only = null }).Say("Renamed, wherever it is used.");
    });

    /// <summary>Removes the sheet, after a question where it holds something.</summary>
    public static GridState Remove(GridState state)
    {
        Session session = state.Open;
        if (session.Workbook.Sheets.Length == 1) return state.Say("A workbook has one sheet at least, and this is the only one.");
        int cells = session.Sheet.Cells.Count;
        if (cells == 0) return Removed(state);
        return state with
        {
            Mode = new Confirming($"The sheet {PlainText.Of(session.SheetName)} holds {cells} {(cells == 1 ? "cell" : "cells")}. Cells elsewhere that read them will be in fault.",
            [
                ('r', "remove the sheet", Removed),
                ('b', "go back to the grid", next => next),
            ]),
        };
    }

    /// <summary>Moves the sheet among the others.</summary>
    public static GridState Move(GridState state, int by)
    {
        ImmutableArray<Sheet> sheets = state.Open.Workbook.Sheets;
        int at = sheets.IndexOf(state.Open.Sheet), to = at + by;
        if (to < 0 || to >= sheets.Length) return state.Say(by < 0 ? "This is the first sheet already." : "This is the last sheet already.");
        Workbook moved = state.Open.Workbook with { Sheets = sheets.RemoveAt(at).Insert(to, sheets[at]) };
        return state.With(state.Open.Changed(moved, $"moving the sheet {PlainText.Of(state.Open.SheetName)}")).Say($"{PlainText.Of(state.Open.SheetName)} is sheet {to + 1} of {sheets.Length} now.");
    }

    private static GridState Removed(GridState state)
    {
        Session session = state.Open;
        int at = session.Workbook.Sheets.IndexOf(session.Sheet);
        string name = session.SheetName, next = session.Workbook.Sheets[at == 0 ? 1 : at - 1].Name;
        Session changed = session.Changed(session.Workbook.WithoutSheet(name), $"removing the sheet {PlainText.Of(name)}");
        return state.With(Moves.ToSheet(changed with { SheetName = name }, next)).Say($"Removed the sheet {PlainText.Of(name)}. Ctrl+Z takes it back.");
    }
}
