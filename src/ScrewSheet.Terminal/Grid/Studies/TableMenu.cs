using System.Collections.Immutable;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Commands;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What can be done with the table under the cursor.</summary>
internal static class TableMenu
{
    /// <summary>Asks what is to be done.</summary>
    public static GridState Open(GridState state, DrawnTable table) => state with
    {
        Mode = new Confirming($"The table at {table.Block.Anchor}{(table.Block.Title is { Length: > 0 } title ? $": {PlainText.Of(title)}" : "")}",
        [
            ('c', "change what it varies, what it shows, where it stands", next => Change(next, table)),
            ('p', "plot it", next => Plot(next, table)),
            .. table.IsStopped ? [('w', "work it out after all", StudyState.Resume)] : Array.Empty<(char, string, Func<GridState, GridState>)>(),
            ('r', "remove it from the sheet", next => Remove(next, table)),
        ]),
    };

    /// <summary>Shows its plot.</summary>
    public static GridState Plot(GridState state, DrawnTable table) => TablePlot.Of(state.Open, table, out string? problem) is { } plot ? state with { Mode = new Plotting(plot) } : state.Say(PlainText.Of(problem!));

    private static GridState Remove(GridState state, DrawnTable table) =>
        state.With(state.Open.Changed(state.Open.Workbook.WithoutWhatIf(state.Open.SheetName, table.Index), $"removing the table at {table.Block.Anchor}")).Say($"Removed the table at {table.Block.Anchor}. Ctrl+Z takes it back.");

    /// <summary>Its lines, each of which can be changed.</summary>
    private static GridState Change(GridState state, DrawnTable table)
    {
        WhatIfBlock block = table.Block;
        IEnumerable<Item> vary = block.Vary.Select((text, i) => new Item("vary", PlainText.Of(text.Text), "Change its values, or take it out.", new Take(next => Vary(next.Browse(), table, i))));
        Item another = new("vary", "another given", "One that the shown cells are computed from.", new Take(next => Another(next.Browse(), table)));
        string show = string.Join(", ", block.Show.Select(text => text.Text));
        ImmutableArray<Item> items =
        [
            .. vary, another,
            new Item("show", PlainText.Of(show), "The results it shows.", new Take(next => Ask(next.Browse(), table, "Show", show, ["Names or addresses of results, with commas between."], typed => block with { Show = [AskedStudy.At(typed)] }))),
            new Item("at", block.Anchor.ToString(), "Its top left cell.", new Take(next => Move(next.Browse(), table))),
            new Item("words", PlainText.Of(block.Title ?? ""), "The words above it.", new Take(next => Words(next.Browse(), table))),
        ];
        return state with { Mode = new Listing($"The table at {block.Anchor}", items) };
    }

    private static GridState Vary(GridState state, DrawnTable table, int index)
    {
        WhatIfBlock block = table.Block;
        ImmutableArray<string> hints = [.. WhatIfSteps.Forms, "nothing: this given varies no more"];
        return Ask(state, table, "Vary", block.Vary[index].Text, hints, typed => block with { Vary = typed.Length == 0 ? block.Vary.RemoveAt(index) : block.Vary.SetItem(index, AskedStudy.At(typed)) });
    }

    private static GridState Another(GridState state, DrawnTable table)
    {
        if (state.Open.Known is not { } known || table.Table is not { } worked) return state.Say("The table is not worked out yet; ask when it is.");
        CellResult[] left = [.. worked.Columns.SelectMany(column => Upstream.Givens(known.Calculation, column.Cell)).DistinctBy(given => given.Id).Where(given => worked.Axes.All(axis => axis.Cell != given.Id))];
        if (left.Length == 0) return state.Say("All givens the shown cells are computed from vary already.");
        return GivenChoice.Ask(state, "Another given", left, [], given => "Suggested: " + PlainText.Of(SuggestedValues.Of(given)), (next, given) =>
            Ask(next, table, "Vary", $"{next.Open.NameOf(given.Id)}: {SuggestedValues.Of(given)}", WhatIfSteps.Forms, typed => table.Block with { Vary = table.Block.Vary.Add(AskedStudy.At(typed)) }));
    }

    private static GridState Words(GridState state, DrawnTable table) => state with
    {
        Mode = new Stepping($"The table at {table.Block.Anchor}", [], "Words above it", TypedText.Of(table.Block.Title ?? ""), ["Nothing leaves them away."],
            (next, _, typed) => WhatIfSteps.Put(next, table.Block with { Title = typed.Trim() is { Length: > 0 } title ? title : null }, table.Index)),
    };

    private static GridState Move(GridState state, DrawnTable table) => state with
    {
        Mode = new Stepping($"The table at {table.Block.Anchor}", [], "Top left cell", TypedText.Of(table.Block.Anchor.ToString()), ["It hides no cell."], (next, step, typed) =>
        {
            if (Problem(next, table.Block, out WhatIfShape? shape) is { } wrong) return StudyKeys.Again(next, step, typed, wrong);
            if (TablePlace.Read(next.Open, typed, shape!, table.Index, out CellAddress anchor) is { } problem) return StudyKeys.Again(next, step, typed, problem);
            GridState moved = WhatIfSteps.Put(next, table.Block with { Anchor = anchor }, table.Index);
            return moved.With(Moves.To(moved.Open, anchor));
        }),
    };

    /// <summary>Asks for a line; what comes of it must be a table that can be made and has room.</summary>
    private static GridState Ask(GridState state, DrawnTable table, string question, string first, ImmutableArray<string> hints, Func<string, WhatIfBlock> change) => state with
    {
        Mode = new Stepping($"The table at {table.Block.Anchor}", [], question, TypedText.Of(first), hints, (next, step, typed) =>
        {
            WhatIfBlock changed = change(typed.Trim());
            string? problem = Problem(next, changed, out WhatIfShape? shape) ?? TablePlace.Problem(next.Open, changed.Anchor, shape!, table.Index);
            return problem is null ? WhatIfSteps.Put(next, changed, table.Index) : StudyKeys.Again(next, step, typed, problem);
        }),
    };

    private static string? Problem(GridState state, WhatIfBlock block, out WhatIfShape? shape) => WhatIfSteps.Problem(state, block.Vary.Select(vary => vary.Text), block.Show.Select(show => show.Text), out shape);
}
