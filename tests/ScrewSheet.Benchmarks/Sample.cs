using System.Diagnostics;

namespace ScrewSheet.Benchmarks;

/// <summary>Times of one thing done many times, in milliseconds.</summary>
internal sealed class Sample
{
    private readonly List<double> times = [], processor = [];

    public int Count => times.Count;

    public double Median => Quantile(0.5);

    public double Least => times.Min();

    /// <summary>The median of the processor time of the whole process while each was done: what other programs on the machine hardly touch.</summary>
    public double Processor => processor.Order().ElementAt(processor.Count / 2);

    /// <summary>The processor time the slowest hundredth exceeds.</summary>
    public double ProcessorP99 => processor.Order().ElementAt(Math.Min(processor.Count - 1, (int)Math.Ceiling(0.99 * processor.Count) - 1));

    /// <summary>Adds a time.</summary>
    public void Add(double milliseconds) => times.Add(milliseconds);

    /// <summary>Does it once and adds its time.</summary>
    public void Time(Action work)
    {
        TimeSpan used = Environment.CpuUsage.TotalTime;
        long start = Stopwatch.GetTimestamp();
        work();
        Add(Stopwatch.GetElapsedTime(start).TotalMilliseconds);
        processor.Add((Environment.CpuUsage.TotalTime - used).TotalMilliseconds);
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
