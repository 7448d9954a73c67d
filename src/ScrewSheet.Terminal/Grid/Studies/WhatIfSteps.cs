using System.Collections.Immutable;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Commands;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>A what-if table being put together.</summary>
/// <param name="Cell">The cell it is asked about.</param>
/// <param name="Vary">What follows each <c>vary</c>.</param>
/// <param name="Givens">The givens varied.</param>
/// <param name="Show">What follows <c>show</c>.</param>
internal sealed record WhatIfDraft(CellId Cell, ImmutableArray<string> Vary, ImmutableArray<CellId> Givens, string Show)
{
    /// <summary>What was answered so far.</summary>
    public ImmutableArray<string> SoFar => [.. Vary.Select(vary => PlainText.Of("vary " + vary))];
}

/// <summary>The steps to a what-if table: what varies, over which values, what is shown, where it stands, its words. The last one puts it on the sheet as one change.</summary>
internal static class WhatIfSteps
{
    private const string Title = "A what-if table";

    /// <summary>How values are written.</summary>
    public static ImmutableArray<string> Forms { get; } =
    [
        "A range: 0 mm to 60 mm step 10 mm", "or with its steps counted: 0 mm to 60 mm over 12 steps (log before over: equal ratios)", "or a list: 4 kN, 6 kN, 8 kN",
    ];

    /// <summary>Begins with the cell under the cursor: shown where it is a result, varied where it is a given.</summary>
    public static GridState Begin(GridState state)
    {
        Session session = state.Open;
        CellResult result = session.Known!.Calculation.Cells[session.At];
        if (result.Cell.Content is not GivenContent) return Choose(state, new WhatIfDraft(session.At, [], [], session.NameOf(session.At)));
        CellId[] readers = [.. session.Known.ReadersOf(session.At)];
        if (readers.Length == 0) return state.Say($"Nothing is computed from {StudyMenu.NameOf(state)}, so there is nothing to show.");
        return Values(state, new WhatIfDraft(session.At, [], [], string.Join(", ", readers.Take(3).Select(session.NameOf))), result);
    }

    /// <summary>Why a table cannot be made, in one sentence; null where it can.</summary>
    /// <param name="state">The state.</param>
    /// <param name="vary">What would follow each <c>vary</c>.</param>
    /// <param name="show">What would follow each <c>show</c>.</param>
    /// <param name="shape">The room it would take.</param>
    public static string? Problem(GridState state, IEnumerable<string> vary, IEnumerable<string> show, out WhatIfShape? shape)
    {
        shape = null;
        if (state.Open.Known is not { } known) return "The results are not all in yet.";
        var request = WhatIfRequest.Read(vary.Select(AskedStudy.At), show.Select(AskedStudy.At));
        if (!request.IsAnswered) return PlainText.Of(request.Fault.Sentence);
        var checkedShape = (request.Answer with { Sheet = state.Open.SheetName }).Check(known.Calculation, state.Lexicon.Library);
        shape = checkedShape.Answer;
        return checkedShape.Fault is { } fault ? PlainText.Of(fault.Sentence) : null;
    }

    /// <summary>Puts a table on the sheet, or another in place of one, as one change.</summary>
    public static GridState Put(GridState state, WhatIfBlock block, int? replaced)
    {
        Session session = state.Open;
        if (replaced is { } index && Says(session.Sheet.WhatIfs[index]) == Says(block)) return state;
        try
        {
            GridState put = state.With(session.Changed(session.Workbook.WithWhatIf(session.SheetName, block, replaced), $"{(replaced is null ? "the new table" : "the change of the table")} at {block.Anchor}"));
            return put.Say("Changed the table. Ctrl+Z takes it back.");
        }
        catch (ArgumentException unreadable)
        {
            return state.Say(PlainText.Of(unreadable.Message), trouble: true);
        }
    }

    private static string Says(WhatIfBlock block) => $"{block.Anchor} {block.Title}\n{string.Join('\n', block.Vary.Select(vary => vary.Text))}\n\n{string.Join(", ", block.Show.Select(show => show.Text))}";

