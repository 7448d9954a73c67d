using System.Reflection;
using ScrewSheet.Quantities.Units;
using UnitsNet;

namespace ScrewSheet.Quantities.Tests.Units;

public sealed class SuffixTests
{
    [Theory]
    [InlineData("inch", "in")]
    [InlineData("percent", "%")]
    [InlineData("degC", "°C")]
    [InlineData("deg", "°")]
    [InlineData("N_m", "N·m")]
    [InlineData("N_per_m", "N/m")]
    [InlineData("kg_m3", "kg/m³")]
    [InlineData("kg_per_m3", "kg/m³")]
    [InlineData("mm2", "mm²")]
    [InlineData("MPa_sqrt_m", "MPa·m^0.5")]
    [InlineData("per_s", "1/s")]
    public void FixedNames(string identifier, string symbol)
    {
        Assert.True(Suffixes.TryFind(identifier, out Unit? unit));
        Assert.Equal(symbol, unit.Symbol);
    }

    [Theory]
    [InlineData("KN")]
    [InlineData("kN·m")]
    [InlineData("")]
    public void NoOtherSpellingIsASuffix(string identifier) => Assert.False(Suffixes.TryFind(identifier, out _));

    public static TheoryData<string> Names => [.. Suffixes.All.Keys.Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Names))]
    public void EachPropertyOnIntAndDoubleGivesWhatTheTableSays(string name)
    {
        Unit unit = Suffixes.All[name];
        foreach ((Type holder, object value) in new (Type, object)[] { (typeof(IntSuffixes), 3), (typeof(DoubleSuffixes), 3.0) })
        {
            object made = holder.GetMethod("get_" + name, BindingFlags.Public | BindingFlags.Static, [value.GetType()])!.Invoke(null, [value])!;
            Quantity expected = Quantity.FromSi(unit.ToSi(3), unit.Dimension);
            if (made is Temperature warm) Assert.Equal(expected.Si, warm.Kelvins);
            else Assert.Equal(expected, made is Quantity bare ? bare : Quantity.From((IQuantity)made));
            Assert.Equal(unit.Kind?.ClrType ?? typeof(Quantity), made.GetType());
        }
    }

    [Fact]
    public void ThePropertiesAreTheTableAndNoMore() =>
        Assert.All([typeof(IntSuffixes), typeof(DoubleSuffixes)], holder => Assert.Equal(
            Suffixes.All.Keys.Order(StringComparer.Ordinal),
            holder.GetMethods(BindingFlags.Public | BindingFlags.Static).Where(method => method.Name.StartsWith("get_", StringComparison.Ordinal)).Select(method => method.Name[4..]).Order(StringComparer.Ordinal)));

    [Fact]
    public void ANumberWithASuffixIsAQuantityOfItsKind()
    {
        Force pull = 10.kN;
        Length arm = 40.mm;
        Angle included = 15.5.deg;
        Torque moment = pull * arm;
        Assert.Equal(400, moment.NewtonMeters, 1e-9);
        Assert.Equal(15.5, included.Degrees, 1e-12);
        Assert.Equal(255.15, (-18.0).degC.Kelvins, 1e-12);
        Assert.Equal(0.05, 5.percent.ToNumber());
    }
}
