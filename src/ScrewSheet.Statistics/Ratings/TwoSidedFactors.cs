using ScrewSheet.Statistics.Common;

namespace ScrewSheet.Statistics;

/// <summary>
/// Exact two-sided normal tolerance factors: for a sample mean u deviations off, the half-width r(u) with Phi(u + r) - Phi(u - r) = content
/// must not exceed k s; the chance of that, by chi-square, is averaged over the distribution of u.
/// </summary>
internal static class TwoSidedFactors
{
    private const int Nodes = 240;

    /// <summary>The factor k for mean ± k s.</summary>
    public static double Factor(int n, double content, double confidence)
    {
        double v = n - 1, end = 9 / Math.Sqrt(n), h = end / Nodes;
        double[] widths = new double[Nodes + 1], weights = new double[Nodes + 1];
        for (int i = 0; i <= Nodes; i++)
        {
            double u = i * h;
            widths[i] = HalfWidth(u, content);
            weights[i] = (i == 0 || i == Nodes ? 1 : i % 2 == 1 ? 4 : 2) * h / 3 * 2 * Math.Sqrt(n) * Distributions.Density(u * Math.Sqrt(n));
        }
        double Reached(double k)
        {
            double sum = 0;
            for (int i = 0; i <= Nodes; i++) sum += weights[i] * Distributions.ChiSquareUpper(v * widths[i] * widths[i] / k / k, v);
            return sum - confidence;
        }
        return Solve.From(Reached, 1e-3, 1);
    }

    private static double HalfWidth(double u, double content) =>
        Solve.From(r => Distributions.Phi(u + r) - Distributions.Phi(u - r) - content, 0, 1 + u);
}
