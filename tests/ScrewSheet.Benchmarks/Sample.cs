using System.Diagnostics;

namespace ScrewSheet.Benchmarks;

/// <summary>Times of one thing done many times, in milliseconds.</summary>
internal sealed class Sample
{
    private readonly List<double> times = [];

    public int Count => times.Count;

    public double Median => Quantile(0.5);

    public double Least => times.Min();

    /// <summary>Adds a time.</summary>
    public void Add(double milliseconds) => times.Add(milliseconds);

    /// <summary>Does it once and adds its time.</summary>
    public void Time(Action work)
    {
        long start = Stopwatch.GetTimestamp();
        work();
        Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
    }

    /// <summary>The value below which that part of the times lies: the nearest rank.</summary>
    public double Quantile(double part)
    {
        double[] sorted = [.. times.Order()];
        return sorted[Math.Clamp((int)Math.Ceiling(part * sorted.Length) - 1, 0, sorted.Length - 1)];
    }

    /// <summary>Collects what earlier work left, so that it is not counted here.</summary>
    public static void Settle()
    {
        GC.Collect();
        GC.WaitForPendingFinalizers();
        GC.Collect();
    }
}
