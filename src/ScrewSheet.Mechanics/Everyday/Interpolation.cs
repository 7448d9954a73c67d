using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics;

/// <summary>Reading between the rows of a table.</summary>
public static class Interpolation
{
    /// <summary>The value of a table at a place between its rows, on the straight line between the two neighbours.</summary>
    /// <typeparam name="TX">The kind of the table's first column.</typeparam>
    /// <typeparam name="TY">The kind of its second column.</typeparam>
    /// <exception cref="DomainException">The place lies beyond the table's ends, the columns differ in length or dimension, or the first is not in strictly rising order.</exception>
    [Callable("Everyday", "What does a table give at a place between its rows?",
        Assumes = "Straight lines between neighbouring rows.", NotFor = "Reading beyond the table's first or last row: that is refused.")]
    [NoFormula("straight line between the two rows on either side, found by bisection")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Interpolate(Values(0 °C, 10 °C), Values(9 kN, 8 kN), 4 °C)", "8.6 kN")]
    public static TY Interpolate<TX, TY>(
        [Parameter("x_i", "", "the table's first column, strictly rising")] Series<TX> xs,
        [Parameter("y_i", "", "its second column, as long as the first")] Series<TY> ys,
        [Parameter("x", "", "the place, within the first column")] TX at) where TX : struct where TY : struct
    {
        RequireTable(xs, ys);
        SiOf<TX>.RequireSameDimension(xs[0], at, nameof(at));
        double x = Within(xs.Si, SiOf<TX>.Read(at, nameof(at)));
        int right = UpperRow(xs.Si, x);
        double x0 = xs.Si[right - 1], x1 = xs.Si[right], y0 = ys.Si[right - 1], y1 = ys.Si[right];
        return ys.Make(x == x1 ? y1 : y0 + ((y1 - y0) * ((x - x0) / (x1 - x0))));
    }

    private static void RequireTable(Series xs, Series ys)
    {
        if (xs.Count != ys.Count) throw new DomainException(Said($"xs and ys must have as many values as each other; they have {xs.Count} and {ys.Count}."), "ys");
        if (xs.Count < 2) throw new DomainException("A table needs at least two rows to read between.", "xs");
        for (int i = 1; i < xs.Count; i++)
        {
            if (!(xs.Si[i] > xs.Si[i - 1]))
                throw new DomainException(Said($"xs must rise from row to row; value {i + 1} does not exceed value {i}."), "xs");
        }
    }

    // Half a rounding error beyond an end is the end: 1e-12 of the larger end, as comparisons allow.
    private static double Within(ImmutableArray<double> xs, double x)
    {
        double slack = 1e-12 * Math.Max(Math.Abs(xs[0]), Math.Abs(xs[^1]));
        if (x < xs[0] - slack) throw new DomainException("at lies before the first value of xs; a table is not read beyond its ends.", "at");
        if (x > xs[^1] + slack) throw new DomainException("at lies after the last value of xs; a table is not read beyond its ends.", "at");
        return Math.Clamp(x, xs[0], xs[^1]);
    }

    private static int UpperRow(ImmutableArray<double> xs, double x)
    {
        int found = xs.BinarySearch(x);
        return Math.Max(1, found >= 0 ? found : ~found);
    }

    private static string Said(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
