using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Figures that describe one sample.</summary>
public static class SampleStatistics
{
    /// <summary>The number of values, a pure number.</summary>
    [Callable(Topics.Samples, "How many specimens are there?")]
    [NoFormula("counts the values")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("SampleSize(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "5")]
    public static double SampleSize<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        ArgumentNullException.ThrowIfNull(sample);
        return sample.Count;
    }

    /// <summary>The arithmetic mean, in the kind of the sample; at least one value.</summary>
    [Callable(Topics.Samples, "What is the average?")]
    [NoFormula("sum of the values over their number, in two passes so that long series of near-equal values keep their digits")]
    [Source(Works.StrdUnivariate, Standing.Read)]
    [Example("Mean(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "9.78 kN")]
    public static T Mean<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct =>
        sample.Make(Moments.Of(Sample.Of(sample, 1).AsSpan()).Mean);

    /// <summary>The standard deviation with divisor n - 1; at least two values.</summary>
    [Callable(Topics.Samples, "How much do the results scatter?", Assumes = "The batch is a sample of what is made: divisor n - 1.")]
    [NoFormula("root of the sum of squared deviations from the mean over n - 1, in two passes with a correction term")]
    [Source(Works.StrdUnivariate, Standing.Read)]
    [Example("StandardDeviation(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "0.5069517 kN")]
    public static T StandardDeviation<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct =>
        sample.Make(Moments.Of(Sample.Spread(sample, 2).AsSpan()).Deviation);

    /// <summary>The standard deviation with divisor n; at least one value.</summary>
    [Callable(Topics.Samples, "How much do the results scatter, when the batch is everything there is?", Assumes = "The batch is the whole population: divisor n.",
        NotFor = "Rating a product from a batch of specimens: use StandardDeviation.")]
    [NoFormula("root of the sum of squared deviations from the mean over n")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("PopulationDeviation(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "0.4534314 kN")]
    public static T PopulationDeviation<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        Moments moments = Moments.Of(Sample.Spread(sample, 1).AsSpan());
        return sample.Make(Math.Sqrt(moments.SumOfSquares / moments.Count));
    }

    /// <summary>The standard deviation corrected for its bias in small normal samples, s / c4(n); at least two values.</summary>
    [Callable(Topics.Samples, "How much do the results scatter, without the bias of a small sample?", Assumes = "The strength is normally distributed.")]
    [NoFormula("standard deviation over the bias factor c4 of the sample size")]
    [Source(Works.Charts, Standing.SecondHand)]
    [Example("UnbiasedDeviation(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "0.5393186 kN")]
    public static T UnbiasedDeviation<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct =>
        sample.Make(Moments.Of(Sample.Spread(sample, 2).AsSpan()).Deviation / ControlConstants.DeviationBias(sample.Count));

    /// <summary>The standard deviation over the size of the mean, a pure number; at least two values and a mean that is not zero.</summary>
    [Callable(Topics.Samples, "How large is the scatter beside the average?", NotFor = "Values with an arbitrary zero, or a mean near zero.")]
    [NoFormula("standard deviation (divisor n - 1) over the absolute mean")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("CoefficientOfVariation(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "0.05183555")]
    public static double CoefficientOfVariation<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        Moments moments = Moments.Of(Sample.Spread(sample, 2).AsSpan());
        return moments.Mean != 0
            ? Values.Answer(moments.Deviation / Math.Abs(moments.Mean))
            : throw new DomainException("The mean is zero, so the scatter cannot be set against it.", nameof(sample));
    }

    /// <summary>The standard error of the mean, s / sqrt(n); at least two values.</summary>
    [Callable(Topics.Samples, "How uncertain is the average?", Assumes = "The specimens are independent of one another.")]
    [NoFormula("standard deviation over the root of the number of values")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("StandardError(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "0.2267157 kN")]
    public static T StandardError<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        Moments moments = Moments.Of(Sample.Spread(sample, 2).AsSpan());
        return sample.Make(moments.Deviation / Math.Sqrt(moments.Count));
    }

    /// <summary>The smallest value; at least one value.</summary>
    [Callable(Topics.Samples, "Which specimen was weakest?", NotFor = "Rating a product: the weakest of a few is not the weakest there is.")]
    [NoFormula("the smallest of the values")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("Smallest(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "9.1 kN")]
    public static T Smallest<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct =>
        sample.Make(Sample.Of(sample, 1).Min());

    /// <summary>The largest value; at least one value.</summary>
    [Callable(Topics.Samples, "Which specimen was strongest?")]
    [NoFormula("the largest of the values")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("Largest(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "10.4 kN")]
    public static T Largest<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct =>
        sample.Make(Sample.Of(sample, 1).Max());

    /// <summary>Largest less smallest; at least one value.</summary>
    [Callable(Topics.Samples, "How far apart are strongest and weakest?")]
    [NoFormula("largest value less the smallest")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("SampleRange(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "1.3 kN")]
    public static T SampleRange<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        var values = Sample.Spread(sample, 1);
        return sample.Make(values.Max() - values.Min());
    }

    /// <summary>The correlation of each value with the next, -1 to 1; at least two values that are not all equal.</summary>
    [Callable(Topics.Samples, "Does each result follow the one before (drift of the rig, wear of a fixture)?", Assumes = "The values stand in the order they were measured.")]
    [NoFormula("sum of products of neighbouring deviations over the sum of squared deviations")]
    [Source(Works.StrdUnivariate, Standing.Read)]
    [Example("LagOneAutocorrelation(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN))", "-0.2571984")]
    public static double LagOneAutocorrelation<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        var values = Sample.Spread(sample, 2);
        Moments moments = Moments.Of(values.AsSpan());
        moments.Scattering("sample");
        double sum = 0;
        for (int i = 0; i + 1 < values.Length; i++) sum += (values[i] - moments.Mean) * (values[i + 1] - moments.Mean);
        return sum / moments.SumOfSquares;
    }
}
