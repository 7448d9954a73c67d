using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Limits from a batch of normally (or lognormally) distributed strengths.</summary>
public static class NormalLimits
{
    private const string NormalBatch = "Normally distributed strength; independent specimens, made and tested like what is sold.";
    private const string NotForOthers = "Pieces of another design, size, ice or rig than those tested.";

    /// <summary>Mean less three standard deviations (divisor n - 1), with the content it covers at 95 % confidence; at least two values, not all equal.</summary>
    [Callable(Topics.Ratings, "What is the three-sigma rating of the batch?", Assumes = NormalBatch, NotFor = "A promise of 99.87 %: for few specimens it covers far less.")]
    [NoFormula("mean less three standard deviations; the content it covers at 95 % confidence by the exact tolerance factor", Steps = 10_000)]
    [Source("Three-sigma rating, a convention of the trade", Standing.CommonPractice)]
    [Example("ThreeSigmaRating(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Limit", "8.259145 kN")]
    public static ToleranceLimit<T> ThreeSigmaRating<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        Moments moments = Batch(sample);
        double content = NoncentralFactors.Content(moments.Count, 3, 0.95), limit = moments.Mean - (3 * moments.Deviation);
        return new ToleranceLimit<T>(sample.Make(limit), 3, moments.Count, content, 0.95, BatchCautions.Of(Series.OfNumbers(sample.Si), limit,
            (content < 0.99, $"From {moments.Count} specimens three sigma is sure (95 %) to cover only {Values.Percent(content)} of the population.")));
    }

    /// <summary>The exact one-sided lower tolerance limit mean - k s; at least two values, not all equal.</summary>
    [Callable(Topics.Ratings, "Which strength do at least this share of all pieces exceed, at a confidence?", Assumes = NormalBatch, NotFor = NotForOthers)]
    [NoFormula("mean less the exact tolerance factor times the standard deviation", Steps = 10_000)]
    [Source(Works.Tolerance, Standing.SecondHand)]
    [Example("LowerToleranceLimit(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 0.95).Limit", "7.649444 kN")]
    public static ToleranceLimit<T> LowerToleranceLimit<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("p", "", Says.Content, Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct => OneSided(sample, content, confidence, -1);

    /// <summary>The exact one-sided upper tolerance limit mean + k s; at least two values, not all equal.</summary>
    [Callable(Topics.Ratings, "Which value do at least this share of all pieces stay below, at a confidence?", Assumes = "Normally distributed values; independent specimens.", NotFor = NotForOthers)]
    [NoFormula("mean plus the exact tolerance factor times the standard deviation", Steps = 10_000)]
    [Source(Works.Tolerance, Standing.SecondHand)]
    [Example("UpperToleranceLimit(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 0.95).Limit", "11.91056 kN")]
    public static ToleranceLimit<T> UpperToleranceLimit<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("p", "", Says.Content, Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct => OneSided(sample, content, confidence, 1);

    /// <summary>Exact two-sided tolerance limits mean ± k s; at least two values, not all equal.</summary>
    [Callable(Topics.Ratings, "Between which values does this share of all pieces lie, at a confidence?", Assumes = "Normally distributed values; independent specimens.", NotFor = NotForOthers)]
    [NoFormula("mean plus and minus the exact two-sided tolerance factor times the standard deviation", Steps = 10_000)]
    [Source(Works.Tolerance, Standing.SecondHand)]
    [Example("TwoSidedToleranceLimits(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 0.9).Lower", "7.604871 kN")]
    public static ToleranceInterval<T> TwoSidedToleranceLimits<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("p", "", "the share of the population between the limits, 0 to 1", Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        Moments moments = Batch(sample);
        double k = ToleranceFactors.TwoSidedToleranceFactor(moments.Count, content, confidence), half = k * moments.Deviation;
        return new ToleranceInterval<T>(sample.Make(moments.Mean - half), sample.Make(moments.Mean + half), k, content, confidence,
            BatchCautions.Of(Series.OfNumbers(sample.Si), double.PositiveInfinity));
    }

    /// <summary>B-basis: at least 90 % exceed it, with 95 % confidence; at least two values, not all equal.</summary>
    [Callable(Topics.Ratings, "What is the B-basis strength of the batch (90 % exceed it, 95 % sure)?", Assumes = NormalBatch, NotFor = NotForOthers)]
    [NoFormula("lower tolerance limit for content 0.90 at confidence 0.95", Steps = 10_000)]
    [Source(Works.Cmh17, Standing.SecondHand)]
    [Example("BBasis(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Limit", "8.053002 kN")]
    public static ToleranceLimit<T> BBasis<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct => OneSided(sample, 0.90, 0.95, -1);

    /// <summary>A-basis: at least 99 % exceed it, with 95 % confidence; at least two values, not all equal.</summary>
    [Callable(Topics.Ratings, "What is the A-basis strength of the batch (99 % exceed it, 95 % sure)?", Assumes = NormalBatch, NotFor = NotForOthers)]
    [NoFormula("lower tolerance limit for content 0.99 at confidence 0.95", Steps = 10_000)]
    [Source(Works.Cmh17, Standing.SecondHand)]
    [Example("ABasis(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Limit", "6.869548 kN")]
    public static ToleranceLimit<T> ABasis<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct => OneSided(sample, 0.99, 0.95, -1);

    /// <summary>The lower tolerance limit worked out on logarithms; at least two values, all above zero, not all equal.</summary>
    [Callable(Topics.Ratings, "Which strength do at least this share exceed, when strength scatters in proportion (lognormal)?", Assumes = "Lognormally distributed strength; independent specimens.", NotFor = NotForOthers)]
    [NoFormula("the normal lower tolerance limit of the logarithms, taken back by the exponential", Steps = 10_000)]
    [Source(Works.Cmh17, Standing.SecondHand)]
    [Example("LognormalLowerLimit(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 0.95).Limit", "7.848903 kN")]
    public static ToleranceLimit<T> LognormalLowerLimit<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("p", "", Says.Content, Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        Series<double> logarithms = Series.OfNumbers(Sample.Positive(sample, 2).Select(Math.Log));
        Moments moments = Batch(logarithms);
        double k = ToleranceFactors.ToleranceFactor(moments.Count, content, confidence), limit = Math.Exp(moments.Mean - (k * moments.Deviation));
        return new ToleranceLimit<T>(sample.Make(limit), k, moments.Count, content, confidence, BatchCautions.Of(logarithms, limit));
    }

    private static ToleranceLimit<T> OneSided<T>(Series<T> sample, double content, double confidence, int sign) where T : struct
    {
        Moments moments = Batch(sample);
        double k = ToleranceFactors.ToleranceFactor(moments.Count, content, confidence), limit = moments.Mean + (sign * k * moments.Deviation);
        return new ToleranceLimit<T>(sample.Make(limit), k, moments.Count, content, confidence,
            BatchCautions.Of(Series.OfNumbers(sample.Si), sign < 0 ? limit : double.PositiveInfinity));
    }

    /// <summary>Refuses a batch without scatter: no limit can be drawn from it.</summary>
    private static Moments Batch<T>(Series<T> sample) where T : struct
    {
        Moments moments = Moments.Of(Sample.Spread(sample, 2).AsSpan());
        moments.Scattering("sample");
        return moments;
    }
}
