using MathNet.Numerics.RootFinding;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics.Common;

/// <summary>Where a steadily rising function takes a value. The library's own inverse distributions search fixed brackets; this widens them.</summary>
internal static class Solve
{
    /// <summary>The place between the ends, to about 1e-14 relative.</summary>
    /// <param name="rising">A function that rises from at most 0 at <paramref name="low"/> to at least 0 at <paramref name="high"/>.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end.</param>
    public static double Between(Func<double, double> rising, double low, double high)
    {
        double atLow = rising(low), atHigh = rising(high);
        if (atLow >= 0) return low;
        if (atHigh <= 0) return high;
        double accuracy = 1e-15 * Math.Max(Math.Abs(low), Math.Abs(high));
        if (Brent.TryFindRoot(rising, low, high, accuracy, 200, out double root) && root > low && root < high) return root;
        return Bisect(rising, low, high);
    }

    /// <summary>The place above <paramref name="low"/>, with a bracket that doubles from <paramref name="step"/> on.</summary>
    public static double From(Func<double, double> rising, double low, double step)
    {
        for (int i = 0; i < 900; i++, step *= 2)
        {
            double high = low + step;
            if (!double.IsFinite(high)) break;
            if (rising(high) >= 0) return Between(rising, i == 0 ? low : low + (step / 2), high);
        }
        throw new DomainException("The search found no answer: the value asked for is out of reach.");
    }

    private static double Bisect(Func<double, double> rising, double low, double high)
    {
        for (int i = 0; i < 200; i++)
        {
            double middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high) break;
            if (rising(middle) < 0) low = middle;
            else high = middle;
        }
        return low + ((high - low) / 2);
    }
}
