using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Which way the line through a probability plot is fitted; the two give different shapes.</summary>
[SheetOption("which way the line through a Weibull plot is fitted")]
public enum RankRegression
{
    /// <summary>ln(-ln(1 - F)) on ln x: the slope is the shape.</summary>
    RankOnStrength,

    /// <summary>ln x on ln(-ln(1 - F)): one over the slope is the shape.</summary>
    StrengthOnRank,
}

/// <summary>How the plotting positions of a probability plot are worked out.</summary>
[SheetOption("how plotting positions are worked out")]
public enum RankMethod
{
    /// <summary>The median of the rank's beta distribution.</summary>
    Exact,

    /// <summary>Benard's approximation (i - 0.3)/(n + 0.4).</summary>
    Benard,
}

/// <summary>Weibull fits by median ranks.</summary>
public static class WeibullRanks
{
    /// <summary>Beyond this, a beta quantile for every specimen takes too long for a cell.</summary>
    private const int MostExact = 5000;

    private const string Assumed = "Strength follows a two-parameter Weibull distribution; independent specimens of one failure mode.";
    private const string NotFor = "Comparison with a fit by maximum likelihood: the two differ for small batches.";

    /// <summary>Fit by a line through the probability plot; at least two values, above zero, not all equal.</summary>
    [Callable(Topics.Weibull, "Which Weibull distribution fits the batch (line through the probability plot)?", Assumes = Assumed, NotFor = NotFor)]
    [NoFormula("least-squares line through ln(-ln(1 - F)) against ln x at median ranks")]
    [Source(Works.WeibullRanks, Standing.SecondHand)]
    [Example("WeibullMedianRanks(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Shape", "19.91358")]
    public static WeibullPlotFit<T> WeibullMedianRanks<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("line", "", "which way the line is fitted")] RankRegression regression = RankRegression.RankOnStrength,
        [Parameter("ranks", "", "how the plotting positions are worked out")] RankMethod method = RankMethod.Exact) where T : struct =>
        Fit(sample, WeibullData.Of(sample, null), regression, method);

    /// <summary>Fit with specimens taken off unbroken, whose share is passed on to the ranks after them (Johnson's adjusted ranks); at least two must have broken.</summary>
    [Callable(Topics.Weibull, "Which Weibull line fits a batch with specimens the rig could not break?", Assumes = Assumed, NotFor = NotFor)]
    [NoFormula("as WeibullMedianRanks, with adjusted ranks after each specimen taken off unbroken")]
    [Source(Works.WeibullRanks, Standing.SecondHand)]
    [Source("L. G. Johnson, The statistical treatment of fatigue experiments, 1964 (adjusted ranks)", Standing.FromMemory)]
    [Example("WeibullCensoredRanks(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), Values(0, 0, 1, 0, 0)).Shape", "20.42706")]
    public static WeibullPlotFit<T> WeibullCensoredRanks<T>(
        [Parameter("x", "", "the test results: the breaking load, or the load at which the specimen was taken off unbroken")] Series<T> sample,
        [Parameter("c", "", Says.Censored)] Series<double> censored,
        [Parameter("line", "", "which way the line is fitted")] RankRegression regression = RankRegression.RankOnStrength,
        [Parameter("ranks", "", "how the plotting positions are worked out")] RankMethod method = RankMethod.Exact) where T : struct
    {
        ArgumentNullException.ThrowIfNull(censored);
        return Fit(sample, WeibullData.Of(sample, censored), regression, method);
    }

    /// <summary>The median rank of the i-th of n, 0 to 1; i may lie between whole numbers (adjusted ranks).</summary>
    [Callable(Topics.Weibull, "Where on a probability plot does the i-th of n values stand?", Assumes = "Independent values of one distribution.")]
    [NoFormula("the median of a beta distribution")]
    [Example("MedianRank(1, 5)", "0.12944944")]
    [Source(Works.WeibullRanks, Standing.SecondHand)]
    public static double MedianRank(
        [Parameter("i", "", "the number of the value from the smallest on", AtLeast = 1)] double rank,
        [Parameter("n", "", Says.Count, AtLeast = 1)] double count)
    {
        int n = Values.Whole(count, 1, nameof(count));
        Require.AtMost(Require.AtLeast(rank, 1, "", nameof(rank)), n, "", nameof(rank));
        return Distributions.BetaQuantile(0.5, rank, n - rank + 1);
    }

    /// <summary>Benard's approximation of the median rank, 0 to 1.</summary>
    [Callable(Topics.Weibull, "Where does the i-th of n values stand by Benard's approximation?", Assumes = "Independent values of one distribution.")]
    [Formula("(rank - 0.3) / (count + 0.4)")]
    [Example("BenardRank(1, 5)", "0.1296296")]
    [Source(Works.WeibullRanks, Standing.SecondHand)]
    public static double BenardRank(
        [Parameter("i", "", "the number of the value from the smallest on", AtLeast = 1)] double rank,
        [Parameter("n", "", Says.Count, AtLeast = 1)] double count)
    {
        int n = Values.Whole(count, 1, nameof(count));
        return (Require.AtMost(Require.AtLeast(rank, 1, "", nameof(rank)), n, "", nameof(rank)) - 0.3) / (n + 0.4);
    }

    private static WeibullPlotFit<T> Fit<T>(Series<T> sample, WeibullData data, RankRegression regression, RankMethod method) where T : struct
    {
        if (method == RankMethod.Exact && data.Count > MostExact)
            throw new DomainException($"Exact median ranks are worked out for at most {MostExact} specimens; take Benard's ranks, which hardly differ there.", nameof(method));
        List<double> strengths = [], scores = [];
        foreach ((double value, double rank) in AdjustedRanks(data))
        {
            double share = method == RankMethod.Exact ? MedianRank(rank, data.Count) : BenardRank(rank, data.Count);
            strengths.Add(Math.Log(value));
            scores.Add(Math.Log(-Math.Log(1 - share)));
        }
        Moments x = Moments.Of(strengths.ToArray()), y = Moments.Of(scores.ToArray());
        if (!(x.SumOfSquares > 0)) throw new DomainException("All broken specimens have the same strength: no line goes through them.", nameof(sample));
        double product = strengths.Zip(scores, (a, b) => (a - x.Mean) * (b - y.Mean)).Sum();
        double shape = regression == RankRegression.RankOnStrength ? product / x.SumOfSquares : y.SumOfSquares / product;
        double scale = Math.Exp(x.Mean - (y.Mean / shape));
        return new WeibullPlotFit<T>(shape, sample.Make(scale), Math.Min(1, product / Math.Sqrt(x.SumOfSquares * y.SumOfSquares)),
            sample.Make(WeibullDistribution.MeanSi(shape, scale)), sample.Make(WeibullDistribution.DeviationSi(shape, scale)), data.Count, data.Failures, data.Cautions(ranks: true));
    }

    /// <summary>Broken specimens in rising order with their ranks; one taken off at the same load counts as stronger.</summary>
    private static IEnumerable<(double Value, double Rank)> AdjustedRanks(WeibullData data)
    {
        int n = data.Count;
        int[] order = [.. Enumerable.Range(0, n).OrderBy(i => data.Values[i]).ThenBy(i => !data.Broke[i])];
        double rank = 0;
        for (int place = 0; place < n; place++)
        {
            if (!data.Broke[order[place]]) continue;
            rank += (n + 1 - rank) / (1 + n - place);
            yield return (data.Values[order[place]], rank);
        }
    }
}
