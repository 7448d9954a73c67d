using System.Collections.Immutable;
using ScrewSheet.Studies;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>A study the reader asked for, told from others of its kind by being itself.</summary>
/// <param name="what">What is being worked out.</param>
/// <param name="writes">True where it writes a file, so that its end is told even when it was stopped.</param>
internal sealed class StudyTicket(string what, bool writes = false)
{
    /// <summary>True where it writes a file.</summary>
    public bool Writes => writes;

    /// <summary>What is said where it was stopped before its end.</summary>
    public string Stopped => $"Stopped before the end. Nothing was {(writes ? "written" : "changed")}.";

    /// <summary>What is being worked out.</summary>
    public string What => what;
}

/// <summary>Does a study and gives what is to be shown then.</summary>
/// <param name="runner">What does it.</param>
/// <param name="progress">Told what share is done.</param>
/// <param name="stop">Stops it.</param>
internal delegate Func<GridState, GridState> StudyWork(StudyRunner runner, IProgress<double> progress, CancellationToken stop);

/// <summary>Something to be done about studies outside the state. A closed family.</summary>
internal abstract record StudyEffect : Effect;

/// <summary>Work out these tables, instead of those asked for before.</summary>
/// <param name="Calculation">The workbook, calculated.</param>
/// <param name="Tables">The tables; none to stop those that are being worked out.</param>
internal sealed record WorkOutTables(Calculation Calculation, ImmutableArray<TableInputs> Tables) : StudyEffect;

/// <summary>Do a study.</summary>
/// <param name="Ticket">Which.</param>
/// <param name="Work">Does it.</param>
internal sealed record DoStudy(StudyTicket Ticket, StudyWork Work) : StudyEffect;

/// <summary>Stop the study the reader asked for.</summary>
internal sealed record StopStudy : StudyEffect;

/// <summary>News of studies. A closed family.</summary>
internal abstract record StudyNews : Input;

/// <summary>A table is worked out.</summary>
/// <param name="Result">The table.</param>
internal sealed record TableDone(TableResult Result) : StudyNews;

/// <summary>A table could not be worked out by a mistake of this program.</summary>
/// <param name="Inputs">Which.</param>
/// <param name="Sentence">What to tell the reader.</param>
internal sealed record TableFailed(TableInputs Inputs, string Sentence) : StudyNews;

/// <summary>A table is being worked out.</summary>
/// <param name="What">Which.</param>
/// <param name="Share">How much of it is done, from 0 to 1.</param>
internal sealed record TableShare(string What, double Share) : StudyNews;

/// <summary>A study is under way.</summary>
/// <param name="Ticket">Which.</param>
/// <param name="Share">How much of it is done, from 0 to 1.</param>
internal sealed record StudyShare(StudyTicket Ticket, double Share) : StudyNews;

/// <summary>A study has come to its end.</summary>
/// <param name="Ticket">Which.</param>
/// <param name="Show">What is to be shown.</param>
internal sealed record StudyDone(StudyTicket Ticket, Func<GridState, GridState> Show) : StudyNews;
