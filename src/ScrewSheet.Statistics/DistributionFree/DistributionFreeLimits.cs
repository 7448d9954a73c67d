using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Limits and proofs that assume no distribution, by counting specimens.</summary>
public static class DistributionFreeLimits
{
    private const string Independent = "Independent specimens of one population; no distribution is assumed.";

    /// <summary>How sure it is that the r-th smallest of n leaves the content above it: P(Bin(n, 1 - p) >= r).</summary>
    [Callable(Topics.DistributionFree, "How sure is the r-th weakest of n specimens to be a lower limit for the content?", Assumes = Independent)]
    [NoFormula("the chance that at least r of n specimens come from the weakest share, by the incomplete beta function")]
    [Example("DistributionFreeConfidence(29, 0.9)", "0.952898713")]
    [Source(Works.Wilks, Standing.SecondHand)]
    public static double DistributionFreeConfidence(
        [Parameter("n", "", Says.Count, AtLeast = 1)] double count,
        [Parameter("p", "", Says.Content, Above = 0, Below = 1)] double content,
        [Parameter("r", "", "which specimen from the weakest on, 1 for the weakest", AtLeast = 1)] double rank = 1)
    {
        int n = Values.Whole(count, 1, nameof(count)), r = Values.Whole(rank, 1, nameof(rank));
        Require.AtMost(r, n, "", nameof(rank));
        return Distributions.BetaLower(1 - Values.Share(content, nameof(content)), r, n - r + 1.0);
    }

