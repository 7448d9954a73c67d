namespace ScrewSheet.Statistics.Common;

/// <summary>Simpson's rule.</summary>
internal static class Quadrature
{
    /// <summary>The integral of a smooth function by <paramref name="steps"/> (even) steps; 0 for an empty range.</summary>
    public static double Simpson(Func<double, double> f, double from, double to, int steps)
    {
        if (!(to > from)) return 0;
        double h = (to - from) / steps, sum = f(from) + f(to);
        for (int i = 1; i < steps; i++) sum += (i % 2 == 1 ? 4 : 2) * f(from + (i * h));
        return sum * h / 3;
    }
}