    /// <summary>Which given varies.</summary>
    private static GridState Choose(GridState state, WhatIfDraft draft)
    {
        CellResult[] left = [.. Behind(state.Open, draft).Where(given => !draft.Givens.Contains(given.Id))];
        if (left.Length == 0) return Show(state, draft);
        Item[] enough = draft.Vary.IsEmpty ? [] : [new Item("enough", PlainText.Of($"only {string.Join(" and ", draft.Givens.Select(state.Open.NameOf))}"), "On to what is shown.", new Take(next => Show(next.Browse(), draft)))];
        string title = draft.Vary.Length switch { 0 => $"What varies, for {PlainText.Of(draft.Show)}?", 1 => "Another given, across?", _ => "One more given? The table becomes a list." };
        return GivenChoice.Ask(state, title, left, enough, given => "Suggested: " + PlainText.Of(SuggestedValues.Of(given)), (next, given) => Values(next, draft, given));
    }

    private static IEnumerable<CellResult> Behind(Session session, WhatIfDraft draft)
    {
        Calculation calculation = session.Known!.Calculation;
        IEnumerable<CellId> shown = calculation.Cells.GetValueOrDefault(draft.Cell)?.Cell.Content is ResultContent ? [draft.Cell] : session.Known.ReadersOf(draft.Cell);
        return shown.SelectMany(id => Upstream.Givens(calculation, id)).DistinctBy(given => given.Id);
    }

    private static GridState Values(GridState state, WhatIfDraft draft, CellResult given)
    {
        string name = state.Open.NameOf(given.Id);
        return state with
        {
            Mode = new Stepping(Title, draft.SoFar, $"Values of {PlainText.Of(name)}", TypedText.Of(SuggestedValues.Of(given)), GivenChoice.IsNumeric(given) ? Forms : ["A list, with commas between."], (next, step, typed) =>
            {
                WhatIfDraft longer = draft with { Vary = draft.Vary.Add($"{name}: {typed.Trim()}"), Givens = draft.Givens.Add(given.Id) };
                // what is shown is asked later; until then the given stands for it
                return Problem(next, longer.Vary, [name], out _) is { } problem ? StudyKeys.Again(next, step, typed, problem) : Choose(next, longer);
            }),
        };
    }

    private static GridState Show(GridState state, WhatIfDraft draft) => state with
    {
        Mode = new Stepping(Title, draft.SoFar, "Show", TypedText.Of(draft.Show), ["Names or addresses of results, with commas between."], (next, step, typed) =>
            Problem(next, draft.Vary, [typed], out WhatIfShape? shape) is { } problem ? StudyKeys.Again(next, step, typed, problem) : Place(next, draft with { Show = typed.Trim() }, shape!)),
    };

    private static GridState Place(GridState state, WhatIfDraft draft, WhatIfShape shape) => state with
    {
        Mode = new Stepping(Title, [.. draft.SoFar, PlainText.Of("show " + draft.Show)], "Top left cell", TypedText.Of(TablePlace.Suggest(state.Open, shape).ToString()), [$"It takes {StudyFigures.Count(shape.Rows)} rows and {StudyFigures.Count(shape.Columns)} columns, and hides no cell."], (next, step, typed) =>
            TablePlace.Read(next.Open, typed, shape, null, out CellAddress anchor) is { } problem ? StudyKeys.Again(next, step, typed, problem) : Words(next, draft, anchor)),
    };

    private static GridState Words(GridState state, WhatIfDraft draft, CellAddress anchor)
    {
        string words = $"{draft.Show} by {string.Join(" and ", draft.Givens.Select(state.Open.NameOf))}";
        return state with
        {
            Mode = new Stepping(Title, [.. draft.SoFar, PlainText.Of("show " + draft.Show), $"at {anchor}"], "Words above it", TypedText.Of(char.ToUpperInvariant(words[0]) + words[1..]), ["Nothing leaves them away."], (next, _, typed) =>
            {
                WhatIfBlock block = new(anchor, typed.Trim() is { Length: > 0 } title ? title : null, [.. draft.Vary.Select(AskedStudy.At)], [AskedStudy.At(draft.Show)], new Place(0, 1));
                GridState put = Put(next, block, null);
                return put.Notice is { IsTrouble: true } ? put : put.With(Moves.Jump(put.Open, new CellId(put.Open.SheetName, anchor))).Say($"The table stands at {anchor}. Ctrl+B goes back, Ctrl+Z takes it back.");
            }),
        };
    }
}