    /// <summary>The share of the population that the r-th smallest of n leaves above it, with the confidence.</summary>
    [Callable(Topics.DistributionFree, "What share do all pieces but the weakest of n specimens promise to exceed it?", Assumes = Independent)]
    [NoFormula("a quantile of the beta distribution")]
    [Example("DistributionFreeContent(5, 0.95)", "0.54928")]
    [Source(Works.Wilks, Standing.SecondHand)]
    public static double DistributionFreeContent(
        [Parameter("n", "", Says.Count, AtLeast = 1)] double count,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1)] double confidence,
        [Parameter("r", "", "which specimen from the weakest on, 1 for the weakest", AtLeast = 1)] double rank = 1)
    {
        int n = Values.Whole(count, 1, nameof(count)), r = Values.Whole(rank, 1, nameof(rank));
        Require.AtMost(r, n, "", nameof(rank));
        return Distributions.BetaQuantile(1 - Values.Share(confidence, nameof(confidence)), n - r + 1.0, r);
    }

    /// <summary>The smallest n whose r-th smallest value is a lower limit for the content at the confidence.</summary>
    [Callable(Topics.DistributionFree, "How many specimens make the weakest one a limit?", Assumes = Independent)]
    [NoFormula("the smallest n whose confidence reaches the one asked for, by doubling and halving")]
    [Example("DistributionFreeSampleSize(0.9, 0.95)", "29")]
    [Source(Works.Wilks, Standing.SecondHand)]
    public static double DistributionFreeSampleSize(
        [Parameter("p", "", Says.Content, Above = 0, Below = 1, AtMost = 0.99999)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1)] double confidence,
        [Parameter("r", "", "which specimen from the weakest on, 1 for the weakest", AtLeast = 1)] double rank = 1)
    {
        int r = Values.Whole(rank, 1, nameof(rank));
        double p = Require.AtMost(Values.Share(content, nameof(content)), 0.99999, "", nameof(content)), c = Values.Share(confidence, nameof(confidence));
        // A confidence that is met but for rounding counts as met: 1 - 0.9^n must not ask for one specimen more.
        bool Enough(int n) => n >= r && Distributions.BetaLower(1 - p, r, n - r + 1.0) >= c - 1e-13;
        int high = r;
        while (!Enough(high))
            high = high < 500_000_000 ? high * 2 : throw new DomainException("So many specimens cannot be tested: ask for less.", nameof(confidence));
        int low = high / 2;
        while (high - low > 1)
        {
            int middle = low + ((high - low) / 2);
            if (Enough(middle)) high = middle;
            else low = middle;
        }
        return high;
    }

    /// <summary>The largest rank whose value is a lower limit for the content at the confidence; refused where even the smallest is none.</summary>
    [Callable(Topics.DistributionFree, "Which specimen from the weakest on may be taken as the limit?", Assumes = Independent)]
    [NoFormula("the largest rank whose confidence still reaches the one asked for")]
    [Example("DistributionFreeRank(46, 0.9, 0.95)", "2")]
    [Source(Works.Cmh17, Standing.SecondHand)]
    public static double DistributionFreeRank(
        [Parameter("n", "", Says.Count, AtLeast = 1)] double count,
        [Parameter("p", "", Says.Content, Above = 0, Below = 1)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1)] double confidence)
    {
        int n = Values.Whole(count, 1, nameof(count));
        double p = Values.Share(content, nameof(content)), c = Values.Share(confidence, nameof(confidence));
        bool Enough(int r) => Distributions.BetaLower(1 - p, r, n - r + 1.0) >= c - 1e-13;
        if (!Enough(1))
            throw new DomainException($"Even the weakest of {n} specimens is no such limit: its confidence is {Values.Percent(Distributions.BetaLower(1 - p, 1, n))}. DistributionFreeSampleSize says how many are needed.", nameof(count));
        int low = 1, high = n + 1;
        while (high - low > 1)
        {
            int middle = low + ((high - low) / 2);
            if (Enough(middle)) low = middle;
            else high = middle;
        }
        return low;
    }

    /// <summary>The lower limit by counting: the value of the largest rank that serves; refused for too few specimens.</summary>
    [Callable(Topics.DistributionFree, "Which strength do at least this share exceed, without assuming a distribution?", Assumes = Independent, NotFor = "Small batches: it refuses where even the weakest specimen is no limit.")]
    [NoFormula("the specimen of the largest rank that is still a limit at the confidence")]
    [Source(Works.Cmh17, Standing.SecondHand)]
    [Example("DistributionFreeLimit(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 0.5).Limit", "9.1 kN")]
    public static ToleranceLimit<T> DistributionFreeLimit<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("p", "", Says.Content, Above = 0, Below = 1, UsualFrom = 0.5)] double content,
        [Parameter("C", "", Says.Confidence, Above = 0, Below = 1, UsualFrom = 0.5)] double confidence = 0.95) where T : struct
    {
        double[] sorted = Sample.Sorted(Sample.Spread(sample, 1));
        double rank = DistributionFreeRank(sorted.Length, content, confidence), limit = sorted[(int)rank - 1];
        Moments moments = Moments.Of(sorted);
        double factor = moments.SumOfSquares > 0 ? (moments.Mean - limit) / moments.Deviation : 0;
        return new ToleranceLimit<T>(sample.Make(limit), factor, sorted.Length, content, confidence, CautionList.Of(
            (rank == 1, "The limit is the weakest specimen itself: one more weak piece would lower it."),
            (limit <= 0, "The limit is not above zero: these tests support no strength at all.")));
    }

    /// <summary>How sure smallest and largest of n hold the content between them: 1 - n p^(n-1) + (n-1) p^n.</summary>
    [Callable(Topics.DistributionFree, "How sure do weakest and strongest specimen hold this share between them?", Assumes = Independent)]
    [Formula("1 - count * Pow(content, count - 1) + (count - 1) * Pow(content, count)", Symbol = "C")]
    [Example("MinMaxConfidence(93, 0.95)", "0.950024")]
    [Source(Works.Wilks, Standing.SecondHand)]
    public static double MinMaxConfidence(
        [Parameter("n", "", Says.Count, AtLeast = 2)] double count,
        [Parameter("p", "", "the share of the population between them, 0 to 1", Above = 0, Below = 1)] double content)
    {
        int n = Values.Whole(count, 2, nameof(count));
        double p = Values.Share(content, nameof(content));
        return Distributions.BetaLower(1 - p, 2, n - 1.0); // the same, without the difference of near-equal numbers
    }
}
