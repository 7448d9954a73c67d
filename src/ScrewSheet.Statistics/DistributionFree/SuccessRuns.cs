using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>What passes and failures prove about the share that passes.</summary>
public static class SuccessRuns
{
    private const string Pass = "Independent specimens; each passes or fails at one and the same load.";
    private const string NotMore = "Any load above the one that was held: nothing was learned there.";

    /// <summary>The reliability shown by n passes without a failure: (1 - C)^(1/n), 0 to 1.</summary>
    [Callable(Topics.DistributionFree, "All n specimens held: what share of all pieces is shown to hold?", Assumes = Pass, NotFor = NotMore)]
    [Formula("Pow(1 - confidence, 1 / count)", Symbol = "R")]
    [Example("SuccessRunReliability(5, 0.95)", "0.54928")]
    [CautionWhen("count < 59", "So few passes show little: 59 without a failure are needed for 95 % reliability at 95 % confidence.")]
    [Source(Works.Wilks, Standing.SecondHand)]
    public static double SuccessRunReliability(
        [Parameter("n", "", "how many specimens held, none failing", AtLeast = 1)] double count,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence) =>
        Math.Pow(1 - Values.Share(confidence, nameof(confidence)), 1.0 / Values.Whole(count, 1, nameof(count)));

    /// <summary>The Bayesian variant with a uniform prior, (1 - C)^(1/(n + 1)): as if one more specimen had passed.</summary>
    [Callable(Topics.DistributionFree, "All n specimens held: what share is shown by the Bayesian variant?", Assumes = Pass + " Before testing, every reliability was held equally likely.", NotFor = NotMore)]
    [Formula("Pow(1 - confidence, 1 / (count + 1))", Symbol = "R")]
    [Example("SuccessRunReliabilityBayes(5, 0.95)", "0.606962")]
    [CautionWhen("true", "This variant needs one specimen less than the classical one because it assumes that every reliability was equally likely beforehand; say that it was used.")]
    [Source("Success run with a uniform prior; elementary Bayesian derivation", Standing.Derived)]
    public static double SuccessRunReliabilityBayes(
        [Parameter("n", "", "how many specimens held, none failing", AtLeast = 1)] double count,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence) =>
        Math.Pow(1 - Values.Share(confidence, nameof(confidence)), 1.0 / (Values.Whole(count, 1, nameof(count)) + 1.0));

    /// <summary>How many passes without a failure show the reliability at the confidence.</summary>
    [Callable(Topics.DistributionFree, "How many specimens must hold, none failing, to show a reliability?", Assumes = Pass)]
    [NoFormula("the smallest whole n with R to the power of n at most 1 - C")]
    [Example("SuccessRunSampleSize(0.95, 0.95)", "59")]
    [Source(Works.Wilks, Standing.SecondHand)]
    public static double SuccessRunSampleSize(
        [Parameter("R", "", "the share of all pieces that is to hold, 0 to 1", Above = 0, Below = 1, AtMost = 0.99999)] double reliability,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence) =>
        DistributionFreeLimits.DistributionFreeSampleSize(Require.AtMost(Values.Share(reliability, nameof(reliability)), 0.99999, "", nameof(reliability)), confidence);

    /// <summary>The reliability shown by n specimens of which f failed (exact binomial lower bound), 0 to 1; f less than n.</summary>
    [Callable(Topics.DistributionFree, "So many of n specimens failed: what share of all pieces is shown to hold?", Assumes = Pass, NotFor = NotMore)]
    [NoFormula("a quantile of the beta distribution (Clopper-Pearson lower bound)")]
    [Example("SuccessRunWithFailures(93, 1, 0.95)", "0.950006")]
    [Source(Works.ClopperPearson, Standing.SecondHand)]
    public static double SuccessRunWithFailures(
        [Parameter("n", "", Says.Count, AtLeast = 1)] double count,
        [Parameter("f", "", "how many of them failed", AtLeast = 0)] double failures,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence)
    {
        int n = Values.Whole(count, 1, nameof(count)), f = Values.Whole(failures, 0, nameof(failures));
        Require.Below(f, n, "", nameof(failures));
        return Distributions.BetaQuantile(1 - Values.Share(confidence, nameof(confidence)), n - f, f + 1.0);
    }
}
