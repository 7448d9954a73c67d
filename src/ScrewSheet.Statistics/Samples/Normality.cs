using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>What the Anderson-Darling test says about a sample.</summary>
/// <param name="Statistic">A², a pure number.</param>
/// <param name="Adjusted">A* = (1 + 4/n - 25/n²) A².</param>
/// <param name="SignificanceLevel">The observed significance level, 0 to 1: small means the sample does not look normal.</param>
/// <param name="LooksNormal">True while the level is above 0.05.</param>
/// <param name="Cautions">What the test does not show.</param>
[SheetRecord("Anderson-Darling test for normality")]
public sealed record NormalityTest(
    [property: Member("A²", "", "the statistic")] double Statistic,
    [property: Member("A*", "", "the statistic adjusted for the sample size")] double Adjusted,
    [property: Member("OSL", "", "observed significance level: 0.05 or less speaks against a normal distribution")] double SignificanceLevel,
    [property: Member("", "", "true while nothing at the 5 % level speaks against a normal distribution")] bool LooksNormal,
    IReadOnlyList<string> Cautions) : ICautioned;

/// <summary>Checks whether a sample looks normal.</summary>
public static class Normality
{
    /// <summary>The Anderson-Darling test for the normal distribution with mean and deviation estimated; at least three values, not all equal.</summary>
    [Callable(Topics.Outliers, "Does the sample look normally distributed?", Assumes = "Independent specimens of one population; mean and deviation are estimated from the same sample.",
        NotFor = "Proving that a distribution is normal: it can only speak against it.")]
    [NoFormula("weighted distance between the sample's distribution and the normal one, with its significance level by the handbook's fitted curve")]
    [Source(Works.Cmh17, Standing.SecondHand)]
    [Example("AndersonDarlingNormal(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Adjusted", "0.1123425")]
    public static NormalityTest AndersonDarlingNormal<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        double[] sorted = Sample.Sorted(Sample.Spread(sample, 3));
        int n = sorted.Length;
        double statistic = Statistic(sorted);
        double adjusted = Math.Max(0, (1 + (4.0 / n) - (25.0 / n / n)) * statistic);
        double level = adjusted > 0 ? 1 / (1 + Math.Exp(-0.48 + (0.78 * Math.Log(adjusted)) + (4.58 * adjusted))) : 1;
        return new NormalityTest(statistic, adjusted, level, level > 0.05, CautionList.Of(
            (n < 8, $"With {n} specimens this test sees only gross departures from a normal distribution: passing it proves little."),
            (level <= 0.05, "The sample does not look normal: limits that assume a normal distribution do not hold for it.")));
    }

    private static double Statistic(double[] sorted)
    {
        int n = sorted.Length;
        Moments moments = Moments.Of(sorted);
        double deviation = moments.Scattering("sample"), sum = 0;
        double Score(int index) => (sorted[index] - moments.Mean) / deviation;
        for (int i = 1; i <= n; i++)
            sum += ((2 * i) - 1) * (Math.Log(Distributions.Phi(Score(i - 1))) + Math.Log(Distributions.Phi(-Score(n - i))));
        return Values.Answer(-n - (sum / n));
    }
}
