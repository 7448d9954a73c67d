using CsCheck;
using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities.Tests.Units;

public sealed class DisplayUnitTests
{
    [Theory]
    [InlineData("Force", "kN", "lbf")]
    [InlineData("Length", "mm", "in")]
    [InlineData("Torque", "N·m", "ft·lbf")]
    [InlineData("Pressure", "MPa", "ksi")]
    [InlineData("Energy", "J", "ft·lbf")]
    [InlineData("Mass", "kg", "lb")]
    [InlineData("Speed", "m/s", "ft/s")]
    [InlineData("Angle", "°", "°")]
    [InlineData("Temperature", "°C", "°C")]
    [InlineData("TemperatureDelta", "K", "K")]
    public void EachKindHasItsUnitInBothSystems(string kind, string si, string us)
    {
        QuantityKind named = QuantityKinds.ByName(kind)!;
        Assert.Equal(si, DisplayUnits.For(named.Dimension, named, UnitSystem.SI).Symbol);
        Assert.Equal(us, DisplayUnits.For(named.Dimension, named, UnitSystem.US).Symbol);
    }

    [Fact]
    public void EveryKindHasAUnitOfItsDimensionThatReadsBack() => Assert.All(QuantityKinds.All, kind => Assert.All(Enum.GetValues<UnitSystem>(), system =>
    {
        Unit unit = DisplayUnits.For(kind.Dimension, kind, system);
        Assert.Equal(kind.Dimension, unit.Dimension);
        Assert.NotEqual("", unit.Symbol);
        Assert.True(UnitText.TryParse(unit.Symbol, out Unit? again, out _));
        Assert.Equal(unit, again);
    }));

    [Theory]
    [InlineData(2, 1, -2, 12, "N·m")]
    [InlineData(0, 0, -1, 12, "1/s")]
    [InlineData(3, 1, -2, 12, "N·m²")]
    [InlineData(2, 2, -4, 12, "N²")]
    [InlineData(1, 0, 0, 60, "m^5")]
    [InlineData(1, 1, -1, 12, "kg·m/s")]
    [InlineData(1, 1, -2, 6, "N^0.5")]
    [InlineData(0, 0, 0, 12, "")]
    public void DimensionsWithoutAKindHaveACoherentUnit(int length, int mass, int time, int twelfths, string symbol)
    {
        Dimension dimension = Dimension.Of(length, mass, time).Power(twelfths, 12)!.Value;
        Assert.Equal(symbol, DisplayUnits.For(dimension, null, UnitSystem.SI).Symbol);
    }

    [Fact]
    public void CoherentSymbolsOfMechanicsReadBackAsThemselves() =>
        Gen.Select(Gen.Int[-36, 36], Gen.Int[-36, 36], Gen.Int[-36, 36], Gen.Int[-24, 24]).Sample((length, mass, time, warmth) =>
        {
            Dimension dimension = Twelfths(Dimension.Of(1), length) * Twelfths(Dimension.Of(0, 1), mass) * Twelfths(Dimension.Of(0, 0, 1), time) * Twelfths(Dimension.Of(temperature: 1), warmth);
            Unit unit = DisplayUnits.Coherent(dimension);
            if (dimension.IsNone) return;
            Assert.True(UnitText.TryParse(unit.Symbol, out Unit? again, out string? problem), $"{unit}: {problem}");
            Assert.Equal(dimension, again.Dimension);
            Assert.Equal(unit.Symbol, again.Symbol);
            Assert.Equal(1, again.ToSi(1));
        });

    private static Dimension Twelfths(Dimension of, int twelfths) => of.Power(twelfths, Dimension.Parts)!.Value;
}
