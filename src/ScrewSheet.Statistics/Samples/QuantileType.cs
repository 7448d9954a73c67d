using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics;

/// <summary>Which of the nine definitions of a sample quantile is meant, numbered as by Hyndman and Fan.</summary>
[SheetOption("which definition of a sample quantile is meant (Hyndman and Fan, types 1 to 9)")]
public enum QuantileType
{
    /// <summary>Type 1: a value of the sample, by the inverse of the empirical distribution.</summary>
    InverseDistribution = 1,

    /// <summary>Type 2: as type 1, the mean of two neighbours at a step.</summary>
    InverseDistributionAveraged = 2,

    /// <summary>Type 3: the value whose number is nearest to n·q, to even at a tie.</summary>
    NearestValue = 3,

    /// <summary>Type 4: linear along the empirical distribution.</summary>
    LinearDistribution = 4,

    /// <summary>Type 5: Hazen's, steps at their middle.</summary>
    Hazen = 5,

    /// <summary>Type 6: plotting positions i/(n + 1), as in the NIST handbook.</summary>
    PlottingPosition = 6,

    /// <summary>Type 7: from the first to the last value, the default of most table programs.</summary>
    FirstToLast = 7,

    /// <summary>Type 8: approximately median-unbiased whatever the distribution; the default here.</summary>
    MedianUnbiased = 8,

    /// <summary>Type 9: approximately unbiased for normal values.</summary>
    NormalUnbiased = 9,
}
