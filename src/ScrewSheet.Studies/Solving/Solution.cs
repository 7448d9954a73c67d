using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Studies.Solving;

/// <summary>How a value of the given makes the result so.</summary>
public enum RootKind
{
    /// <summary>The result passes through the value.</summary>
    Crossing,

    /// <summary>The result touches the value and turns back.</summary>
    Touching,

    /// <summary>The check turns: it holds on one side and fails on the other.</summary>
    Turning,
}

/// <summary>A value of the given that makes the result so; in coherent SI.</summary>
/// <param name="Si">The value. Where a check turns: the last one for which it holds.</param>
/// <param name="ResultSi">The result there, a check as 1.</param>
/// <param name="ResidualSi">The result less what was asked for; where a check turns, how far the nearest value is for which it fails.</param>
/// <param name="Kind">How.</param>
/// <param name="HoldsBelow">Where a check turns: true where it holds for smaller values.</param>
public sealed record Root(double Si, double ResultSi, double ResidualSi, RootKind Kind, bool HoldsBelow = false);

/// <summary>What a search found.</summary>
public sealed record Solution
{
    /// <summary>The result.</summary>
    public required CellId Cell { get; init; }

    /// <summary>How it is called.</summary>
    public required string Label { get; init; }

    /// <summary>Its type.</summary>
    public required CellType Type { get; init; }

    /// <summary>How it is shown, or null.</summary>
    public DisplayFormat? Format { get; init; }

    /// <summary>What it was to be, in coherent SI; NaN for a check.</summary>
    public required double TargetSi { get; init; }

    /// <summary>The given.</summary>
    public required CellId By { get; init; }

    /// <summary>How it is called.</summary>
    public required string ByLabel { get; init; }

    /// <summary>The type of its values.</summary>
    public required CellType ByType { get; init; }

    /// <summary>How it is shown, or null.</summary>
    public DisplayFormat? ByFormat { get; init; }

    /// <summary>The value it has in the file, in coherent SI; NaN where it has none.</summary>
    public required double BySi { get; init; }

    /// <summary>The answer: of all values found the one nearest to the file's own; null where there is none.</summary>
    public Root? Answer { get; init; }

    /// <summary>All values found, from the least on.</summary>
    public required ImmutableArray<Root> Roots { get; init; }

    /// <summary>Where the result jumps over the value without taking it.</summary>
    public required ImmutableArray<double> Jumps { get; init; }

    /// <summary>The lower end of what was searched, in coherent SI.</summary>
    public required double FromSi { get; init; }

    /// <summary>The upper end.</summary>
    public required double ToSi { get; init; }

    /// <summary>Where the interval came from.</summary>
    public required SearchInterval Interval { get; init; }

    /// <summary>The least result met in the interval; NaN for a check and where there was none.</summary>
    public required double LeastSi { get; init; }

    /// <summary>The greatest.</summary>
    public required double MostSi { get; init; }

    /// <summary>How many values were tried.</summary>
    public required long Tried { get; init; }

    /// <summary>For how many of them the result was in fault.</summary>
    public required long Faulted { get; init; }

    /// <summary>What must be said: no value, several, jumps, faults on the way.</summary>
    public required ImmutableArray<Fault> Notes { get; init; }
}

/// <summary>Where the interval of a search came from.</summary>
public enum SearchInterval
{
    /// <summary>It was asked for.</summary>
    Asked,

    /// <summary>The given's own limits, after <c>within</c>.</summary>
    Limits,

    /// <summary>It grew from the file's own value until there was an answer, or no more room.</summary>
    Grown,
}
