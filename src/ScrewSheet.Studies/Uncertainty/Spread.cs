namespace ScrewSheet.Studies.Uncertainty;

/// <summary>
/// Counts draws in bins that are fine in the middle and ever wider outward, so that any number of draws takes the same room and quantiles are far finer than chance allows.
/// </summary>
/// <remarks>Counts are whole numbers: they add up to the same on any number of threads.</remarks>
internal sealed class Spread
{
    private const int Bins = 1 << 16;

    // the inverse hyperbolic sine of 1e15: linear to about one scale from the centre, logarithmic beyond
    private const double Reach = 35.2;

    private readonly double centre, scale;
    private readonly long[] counts = new long[Bins];
    private long[]? below;

    public Spread(double centre, double scale) => (this.centre, this.scale) = (centre, Math.Max(scale, Math.Max(Math.Abs(centre) * 1e-15, 1e-300)));

    /// <summary>How many draws.</summary>
    public long Count { get; private set; }

    /// <summary>Adds a draw.</summary>
    public void Add(double value)
    {
        double place = (Math.Asinh((value - centre) / scale) + Reach) * (Bins / (2 * Reach));
        counts[(int)Math.Clamp(place, 0, Bins - 1)]++;
        Count++;
        below = null;
    }

    /// <summary>Adds another's draws, counted in the same bins.</summary>
    public void Add(Spread other)
    {
        for (int i = 0; i < Bins; i++) counts[i] += other.counts[i];
        Count += other.Count;
        below = null;
    }

    /// <summary>The value below which that share of the draws lies.</summary>
    public double Quantile(double share)
    {
        if (Count == 0) return centre;
        long[] sums = below ??= Below();
        double wanted = share * Count;
        int low = 0, high = Bins - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (sums[middle + 1] >= wanted && sums[middle + 1] > 0) high = middle;
            else low = middle + 1;
        }
        return Value(low + Math.Clamp((wanted - sums[low]) / Math.Max(1, counts[low]), 0, 1));
    }

    /// <summary>How many draws lie below each bin.</summary>
    private long[] Below()
    {
        long[] sums = new long[Bins + 1];
        for (int i = 0; i < Bins; i++) sums[i + 1] = sums[i] + counts[i];
        return sums;
    }

    /// <summary>The shortest interval that holds that share of the draws (JCGM 101:2008, 5.3.4).</summary>
    public (double Low, double High) Shortest(double share)
    {
        const int steps = 400;
        (double Low, double High) best = (Quantile(0), Quantile(share));
        for (int i = 1; i <= steps; i++)
        {
            double from = (1 - share) * i / steps;
            (double low, double high) = (Quantile(from), Quantile(from + share));
            if (high - low < best.High - best.Low) best = (low, high);
        }
        return best;
    }

    private double Value(double place) => centre + (scale * Math.Sinh((place * (2 * Reach / Bins)) - Reach));
}
