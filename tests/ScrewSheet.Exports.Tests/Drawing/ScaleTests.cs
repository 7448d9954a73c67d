using CsCheck;
using ScrewSheet.Exports.Drawing;

namespace ScrewSheet.Exports.Tests.Drawing;

/// <summary>Axes go from one round number to another and hold every value.</summary>
public sealed class ScaleTests
{
    [Theory]
    [InlineData(0, 50, new[] { "0", "10", "20", "30", "40", "50" })]
    [InlineData(33, 475.6, new[] { "0", "100", "200", "300", "400", "500" })]
    [InlineData(0.2, 0.9, new[] { "0.0", "0.2", "0.4", "0.6", "0.8", "1.0" })]
    [InlineData(-3, 3, new[] { "-3", "-2", "-1", "0", "1", "2", "3" })]
    public void Over_TwoValues_HasRoundTicks(double least, double most, string[] figures)
    {
        Scale scale = Scale.Over([least, most]);
        Assert.Equal(figures, scale.Ticks.Select(scale.Figure));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    [InlineData(-7)]
    [InlineData(1e12)]
    public void Over_OneValue_HasRoomRoundIt(double value)
    {
        Scale scale = Scale.Over([value]);
        Assert.InRange(value, scale.From, scale.To);
        Assert.True(scale.To > scale.From);
    }

    [Fact]
    public void EveryValue_LiesOnItsAxis() => Gen.Double[-1e9, 1e9].Array[1, 20].Sample(values =>
    {
        Scale scale = Scale.Over(values);
        Assert.InRange(scale.Ticks.Length, 2, 20);
        Assert.All(values, value => Assert.InRange(scale.Place(value), -1e-6, 1 + 1e-6));
    });
}
