using System.Collections.Immutable;
using ScrewSheet.Engine;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Workbooks.Comparing;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Passing;

/// <summary>Comparing what is on the screen with another version: the file as it was last saved, or any other.</summary>
internal static class CompareSteps
{
    /// <summary>Asks with what; where that was done for this version, its list can be opened again.</summary>
    public static GridState Open(GridState state)
    {
        if (!state.Open.IsCalculated) return state.Say("The results are not all in yet; compare when they are.");
        if (state.Compared is not { } compared || !ReferenceEquals(compared.Workbook, state.Open.Workbook)) return Ask(state);
        return state with
        {
            Mode = new Confirming("Compare with another version",
            [
                ('l', $"the list again: since {FileTrouble.Quoted(compared.Path)}", next => next with { Mode = compared.List }),
                ('n', "a new comparison", Ask),
            ]),
        };
    }

    private static GridState Ask(GridState state)
    {
        Session session = state.Open;
        ImmutableArray<string> hints = session.Path is { } path ? [$"{FileTrouble.Quoted(path)} is this workbook as it was last saved; any other workbook file will do."] : ["A workbook file. This one has none of its own yet."];
        return state with
        {
            Mode = new Stepping("Compare with another version", ["What is on the screen is the later version."], "The earlier version", TypedText.Of(state.Compared?.Path ?? session.Path ?? ""), hints, Begin),
        };
    }

    private static GridState Begin(GridState state, Stepping step, string typed)
    {
        string path = typed.Trim();
        if (path.Length == 0) return StudyKeys.Again(state, step, typed, "Name the file to compare with.");
        Calculation now = state.Open.Known!.Calculation;
        Lexicon lexicon = state.Lexicon;
        return StudyKeys.Start(state, $"Comparing with {FileTrouble.Quoted(path)}", (_, _, stop) =>
        {
            try
            {
                Comparison comparison = Compare(WorkbookFile.Read(path).Workbook, now, lexicon.Library, stop);
                if (comparison.IsEmpty) return next => next.Say($"What is on the screen says the same as {FileTrouble.Quoted(path)}.");
                Compared compared = Compared.Of(comparison, path);
                return next => next with { Compared = compared, Mode = compared.List };
            }
            catch (UserMistake mistake)
            {
                return next => StudyKeys.Again(next, step, typed, mistake.Message);
            }
        });
    }

    private static Comparison Compare(Workbook earlier, Calculation now, FunctionLibrary library, CancellationToken stop)
    {
        Calculation before = new Calculator(library).Calculate(earlier, stop);
        stop.ThrowIfCancellationRequested();
        Comparison comparison = Calculator.WithRoom(() => Comparison.Of(before, now));
        stop.ThrowIfCancellationRequested();
        return comparison;
    }
}
