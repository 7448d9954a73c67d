using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Grid.Passing;

/// <summary>Who reviews, and when they say they did; asked once and kept while the program runs.</summary>
/// <param name="Initials">Who.</param>
/// <param name="Day">Year, month and day.</param>
internal sealed record Reviewer(string Initials, string Day)
{
    /// <summary>As it is said.</summary>
    public override string ToString() => PlainText.Of($"{Initials}, {Day}");
}

/// <summary>Review marks on the result under the cursor or on those selected: put there, taken away.</summary>
internal static class ReviewMenu
{
    /// <summary>Asks what is to be done.</summary>
    public static GridState Open(GridState state)
    {
        Session session = state.Open;
        if (!session.IsCalculated || session.Known!.Reviewed is not { } reviewed) return state.Say("The results are not all in yet; mark them when they are.");
        ImmutableArray<CellId> results = Results(session);
        ImmutableArray<(CellId Id, CellReview Review)> marks = [.. Selected(session).SelectMany(id => session.ReviewsOf(id).Select(review => (id, review)))];
        if (results.IsEmpty && marks.IsEmpty) return state.Say($"No result is selected: only what is computed from an expression can be marked as reviewed. {ReviewWords.Summary(reviewed.Tally)}");
        return state with { Mode = new Confirming($"Review of {What(session)}. {ReviewWords.Summary(reviewed.Tally)}", [.. Putting(state, results), .. Taking(session, marks)]) };
    }

    private static IEnumerable<(char, string, Func<GridState, GridState>)> Putting(GridState state, ImmutableArray<CellId> results)
    {
        if (results.IsEmpty) yield break;
        string what = results.Length == 1 ? "mark it" : $"mark {results.Length} results";
        if (state.Reviewer is { } known) yield return ('m', $"{what} as checked by {known}", next => Mark(next, known));
        yield return (state.Reviewer is null ? 'm' : 'o', state.Reviewer is null ? $"{what} as checked by you" : $"{what} as checked by another person, or on another day", AskWho);
    }

    private static IEnumerable<(char, string, Func<GridState, GridState>)> Taking(Session session, ImmutableArray<(CellId Id, CellReview Review)> marks)
    {
        if (session.Block.IsOne && marks.Length <= 9)
        {
            for (int i = 0; i < marks.Length; i++)
            {
                ReviewMark mark = marks[i].Review.Mark;
                yield return ((char)('1' + i), PlainText.Of($"take away the mark by {mark.Initials} of {mark.Date}"), next => Take(next, mark));
            }
        }
        else if (marks.Length > 0) yield return ('t', $"take away {(marks.Length == 1 ? "the mark" : $"all {marks.Length} marks")}", next => Take(next, null));
    }

    private static GridState AskWho(GridState state) => state with
    {
        Mode = new Stepping($"Review of {What(state.Open)}", ["A mark says that a person has looked; it is no proof."], "Your initials", TypedText.Of(state.Reviewer?.Initials ?? ""), ["One to twelve letters, like KM."], (next, step, typed) =>
            Reviews.AreInitials(typed.Trim()) ? AskWhen(next, typed.Trim()) : StudyKeys.Again(next, step, typed, $"{typed.Trim()} are no initials. Write one to twelve letters, like KM.")),
    };

    private static GridState AskWhen(GridState state, string initials) => state with
    {
        Mode = new Stepping($"Review of {What(state.Open)}", [$"Checked by {PlainText.Of(initials)}"], "On which day", TypedText.Of(state.Reviewer?.Day ?? ""), ["Year, month and day, like 2026-11-25. The program keeps no calendar: the day is yours to say."], (next, step, typed) =>
            Reviews.IsDate(typed.Trim()) ? Mark(next, new Reviewer(initials, typed.Trim())) : StudyKeys.Again(next, step, typed, $"{typed.Trim()} is no day. Write year, month and day, like 2026-11-25.")),
    };

    private static GridState Mark(GridState state, Reviewer by)
    {
        Session session = state.Open;
        ImmutableArray<CellId> results = Results(session);
        Workbook marked = new Reviews(session.Known!.Calculation).Mark(results, by.Initials, by.Day, out ImmutableArray<CellId> left);
        GridState known = state with { Reviewer = by };
        if (left.Length == results.Length) return known.Say($"{(left.Length == 1 ? PlainText.Of(session.NameOf(left[0])) + " has no value and cannot be" : "They have no values and cannot be")} marked as reviewed.", trouble: true);
        string rest = left.Length == 0 ? "" : $" {left.Length} without a value {(left.Length == 1 ? "was" : "were")} left.";
        int count = results.Length - left.Length;
        return Changed(known, marked, $"marking {What(session)} as reviewed").Say($"Marked {(count == 1 && session.Block.IsOne ? What(session) : $"{count} {(count == 1 ? "result" : "results")}")} as reviewed by {by}.{rest} Ctrl+Z takes it back.");
    }

    private static GridState Take(GridState state, ReviewMark? only)
    {
        Session session = state.Open;
        Workbook without = Reviews.Without(session.Workbook, [.. Selected(session)], only);
        return Changed(state, without, $"taking a review off {What(session)}").Say($"No mark any more on {What(session)}{(only is null ? "" : PlainText.Of($" by {only.Initials} of {only.Date}"))}. Ctrl+Z takes that back.");
    }

    private static GridState Changed(GridState state, Workbook workbook, string what) =>
        state.With(state.Open.Changed(workbook, what, state.Open.Block.IsOne ? state.Open.At : null));

    private static string What(Session session) => session.Block.IsOne ? PlainText.Of(session.NameOf(session.At)) : session.Block.ToString();

    private static IEnumerable<CellId> Selected(Session session) => session.Block.CellsOf(session.Sheet).Select(cell => new CellId(session.SheetName, cell.Address));

    private static ImmutableArray<CellId> Results(Session session) => [.. Selected(session).Where(id => session.Sheet.Cells[id.Address].Content is ResultContent)];
}
