using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>The spread of a result and what drives it. All numbers are in coherent SI.</summary>
public sealed record UncertaintyReport
{
    /// <summary>The result.</summary>
    public required CellId Cell { get; init; }

    /// <summary>How it is called.</summary>
    public required string Label { get; init; }

    /// <summary>Its type.</summary>
    public required CellType Type { get; init; }

    /// <summary>How it is shown, or null.</summary>
    public DisplayFormat? Format { get; init; }

    /// <summary>What it is at the file's own givens.</summary>
    public required CellValue Value { get; init; }

    /// <summary>The givens with a tolerance that it depends on.</summary>
    public required ImmutableArray<GivenShare> Givens { get; init; }

    /// <summary>By the law of propagation; null for a check, and where the result has no derivative.</summary>
    public FirstOrder? FirstOrder { get; init; }

    /// <summary>By random draws; null for a check.</summary>
    public MonteCarlo? MonteCarlo { get; init; }

    /// <summary>The chance that checks fail: of the result itself where it is one, else of all checks that depend on it.</summary>
    public required ImmutableArray<CheckOdds> Checks { get; init; }

    /// <summary>How many draws there were.</summary>
    public required long Samples { get; init; }

    /// <summary>The seed they came from.</summary>
    public required ulong Seed { get; init; }

    /// <summary>Draws that ended in a fault, by sort; they are in no mean and no interval.</summary>
    public required ImmutableArray<FaultCount> Faults { get; init; }

    /// <summary>How many draws carried each caution.</summary>
    public required ImmutableArray<CautionCount> Cautions { get; init; }

    /// <summary>What must be said about it.</summary>
    public required ImmutableArray<Fault> Notes { get; init; }

    /// <summary>True where the draws were worked out by a kernel.</summary>
    public required bool IsCompiled { get; init; }

    /// <summary>The draws that ended in a fault.</summary>
    public long Faulted => Faults.Sum(fault => fault.Count);
}

/// <summary>What a given contributes.</summary>
public sealed record GivenShare
{
    /// <summary>The given.</summary>
    public required UncertainGiven Given { get; init; }

    /// <summary>The sensitivity coefficient: how much the result changes for a unit of the given; NaN where there is no derivative, and for a check.</summary>
    public required double Sensitivity { get; init; }

    /// <summary>The standard uncertainty of the result that comes from this given alone, with the sign of its sensitivity.</summary>
    public required double Contribution { get; init; }

    /// <summary>Its share of the variance by first order; correlated ones may be below 0 or above 1. NaN where there is none.</summary>
    public required double Share { get; init; }

    /// <summary>Its share of the variance by itself (first-order Sobol' index); NaN where givens are correlated.</summary>
    public double Sobol { get; init; } = double.NaN;

    /// <summary>The share it has a part in (total Sobol' index); NaN where givens are correlated.</summary>
    public double SobolTotal { get; init; } = double.NaN;

    /// <summary>The standard error of both by chance.</summary>
    public double SobolError { get; init; } = double.NaN;

    /// <summary>The result with this given at the lower end of its interval and all others as they are; NaN for a fault.</summary>
    public required double AtLow { get; init; }

    /// <summary>The same at the upper end.</summary>
    public required double AtHigh { get; init; }

    /// <summary>How far the result swings; 0 where an end is in fault.</summary>
    public double Swing => double.IsNaN(AtHigh - AtLow) ? 0 : AtHigh - AtLow;
}

/// <summary>The law of propagation of uncertainty (JCGM 100:2008, 5.1 and 5.2).</summary>
/// <param name="StandardUncertainty">u of the result.</param>
/// <param name="Freedom">Effective degrees of freedom (JCGM 100:2008, G.4), rounded down; infinity where none are stated or givens are correlated.</param>
/// <param name="Coverage">What u is multiplied with: 1.96, or Student's t for 95 %.</param>
/// <param name="Low">The lower end of the 95 % interval.</param>
/// <param name="High">The upper end.</param>
/// <param name="SecondOrder">u with the terms of the next order added (JCGM 100:2008, note to 5.1.2); NaN where givens are correlated or a term has no value.</param>
public sealed record FirstOrder(double StandardUncertainty, double Freedom, double Coverage, double Low, double High, double SecondOrder);

/// <summary>Propagation of distributions by random draws (JCGM 101:2008).</summary>
/// <param name="Draws">How many draws gave a value.</param>
/// <param name="Mean">Their mean.</param>
/// <param name="StandardUncertainty">Their standard deviation.</param>
/// <param name="Low">The lower end of the 95 % interval with as much beyond either end.</param>
/// <param name="High">The upper end.</param>
/// <param name="ShortestLow">The lower end of the shortest 95 % interval.</param>
/// <param name="ShortestHigh">The upper end.</param>
/// <param name="Least">The least value drawn.</param>
/// <param name="Most">The greatest.</param>
/// <param name="EndError">The standard error of the ends of the interval, as far as chance goes.</param>
public sealed record MonteCarlo(long Draws, double Mean, double StandardUncertainty, double Low, double High, double ShortestLow, double ShortestHigh, double Least, double Most, double EndError);

/// <summary>How often a check failed.</summary>
/// <param name="Cell">The check.</param>
/// <param name="Label">How it is called.</param>
/// <param name="Failed">How many draws failed it.</param>
/// <param name="Faulted">How many draws ended in a fault instead of an answer.</param>
/// <param name="Draws">How many draws there were.</param>
/// <param name="Low">The lower end of the 95 % interval of its chance of failing.</param>
/// <param name="High">The upper end; draws in fault count as failing here.</param>
public sealed record CheckOdds(CellId Cell, string Label, long Failed, long Faulted, long Draws, double Low, double High)
{
    /// <summary>The share of all draws that failed.</summary>
    public double Probability => Failed / (double)Draws;
}
