using System.Collections.Immutable;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Model;

/// <summary>What stands before the first sheet.</summary>
public sealed record Head
{
    /// <summary>The title, or empty.</summary>
    public string Title { get; init; } = "";

    /// <summary>The author, or empty.</summary>
    public string Author { get; init; } = "";

    /// <summary>The date as written, or empty.</summary>
    public string Date { get; init; } = "";

    /// <summary>Which units are shown where a cell does not say.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>The seed of random draws, or null.</summary>
    public ulong? Seed { get; init; }

    /// <summary>True for <c>results omitted</c>: results are not kept in the file.</summary>
    public bool ResultsOmitted { get; init; }

    /// <summary>The program version that kept the results, or null.</summary>
    public string? MadeWith { get; init; }
}

/// <summary>A function of the author's own: <c>function Torque HingeMoment(Force f, Length arm) => f * arm</c>.</summary>
/// <param name="ReturnType">The type's name.</param>
/// <param name="Name">The function's name.</param>
/// <param name="Parameters">Type and name of each, in order.</param>
/// <param name="Body">The expression as written.</param>
/// <param name="BodyColumn">The column in its line where the body begins, from 1.</param>
/// <param name="Place">Where the line stands.</param>
public sealed record FunctionDefinition(string ReturnType, string Name, ImmutableArray<(string Type, string Name)> Parameters, string Body, int BodyColumn, Place Place);

/// <summary>A workbook. Immutable; a change gives a new one that shares what did not change.</summary>
public sealed partial record Workbook
{
    /// <summary>What stands before the first sheet.</summary>
    public Head Head { get; init; } = new();

    /// <summary>The author's functions, in order.</summary>
    public ImmutableArray<FunctionDefinition> Functions { get; init; } = [];

    /// <summary>The sheets, in order.</summary>
    public ImmutableArray<Sheet> Sheets { get; init; } = [];

    /// <summary>Faults of lines that are no cells (an unreadable function, a doubled sheet); those of cells stand in the cells.</summary>
    public ImmutableArray<Fault> Faults { get; init; } = [];

    /// <summary>The lines behind those faults, as they stand in the file.</summary>
    public ImmutableArray<BrokenLine> BrokenLines { get; init; } = [];

    /// <summary>Lines of the head the format reserves, in order.</summary>
    public ImmutableArray<ReservedLine> Reserved { get; init; } = [];

    /// <summary>The lines besides the sheets, for saving the file as it was.</summary>
    internal Unseen<WorkbookSource> Source { get; init; }

    /// <summary>The sheet of that name, or null.</summary>
    public Sheet? Find(string sheet) => Sheets.FirstOrDefault(candidate => candidate.Name == sheet);
}
