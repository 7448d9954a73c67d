using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>What spread is measured from when the spreads of groups are compared.</summary>
[SheetOption("what spread is measured from when the spreads of groups are compared")]
public enum SpreadCentre
{
    /// <summary>The median of each group (Brown and Forsythe): robust, the default.</summary>
    Median,

    /// <summary>The mean of each group (Levene's own form).</summary>
    Mean,
}

/// <summary>A one-way analysis of variance.</summary>
/// <typeparam name="T">The kind of the sample.</typeparam>
/// <param name="Statistic">F.</param>
/// <param name="PValue">The chance of such an F if all groups had the same mean, 0 to 1.</param>
/// <param name="BetweenDegrees">Degrees of freedom between the groups.</param>
/// <param name="WithinDegrees">Degrees of freedom within the groups.</param>
/// <param name="ExplainedShare">R²: the share of the sum of squares that lies between groups, 0 to 1.</param>
/// <param name="WithinDeviation">The common standard deviation within groups.</param>
/// <param name="BetweenDeviation">Root of the mean square between groups.</param>
/// <param name="Cautions">What the analysis does not show.</param>
[SheetRecord("One-way analysis of variance")]
public sealed record AnalysisOfVariance<T>(
    [property: Member("F", "", "the statistic")] double Statistic,
    [property: Member("p", "", "chance of such an F if all group means were equal")] double PValue,
    [property: Member("ν1", "", "degrees of freedom between groups")] double BetweenDegrees,
    [property: Member("ν2", "", "degrees of freedom within groups")] double WithinDegrees,
    [property: Member("R²", "", "share of the scatter that lies between groups, 0 to 1")] double ExplainedShare,
    [property: Member("s", "", "standard deviation within groups")] T WithinDeviation,
    [property: Member("", "", "root of the mean square between groups")] T BetweenDeviation,
    IReadOnlyList<string> Cautions) : ICautioned where T : struct;

/// <summary>A comparison of the spreads of groups.</summary>
/// <param name="Statistic">W.</param>
/// <param name="PValue">The chance of such a W if all spreads were equal, 0 to 1.</param>
/// <param name="BetweenDegrees">Degrees of freedom between groups.</param>
/// <param name="WithinDegrees">Degrees of freedom within groups.</param>
/// <param name="Cautions">What the comparison does not show.</param>
[SheetRecord("Comparison of the spreads of groups (Levene, Brown and Forsythe)")]
public sealed record SpreadComparison(
    [property: Member("W", "", "the statistic")] double Statistic,
    [property: Member("p", "", "chance of such a W if all spreads were equal")] double PValue,
    [property: Member("ν1", "", "degrees of freedom between groups")] double BetweenDegrees,
    [property: Member("ν2", "", "degrees of freedom within groups")] double WithinDegrees,
    IReadOnlyList<string> Cautions) : ICautioned;

