using MathNet.Numerics.Integration;
using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>
/// One-sided normal tolerance factors without a noncentral t distribution: the chance that mean - k s leaves the content above it is
/// an integral over r = s / sigma of Phi(sqrt(n) (k r - z_p)) times the density of r, built from log-gamma.
/// </summary>
internal static class NoncentralFactors
{
    private const int Nodes = 128;

    /// <summary>The chance that mean - k s of a normal sample of n lies below the fractile that leaves a content with quantile <paramref name="z"/> above it.</summary>
    public static double Confidence(int n, double k, double z)
    {
        double v = n - 1, root = Math.Sqrt(n);
        double low = Math.Max(0, 1 - (12 / Math.Sqrt(2 * v))), high = 1 + (12 / Math.Sqrt(2 * v));
        double logConstant = Math.Log(2) + (v / 2 * Math.Log(v / 2)) - Distributions.LogGamma(v / 2);
        double Integrand(double r) =>
            Distributions.Phi(root * ((k * r) - z)) * Math.Exp(logConstant + ((v - 1) * (r > 0 ? Math.Log(r) : v > 1 ? -1e300 : 0)) - (v * r * r / 2));

        // The step of Phi is narrow where k is large: it gets a panel of its own.
        double centre = k != 0 ? z / k : low, half = k != 0 ? 9 / Math.Abs(k * root) : 0;
        double left = Math.Clamp(centre - half, low, high), right = Math.Clamp(centre + half, low, high);
        return Panel(Integrand, low, left) + Panel(Integrand, left, right) + Panel(Integrand, right, high);
    }

    private static double Panel(Func<double, double> f, double from, double to) => to > from ? GaussLegendreRule.Integrate(f, from, to, Nodes) : 0;

    /// <summary>The factor k that reaches the confidence for the content.</summary>
    public static double Factor(int n, double content, double confidence)
    {
        double z = Distributions.Z(content), middle = z + (Distributions.Z(confidence) / Math.Sqrt(n));
        double Rising(double k) => Confidence(n, k, z) - confidence;
        double step = 0.5 + (2 / Math.Sqrt(n));
        return Rising(middle) < 0 ? Solve.From(Rising, middle, step) : -Solve.From(k => -Rising(-k), -middle, step);
    }

    /// <summary>The content that mean - k s leaves above it with the confidence.</summary>
    public static double Content(int n, double k, double confidence)
    {
        double Rising(double z) => confidence - Confidence(n, k, z);
        return Distributions.Phi(Rising(0) < 0 ? Solve.From(Rising, 0, 0.5) : -Solve.From(z => -Rising(-z), 0, 0.5));
    }
}
