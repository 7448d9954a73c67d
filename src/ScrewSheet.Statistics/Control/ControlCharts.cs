using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Limits of a control chart and which points lie outside.</summary>
/// <typeparam name="T">The kind of the sample.</typeparam>
/// <param name="Centre">Centre line.</param>
/// <param name="Lower">Lower limit.</param>
/// <param name="Upper">Upper limit.</param>
/// <param name="RangeCentre">Centre line of the chart of ranges (moving ranges for single values).</param>
/// <param name="RangeLower">Its lower limit.</param>
/// <param name="RangeUpper">Its upper limit.</param>
/// <param name="ProcessDeviation">The standard deviation of the process, from the mean range.</param>
/// <param name="Points">How many points the chart has.</param>
/// <param name="Outside">How many of them lie outside the limits.</param>
/// <param name="RangesOutside">How many ranges lie outside theirs.</param>
/// <param name="LongestRun">The longest run of points on one side of the centre line.</param>
/// <param name="Cautions">What the chart does not show.</param>
[SheetRecord("Limits of a control chart")]
public sealed record ControlChart<T>(
    [property: Member("", "", "centre line")] T Centre,
    [property: Member("LCL", "", "lower control limit")] T Lower,
    [property: Member("UCL", "", "upper control limit")] T Upper,
    [property: Member("R̄", "", "mean range")] T RangeCentre,
    [property: Member("", "", "lower control limit of the ranges")] T RangeLower,
    [property: Member("", "", "upper control limit of the ranges")] T RangeUpper,
    [property: Member("σ", "", "standard deviation of the process, from the mean range")] T ProcessDeviation,
    [property: Member("", "", "points on the chart")] double Points,
    [property: Member("", "", "points outside the limits")] double Outside,
    [property: Member("", "", "ranges outside theirs")] double RangesOutside,
    [property: Member("", "", "longest run of points on one side of the centre line")] double LongestRun,
    IReadOnlyList<string> Cautions) : ICautioned where T : struct;

/// <summary>Control charts of means and ranges, and of single values.</summary>
public static class ControlCharts
{
    /// <summary>The chart of means and ranges: the values in order, cut into subgroups of equal size (2 to 25); at least two subgroups.</summary>
    [Callable(Topics.Control, "Does the process hold steady (chart of means and ranges)?", Assumes = "Values in the order of making; each subgroup made under the same conditions.", NotFor = "Saying whether the product is strong enough: control limits are no specification.")]
    [NoFormula("grand mean plus and minus A2 mean ranges; D3 and D4 mean ranges for the ranges; constants computed", Steps = 100_000)]
    [Source(Works.Charts, Standing.SecondHand)]
    [Example("MeanRangeChart(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN, 9.9 kN), 2).Centre", "9.8 kN")]
    public static ControlChart<T> MeanRangeChart<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("n", "", "how many values make one subgroup", AtLeast = 2, AtMost = 25)] double subgroupSize) where T : struct
    {
        int size = Values.Whole(subgroupSize, 2, nameof(subgroupSize));
        Require.AtMost(size, 25, "", nameof(subgroupSize));
        double[] values = [.. Sample.Spread(sample, 2 * size)];
        if (values.Length % size != 0) throw new DomainException($"{values.Length} values do not divide into subgroups of {size}.", nameof(subgroupSize));
        double[][] groups = [.. values.Chunk(size)];
        return Chart(sample, [.. groups.Select(group => group.Average())], [.. groups.Select(group => group.Max() - group.Min())], size, Math.Sqrt(size));
    }

    /// <summary>The chart of single values with moving ranges of two; at least three values.</summary>
    [Callable(Topics.Control, "Does the process hold steady (chart of single values)?", Assumes = "Values in the order of making; normally distributed.", NotFor = "Saying whether the product is strong enough: control limits are no specification.")]
    [NoFormula("mean plus and minus three mean moving ranges over d2 of two values", Steps = 100_000)]
    [Source(Works.Charts, Standing.SecondHand)]
    [Example("IndividualsChart(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Upper", "11.64108 kN")]
    public static ControlChart<T> IndividualsChart<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        double[] values = [.. Sample.Spread(sample, 3)];
        return Chart(sample, values, [.. values.Zip(values.Skip(1), (a, b) => Math.Abs(b - a))], 2, 1);
    }

    private static ControlChart<T> Chart<T>(Series<T> sample, double[] points, double[] ranges, int size, double root) where T : struct
    {
        ChartConstants constants = ControlConstants.ControlChartConstants(size);
        double centre = Moments.Of(points).Mean, range = ranges.Average(), sigma = range / constants.MeanRange, half = 3 * sigma / root;
        double rangeLow = constants.RangeLower * range, rangeHigh = constants.RangeUpper * range;
        if (!(range > 0)) throw new DomainException("The values do not scatter within subgroups: the chart has no width.", nameof(sample));
        int outside = points.Count(point => Math.Abs(point - centre) > half), rangesOutside = ranges.Count(each => each < rangeLow || each > rangeHigh);
        int run = LongestRun(points, centre);
        return new ControlChart<T>(sample.Make(centre), sample.Make(centre - half), sample.Make(centre + half), sample.Make(range), sample.Make(rangeLow), sample.Make(rangeHigh),
            sample.Make(sigma), points.Length, outside, rangesOutside, run, CautionList.Of(
                (points.Length < 20, $"The limits rest on {points.Length} points; twenty or more are advised before they are used to judge new ones."),
                (outside + rangesOutside > 0, "Points lie outside the limits: find the cause and leave them out before the limits are used further."),
                (run >= 8, $"{run} points in a row lie on one side of the centre line: the process has shifted.")));
    }

    private static int LongestRun(double[] points, double centre)
    {
        int longest = 0, run = 0, side = 0;
        foreach (double point in points)
        {
            int here = Math.Sign(point - centre);
            run = here == 0 ? 0 : here == side ? run + 1 : 1;
            side = here;
            longest = Math.Max(longest, run);
        }
        return longest;
    }
}