/// <summary>Compares the means and spreads of several groups.</summary>
public static class GroupTests
{
    /// <summary>One-way analysis of variance; at least two groups and more values than groups.</summary>
    [Callable(Topics.Comparisons, "Do several designs (or days, rigs, testers) differ in mean strength?", Assumes = "Independent specimens; strength near normal; equal spread in every group.",
        NotFor = "Saying which group differs.")]
    [NoFormula("mean square between groups over mean square within, the grand mean taken off first; F distribution")]
    [Source(Works.StrdAnova, Standing.Read)]
    [Example("OneWayAnova(Values(9.1 kN, 9.8 kN, 10.4 kN, 8.7 kN, 9.2 kN, 11.9 kN), Values(1, 1, 1, 2, 2, 2)).Statistic", "0.0246063")]
    public static AnalysisOfVariance<T> OneWayAnova<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("g", "", Says.Groups)] Series<double> group) where T : struct
    {
        double[][] groups = Groups(sample, group);
        (double between, double within, int total) = Squares(groups);
        if (!(within > 0)) throw new DomainException("No group scatters: there is nothing to compare the differences with.", nameof(sample));
        int above = groups.Length - 1, below = total - groups.Length;
        double f = between / above / (within / below);
        double[] spreads = [.. groups.Where(values => values.Length > 1).Select(values => Moments.Of(values).Deviation)];
        return new AnalysisOfVariance<T>(Values.Answer(f), Distributions.FisherUpper(f, above, below), above, below, between / (between + within),
            sample.Make(Math.Sqrt(within / below)), sample.Make(Math.Sqrt(between / above)), CautionList.Of(
                (groups.Any(values => values.Length < 3), "A group has fewer than three specimens: it says almost nothing."),
                (spreads.Max() > 3 * spreads.Min(), "The spreads of the groups differ more than threefold: this analysis assumes they are equal.")));
    }

    /// <summary>Levene's test (by default from medians, after Brown and Forsythe); at least two groups of two.</summary>
    [Callable(Topics.Comparisons, "Do several designs scatter differently?", Assumes = "Independent specimens.")]
    [NoFormula("one-way analysis of variance of the absolute distances from each group's median or mean")]
    [Source(Works.Levene, Standing.SecondHand)]
    [Example("EqualSpreadTest(Values(9.1 kN, 9.8 kN, 10.4 kN, 8.7 kN, 9.2 kN, 11.9 kN), Values(1, 1, 1, 2, 2, 2)).Statistic", "0.5453172")]
    public static SpreadComparison EqualSpreadTest<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("g", "", Says.Groups)] Series<double> group,
        [Parameter("centre", "", "what the distances are measured from")] SpreadCentre centre = SpreadCentre.Median) where T : struct
    {
        double[][] groups = Groups(sample, group);
        if (groups.Any(values => values.Length < 2)) throw new DomainException("Every group needs at least two values to have a spread.", nameof(group));
        double[][] distances = [.. groups.Select(values => Distances(values, centre))];
        (double between, double within, int total) = Squares(distances);
        if (!(between + within > 0)) throw new DomainException("The distances from the centre are all equal: their spread cannot be compared.", nameof(sample));
        int above = groups.Length - 1, below = total - groups.Length;
        double w = within > 0 ? between / above / (within / below) : throw new DomainException("The distances within each group are all equal: their spread cannot be compared.", nameof(sample));
        return new SpreadComparison(Values.Answer(w), Distributions.FisherUpper(w, above, below), above, below, CautionList.Of(
            (groups.Any(values => values.Length < 5), "A group has fewer than five specimens: only a gross difference of spread could be found.")));
    }

    private static double[] Distances(double[] values, SpreadCentre centre)
    {
        double middle = centre == SpreadCentre.Mean ? Moments.Of(values).Mean : SampleQuantiles.MedianOf([.. values.Order()]);
        return [.. values.Select(value => Math.Abs(value - middle))];
    }

    private static double[][] Groups<T>(Series<T> sample, Series<double> group) where T : struct
    {
        var values = Sample.Spread(sample, 3);
        var numbers = Sample.Of(group, 3, "group numbers");
        Sample.SameLength(sample, group, "sample", "group numbers");
        double[][] groups = [.. values.Zip(numbers).GroupBy(pair => pair.Second).OrderBy(each => each.Key).Select(each => each.Select(pair => pair.First).ToArray())];
        if (groups.Length < 2) throw new DomainException("There must be at least two groups.", nameof(group));
        if (groups.Length >= values.Length) throw new DomainException("At least one group needs two values.", nameof(group));
        return groups;
    }

    /// <summary>Sums of squares between and within, after taking off the first value, so that constant leading digits cost nothing.</summary>
    private static (double Between, double Within, int Total) Squares(double[][] groups)
    {
        double origin = groups[0][0];
        double[][] centred = [.. groups.Select(values => values.Select(value => value - origin).ToArray())];
        double grand = Moments.Of(centred.SelectMany(values => values).ToArray()).Mean, between = 0, within = 0;
        int total = 0;
        foreach (double[] values in centred)
        {
            Moments moments = Moments.Of(values);
            between += values.Length * (moments.Mean - grand) * (moments.Mean - grand);
            within += moments.SumOfSquares;
            total += values.Length;
        }
        return (Values.Answer(between), Values.Answer(within), total);
    }
}
