using ScrewSheet.Quantities;
using UnitsNet;

namespace ScrewSheet.Statistics.Tests.Data;

/// <summary>Short ways to series.</summary>
internal static class Of
{
    public static Series<double> Numbers(params double[] values) => Series.OfNumbers(values);

    public static Series<Force> Kilonewtons(params double[] values) => Series.Of<Force>(values.Select(value => value * 1000));

    public static Series<Length> Millimetres(params double[] values) => Series.Of<Length>(values.Select(value => value / 1000));

    /// <summary>All groups end to end, and the group number of each value.</summary>
    public static (Series<double> Sample, Series<double> Group) Groups(params double[][] groups) =>
        (Series.OfNumbers(groups.SelectMany(values => values)), Series.OfNumbers(groups.SelectMany((values, i) => values.Select(_ => i + 1.0))));
}
