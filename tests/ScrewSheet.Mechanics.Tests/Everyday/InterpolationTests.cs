using CsCheck;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests;

public sealed class InterpolationTests
{
    private static readonly Series<Length> Depths = Series.Of<Length>([0.1, 0.13, 0.16]);
    private static readonly Series<Force> Forces = Series.Of<Force>([3000, 6000, 7000]);

    [Theory]
    [InlineData(100, 3000)]
    [InlineData(115, 4500)]
    [InlineData(130, 6000)]
    [InlineData(145, 6500)]
    [InlineData(160, 7000)]
    public void Interpolate_BetweenRows_LiesOnTheLine(double millimetres, double newtons) =>
        Assert.Equal(newtons, Interpolation.Interpolate(Depths, Forces, Length.FromMillimeters(millimetres)).Newtons, 1e-9);

    [Fact]
    public void Interpolate_BeyondTheEnds_IsRefused()
    {
        Assert.Contains("after the last", Assert.Throws<DomainException>(() => Interpolation.Interpolate(Depths, Forces, Length.FromMillimeters(160.001))).Message, StringComparison.Ordinal);
        Assert.Contains("before the first", Assert.Throws<DomainException>(() => Interpolation.Interpolate(Depths, Forces, Length.FromMillimeters(99.999))).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Interpolate_InUnorderedRows_IsRefusedAndNamesTheRow() =>
        Assert.Equal("xs must rise from row to row; value 3 does not exceed value 2.",
            Assert.Throws<DomainException>(() => Interpolation.Interpolate(Series.OfNumbers([1, 3, 2]), Series.OfNumbers([1, 2, 3]), 1.5)).Message);

    [Fact]
    public void Interpolate_ColumnsOfDifferentLength_IsRefused() =>
        Assert.Equal("xs and ys must have as many values as each other; they have 2 and 3.",
            Assert.Throws<DomainException>(() => Interpolation.Interpolate(Series.OfNumbers([1, 3]), Series.OfNumbers([1, 2, 3]), 1.5)).Message);

    [Fact]
    public void Interpolate_OneRow_IsRefused() =>
        Assert.Throws<DomainException>(() => Interpolation.Interpolate(Series.OfNumbers([1]), Series.OfNumbers([1]), 1.0));

    [Fact]
    public void Interpolate_StaysBetweenTheNeighbours() =>
        Gen.Select(Gen.Double[0, 1].Array[2, 20], Gen.Double[0, 1]).Sample((steps, share) =>
        {
            double x = 0;
            double[] xs = [.. steps.Select(step => x += step + 0.01)];
            double at = Math.Min(xs[^1], xs[0] + (share * (xs[^1] - xs[0])));
            double y = Interpolation.Interpolate(Series.OfNumbers(xs), Series.OfNumbers(steps), at);
            int right = Math.Max(1, Array.FindIndex(xs, value => value >= at));
            return y >= Math.Min(steps[right - 1], steps[right]) - 1e-12 && y <= Math.Max(steps[right - 1], steps[right]) + 1e-12;
        });

    [Fact]
    public void Interpolate_OfAStraightLine_GivesTheLine() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[-5, 5], Gen.Double[0, 9]).Sample((slope, offset, at) =>
        {
            double[] xs = [0, 1, 2.5, 4, 9];
            double y = Interpolation.Interpolate(Series.OfNumbers(xs), Series.OfNumbers(xs.Select(x => offset + (slope * x))), at);
            return Math.Abs(y - offset - (slope * at)) < 1e-9;
        });
}
