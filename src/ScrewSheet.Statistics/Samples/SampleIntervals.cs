using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Confidence intervals of the mean and of the scatter of a normal sample.</summary>
public static class SampleIntervals
{
    /// <summary>Two-sided confidence interval of the mean, by Student's t; at least two values.</summary>
    [Callable(Topics.Samples, "Between which values does the true average lie?", Assumes = "Independent specimens; strength near normal or n not small.",
        NotFor = "Rating a product: half of all pieces are weaker than the average.")]
    [NoFormula("mean plus and minus the Student quantile at n - 1 degrees of freedom times s over the root of n")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("MeanInterval(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Lower", "9.150536 kN")]
    public static Interval<T> MeanInterval<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1)] double confidence = 0.95) where T : struct
    {
        Values.Share(confidence, nameof(confidence));
        Moments moments = Moments.Of(Sample.Spread(sample, 2).AsSpan());
        double half = Distributions.StudentQuantile((1 + confidence) / 2, moments.Count - 1) * moments.Deviation / Math.Sqrt(moments.Count);
        return new Interval<T>(sample.Make(moments.Mean - half), sample.Make(moments.Mean + half), confidence);
    }

    /// <summary>Two-sided confidence interval of the standard deviation, by chi-square with equal tails; at least two values.</summary>
    [Callable(Topics.Samples, "Between which values does the true scatter lie?", Assumes = "Normally distributed strength: this interval is sensitive to that.")]
    [NoFormula("s times the root of n - 1 over the chi-square quantiles of both tails")]
    [Source(Works.Arithmetic, Standing.Derived)]
    [Example("DeviationInterval(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Upper", "1.456754 kN")]
    public static Interval<T> DeviationInterval<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1)] double confidence = 0.95) where T : struct
    {
        Values.Share(confidence, nameof(confidence));
        Moments moments = Moments.Of(Sample.Spread(sample, 2).AsSpan());
        double dof = moments.Count - 1, tail = (1 - confidence) / 2;
        double lower = Math.Sqrt(moments.SumOfSquares / Distributions.ChiSquareQuantile(1 - tail, dof));
        double upper = Math.Sqrt(moments.SumOfSquares / Distributions.ChiSquareQuantile(tail, dof));
        return new Interval<T>(sample.Make(lower), sample.Make(upper), confidence);
    }
}
