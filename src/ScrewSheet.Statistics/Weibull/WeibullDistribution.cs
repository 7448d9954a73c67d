using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>The two-parameter Weibull distribution with given shape and scale.</summary>
public static class WeibullDistribution
{
    private const string Assumed = "Strength follows a two-parameter Weibull distribution with exactly this shape and scale.";

    /// <summary>The strength below which a share breaks: e (-ln(1 - q))^(1/b), in the kind of the scale.</summary>
    [Callable(Topics.Weibull, "Below which strength does this share of all pieces break?", Assumes = Assumed, NotFor = "A rating from a fit: WeibullFractile gives the bound that the number of specimens supports.")]
    [Formula("scale * Pow(-Ln(1 - fraction), 1 / shape)", Symbol = "x")]
    [Example("WeibullQuantile(2, 10 kN, 0.1)", "3.2459285 kN")]
    [Source(Works.WeibullFit, Standing.Read)]
    public static T WeibullQuantile<T>(
        [Parameter("b", "", Says.Shape, Above = 0, UsualTo = 60)] double shape,
        [Parameter("e", "", Says.Scale)] T scale,
        [Parameter("q", "", Says.Fraction, Above = 0, Below = 1)] double fraction) where T : struct
    {
        Require.Above(shape, 0, "", nameof(shape));
        double e = Require.Above(Values.Si(scale, nameof(scale)), 0, "", nameof(scale));
        return Values.Maker(scale)(QuantileSi(shape, e, Values.Share(fraction, nameof(fraction))));
    }

    /// <summary>The share that breaks below a load: 1 - exp(-(x/e)^b), 0 to 1.</summary>
    [Callable(Topics.Weibull, "Which share of all pieces breaks below this load?", Assumes = Assumed)]
    [Formula("1 - Exp(-Pow(load / scale, shape))", Symbol = "F")]
    [Example("WeibullFailureShare(2, 10 kN, 5 kN)", "0.22119922")]
    [Source(Works.WeibullFit, Standing.Read)]
    public static double WeibullFailureShare<T>(
        [Parameter("b", "", Says.Shape, Above = 0, UsualTo = 60)] double shape,
        [Parameter("e", "", Says.Scale)] T scale,
        [Parameter("x", "", "the load")] T load) where T : struct
    {
        Require.Above(shape, 0, "", nameof(shape));
        double e = Require.Above(Values.Si(scale, nameof(scale)), 0, "", nameof(scale));
        double x = Require.AtLeast(Values.Si(load, nameof(load)), 0, "", nameof(load));
        return -ExpM1(-Math.Pow(x / e, shape));
    }

    /// <summary>Fractile in SI.</summary>
    internal static double QuantileSi(double shape, double scale, double fraction) =>
        scale * Math.Exp(Math.Log(-Log1M(fraction)) / shape);

    /// <summary>Mean in SI.</summary>
    internal static double MeanSi(double shape, double scale) => scale * Math.Exp(Distributions.LogGamma(1 + (1 / shape)));

    /// <summary>Standard deviation in SI; the difference of the gammas is taken on logarithms, so a large shape keeps its digits.</summary>
    internal static double DeviationSi(double shape, double scale)
    {
        double twice = Distributions.LogGamma(1 + (2 / shape)), once = 2 * Distributions.LogGamma(1 + (1 / shape));
        return scale * Math.Exp(once / 2) * Math.Sqrt(Math.Max(0, ExpM1(twice - once)));
    }

    /// <summary>exp(x) - 1 to the last digits also for small x: the rounding of the exponential is divided out again by its own logarithm.</summary>
    internal static double ExpM1(double x)
    {
        double grown = Math.Exp(x);
        if (grown == 1) return x;
        return grown == 0 || double.IsInfinity(grown) ? grown - 1 : (grown - 1) * x / Math.Log(grown);
    }

    /// <summary>ln(1 - q) without losing small q.</summary>
    internal static double Log1M(double q) => q < 1e-4 ? -q * (1 + (q * (0.5 + (q * ((1.0 / 3) + (q / 4)))))) : Math.Log(1 - q);
}
