using ScrewSheet.Studies.Scenarios;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>
/// The shares of independent givens in the variance, also of a model that is not linear: first-order and total Sobol' indices by Jansen's estimators
/// (M. J. W. Jansen, Computer Physics Communications 117, 1999; A. Saltelli and others, Computer Physics Communications 181, 2010, table 2).
/// </summary>
internal static class SobolStudy
{
    /// <summary>First-order index, total index and their standard error for each given; all NaN where the draws do not vary.</summary>
    public static (double First, double Total, double Error)[] Run(StudyTools tools, ScenarioModel model, Draws draws, int givens, long samples, IProgress<double>? progress, CancellationToken stop)
    {
        long blocks = Math.Max(2, samples / (givens + 2) / Draws.Block);
        Sums[] parts = new Sums[blocks];
        Workers.Run(blocks, tools.Threads, () => new State(model, tools, givens, stop), (state, block) => parts[block] = state.Work(draws, block), progress, stop);
        Moments all = parts.Aggregate(default(Moments), (sum, part) => sum.With(part.Moments));
        double variance = all.Squares / Math.Max(1, all.Count - 1);
        return [.. Enumerable.Range(0, givens).Select(given => Indices(parts, given, variance))];
    }

    private static (double, double, double) Indices(Sums[] parts, int given, double variance)
    {
        if (!(variance > 0)) return (double.NaN, double.NaN, double.NaN);
        double[] first = [.. parts.Select(part => 1 - (part.ToB[given] / (2 * variance)))], total = [.. parts.Select(part => part.ToA[given] / (2 * variance))];
        double error = Math.Max(Deviation(first), Deviation(total)) / Math.Sqrt(parts.Length);
        return (first.Average(), total.Average(), error);
    }

    private static double Deviation(double[] values) => Moments.Of(values).StandardDeviation;

    /// <summary>The means of a block: of the squared differences to each of two independent sets, where one given is exchanged.</summary>
    private sealed record Sums(Moments Moments, double[] ToA, double[] ToB);

    private sealed class State(ScenarioModel model, StudyTools tools, int givens, CancellationToken stop)
    {
        private readonly BlockEvaluator evaluator = new(model, tools, Draws.Block, stop);
        private readonly double[][] a = Room(givens), b = Room(givens);
        private readonly double[] atA = new double[Draws.Block], atB = new double[Draws.Block];

        public Sums Work(Draws draws, long block)
        {
            draws.Fill(1, block, a, Draws.Block);
            draws.Fill(2, block, b, Draws.Block);
            Evaluate(a, -1, b, atA);
            Evaluate(b, -1, b, atB);
            double[] toA = new double[givens], toB = new double[givens], mixed = new double[Draws.Block];
            for (int given = 0; given < givens; given++)
            {
                Evaluate(a, given, b, mixed);
                (toA[given], toB[given]) = (Difference(atA, mixed), Difference(atB, mixed));
            }
            return new Sums(Moments.Of(atA).With(Moments.Of(atB)), toA, toB);
        }

        private void Evaluate(double[][] from, int exchanged, double[][] other, double[] into)
        {
            for (int i = 0; i < givens; i++) (i == exchanged ? other[i] : from[i]).CopyTo(evaluator.Inputs[i], 0);
            evaluator.Run(Draws.Block, wordEach: false);
            evaluator.Outputs[0].CopyTo(into, 0);
        }

        // draws in fault have no difference; the report counts them
        private static double Difference(double[] one, double[] other)
        {
            double sum = 0;
            int count = 0;
            for (int i = 0; i < one.Length; i++)
            {
                double square = (one[i] - other[i]) * (one[i] - other[i]);
                if (double.IsNaN(square)) continue;
                sum += square;
                count++;
            }
            return sum / Math.Max(1, count);
        }

        private static double[][] Room(int givens) => [.. Enumerable.Range(0, givens).Select(_ => new double[Draws.Block])];
    }
}
