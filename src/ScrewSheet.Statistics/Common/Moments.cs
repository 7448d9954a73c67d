using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics.Common;

/// <summary>Mean and sum of squared deviations by two passes, with the correction term that makes long series of near-equal values exact.</summary>
internal readonly record struct Moments(int Count, double Mean, double SumOfSquares)
{
    /// <summary>Standard deviation with divisor n - 1.</summary>
    public double Deviation => Math.Sqrt(SumOfSquares / (Count - 1));

    public static Moments Of(ReadOnlySpan<double> values)
    {
        double first = values[0], shift = 0;
        foreach (double value in values) shift += value - first;
        double mean = first + (shift / values.Length);
        double squares = 0, rest = 0;
        foreach (double value in values)
        {
            double off = value - mean;
            squares += off * off;
            rest += off;
        }
        // The rest is what rounding left in the mean: it corrects both.
        double corrected = Math.Max(0, squares - (rest * rest / values.Length));
        return new Moments(values.Length, Values.Answer(mean + (rest / values.Length)), Values.Answer(corrected));
    }

    /// <summary>The deviation, refused where all values are equal.</summary>
    public double Scattering(string what) =>
        SumOfSquares > 0 ? Deviation : throw new DomainException($"All values of the {what} are equal: there is no scatter to work with.", what);
}
