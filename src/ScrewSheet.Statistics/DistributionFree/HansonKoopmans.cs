using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>
/// The extended Hanson-Koopmans lower limit for small batches: B = x_r (x_1 / x_r)^k on the weakest and the r-th weakest specimen.
/// </summary>
/// <remarks>
/// The least favourable distribution has exponential tails, so on logarithms the weakest and the r-th weakest value are spacings of exponentials:
/// the chance that the limit fails is an integral over a beta density, and k is where it equals 1 - C.
/// The factor makes the limit hold at any rank; the rank only decides how close it comes. For 2, 3, 4, 5, 6, 8, 10, 12, 15, 18, 20, 22, 25 and 28
/// specimens it is the printed one, between them the one whose limit lies on average nearest to the fractile of a normal sample.
/// </remarks>
public static class HansonKoopmans
{
    /// <summary>The rank for 2, 3, … 28 specimens.</summary>
    private static readonly int[] Ranks = [2, 3, 4, 4, 5, 5, 6, 6, 6, 7, 7, 7, 8, 8, 8, 9, 9, 9, 10, 10, 10, 10, 10, 11, 11, 11, 12];

    /// <summary>B-basis (90 % exceed it, 95 % sure) from 2 to 28 strengths, all above zero, without a normal distribution.</summary>
    [Callable(Topics.DistributionFree, "What is the B-basis of a small batch without assuming a normal distribution?", Assumes = "Independent specimens, 2 to 28; strength above zero; the logarithm of the distribution function is concave, as for normal, lognormal and Weibull strength.",
        NotFor = "More than 28 specimens: DistributionFreeLimit needs no assumption there.")]
    [NoFormula("x_r (x_1 / x_r)^k with rank and factor computed for the sample size", Steps = 10_000)]
    [Source(Works.Vangel, Standing.SecondHand)]
    [Example("HansonKoopmansBBasis(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Limit", "6.586282 kN")]
    public static ToleranceLimit<T> HansonKoopmansBBasis<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        double[] sorted = Sample.Sorted(Sample.Positive(sample, 2));
        int n = sorted.Length, rank = (int)HansonKoopmansRank(n);
        double k = HansonKoopmansFactor(n), limit = sorted[rank - 1] * Math.Pow(sorted[0] / sorted[rank - 1], k);
        return new ToleranceLimit<T>(sample.Make(limit), k, n, 0.90, 0.95, CautionList.Of(
            (n < 10, $"Only {n} specimens stand behind this limit: a further batch may give a very different one."),
            (sorted[0] == sorted[rank - 1], "The weakest specimens are equal, so this limit sees no scatter: do not use it."),
            (limit < sorted[0] / 2, "The limit lies below half of the weakest specimen: the batch is too small or too scattered to support more.")));
    }

    /// <summary>The rank r of the second specimen the limit uses, for 2 to 28 specimens.</summary>
    [Callable(Topics.DistributionFree, "Which specimen from the weakest on does the small-batch limit use besides the weakest?", Assumes = "B-basis: content 0.90, confidence 0.95.")]
    [NoFormula("a table: the rank whose limit lies on average nearest to the normal fractile")]
    [Example("HansonKoopmansRank(18)", "9")]
    [Source(Works.Vangel, Standing.SecondHand)]
    public static double HansonKoopmansRank([Parameter("n", "", Says.Count, AtLeast = 2, AtMost = 28)] double count) => Ranks[Size(count) - 2];

    /// <summary>The factor k of the limit, for 2 to 28 specimens; a pure number.</summary>
    [Callable(Topics.DistributionFree, "Which factor does the small-batch limit use?", Assumes = "B-basis: content 0.90, confidence 0.95.")]
    [NoFormula("the k whose chance of failing, an integral over a beta density, is 0.05", Steps = 10_000)]
    [Example("HansonKoopmansFactor(18)", "1.354")]
    [Source(Works.Vangel, Standing.SecondHand)]
    public static double HansonKoopmansFactor([Parameter("n", "", Says.Count, AtLeast = 2, AtMost = 28)] double count)
    {
        int n = Size(count);
        return Factor(n, Ranks[n - 2]);
    }

    private static int Size(double count)
    {
        int n = Values.Whole(count, 2, nameof(count));
        return n <= 28 ? n : throw new DomainException($"count must be at most 28; it is {n}. With more specimens use DistributionFreeLimit.", nameof(count));
    }

    /// <summary>k such that the chance of a limit above the fractile is 5 %.</summary>
    private static double Factor(int n, int r)
    {
        double logDensity = Distributions.LogGamma(n + 1) - Distributions.LogGamma(r) - Distributions.LogGamma(n - r + 1.0);
        double Fails(double k) => Quadrature.Simpson(u =>
            Math.Exp(logDensity + ((r - 1) * Math.Log(u)) + (n == r ? 0 : (n - r) * (u < 1 ? Math.Log(1 - u) : -1e300)))
            * Math.Pow(1 - Math.Pow(0.10 / u, 1 / k), r - 1), 0.10, 1, 600);
        return Solve.From(k => 0.05 - Fails(k), 1e-3, 1);
    }
}
