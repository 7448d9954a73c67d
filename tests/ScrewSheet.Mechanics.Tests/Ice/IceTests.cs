using System.Reflection;
using CsCheck;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests;

public sealed class IceTests
{
    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static Pressure MPa(double megapascals) => Pressure.FromMegapascals(megapascals);

    private static string Refusal(Action call) => Assert.Throws<DomainException>(call).Message;

    [Fact]
    public void HillAverage_LiesBetweenTheBounds() =>
        Gen.Select(Gen.Double[10, 20], Gen.Double[3, 9], Gen.Double[3, 8], Gen.Double[10, 20], Gen.Double[1, 6]).Sample((c11, c12, c13, c33, c44) =>
        {
            Pressure[] c = [.. new[] { c11, c12, c13, c33, c44 }.Select(value => Pressure.FromGigapascals(value))];
            double upper = ElasticAggregates.VoigtAverage(c[0], c[1], c[2], c[3], c[4]).ShearModulus.Gigapascals, lower = ElasticAggregates.ReussAverage(c[0], c[1], c[2], c[3], c[4]).ShearModulus.Gigapascals;
            double mean = ElasticAggregates.HillAverage(c[0], c[1], c[2], c[3], c[4]).ShearModulus.Gigapascals;
            return upper >= lower - 1e-12 && mean <= upper + 1e-12 && mean >= lower - 1e-12;
        });

    [Fact]
    public void AnIsotropicCrystal_HasOneStiffness()
    {
        Pressure c11 = Pressure.FromGigapascals(14), c12 = Pressure.FromGigapascals(7), c44 = Pressure.FromGigapascals(3.5);
        Assert.Equal(3.5, ElasticAggregates.VoigtAverage(c11, c12, c12, c11, c44).ShearModulus.Gigapascals, 1e-12);
        Assert.Equal(3.5, ElasticAggregates.ReussAverage(c11, c12, c12, c11, c44).ShearModulus.Gigapascals, 1e-12);
    }

    [Fact]
    public void IceIsStiffer_TheColderItIs() =>
        Gen.Select(Gen.Double[-100, -1], Gen.Double[0.01, 1]).Sample((cold, step) =>
            IceProperties.IceElasticModulus(Temperature.FromDegreesCelsius(cold)) > IceProperties.IceElasticModulus(Temperature.FromDegreesCelsius(cold + step)));

    [Fact]
    public void IceCreepsFaster_TheWarmerItIs() =>
        Gen.Select(Gen.Double[-10, -1], Gen.Double[0.01, 1]).Sample((cold, step) =>
            IceProperties.IceCreepRate(Temperature.FromDegreesCelsius(cold), MPa(0.1)).Hertz < IceProperties.IceCreepRate(Temperature.FromDegreesCelsius(cold + step), MPa(0.1)).Hertz);

    [Fact]
    public void IceSizeEffect_OfOneVolume_IsOneAndFallsWithVolume() =>
        Gen.Select(Gen.Double[0.1, 100], Gen.Double[1.01, 50], Gen.Double[2, 12]).Sample((litres, more, m) =>
            Math.Abs(IceProperties.IceSizeEffect(Volume.FromLiters(litres), Volume.FromLiters(litres), m) - 1) < 1e-12
            && IceProperties.IceSizeEffect(Volume.FromLiters(litres * more), Volume.FromLiters(litres), m) < 1);

    [Fact]
    public void TheFractureForm_GrowsWithThePowerOneAndAHalfOfDepth() =>
        Gen.Select(Gen.Double[20, 100], Gen.Double[1.1, 4]).Sample((depth, more) =>
        {
            double once = ConeBreakout.IceFractureAnalogue(IceValues.FractureToughnessHigh, Mm(depth)).Newtons, deep = ConeBreakout.IceFractureAnalogue(IceValues.FractureToughnessHigh, Mm(depth * more)).Newtons;
            return Math.Abs(deep - (once * Math.Pow(more, 1.5))) < 1e-9 * deep;
        });

    [Theory]
    [InlineData(nameof(ConeBreakout.IceConeAnalogue))]
    [InlineData(nameof(ConeBreakout.IceHalfConeAnalogue))]
    [InlineData(nameof(ConeBreakout.IceCcdAnalogue))]
    [InlineData(nameof(ConeBreakout.IceFractureAnalogue))]
    public void EveryIceCone_AlwaysSaysThatItIsAnAnalogue(string name)
    {
        CautionWhenAttribute caution = Assert.Single(typeof(ConeBreakout).GetMethod(name)!.GetCustomAttributes<CautionWhenAttribute>());
        Assert.Equal("true", caution.Condition);
        Assert.StartsWith("Analogue:", caution.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void ToughnessInMPaRootMillimetre_IsThatInKPaRootMetreTimes0_0316()
    {
        Dimension toughness = IceValues.FractureToughnessLow.Dimension;
        double oneInSi = 1e6 * Math.Sqrt(1e-3);
        Assert.Equal(0.0316228, Quantity.FromSi(1000, toughness).Si / oneInSi, 1e-7);
    }

    [Fact]
    public void BadInput_IsRefusedWithParameterLimitAndUnit()
    {
        Assert.Equal("temperature must be at most 0 °C; it is 1 °C.", Refusal(() => IceProperties.IceElasticModulus(Temperature.FromDegreesCelsius(1))));
        Assert.Equal("depth must be greater than 0 mm; it is 0 mm.", Refusal(() => ConeBreakout.IceConeAnalogue(MPa(1), Mm(0))));
        Assert.Equal("tensileStrength must be greater than 0 MPa; it is -1 MPa.", Refusal(() => ConeBreakout.IceConeAnalogue(MPa(-1), Mm(40))));
        Assert.Equal("weibullModulus must be greater than 0; it is 0.", Refusal(() => IceProperties.IceSizeEffect(Volume.FromLiters(1), Volume.FromLiters(1), 0)));
        Assert.Equal("grainSize must be greater than 0 mm; it is 0 mm.", Refusal(() => IceProperties.IceCrackStartStress(Mm(0))));
        Assert.Equal("c12 must be less than c11 in a stable crystal.", Refusal(() => ElasticAggregates.VoigtAverage(IceValues.C11, IceValues.C11, IceValues.C13, IceValues.C33, IceValues.C44)));
    }

    [Fact]
    public void ACreepParameterBelowMinusTen_IsRefusedRatherThanGuessed() =>
        Assert.Equal("temperature", Assert.Throws<DomainException>(() => IceProperties.IceCreepParameter(Temperature.FromDegreesCelsius(-12))).Parameter);

    [Fact]
    public void ACoefficientWithoutItsUnit_IsRefused()
    {
        Assert.Contains("must carry its unit", Refusal(() => ConcreteCones.ConcreteCone(Quantity.FromSi(10, Dimension.None), MPa(20), Mm(100))), StringComparison.Ordinal);
        Assert.Contains("kPa·m^0.5", Refusal(() => ConeBreakout.IceFractureAnalogue(Quantity.FromSi(100, Dimension.None), Mm(40))), StringComparison.Ordinal);
    }
}
