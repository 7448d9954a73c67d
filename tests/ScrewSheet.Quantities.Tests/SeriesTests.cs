using ScrewSheet.Quantities.Units;
using UnitsNet;

namespace ScrewSheet.Quantities.Tests;

public sealed class SeriesTests
{
    [Fact]
    public void ASeriesGivesItsValuesInItsOwnType()
    {
        Series<Force> pulls = Series.Of<Force>([8500, 9000]);
        Assert.Equal(2, pulls.Count);
        Assert.Equal(9, pulls[1].Kilonewtons, 1e-12);
        Assert.Equal(typeof(Force), pulls.ElementType);
        Assert.Equal(Dimension.Of(1, 1, -2), pulls.With([1]).Dimension);
        Assert.Equal(1.N, pulls.With([1])[0]);
    }

    [Fact]
    public void ASeriesKnowsItsRowsAndKeepsThemWhereSomeAreTaken()
    {
        Series pulls = Series.Of<Force>([8500, 9000, 9500]).InRows([2, 4, 7]);
        Series taken = Assert.IsType<Series<Force>>(pulls.Take([0, 2]));
        Assert.Equal("8500 9500", string.Join(' ', taken.Si));
        Assert.Equal("2 7", string.Join(' ', taken.Rows));
        Assert.True(Series.OfNumbers([1, 2]).Take([1]).Rows.IsEmpty);
        Assert.Throws<ArgumentException>(() => pulls.InRows([1]));
        Assert.True(((Series<Force>)pulls).With([1]).Rows.IsEmpty);
    }

    [Fact]
    public void TextsKnowTheirRowsToo()
    {
        TextSeries modes = Assert.IsType<TextSeries>(new TextSeries(["a", "b", "c"], [2, 3, 5]).Take([1, 2]));
        Assert.Equal("b c", string.Join(' ', modes.Texts));
        Assert.Equal("3 5", string.Join(' ', modes.Rows));
        Assert.Equal(2, modes.Count);
    }

    [Fact]
    public void SeriesOfNumbersAndOfGeneralQuantities()
    {
        Assert.Equal(2.5, Series.OfNumbers([2.5])[0]);
        Assert.Equal(Quantity.FromSi(3, Dimension.Of(2, 2, -4)), Series.Of([3], Dimension.Of(2, 2, -4)).Make(3));
        Assert.Throws<ArgumentException>(() => Series.Of<MassFlow>([1]));
    }
}
