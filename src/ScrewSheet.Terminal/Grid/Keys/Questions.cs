using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Commands that need a line of text.</summary>
internal static class Questions
{
    /// <summary>To a cell, a name or a sheet.</summary>
    public static GridState Go(GridState state) => Ask(state, "Go to", "", "an address, a name, a sheet, or Sheet.name", (next, typed) =>
        Places.FindTyped(next.Open, typed) is { } id ? next.With(Moves.Jump(next.Open, id)) : next.Say($"No cell, name or sheet is called {PlainText.Of(typed.Trim())}.", trouble: true));

    /// <summary>Another name for the cell; for its column, where that is a series by name and the cell under the cursor holds words or nothing.</summary>
    public static GridState Rename(GridState state)
    {
        if (state.Open.Cell?.Content is null or NoteContent && Columns.NamedAt(state.Open.Sheet, state.Open.Cursor.Column) is { } column) return RenameColumn(state, column);
        if (state.Open.Cell is not { Content: not BrokenContent } cell) return state.Say("Only a cell that holds something has a name.");
        return Ask(state, "New name of " + state.Open.Cursor, cell.Name ?? "", "every expression that uses it follows", (next, typed) =>
        {
            Workbook renamed = Renaming.Cell(next.Open.Workbook, next.Open.At, typed.Trim(), out Fault? fault);
            return fault is not null ? next.Say(PlainText.Of(fault.Sentence), trouble: true) : next.With(next.Open.Changed(renamed, $"renaming {next.Open.Cursor}")).Say("Renamed, wherever it is used.");
        });
    }

    private static GridState RenameColumn(GridState state, SheetColumn column) => Ask(state, $"New name of column {CellAddress.ColumnName(column.Column)}", column.Name, "every expression that uses it follows", (next, typed) =>
    {
        Workbook renamed = Renaming.Column(next.Open.Workbook, next.Open.SheetName, column.Name, typed.Trim(), out Fault? fault);
        return fault is not null ? next.Say(PlainText.Of(fault.Sentence), trouble: true) : next.With(next.Open.Changed(renamed, $"renaming column {CellAddress.ColumnName(column.Column)}")).Say("Renamed, wherever it is used.");
    });

    /// <summary>How the selected cells are shown.</summary>
    public static GridState Format(GridState state) => Ask(state, "Shown in", state.Open.Cell?.Format is { } format ? DisplayFormatText.Write(format) : "", "such as kN, 2 decimals; 3 digits; nothing for the workbook's own", (next, typed) =>
    {
        DisplayFormat? wanted = null;
        if (typed.Trim().Length > 0 && !DisplayFormatText.TryParse(typed.Trim(), out wanted, out string? problem)) return next.Say(PlainText.Of(problem), trouble: true);
        Workbook workbook = next.Open.Workbook;
        foreach (Cell cell in next.Open.Block.CellsOf(next.Open.Sheet).Where(cell => cell.Content is GivenContent or ResultContent).ToList()) workbook = workbook.WithCell(next.Open.SheetName, cell with { Format = wanted });
        return next.With(next.Open.Changed(workbook, "unit and digits"));
    });

    /// <summary>Cells that hold a text.</summary>
    public static GridState Find(GridState state) => Ask(state, "Find", "", "in names, words, expressions, values and remarks of all sheets", (next, typed) =>
    {
        if (typed.Length == 0) return next;
        ImmutableArray<Item> found = [.. Matches(next.Open, typed)];
        return found.IsEmpty ? next.Say($"Nothing holds {PlainText.Of(typed)}.") : next with { Mode = new Listing($"Cells that hold {PlainText.Of(typed)}", found) };
    });

    /// <summary>One text for another in every entry of the sheet, or of the selection.</summary>
    public static GridState Replace(GridState state) => Ask(state, "Replace", "", state.Open.Block.IsOne ? "what, in the entries of this sheet" : "what, in the selected entries", (next, what) =>
        what.Length == 0 ? next : Ask(next, $"Replace {PlainText.Of(what)} by", "", "Ctrl+Z takes it back", (after, by) => Replaced(after, what, by)));

    private static GridState Replaced(GridState state, string what, string by)
    {
        Session session = state.Open;
        Workbook workbook = session.Workbook;
        int changed = 0, refused = 0;
        foreach (Cell cell in (session.Block.IsOne ? session.Sheet.CellsInOrder : session.Block.CellsOf(session.Sheet)).ToList())
        {
            string old = CellText.WriteEntry(cell), now = old.Replace(what, by, StringComparison.Ordinal);
            if (old == now) continue;
            if (CellText.ReadEntry(now, cell.Address) is EntryRead read && read.Cell.Content.GetType() == cell.Content.GetType() && !Taken(workbook, session.SheetName, read.Cell))
            {
                workbook = workbook.WithCell(session.SheetName, read.Cell);
                changed++;
            }
            else refused++;
        }
        string said = $"Replaced in {changed} {(changed == 1 ? "cell" : "cells")}" + (refused == 0 ? "." : $"; {refused} would not read any more and stayed.");
        return state.With(session.Changed(workbook, "replacing")).Say(said, refused > 0);
    }

    private static bool Taken(Workbook workbook, string sheet, Cell cell) =>
        cell.Name is { } name && workbook.Find(sheet)!.IsTaken(name, cell.Address);

    private static IEnumerable<Item> Matches(Session session, string text)
    {
        foreach (Sheet sheet in session.Workbook.Sheets)
        {
            foreach (Cell cell in sheet.CellsInOrder)
            {
                CellId id = new(sheet.Name, cell.Address);
                string entry = CellText.WriteEntry(cell), value = session.Result(id) is { } result && session.Known!.Shown(result) is { } shown ? shown.ToString() : "";
                if (!entry.Contains(text, StringComparison.OrdinalIgnoreCase) && !value.Contains(text, StringComparison.OrdinalIgnoreCase)) continue;
                yield return new Item(PlainText.Of(id.ToString()), PlainText.Of(entry), value, new GoTo(id));
            }
        }
    }

    /// <summary>Asks for a line of text.</summary>
    public static GridState Ask(GridState state, string question, string first, string hint, Func<GridState, string, GridState> answer) =>
        state with { Mode = new Asking(question, TypedText.Of(first), hint, answer) };
}
