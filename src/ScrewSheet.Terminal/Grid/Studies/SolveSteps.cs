using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Solving;
using ScrewSheet.Terminal.Commands;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>The steps of solving backwards: by which given, to which value, between which ends. What is found is offered for the given and never written unasked.</summary>
internal static class SolveSteps
{
    /// <summary>Begins with the result under the cursor.</summary>
    public static GridState Begin(GridState state)
    {
        Session session = state.Open;
        CellId cell = session.At;
        CellResult[] givens = [.. Upstream.Givens(session.Known!.Calculation, cell).Where(GivenChoice.IsNumeric)];
        if (givens.Length == 0) return state.Say($"{StudyMenu.NameOf(state)} is computed from no given that is a number or a quantity.");
        return GivenChoice.Ask(state, $"By which given, for {StudyMenu.NameOf(state)}?", givens, [], given => ((GivenContent)given.Cell.Content).Within is { } limits ? $"Its limits: {PlainText.Of(limits.Text)}" : "It has no limits.", (next, given) => Target(next, cell, given.Id));
    }

    /// <summary>To which value; a check turns.</summary>
    private static GridState Target(GridState state, CellId cell, CellId given)
    {
        string name = PlainText.Of(state.Open.NameOf(cell)), by = PlainText.Of(state.Open.NameOf(given));
        if (state.Open.Result(cell)?.IsCheck == true) return Between(state, cell, given, "holds");
        string now = state.Open.Result(cell) is { } result && state.Open.Known!.Shown(result) is { } shown ? $"It is {shown} now." : "";
        return state with
        {
            Mode = new Stepping($"Backwards from {name}", [$"by {by}"], $"{name} is to be", TypedText.Of(""), ["A value with its unit.", now], (next, step, typed) =>
                typed.Trim().Length == 0 ? StudyKeys.Again(next, step, typed, "Write the value it is to have, with its unit.") : Between(next, cell, given, typed.Trim())),
        };
    }

    /// <summary>Between which ends.</summary>
    private static GridState Between(GridState state, CellId cell, CellId given, string target)
    {
        string name = PlainText.Of(state.Open.NameOf(cell)), by = PlainText.Of(state.Open.NameOf(given));
        var content = (GivenContent)state.Open.Known!.Calculation.Cells[given].Cell.Content;
        string otherwise = content.Within is { } limits ? $"Nothing searches its limits, {PlainText.Of(limits.Text)}." : "Nothing begins at its own value and goes further out until there is an answer.";
        return state with
        {
            Mode = new Stepping($"Backwards from {name}", [$"by {by}", target == "holds" ? "until it turns" : PlainText.Of($"to {target}")], $"Search {by} between", TypedText.Of(""), ["Two ends: 0 mm to 60 mm", otherwise],
                (next, step, typed) => Search(next, step, typed, new SolveRequest { Cell = StudyMenu.Exactly(cell), Equal = AskedStudy.At(target), By = StudyMenu.Exactly(given) })),
        };
    }

    private static GridState Search(GridState state, Stepping step, string typed, SolveRequest request)
    {
        string[] ends = [.. typed.Split(" to ", 2).Select(end => end.Trim())];
        SolveRequest whole = ends is [""] ? request : request with { From = AskedStudy.At(ends[0]), To = ends.Length > 1 ? AskedStudy.At(ends[1]) : null };
        Calculation calculation = state.Open.Known!.Calculation;
        return StudyKeys.Start(state, "Searching", (runner, _, stop) =>
        {
            StudyOutcome<Solution> outcome = runner.Solve(calculation, whole, stop);
            return outcome.IsAnswered ? next => Found(next, outcome.Answer, calculation.Workbook.Head) : next => StudyKeys.Again(next, step, typed, outcome.Fault.Sentence);
        });
    }

    private static GridState Found(GridState state, Solution solution, Head head)
    {
        SolveReport report = new(solution, head);
        string by = PlainText.Of(solution.ByLabel);
        string? value = solution.Answer is { } root ? Written(state.Open, solution, root) : null;
        return state with
        {
            Mode = new Finding($"Backwards from {PlainText.Of(solution.Label)}", width => [.. report.Lines(width)],
                value is null ? [] : [('w', $"write {by} = {value}", next => Offer(next, solution.By, by, value))]),
        };
    }

    /// <summary>The value as it would stand in the given, in the given's own unit: of a check, on the side on which it holds.</summary>
    private static string? Written(Session session, Solution solution, Root root)
    {
        if (session.Workbook.Find(solution.By.Sheet)?.Cells.GetValueOrDefault(solution.By.Address)?.Content is not GivenContent content) return null;
        Unit unit = (content.Literal as NumberLiteral)?.Unit ?? new StudyFigures(solution.ByType, solution.ByFormat, session.Workbook.Head.Units).Unit;
        double value = unit.FromSi(root.Si);
        bool isTurn = root.Kind == RootKind.Turning;
        Rounding way = !isTurn ? Rounding.HalfEven : root.HoldsBelow == value >= 0 ? Rounding.Down : Rounding.Up;
        string rounded = NumberText.Format(value, new Digits(isTurn ? 6 : 10, true, way));
        return NumberText.TryParse(rounded, out double plain, out _) ? SuggestedValues.Write(plain, unit) : null;
    }

    /// <summary>Asks whether it is to be written.</summary>
    private static GridState Offer(GridState state, CellId given, string by, string value)
    {
        if (state.Open.Workbook.Find(given.Sheet)?.Cells.GetValueOrDefault(given.Address) is not { Content: GivenContent content } cell) return state.Say($"{by} is no given any more.", trouble: true);
        string source = content.Source is null ? "" : " Its source goes, since the value is no longer from there.";
        return state with
        {
            Mode = new Confirming($"Write {value} into {by}? It has {PlainText.Of(content.Text)}.{source}",
            [
                ('y', "yes, write it", next => Write(next, given, cell, by, value)),
                ('n', "no, leave it as it is", next => next.Say($"{by} stays as it is.")),
            ]),
        };
    }

    private static GridState Write(GridState state, CellId given, Cell cell, string by, string value)
    {
        var old = (GivenContent)cell.Content;
        EntryResult read = CellText.ReadEntry("= " + value, cell.Address);
        // read again as a whole, so that the value is held against the limits and the tolerance the cell keeps
        if (read is EntryRead { Cell.Content: GivenContent typed }) read = CellText.ReadEntry(CellText.WriteEntry(cell with { Content = typed with { Tolerance = old.Tolerance, Within = old.Within } }), cell.Address);
        return read switch
        {
            EntryRead { Cell: { Content: GivenContent } whole } => state.With(state.Open.Changed(state.Open.Workbook.WithCell(given.Sheet, whole), $"writing {by}")).Say($"{by} is {value} now. Ctrl+Z takes it back."),
            EntryRefused refused => state.Say(PlainText.Of(refused.Fault.Sentence), trouble: true),
            _ => state.Say($"{value} does not read as a given.", trouble: true),
        };
    }
}
