using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>Characteristic (5 % fractile) values from tests after EN 1990, Annex D: X_k = m (1 - k_n V).</summary>
public static class CharacteristicValues
{
    private const double Fractile = 0.95;

    /// <summary>k_n for the 5 % fractile when the coefficient of variation is estimated from the tests; n at least 2.</summary>
    [Callable(Topics.Ratings, "Which factor k_n belongs to so many tests, when their scatter is estimated?", Assumes = "Normally distributed strength; no knowledge beforehand.")]
    [NoFormula("Student's 95 % quantile at n - 1 degrees of freedom times the root of 1 + 1/n")]
    [Example("CharacteristicFactor(5)", "2.335321")]
    [Source(Works.En1990, Standing.FromMemory)]
    public static double CharacteristicFactor([Parameter("n", "", Says.Count, AtLeast = 2)] double count)
    {
        int n = Values.Whole(count, 2, nameof(count));
        return Distributions.StudentQuantile(Fractile, n - 1) * Math.Sqrt(1 + (1.0 / n));
    }

    /// <summary>k_n for the 5 % fractile when the coefficient of variation is known beforehand; n at least 1.</summary>
    [Callable(Topics.Ratings, "Which factor k_n belongs to so many tests, when the scatter is known beforehand?", Assumes = "Normally distributed strength with a coefficient of variation known from earlier tests.")]
    [NoFormula("the 95 % normal quantile times the root of 1 + 1/n")]
    [Example("CharacteristicFactorKnownVariation(5)", "1.802")]
    [Source(Works.En1990, Standing.FromMemory)]
    public static double CharacteristicFactorKnownVariation([Parameter("n", "", Says.Count, AtLeast = 1)] double count) =>
        Distributions.Z(Fractile) * Math.Sqrt(1 + (1.0 / Values.Whole(count, 1, nameof(count))));

    /// <summary>The characteristic value with the scatter estimated from the tests; at least two values, not all equal.</summary>
    [Callable(Topics.Ratings, "What is the characteristic (5 % fractile) strength from these tests?", Assumes = "Normally distributed strength; independent specimens.",
        NotFor = "A design value: partial factors come on top.")]
    [NoFormula("mean less k_n times the standard deviation of the tests")]
    [Source(Works.En1990, Standing.FromMemory)]
    [Example("CharacteristicValue(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN)).Limit", "8.596105 kN")]
    public static ToleranceLimit<T> CharacteristicValue<T>([Parameter("x", "", Says.Sample)] Series<T> sample) where T : struct
    {
        Moments moments = Moments.Of(Sample.Spread(sample, 2).AsSpan());
        double scatter = moments.Scattering("sample");
        double factor = CharacteristicFactor(moments.Count);
        return Limit(sample, moments, factor, scatter, NoncentralFactors.Confidence(moments.Count, factor, Distributions.Z(Fractile)));
    }

    /// <summary>The characteristic value with the coefficient of variation known beforehand; at least one value, mean above zero.</summary>
    [Callable(Topics.Ratings, "What is the characteristic strength, when the scatter is known beforehand?", Assumes = "Normally distributed strength with a coefficient of variation known from earlier tests, not guessed.",
        NotFor = "A design value: partial factors come on top.")]
    [NoFormula("mean less k_n times the known variation times the mean")]
    [Source(Works.En1990, Standing.FromMemory)]
    [Example("CharacteristicValueKnownVariation(Values(9.1 kN, 9.8 kN, 10.4 kN, 9.5 kN, 10.1 kN), 0.05).Limit", "8.898897 kN")]
    public static ToleranceLimit<T> CharacteristicValueKnownVariation<T>(
        [Parameter("x", "", Says.Sample)] Series<T> sample,
        [Parameter("V", "", "the known coefficient of variation, such as 0.1", Above = 0, UsualTo = 0.4)] double variation) where T : struct
    {
        Require.Above(variation, 0, "", nameof(variation));
        Moments moments = Moments.Of(Sample.Spread(sample, 1).AsSpan());
        if (!(moments.Mean > 0)) throw new DomainException("The mean must be above zero for a variation to be set against it.", nameof(sample));
        double factor = CharacteristicFactorKnownVariation(moments.Count);
        double sure = Distributions.Phi(Math.Sqrt(moments.Count) * (factor - Distributions.Z(Fractile)));
        return Limit(sample, moments, factor, variation * moments.Mean, sure,
            (moments.Count > 1 && moments.Deviation > 1.5 * variation * moments.Mean, "The tests scatter more than one and a half times the variation said to be known: it does not hold for them."));
    }

    private static ToleranceLimit<T> Limit<T>(Series<T> sample, Moments moments, double factor, double scatter, double sure, params (bool, string)[] further) where T : struct
    {
        double limit = moments.Mean - (factor * scatter);
        return new ToleranceLimit<T>(sample.Make(limit), factor, moments.Count, Fractile, sure, BatchCautions.Of(Series.OfNumbers(sample.Si), limit, further));
    }
}
