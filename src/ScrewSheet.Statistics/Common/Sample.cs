using System.Collections.Immutable;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics.Common;

/// <summary>Checks at the door for series.</summary>
internal static class Sample
{
    /// <summary>The values in coherent SI, at least <paramref name="least"/> of them and all finite.</summary>
    public static ImmutableArray<double> Of<T>(Series<T> sample, int least, string what = "sample") where T : struct
    {
        ArgumentNullException.ThrowIfNull(sample);
        if (sample.Count < least)
            throw new DomainException($"The {what} needs at least {least} value{(least == 1 ? "" : "s")}; it has {sample.Count}.", what);
        foreach (double value in sample.Si)
            if (!double.IsFinite(value)) throw new DomainException($"The {what} holds something that is not a finite number.", what);
        return sample.Si;
    }

    /// <summary>As <see cref="Of"/>, for what measures spread: no temperatures on a scale with a zero.</summary>
    public static ImmutableArray<double> Spread<T>(Series<T> sample, int least, string what = "sample") where T : struct
    {
        if (typeof(T) == typeof(UnitsNet.Temperature))
            throw new DomainException("Temperatures on a scale with a zero have no spread of their own kind; use temperature differences in K.", what);
        return Of(sample, least, what);
    }

    /// <summary>As <see cref="Spread"/>, with every value greater than zero, as logarithms need.</summary>
    public static ImmutableArray<double> Positive<T>(Series<T> sample, int least, string what = "sample") where T : struct
    {
        ImmutableArray<double> values = Spread(sample, least, what);
        foreach (double value in values)
            if (!(value > 0)) throw new DomainException($"Every value of the {what} must be greater than zero here.", what);
        return values;
    }

    /// <summary>Refuses series of different lengths, and columns of one length whose blanks stand in different rows.</summary>
    public static void SameLength(Series one, Series other, string oneName, string otherName)
    {
        string remedy = one.Rows.IsEmpty || other.Rows.IsEmpty ? "" : " Take the rows that have both: first.Beside(second) and second.Beside(first).";
        if (one.Count != other.Count)
            throw new DomainException($"The {oneName} and the {otherName} belong together reading by reading, but there are {one.Count} and {other.Count} of them.{remedy}", otherName);
        if (remedy.Length == 0 || one.Rows.AsSpan().SequenceEqual(other.Rows.AsSpan())) return;
        int at = one.Rows.Zip(other.Rows).TakeWhile(pair => pair.First == pair.Second).Count();
        throw new DomainException($"The {oneName} and the {otherName} belong together row by row, but row {Math.Min(one.Rows[at], other.Rows[at])} has only one of them.{remedy}", otherName);
    }

    /// <summary>An ascending copy; the caller's series keeps its order.</summary>
    public static double[] Sorted(ImmutableArray<double> values)
    {
        double[] copy = [.. values];
        Array.Sort(copy);
        return copy;
    }
}
