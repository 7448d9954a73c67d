using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What can be asked about the cell under the cursor.</summary>
internal static class StudyMenu
{
    /// <summary>Asks what is to be found out; on a table, what is to be done with it.</summary>
    public static GridState Open(GridState state)
    {
        if (TableDetail.Under(state.Open) is { } table && state.Open.Cell is null) return TableMenu.Open(state, table);
        if (Problem(state) is { } problem) return state.Say(problem);
        Session session = state.Open;
        string name = PlainText.Of(session.NameOf(session.At));
        if (session.Cell!.Content is GivenContent) return WhatIfSteps.Begin(state);
        bool isCheck = session.Result(session.At)?.IsCheck == true;
        return state with
        {
            Mode = new Confirming($"What do you want to know about {name}?",
            [
                ('t', "what if: a table of it for other values of its givens", WhatIfSteps.Begin),
                ('b', isCheck ? "backwards: for which value of a given it turns" : "backwards: which value of a given makes it what it should be", SolveSteps.Begin),
                ('u', isCheck ? "how sure: how often it fails within the tolerances" : "how sure: its spread within the tolerances, two ways", SpreadSteps.Begin),
                ('d', "what drives it: each given moved alone, the strongest first", SensitivityPage.Begin),
            ]),
        };
    }

    /// <summary>Why nothing can be asked about the cell; null where it can.</summary>
    private static string? Problem(GridState state)
    {
        Session session = state.Open;
        if (session.Cell is null) return "Nothing stands here. Put the cursor on a result, a check or a given and ask again.";
        string name = PlainText.Of(session.NameOf(session.At));
        if (session.Cell.Content is NoteContent) return $"{name} holds no value. Name a given or a result.";
        if (!session.IsCalculated || session.Result(session.At) is not { } result) return "The results are not all in yet; ask when they are.";
        if (session.Cell.Content is BrokenContent) return PlainText.Of(result.Fault?.Sentence ?? "This line cannot be read.");
        if (session.Cell.Content is ResultContent && Upstream.Givens(session.Known!.Calculation, session.At).Count == 0) return $"{name} is computed from no given, so there is nothing to ask.";
        return null;
    }

    /// <summary>How a cell is called in a study, whatever other sheets hold.</summary>
    public static PlacedText Exactly(CellId id) => Commands.AskedStudy.At(id.ToString());

    /// <summary>A name as a sentence begins with it.</summary>
    public static string NameOf(GridState state) => PlainText.Of(state.Open.NameOf(state.Open.At));
}
