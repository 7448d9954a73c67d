using MathNet.Numerics;

namespace ScrewSheet.Statistics.Common;

/// <summary>Probabilities and quantiles; every tail is computed as itself, never as one minus the other.</summary>
internal static class Distributions
{
    /// <summary>The chance that a standard normal value is below <paramref name="z"/>, through erfc in both tails.</summary>
    public static double Phi(double z) => 0.5 * SpecialFunctions.Erfc(-z / Math.Sqrt(2));

    /// <summary>The standard normal density.</summary>
    public static double Density(double z) => Math.Exp(-0.5 * z * z) / Math.Sqrt(2 * Math.PI);

    /// <summary>The standard normal quantile.</summary>
    public static double Z(double probability) => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, probability);

    /// <summary>The chance that Student's t is above <paramref name="t"/>.</summary>
    public static double StudentUpper(double t, double dof)
    {
        double square = t * t;
        double tail = square < dof
            ? 0.5 - (0.5 * SpecialFunctions.BetaRegularized(0.5, dof / 2, square / (dof + square)))
            : 0.5 * SpecialFunctions.BetaRegularized(dof / 2, 0.5, dof / (dof + square));
        return t >= 0 ? tail : 1 - tail;
    }

    /// <summary>Student's t quantile; the bracket widens, so one degree of freedom and 0.9999 work.</summary>
    public static double StudentQuantile(double probability, double dof)
    {
        if (probability == 0.5) return 0;
        double tail = Math.Min(probability, 1 - probability);
        double t = Solve.From(x => Math.Log(tail) - Math.Log(StudentUpper(x, dof)), 0, 1);
        return probability > 0.5 ? t : -t;
    }

    /// <summary>The chance that chi-square is below <paramref name="x"/>.</summary>
    public static double ChiSquareLower(double x, double dof) => x <= 0 ? 0 : SpecialFunctions.GammaLowerRegularized(dof / 2, x / 2);

    /// <summary>The chance that chi-square is above <paramref name="x"/>.</summary>
    public static double ChiSquareUpper(double x, double dof) => x <= 0 ? 1 : SpecialFunctions.GammaUpperRegularized(dof / 2, x / 2);

    /// <summary>Chi-square quantile: the value below which <paramref name="probability"/> lies.</summary>
    public static double ChiSquareQuantile(double probability, double dof) =>
        Solve.From(x => ChiSquareLower(x, dof) - probability, 0, dof);

    /// <summary>The chance that F is above <paramref name="f"/>.</summary>
    public static double FisherUpper(double f, double dofAbove, double dofBelow) =>
        f <= 0 ? 1 : SpecialFunctions.BetaRegularized(dofBelow / 2, dofAbove / 2, dofBelow / (dofBelow + (dofAbove * f)));

    /// <summary>The regularised incomplete beta function, held within 0 and 1.</summary>
    public static double BetaLower(double x, double a, double b) =>
        x <= 0 ? 0 : x >= 1 ? 1 : Math.Clamp(SpecialFunctions.BetaRegularized(a, b, x), 0, 1);

    /// <summary>Beta quantile.</summary>
    public static double BetaQuantile(double probability, double a, double b) =>
        Solve.Between(x => BetaLower(x, a, b) - probability, 0, 1);

    /// <summary>The chance of at most <paramref name="most"/> in <paramref name="n"/> trials.</summary>
    public static double BinomialAtMost(int most, int n, double p) =>
        most >= n || p <= 0 ? 1 : p >= 1 ? 0 : BetaLower(1 - p, n - most, most + 1.0);

    /// <summary>The chance of at most <paramref name="most"/> marked pieces in a draw of <paramref name="n"/> from a lot, summed by logarithms.</summary>
    public static double HypergeometricAtMost(int most, int lot, int marked, int n)
    {
        double sum = 0, whole = SpecialFunctions.BinomialLn(lot, n);
        for (int i = Math.Max(0, n - (lot - marked)); i <= Math.Min(most, Math.Min(marked, n)); i++)
            sum += Math.Exp(SpecialFunctions.BinomialLn(marked, i) + SpecialFunctions.BinomialLn(lot - marked, n - i) - whole);
        return Math.Min(1, sum);
    }

    /// <summary>The logarithm of the complete gamma function.</summary>
    public static double LogGamma(double x) => SpecialFunctions.GammaLn(x);
}
