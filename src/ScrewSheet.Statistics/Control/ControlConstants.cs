using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>The constants of control charts for subgroups of one size.</summary>
/// <param name="DeviationBias">c4: mean of s over sigma.</param>
/// <param name="MeanRange">d2: mean of the range over sigma.</param>
/// <param name="RangeDeviation">d3: standard deviation of the range over sigma.</param>
/// <param name="MeanByRange">A2: half-width of the limits of means, in mean ranges.</param>
/// <param name="MeanByDeviation">A3: half-width of the limits of means, in mean deviations.</param>
/// <param name="DeviationLower">B3: lower limit of s, in mean deviations.</param>
/// <param name="DeviationUpper">B4: upper limit of s, in mean deviations.</param>
/// <param name="RangeLower">D3: lower limit of the range, in mean ranges.</param>
/// <param name="RangeUpper">D4: upper limit of the range, in mean ranges.</param>
[SheetRecord("The constants of control charts for one subgroup size")]
public sealed record ChartConstants(
    [property: Member("c4", "", "mean of the standard deviation over sigma")] double DeviationBias,
    [property: Member("d2", "", "mean of the range over sigma")] double MeanRange,
    [property: Member("d3", "", "standard deviation of the range over sigma")] double RangeDeviation,
    [property: Member("A2", "", "half-width of the limits of means, in mean ranges")] double MeanByRange,
    [property: Member("A3", "", "half-width of the limits of means, in mean deviations")] double MeanByDeviation,
    [property: Member("B3", "", "lower limit of the deviation, in mean deviations")] double DeviationLower,
    [property: Member("B4", "", "upper limit of the deviation, in mean deviations")] double DeviationUpper,
    [property: Member("D3", "", "lower limit of the range, in mean ranges")] double RangeLower,
    [property: Member("D4", "", "upper limit of the range, in mean ranges")] double RangeUpper);

/// <summary>Constants of control charts, computed and never read from a printed table.</summary>
public static class ControlConstants
{
    /// <summary>All constants for subgroups of 2 to 100.</summary>
    [Callable(Topics.Control, "Which control-chart constants belong to this subgroup size?", Assumes = "Normally distributed values.")]
    [NoFormula("c4 from gamma functions, d2 and d3 from integrals over the normal distribution, the others from these", Steps = 100_000)]
    [Example("ControlChartConstants(5).MeanRange", "2.32592895")]
    [Source(Works.Charts, Standing.SecondHand)]
    public static ChartConstants ControlChartConstants([Parameter("n", "", "how many values make one subgroup", AtLeast = 2, AtMost = 100, UsualTo = 25)] double subgroupSize)
    {
        int n = Values.Whole(subgroupSize, 2, nameof(subgroupSize));
        Require.AtMost(n, 100, "", nameof(subgroupSize));
        double c4 = DeviationBias(n), d2 = MeanRange(n), d3 = RangeDeviation(n, d2);
        double spread = 3 * Math.Sqrt(1 - (c4 * c4)) / c4, range = 3 * d3 / d2;
        return new ChartConstants(c4, d2, d3, 3 / (d2 * Math.Sqrt(n)), 3 / (c4 * Math.Sqrt(n)),
            Math.Max(0, 1 - spread), 1 + spread, Math.Max(0, 1 - range), 1 + range);
    }

    /// <summary>c4: the mean of s over sigma in normal samples of n.</summary>
    internal static double DeviationBias(double n) =>
        Math.Sqrt(2 / (n - 1)) * Math.Exp(Distributions.LogGamma(n / 2) - Distributions.LogGamma((n - 1) / 2));

    /// <summary>d2: the mean range over sigma.</summary>
    internal static double MeanRange(int n) =>
        2 * Quadrature.Simpson(x => 1 - Math.Pow(Distributions.Phi(x), n) - Math.Pow(Distributions.Phi(-x), n), 0, 9, 2000);

    /// <summary>d3: from the second moment of the range, a double integral over lower and upper end.</summary>
    private static double RangeDeviation(int n, double d2)
    {
        // E[W²] = 2 ∫∫_{x<y} [1 - Phi(y)^n - (1 - Phi(x))^n + (Phi(y) - Phi(x))^n] dx dy
        const double end = 8;
        double Inner(double y) => Quadrature.Simpson(
            x => 1 - Math.Pow(Distributions.Phi(y), n) - Math.Pow(Distributions.Phi(-x), n) + Math.Pow(Distributions.Phi(y) - Distributions.Phi(x), n), -end, y, 200);
        double second = 2 * Quadrature.Simpson(Inner, -end, end, 200);
        return Math.Sqrt(second - (d2 * d2));
    }
}
