using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>What strength and load that both scatter say about failure.</summary>
/// <param name="FailureProbability">The chance that the load exceeds the strength, 0 to 1.</param>
/// <param name="Reliability">The chance that it does not, 0 to 1.</param>
/// <param name="SafetyIndex">The normal quantile of the reliability.</param>
/// <param name="Cautions">What the numbers do not show.</param>
[SheetRecord("The chance that a load that scatters exceeds a strength that scatters")]
public sealed record InterferenceResult(
    [property: Member("Pf", "", "chance that the load exceeds the strength")] double FailureProbability,
    [property: Member("R", "", "chance that it does not")] double Reliability,
    [property: Member("z", "", "safety index")] double SafetyIndex,
    IReadOnlyList<string> Cautions) : ICautioned;

/// <summary>Stress-strength interference.</summary>
public static class StrengthAgainstLoad
{
    private const string NotFor = "A promise about one piece or one fall: it is a share of many, and its tail rests on the assumed distributions.";

    /// <summary>Strength and load normally distributed; deviations not both zero; correlation -1 to 1.</summary>
    [Callable(Topics.Interference, "How likely is the load to exceed the strength, both normal?", Assumes = "Strength and load are normally distributed.", NotFor = NotFor)]
    [NoFormula("distance of the means over the deviation of the difference; the normal tail by erfc")]
    [Example("NormalInterference(40, 7, 20, 6).FailureProbability", "0.0150297839")]
    [Source(Works.Interference, Standing.Derived)]
    public static InterferenceResult NormalInterference<T>(
        [Parameter("µS", "", "the mean strength")] T meanStrength,
        [Parameter("σS", "", "the standard deviation of the strength")] T strengthDeviation,
        [Parameter("µL", "", "the mean load")] T meanLoad,
        [Parameter("σL", "", "the standard deviation of the load")] T loadDeviation,
        [Parameter("ρ", "", "the correlation of strength and load, -1 to 1", AtLeast = -1, AtMost = 1)] double correlation = 0) where T : struct
    {
        (double s, double us) = Pair(meanStrength, strengthDeviation, nameof(meanStrength), nameof(strengthDeviation));
        (double l, double ul) = Pair(meanLoad, loadDeviation, nameof(meanLoad), nameof(loadDeviation));
        double r = Require.AtMost(Require.AtLeast(correlation, -1, "", nameof(correlation)), 1, "", nameof(correlation));
        double variance = (us * us) + (ul * ul) - (2 * r * us * ul);
        if (!(variance > 0)) throw new DomainException("Strength and load do not scatter against each other: the index has no meaning.", nameof(strengthDeviation));
        return OfIndex((s - l) / Math.Sqrt(variance));
    }

    /// <summary>Strength and load lognormally distributed, given by their own means and deviations; means above zero.</summary>
    [Callable(Topics.Interference, "How likely is the load to exceed the strength, both lognormal?", Assumes = "Strength and load are lognormally distributed and independent.", NotFor = NotFor)]
    [NoFormula("distance of the log-means over the root of the sum of log-variances; the normal tail by erfc")]
    [Example("LognormalInterference(40, 7, 20, 6).FailureProbability", "0.0172467663")]
    [Source(Works.Interference, Standing.Derived)]
    public static InterferenceResult LognormalInterference<T>(
        [Parameter("µS", "", "the mean strength")] T meanStrength,
        [Parameter("σS", "", "the standard deviation of the strength")] T strengthDeviation,
        [Parameter("µL", "", "the mean load")] T meanLoad,
        [Parameter("σL", "", "the standard deviation of the load")] T loadDeviation) where T : struct
    {
        (double s, double us) = Pair(meanStrength, strengthDeviation, nameof(meanStrength), nameof(strengthDeviation));
        (double l, double ul) = Pair(meanLoad, loadDeviation, nameof(meanLoad), nameof(loadDeviation));
        Require.Above(s, 0, "", nameof(meanStrength));
        Require.Above(l, 0, "", nameof(meanLoad));
        double vs = MathNet.Numerics.SpecialFunctions.Log1p(us / s * (us / s)), vl = MathNet.Numerics.SpecialFunctions.Log1p(ul / l * (ul / l));
        if (!(vs + vl > 0)) throw new DomainException("Neither strength nor load scatters: the index has no meaning.", nameof(strengthDeviation));
        return OfIndex((Math.Log(s / l) - (vs / 2) + (vl / 2)) / Math.Sqrt(vs + vl));
    }

