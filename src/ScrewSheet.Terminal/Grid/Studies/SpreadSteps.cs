using System.Globalization;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>The spread of a result: how many draws, then both methods side by side on a page.</summary>
internal static class SpreadSteps
{
    /// <summary>Begins with the result under the cursor.</summary>
    public static GridState Begin(GridState state)
    {
        CellId cell = state.Open.At;
        return state with
        {
            Mode = new Stepping($"How sure is {StudyMenu.NameOf(state)}?", [], "Draws", TypedText.Of(""), ["How many random draws, from 1,000 to 100,000,000.", "Nothing takes a million, or a hundred thousand where the workbook must be worked out cell by cell."],
                (next, step, typed) => Draw(next, step, typed, cell)),
        };
    }

    private static GridState Draw(GridState state, Stepping step, string typed, CellId cell)
    {
        string digits = typed.Replace("_", "", StringComparison.Ordinal).Replace(",", "", StringComparison.Ordinal).Trim();
        long? samples = null;
        if (digits.Length > 0)
        {
            if (!long.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out long count)) return StudyKeys.Again(state, step, typed, $"{typed.Trim()}: a whole number stands there, like 100000.");
            samples = count;
        }
        Calculation calculation = state.Open.Known!.Calculation;
        UncertaintyRequest request = new() { Cell = StudyMenu.Exactly(cell), Samples = samples };
        return StudyKeys.Start(state, $"Drawing {StudyMenu.NameOf(state)}", (runner, progress, stop) =>
        {
            StudyOutcome<UncertaintyReport> outcome = runner.Uncertainty(calculation, request, progress, stop);
            if (!outcome.IsAnswered) return next => StudyKeys.Again(next, step, typed, outcome.Fault.Sentence);
            Head head = calculation.Workbook.Head;
            return next => next with { Mode = new Finding($"How sure is {PlainText.Of(outcome.Answer.Label)}?", width => [.. UncertaintyText.Lines(outcome.Answer, head, width)], []) };
        });
    }
}
