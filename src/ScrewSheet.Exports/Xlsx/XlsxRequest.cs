using System.Collections.Immutable;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx;

/// <summary>What an xlsx export is made from.</summary>
public sealed record XlsxRequest
{
    /// <summary>The workbook, calculated.</summary>
    public required Calculation Calculation { get; init; }

    /// <summary>The library it was calculated with.</summary>
    public required FunctionLibrary Library { get; init; }

    /// <summary>Says which declared formulas may stand for their functions.</summary>
    public required ILibraryMath Math { get; init; }

    /// <summary>The what-if tables of the file, worked out.</summary>
    public ImmutableArray<ComputedTable> Tables { get; init; } = [];

    /// <summary>How the value of a cell is shown.</summary>
    public Func<CellResult, DisplayFormat?> FormatOf { get; init; } = cell => cell.Cell.Format;

    /// <summary>What the first sheet says before everything else, one sentence each.</summary>
    public ImmutableArray<string> Warnings { get; init; } = [];
}

/// <summary>A result or column of a table that is a value and no formula.</summary>
/// <param name="Label">Which.</param>
/// <param name="Why">Why, as a clause.</param>
public sealed record FixedResult(string Label, string Why);

/// <summary>What became of an export.</summary>
/// <param name="LiveResults">How many results are formulas.</param>
/// <param name="Results">How many results there are.</param>
/// <param name="LiveEntries">How many entries of what-if tables are formulas.</param>
/// <param name="Entries">How many entries there are.</param>
/// <param name="Fixed">Results and columns that are values, and why.</param>
/// <param name="Left">What the file has no place for, one sentence each.</param>
public sealed record XlsxReport(int LiveResults, int Results, int LiveEntries, int Entries, ImmutableArray<FixedResult> Fixed, ImmutableArray<string> Left);
