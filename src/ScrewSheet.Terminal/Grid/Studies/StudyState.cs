using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What becomes of the state when news of studies comes in, and when the workbook was calculated.</summary>
internal static class StudyState
{
    /// <summary>Asks for the tables that a newly calculated version has changed.</summary>
    public static GridState Calculated(GridState state)
    {
        if (state.Session is not { Known: { } known } session) return state;
        var missing = session.Tables.Missing(known);
        GridState next = missing.IsEmpty && session.Tables.Running is not null ? With(state, tables => tables.With(running: null)) : state;
        return next.And(new WorkOutTables(known.Calculation, missing));
    }

    /// <summary>Takes news in.</summary>
    public static GridState Take(GridState state, StudyNews news) => news switch
    {
        // one of another workbook, or of a version that is gone, comes too late
        TableDone done => state.Session?.Known?.Tables.Any(done.Result.Inputs.Same) == true ? With(state, tables => tables.With(done.Result)) : state,
        TableShare share => !IsAtWork(state) ? state : With(state, tables => tables.With((share.What, share.Share))),
        TableFailed failed => With(state, tables => tables.Stopped(failed.Inputs)).Say(failed.Sentence, trouble: true),
        StudyShare share => state.Mode is Working working && working.Ticket == share.Ticket ? state with { Mode = working with { Share = share.Share } } : state,
        StudyDone done => state.Mode is Working working && working.Ticket == done.Ticket ? done.Show(state.Browse()) : done.Ticket.Writes && state.Session is not null ? Late(state, done) : state,
        _ => state,
    };

    /// <summary>What became of a file whose writing was stopped; the reader does something else by now.</summary>
    private static GridState Late(GridState state, StudyDone done) => state with { Notice = done.Show((state with { Notice = null }).Browse()).Notice ?? new Notice(done.Ticket.Stopped, IsTrouble: false) };

    /// <summary>Stops what is calculated and worked out; tables stay as they are until something changes.</summary>
    public static GridState Stop(GridState state)
    {
        Session session = state.Open;
        bool tables = IsAtWork(state);
        if (session.IsCalculated && !tables) return state.Say("Nothing is being calculated.");
        GridState next = session.IsCalculated ? state : state.And(new StopCalculating());
        if (!tables) return next;
        return With(next, results => results.Stopped(session.Known!)).And(new WorkOutTables(session.Known!.Calculation, [])).Say("Stopped; a table that was not finished shows what it was before. Enter on it works it out after all.");
    }

    /// <summary>Works out what was stopped.</summary>
    public static GridState Resume(GridState state)
    {
        GridState next = With(state, tables => tables.Again());
        return Calculated(next);
    }

    /// <summary>True while a table is to be worked out.</summary>
    private static bool IsAtWork(GridState state) => state.Session is { Known: { } known } session && !session.Tables.Missing(known).IsEmpty;

    private static GridState With(GridState state, Func<TableResults, TableResults> change) => state.Session is null ? state : state with { Session = state.Session with { Tables = change(state.Session.Tables) } };
}
