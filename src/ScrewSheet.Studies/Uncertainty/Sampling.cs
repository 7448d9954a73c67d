using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>Draws all givens again and again and keeps what is asked for, never the draws: any number of them takes the same room.</summary>
internal sealed class Sampling(StudyTools tools, ScenarioModel model, Draws draws, long samples, CancellationToken stop)
{
    private const double Covered = 0.95;

    private readonly long blocks = (samples + Draws.Block - 1) / Draws.Block;
    private readonly int shown = model.Kernels.Length;

    /// <summary>What came of the draws; the parts of each block are put together in the order of the blocks, so that every number of threads gives the same digits.</summary>
    public Sampled Run(IProgress<double>? progress)
    {
        Part[] parts = new Part[blocks];
        (double centre, double scale) = Pilot();
        List<Spread> spreads = [];
        Workers.Run(blocks, tools.Threads, Make, Work, progress, stop);
        Spread spread = new(centre, scale);
        foreach (Spread each in spreads) spread.Add(each);
        return new Sampled(parts, spread);

        (BlockEvaluator Evaluator, Spread Spread) Make()
        {
            Spread own = new(centre, scale);
            lock (spreads) spreads.Add(own);
            return (new BlockEvaluator(model, tools, Draws.Block, stop), own);
        }

        void Work((BlockEvaluator Evaluator, Spread Spread) state, long block)
        {
            int count = CountOf(block);
            draws.Fill(0, block, state.Evaluator.Inputs, count);
            state.Evaluator.Run(count, wordEach: false);
            foreach (double value in state.Evaluator.Outputs[0].AsSpan(0, count))
                if (!double.IsNaN(value)) state.Spread.Add(value);
            parts[block] = Part.Of(state.Evaluator, shown, count);
        }
    }

    /// <summary>The 95 % interval and the rest of what is reported of a quantity.</summary>
    public static MonteCarlo Report(Sampled sampled)
    {
        Moments all = sampled.Parts.Aggregate(default(Moments), (sum, part) => sum.With(part.Moments));
        double u = all.StandardDeviation, tail = (1 - Covered) / 2;
        (double low, double high) = (sampled.Spread.Quantile(tail), sampled.Spread.Quantile(1 - tail));
        (double shortLow, double shortHigh) = sampled.Spread.Shortest(Covered);
        // the density at an end, from the values a little to either side of it
        const double near = 0.005;
        double slope = Math.Max(sampled.Spread.Quantile(tail + near) - sampled.Spread.Quantile(tail - near), sampled.Spread.Quantile(1 - tail + near) - sampled.Spread.Quantile(1 - tail - near)) / (2 * near);
        return new MonteCarlo(all.Count, all.Mean, u, low, high, shortLow, shortHigh, all.Least, all.Most, slope * Math.Sqrt(tail * (1 - tail) / Math.Max(1, all.Count)));
    }

    private int CountOf(long block) => (int)Math.Min(Draws.Block, samples - (block * Draws.Block));

    /// <summary>Where the first block lies and how wide it is, so that the bins suit the draws.</summary>
    private (double Centre, double Scale) Pilot()
    {
        BlockEvaluator evaluator = new(model, tools, Draws.Block, stop);
        int count = CountOf(0);
        draws.Fill(0, 0, evaluator.Inputs, count);
        evaluator.Run(count, wordEach: false);
        double[] values = [.. evaluator.Outputs[0].Take(count).Where(value => !double.IsNaN(value)).Order()];
        if (values.Length == 0) return (0, 1);
        double centre = values[values.Length / 2], scale = (values[(int)(0.84 * (values.Length - 1))] - values[(int)(0.16 * (values.Length - 1))]) / 2;
        return (centre, scale > 0 ? scale : values[^1] - values[0]);
    }
}

/// <summary>Count, mean and spread of draws; parts are put together as D. Chan, G. Golub and R. LeVeque say (COMPSTAT 1982).</summary>
internal readonly record struct Moments(long Count, double Mean, double Squares, double Least, double Most)
{
    public double StandardDeviation => Count > 1 ? Math.Sqrt(Squares / (Count - 1)) : 0;

    public Moments With(Moments other)
    {
        if (Count == 0) return other;
        if (other.Count == 0) return this;
        long count = Count + other.Count;
        double off = other.Mean - Mean;
        return new Moments(count, Mean + (off * other.Count / count), Squares + other.Squares + (off * off * Count / count * other.Count), Math.Min(Least, other.Least), Math.Max(Most, other.Most));
    }

    /// <summary>Of values; NaN is left out.</summary>
    public static Moments Of(ReadOnlySpan<double> values)
    {
        double mean = 0, squares = 0, least = double.PositiveInfinity, most = double.NegativeInfinity;
        long count = 0;
        foreach (double value in values)
        {
            if (double.IsNaN(value)) continue;
            double off = value - mean;
            mean += off / ++count;
            squares += off * (value - mean);
            (least, most) = (Math.Min(least, value), Math.Max(most, value));
        }
        return new Moments(count, mean, squares, least, most);
    }
}

/// <summary>What is kept of one block.</summary>
/// <param name="Moments">Of the first shown cell.</param>
/// <param name="Failed">How many draws gave no or zero, for each shown cell.</param>
/// <param name="Faulted">How many draws ended in a fault, for each shown cell.</param>
/// <param name="Faults">The faults of the first shown cell, by sort.</param>
/// <param name="Cautions">The cautions of the first shown cell.</param>
internal sealed record Part(Moments Moments, int[] Failed, int[] Faulted, Dictionary<(int, string?), FaultCount> Faults, Dictionary<string, long> Cautions)
{
    public static Part Of(BlockEvaluator evaluator, int shown, int count)
    {
        Dictionary<(int, string?), FaultCount> sorts = [];
        foreach (Fault fault in evaluator.Faults[0].OrderBy(pair => pair.Key).Select(pair => pair.Value)) Count(sorts, new FaultCount(fault, 1));
        int[] failed = [.. Enumerable.Range(0, shown).Select(cell => evaluator.Outputs[cell].AsSpan(0, count).Count(0.0))];
        return new Part(Moments.Of(evaluator.Outputs[0].AsSpan(0, count)), failed, [.. Enumerable.Range(0, shown).Select(cell => evaluator.Faults[cell].Count)], sorts, new(evaluator.Cautions[0]));
    }

    /// <summary>Adds to what is known of a sort of fault; the first one's words stay.</summary>
    public static void Count(Dictionary<(int, string?), FaultCount> sorts, FaultCount more)
    {
        (int, string?) sort = (more.Fault.Code, more.Fault.Cause);
        sorts[sort] = sorts.TryGetValue(sort, out FaultCount? known) ? known with { Count = known.Count + more.Count } : more;
    }
}

/// <summary>What came of all draws.</summary>
/// <param name="Parts">Block by block.</param>
/// <param name="Spread">The first shown cell's values, counted.</param>
internal sealed record Sampled(IReadOnlyList<Part> Parts, Spread Spread);