    /// <summary>Strength and load both Weibull, each with shape, scale and a threshold below which it never lies.</summary>
    [Callable(Topics.Interference, "How likely is the load to exceed the strength, both Weibull?", Assumes = "Strength and load follow Weibull distributions above their thresholds and are independent.", NotFor = NotFor)]
    [NoFormula("the integral of the strength density times the chance that the load is higher, taken over equal steps of the strength's probability scale", Steps = 10_000)]
    [Example("WeibullInterference(3, 10, 1, 1, 10, 1).FailureProbability", "0.431110")]
    [Source(Works.Interference, Standing.Derived)]
    public static InterferenceResult WeibullInterference<T>(
        [Parameter("bS", "", "the shape of the strength", AtLeast = 0.2, UsualTo = 60)] double strengthShape,
        [Parameter("eS", "", "the scale of the strength above its threshold")] T strengthScale,
        [Parameter("gS", "", "the threshold of the strength, zero for two parameters")] T strengthThreshold,
        [Parameter("bL", "", "the shape of the load", AtLeast = 0.2, UsualTo = 60)] double loadShape,
        [Parameter("eL", "", "the scale of the load above its threshold")] T loadScale,
        [Parameter("gL", "", "the threshold of the load, zero for two parameters")] T loadThreshold) where T : struct
    {
        double bs = Require.AtLeast(strengthShape, 0.2, "", nameof(strengthShape)), bl = Require.AtLeast(loadShape, 0.2, "", nameof(loadShape));
        double es = Require.Above(Values.Si(strengthScale, nameof(strengthScale)), 0, "", nameof(strengthScale)), gs = Values.Si(strengthThreshold, nameof(strengthThreshold));
        double el = Require.Above(Values.Si(loadScale, nameof(loadScale)), 0, "", nameof(loadScale)), gl = Values.Si(loadThreshold, nameof(loadThreshold));
        double failure = Integrate(h => gs + (es * Math.Pow(h, 1 / bs)), x => x <= gl ? 1 : Math.Exp(-Math.Pow((x - gl) / el, bl)));
        return Of(failure, 1 - failure, failure is > 0 and < 1 ? -Distributions.Z(failure) : throw new DomainException("The chance of failure is 0 or 1 to the last digit: strength and load do not meet.", nameof(loadScale)));
    }

    /// <summary>
    /// The integral of exp(-h) times the load's upper tail at the strength of cumulative hazard h (the strength's chance of breaking below is 1 - exp(-h)).
    /// With h = exp(t) both the weak tail, which decides, and the strong one are smooth.
    /// </summary>
    /// <param name="strength">Strength as a function of its cumulative hazard.</param>
    /// <param name="loadAbove">The chance that the load is above a value.</param>
    internal static double Integrate(Func<double, double> strength, Func<double, double> loadAbove) =>
        Quadrature.Simpson(t => Math.Exp(t - Math.Exp(t)) * loadAbove(strength(Math.Exp(t))), -60, 5, 20000);

    private static (double Mean, double Deviation) Pair<T>(T mean, T deviation, string meanName, string deviationName) where T : struct =>
        (Values.Si(mean, meanName), Require.AtLeast(Values.Si(deviation, deviationName), 0, "", deviationName));

    private static InterferenceResult OfIndex(double z) => Of(Distributions.Phi(-z), Distributions.Phi(z), Values.Answer(z));

    private static InterferenceResult Of(double failure, double reliability, double index) => new(failure, reliability, index, CautionList.Of(
        (failure < 1e-4, "So small a chance rests on the far tails of the assumed distributions, which no batch of tests has seen."),
        (failure > 0.01, "More than one in a hundred: the strength does not cover this load.")));
}
