using System.Collections.Immutable;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>First-order propagation at the file's own givens, and each given moved alone.</summary>
internal sealed class Propagation
{
    private readonly PointFunction function;
    private readonly ImmutableArray<UncertainGiven> givens;
    private readonly double[] here;

    public Propagation(PointFunction function, ImmutableArray<UncertainGiven> givens)
    {
        (this.function, this.givens) = (function, givens);
        here = [.. givens.Select(given => given.Si)];
    }

    /// <summary>What each given contributes where the result is <paramref name="isCheck"/> or not; shares are filled in by <see cref="Combine"/>.</summary>
    public GivenShare[] Shares(Scenarios.GivenSet behind, bool isCheck) => [.. givens.Select((given, i) =>
    {
        double sensitivity = !behind.Contains(i) ? 0 : isCheck ? double.NaN : Slope(i);
        return new GivenShare
        {
            Given = given, Sensitivity = sensitivity, Contribution = sensitivity * given.StandardUncertainty, Share = double.NaN,
            AtLow = Moved(i, Math.Max(given.Si - given.ReachSi, given.LowSi)), AtHigh = Moved(i, Math.Min(given.Si + given.ReachSi, given.HighSi)),
        };
    })];

    /// <summary>The law of propagation; null where a derivative is missing.</summary>
    public FirstOrder? Combine(GivenShare[] shares, Correlations correlations, double value)
    {
        int n = shares.Length;
        if (shares.Any(share => double.IsNaN(share.Contribution))) return null;
        double[] parts = new double[n];
        for (int i = 0; i < n; i++)
            for (int j = 0; j < n; j++) parts[i] += shares[i].Contribution * correlations.Matrix[i, j] * shares[j].Contribution;
        double variance = Math.Max(0, parts.Sum()), u = Math.Sqrt(variance);
        for (int i = 0; i < n; i++) shares[i] = shares[i] with { Share = variance > 0 ? parts[i] / variance : double.NaN };
        double freedom = correlations.IsPlain ? Freedom(shares, u) : double.PositiveInfinity;
        double coverage = double.IsPositiveInfinity(freedom) ? 1.96 : Quantiles.Student(0.975, freedom);
        return new FirstOrder(u, freedom, coverage, value - (coverage * u), value + (coverage * u), correlations.IsPlain ? Math.Sqrt(variance + SecondOrder(shares)) : double.NaN);
    }

    /// <summary>Welch and Satterthwaite (JCGM 100:2008, G.4.1), rounded down as G.4.2 says.</summary>
    private static double Freedom(GivenShare[] shares, double u)
    {
        double sum = shares.Where(share => double.IsFinite(share.Given.Freedom)).Sum(share => Math.Pow(share.Contribution, 4) / share.Given.Freedom);
        return sum > 0 ? Math.Max(1, Math.Floor((Math.Pow(u, 4) / sum) + 1e-9)) : double.PositiveInfinity;
    }

    private double Slope(int given)
    {
        double u = givens[given].StandardUncertainty;
        if (u == 0) return Derivative.Of(h => Moved(given, here[given] + h), Math.Max(1e-3 * Math.Abs(here[given]), 1e-9)).Value;
        return Derivative.Of(h => Moved(given, here[given] + h), u / 2).Value;
    }

    /// <summary>The sum of ½ f_ij² + f_i f_ijj over all pairs, times both variances: independent, normal givens (JCGM 100:2008, note to 5.1.2).</summary>
    private double SecondOrder(GivenShare[] shares)
    {
        double sum = 0;
        for (int i = 0; i < shares.Length; i++)
        {
            double ui = givens[i].StandardUncertainty;
            if (ui == 0) continue;
            for (int j = 0; j < shares.Length; j++)
            {
                double uj = givens[j].StandardUncertainty;
                if (uj == 0) continue;
                // in units of both standard uncertainties, so that the terms need no scaling
                double mixed = i == j ? Curvature(i, 0, 0) : Derivative.Of(h => Derivative.Of(k => Both(i, h * ui, j, k * uj), 0.5).Value, 0.5).Value;
                double third = Derivative.Of(h => Curvature(j, i, h), 0.5).Value;
                sum += (0.5 * mixed * mixed) + (shares[i].Contribution * third);
            }
        }
        return sum;
    }

    /// <summary>The second derivative by one given where another is moved, in units of their standard uncertainties.</summary>
    private double Curvature(int given, int other, double by)
    {
        const double h = 0.05;
        double u = givens[given].StandardUncertainty, beside = by * givens[other].StandardUncertainty;
        double[] f = [.. new[] { -2, -1, 0, 1, 2 }.Select(k => Both(given, k * h * u, other, beside))];
        return (-f[0] + (16 * f[1]) - (30 * f[2]) + (16 * f[3]) - f[4]) / (12 * h * h);
    }

    private double Both(int one, double byOne, int other, double byOther)
    {
        double[] at = [.. here];
        at[one] += byOne;
        at[other] += byOther;
        return function.At(at);
    }

    private double Moved(int given, double to)
    {
        double[] at = [.. here];
        at[given] = to;
        return function.At(at);
    }
}
