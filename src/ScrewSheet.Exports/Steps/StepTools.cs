using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Steps;

/// <summary>Works out a piece of an expression; what computes is not known here.</summary>
/// <param name="cell">The cell whose references the piece reads; null for a declared formula.</param>
/// <param name="tree">The piece.</param>
/// <param name="parameters">What its parameters are, by index, where it stands in a function or a formula.</param>
/// <returns>The value, or null where it has none.</returns>
public delegate CellValue? Evaluation(CellResult? cell, BoundExpression tree, IReadOnlyList<CellValue?> parameters);

/// <summary>What worked steps are made with.</summary>
public sealed record StepTools
{
    /// <summary>The workbook, calculated.</summary>
    public required Calculation Calculation { get; init; }

    /// <summary>The library its cells call; its declared formulas are read from it.</summary>
    public required FunctionLibrary Library { get; init; }

    /// <summary>Works out pieces of expressions.</summary>
    public required Evaluation Evaluate { get; init; }

    /// <summary>How the value of a cell is shown: its own format, with more digits where a check beside it asks for them.</summary>
    public required Func<CellResult, DisplayFormat?> FormatOf { get; init; }

    /// <summary>In which units.</summary>
    public required UnitChoice Units { get; init; }

    /// <summary>True where every number worked out is left for the reader to fill in.</summary>
    public bool Blanks { get; init; }
}
