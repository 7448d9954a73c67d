using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>How many standard deviations a normal tolerance limit lies from the mean. All pure numbers.</summary>
public static class ToleranceFactors
{
    private const string Few = "Below five specimens the factor is so large because the scatter is hardly known: test more.";

    /// <summary>The exact one-sided factor k for mean - k s (or mean + k s), deviation estimated; n at least 2.</summary>
    [Callable(Topics.Ratings, "How many standard deviations below the mean must a limit lie?", Assumes = "Normally distributed strength; independent specimens; s with divisor n - 1.")]
    [NoFormula("the noncentral t quantile over the root of n, by integrating over the distribution of s and searching for k", Steps = 10_000)]
    [Example("ToleranceFactor(10, 0.9, 0.95)", "2.35464")]
    [CautionWhen("count < 5", Few)]
    [Source(Works.Tolerance, Standing.SecondHand)]
    [Source(Works.Cmh17, Standing.SecondHand)]
    public static double ToleranceFactor(
        [Parameter("n", "", Says.Count, AtLeast = 2)] double count,
        [Parameter("p", "", Says.Content, Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence) =>
        NoncentralFactors.Factor(Values.Whole(count, 2, nameof(count)), Values.Share(content, nameof(content)), Values.Share(confidence, nameof(confidence)));

    /// <summary>The exact two-sided factor for mean ± k s, deviation estimated; n at least 2.</summary>
    [Callable(Topics.Ratings, "How many standard deviations to both sides hold a share of the population?", Assumes = "Normally distributed values; independent specimens.")]
    [NoFormula("the chance by chi-square, averaged over where the sample mean may lie, and a search for k", Steps = 10_000)]
    [Example("TwoSidedToleranceFactor(43, 0.9, 0.99)", "2.22283")]
    [CautionWhen("count < 5", Few)]
    [Source(Works.Tolerance, Standing.SecondHand)]
    public static double TwoSidedToleranceFactor(
        [Parameter("n", "", Says.Count, AtLeast = 2)] double count,
        [Parameter("p", "", "the share of the population between the limits, 0 to 1", Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence) =>
        TwoSidedFactors.Factor(Values.Whole(count, 2, nameof(count)), Values.Share(content, nameof(content)), Values.Share(confidence, nameof(confidence)));

    /// <summary>The factor for mean - k sigma when the deviation is known beforehand; n at least 1.</summary>
    [Callable(Topics.Ratings, "How far below the mean must a limit lie when the scatter is known beforehand?", Assumes = "Normally distributed strength whose standard deviation is known from long production, not from this sample.")]
    [NoFormula("normal quantile of the content plus that of the confidence over the root of n")]
    [Example("KnownDeviationFactor(10, 0.9, 0.95)", "1.80170")]
    [Source(Works.Tolerance, Standing.SecondHand)]
    public static double KnownDeviationFactor(
        [Parameter("n", "", Says.Count, AtLeast = 1)] double count,
        [Parameter("p", "", Says.Content, Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence) =>
        Distributions.Z(Values.Share(content, nameof(content))) + (Distributions.Z(Values.Share(confidence, nameof(confidence))) / Math.Sqrt(Values.Whole(count, 1, nameof(count))));

    /// <summary>Howe's approximation of the two-sided factor, to set beside printed examples; n at least 2.</summary>
    [Callable(Topics.Ratings, "What does the handbook's approximation of the two-sided factor give?", Assumes = "Normally distributed values.", NotFor = "A limit: use TwoSidedToleranceFactor, which is exact.")]
    [NoFormula("normal quantile times the root of (n - 1)(1 + 1/n) over a chi-square quantile")]
    [Example("HoweToleranceFactor(43, 0.9, 0.99)", "2.2173159")]
    [CautionWhen("true", "This is a handbook approximation; TwoSidedToleranceFactor is exact.")]
    [Source(Works.Tolerance, Standing.SecondHand)]
    public static double HoweToleranceFactor(
        [Parameter("n", "", Says.Count, AtLeast = 2)] double count,
        [Parameter("p", "", "the share of the population between the limits, 0 to 1", Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence)
    {
        int n = Values.Whole(count, 2, nameof(count));
        double z = Distributions.Z((1 + Values.Share(content, nameof(content))) / 2), v = n - 1;
        return z * Math.Sqrt(v * (1 + (1.0 / n)) / Distributions.ChiSquareQuantile(1 - Values.Share(confidence, nameof(confidence)), v));
    }

    /// <summary>Natrella's approximation of the one-sided factor, to set beside printed examples; n at least 2 and large enough for the confidence.</summary>
    [Callable(Topics.Ratings, "What does the handbook's approximation of the one-sided factor give?", Assumes = "Normally distributed values.", NotFor = "A limit: use ToleranceFactor, which is exact.")]
    [NoFormula("the larger root of a quadratic in normal quantiles and n")]
    [Example("NatrellaToleranceFactor(43, 0.9, 0.99)", "1.8751896")]
    [CautionWhen("true", "This is a handbook approximation, too small by a few per cent at common confidence and far off for few specimens; ToleranceFactor is exact.")]
    [Source(Works.Tolerance, Standing.SecondHand)]
    public static double NatrellaToleranceFactor(
        [Parameter("n", "", Says.Count, AtLeast = 2)] double count,
        [Parameter("p", "", Says.Content, Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence)
    {
        int n = Values.Whole(count, 2, nameof(count));
        double z = Distributions.Z(Values.Share(content, nameof(content))), sure = Distributions.Z(Values.Share(confidence, nameof(confidence)));
        double a = 1 - (sure * sure / (2 * (n - 1.0))), b = (z * z) - (sure * sure / n), inside = (z * z) - (a * b);
        return a > 0 && inside >= 0
            ? (z + Math.Sqrt(inside)) / a
            : throw new DomainException("The approximation has no answer for so few specimens at this confidence; use ToleranceFactor.", nameof(count));
    }

    /// <summary>The share of the population that mean - k s leaves above it, with a confidence; n at least 2.</summary>
    [Callable(Topics.Ratings, "What does mean less k standard deviations really promise?", Assumes = "Normally distributed strength; k between -50 and 50.")]
    [NoFormula("the content whose exact tolerance factor is k, by search", Steps = 10_000)]
    [Example("ContentCovered(5, 3, 0.95)", "0.862371")]
    [Source("Derived from the definition of the one-sided normal tolerance limit", Standing.Derived)]
    public static double ContentCovered(
        [Parameter("n", "", Says.Count, AtLeast = 2)] double count,
        [Parameter("k", "", "how many standard deviations the limit lies below the mean", AtLeast = -50, AtMost = 50, UsualFrom = 0)] double factor,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence)
    {
        Require.AtMost(Require.AtLeast(factor, -50, "", nameof(factor)), 50, "", nameof(factor));
        return NoncentralFactors.Content(Values.Whole(count, 2, nameof(count)), factor, Values.Share(confidence, nameof(confidence)));
    }

    /// <summary>The share of the population that mean - k s leaves above it on average; n at least 2.</summary>
    [Callable(Topics.Ratings, "What does mean less k standard deviations cover on average?", Assumes = "Normally distributed strength.", NotFor = "A promise: half of all samples cover less or nearly so.")]
    [NoFormula("Student's t distribution at n - 1 degrees of freedom of k over the root of 1 + 1/n")]
    [Example("ExpectedContent(5, 3)", "0.974010")]
    [Source("Derived: the prediction limit of one further specimen", Standing.Derived)]
    public static double ExpectedContent(
        [Parameter("n", "", Says.Count, AtLeast = 2)] double count,
        [Parameter("k", "", "how many standard deviations the limit lies below the mean", UsualFrom = 0)] double factor)
    {
        int n = Values.Whole(count, 2, nameof(count));
        return Distributions.StudentUpper(-Require.Finite(factor, nameof(factor)) / Math.Sqrt(1 + (1.0 / n)), n - 1);
    }
}
