using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>Probabilities and quantiles; each tail is computed as itself.</summary>
internal static class Quantiles
{
    /// <summary>The chance that a standard normal value is below <paramref name="z"/>.</summary>
    public static double Phi(double z) => 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));

    /// <summary>The standard normal quantile.</summary>
    public static double Z(double probability) => Normal.InvCDF(0, 1, probability);

    /// <summary>Student's t quantile.</summary>
    /// <param name="probability">Between 0 and 1.</param>
    /// <param name="freedom">Degrees of freedom, at least 1; infinity for the normal distribution.</param>
    public static double Student(double probability, double freedom)
    {
        if (double.IsPositiveInfinity(freedom) || freedom > 1e7) return Z(probability);
        if (probability == 0.5) return 0;
        double tail = Math.Min(probability, 1 - probability), high = 1;
        while (Upper(high, freedom) > tail && high < 1e300) high *= 2;
        double low = high == 1 ? 0 : high / 2;
        for (int i = 0; i < 200 && high - low > 4e-16 * high; i++)
        {
            double middle = low + ((high - low) / 2);
            if (Upper(middle, freedom) > tail) low = middle;
            else high = middle;
        }
        return probability < 0.5 ? -high : high;
    }

    /// <summary>The chance that Student's t is above <paramref name="t"/>, which is not negative.</summary>
    public static double Upper(double t, double freedom)
    {
        double square = t * t;
        return square < freedom
            ? 0.5 - (0.5 * SpecialFunctions.BetaRegularized(0.5, freedom / 2, square / (freedom + square)))
            : 0.5 * SpecialFunctions.BetaRegularized(freedom / 2, 0.5, freedom / (freedom + square));
    }

    /// <summary>The 95 % interval of a probability from a count, exact for a binomial (C. J. Clopper and E. S. Pearson, Biometrika 26, 1934).</summary>
    public static (double Low, double High) Proportion(long count, long of)
    {
        double low = count == 0 ? 0 : Beta(0.025, count, of - count + 1), high = count == of ? 1 : Beta(0.975, count + 1, of - count);
        return (low, high);
    }

    private static double Beta(double probability, double a, double b)
    {
        double low = 0, high = 1;
        for (int i = 0; i < 100 && high - low > 1e-15 * high; i++)
        {
            double middle = low + ((high - low) / 2);
            if (SpecialFunctions.BetaRegularized(a, b, middle) < probability) low = middle;
            else high = middle;
        }
        return low + ((high - low) / 2);
    }
}
