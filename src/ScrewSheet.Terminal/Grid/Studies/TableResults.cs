using System.Collections.Immutable;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>A table that was worked out.</summary>
/// <param name="Inputs">What it was worked out from.</param>
/// <param name="Outcome">What came out.</param>
internal sealed record TableResult(TableInputs Inputs, StudyOutcome<WhatIfTable> Outcome);

/// <summary>The tables of a workbook as far as they are worked out, perhaps of an earlier version. Immutable.</summary>
internal sealed class TableResults
{
    private readonly ImmutableArray<TableResult> results;
    private readonly ImmutableArray<TableInputs> stopped;
    private (Sheet Sheet, Known? Known, SheetTables Tables)? drawn;

    private TableResults(ImmutableArray<TableResult> results, ImmutableArray<TableInputs> stopped, (string What, double Share)? running) => (this.results, this.stopped, Running) = (results, stopped, running);

    /// <summary>None yet.</summary>
    public TableResults() : this([], [], null) { }

    /// <summary>What is being worked out for longer than a moment, and how much of it is done, from 0 to 1; null for nothing.</summary>
    public (string What, double Share)? Running { get; }

    /// <summary>The table from exactly these inputs, or null.</summary>
    public TableResult? Of(TableInputs inputs) => results.FirstOrDefault(result => result.Inputs.Same(inputs));

    /// <summary>The table as it was before something changed, or null.</summary>
    public TableResult? Before(string sheet, WhatIfBlock block) => results.FirstOrDefault(result => result.Inputs.IsOf(sheet, block));

    /// <summary>True where working it out was stopped.</summary>
    public bool IsStopped(TableInputs inputs) => stopped.Any(inputs.Same);

    /// <summary>The tables of a version that are still to be worked out.</summary>
    public ImmutableArray<TableInputs> Missing(Known known) => [.. known.Tables.Where(inputs => Of(inputs) is null && !IsStopped(inputs))];

    /// <summary>With a table worked out, in place of what it was before.</summary>
    public TableResults With(TableResult result) => new([.. results.Where(other => !other.Inputs.IsOf(result.Inputs.Sheet, result.Inputs.Block)), result], stopped, null);

    /// <summary>With what is being worked out.</summary>
    public TableResults With((string What, double Share)? running) => new(results, stopped, running);

    /// <summary>With the tables that were to be worked out left as they are until something changes.</summary>
    public TableResults Stopped(Known known) => new(results, [.. known.Tables.Where(inputs => Of(inputs) is null)], null);

    /// <summary>With one table left as it is until something changes.</summary>
    public TableResults Stopped(TableInputs inputs) => new(results, [.. stopped, inputs], null);

    /// <summary>With everything that was stopped to be worked out after all.</summary>
    public TableResults Again() => new(results, [], null);

    /// <summary>How the tables lie on the sheet the reader is on; worked out once for each version of the sheet.</summary>
    public SheetTables On(Session session)
    {
        if (drawn is { } made && ReferenceEquals(made.Sheet, session.Sheet) && ReferenceEquals(made.Known, session.Known)) return made.Tables;
        SheetTables tables = SheetTables.Of(session, this);
        drawn = (session.Sheet, session.Known, tables);
        return tables;
    }
}
