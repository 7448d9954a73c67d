using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Quantiles of a sample.</summary>
public static class SampleQuantiles
{
    /// <summary>The value below which a share of the sample lies, always between the smallest and the largest value.</summary>
    [Callable(Topics.Samples, "Below which value does a share of the sample lie?", NotFor = "A low fractile of the product: outside the sample's own range it answers with the nearest specimen.")]
    [NoFormula("sorted values, interpolated at the place the chosen definition gives (default: type 8)")]
    [Source(Works.HyndmanFan, Standing.SecondHand)]
    [Example("Quantile(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 0.25)", "9.366667 kN")]
    public static T Quantile<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("q", "", "the share of the sample below the value, 0 to 1", AtLeast = 0, AtMost = 1)] double fraction,
        [Parameter("type", "", "which definition of a quantile")] QuantileType type = QuantileType.MedianUnbiased) where T : struct
    {
        if (!(fraction >= 0 && fraction <= 1))
            throw new DomainException($"fraction must lie between 0 and 1; it is {Values.Text(fraction)}. Write 0.9 or 90 % for ninety per cent.", nameof(fraction));
        double[] sorted = Sample.Sorted(Sample.Of(sample, 1));
        return sample.Make(type <= QuantileType.NearestValue ? Step(sorted, fraction, type) : Continuous(sorted, fraction, type));
    }

    /// <summary>The middle value, or the mean of the two middle ones.</summary>
    [Callable(Topics.Samples, "Which value has half the sample below it?")]
    [NoFormula("the middle of the sorted values")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("Median(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "9.8 kN")]
    public static T Median<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct =>
        sample.Make(MedianOf(Sample.Sorted(Sample.Of(sample, 1))));

    /// <summary>The middle of values already sorted.</summary>
    internal static double MedianOf(double[] sorted)
    {
        int half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : sorted[half - 1] + ((sorted[half] - sorted[half - 1]) / 2);
    }

    private static double Continuous(double[] sorted, double q, QuantileType type)
    {
        double offset = type switch
        {
            QuantileType.LinearDistribution => 0,
            QuantileType.Hazen => 0.5,
            QuantileType.PlottingPosition => q,
            QuantileType.FirstToLast => 1 - q,
            QuantileType.MedianUnbiased => (q + 1) / 3,
            QuantileType.NormalUnbiased => (q / 4) + 0.375,
            _ => throw new DomainException("type must be one of the nine quantile types.", nameof(type)),
        };
        double place = Math.Clamp(Tidy((sorted.Length * q) + offset), 1, sorted.Length);
        int below = Math.Min((int)Math.Floor(place), sorted.Length - 1);
        if (sorted.Length == 1) return sorted[0];
        double share = place - below;
        return share >= 1 ? sorted[below] : sorted[below - 1] + (share * (sorted[below] - sorted[below - 1]));
    }

    private static double Step(double[] sorted, double q, QuantileType type)
    {
        double place = Tidy(sorted.Length * q);
        double floor = Math.Floor(place);
        double At(double rank) => sorted[(int)Math.Clamp(rank, 1, sorted.Length) - 1];
        return type switch
        {
            QuantileType.InverseDistribution => At(Math.Ceiling(place)),
            QuantileType.InverseDistributionAveraged => place == floor ? At(place) + ((At(place + 1) - At(place)) / 2) : At(Math.Ceiling(place)),
            QuantileType.NearestValue => At(Math.Round(place, MidpointRounding.ToEven)),
            _ => throw new DomainException("type must be one of the nine quantile types.", nameof(type)),
        };
    }

    /// <summary>A place that misses a whole number by rounding only is that number: 10 · 0.9 must not fall beside 9.</summary>
    private static double Tidy(double place)
    {
        double whole = Math.Round(place);
        return Math.Abs(place - whole) <= 4e-16 * Math.Max(1, Math.Abs(place)) * 4 ? whole : place;
    }
}
