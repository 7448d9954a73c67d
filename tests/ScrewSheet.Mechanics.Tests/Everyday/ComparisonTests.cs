using CsCheck;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests;

public sealed class ComparisonTests
{
    [Fact]
    public void Max_OfForcesInDifferentUnits_KeepsTheGreaterAsWritten() =>
        Assert.Equal(Force.FromKilonewtons(2), Comparison.Max(Force.FromNewtons(1999), Force.FromKilonewtons(2)));

    [Fact]
    public void Min_OfQuantitiesWithTheSameDimension_GivesTheSmaller()
    {
        Dimension toughness = Dimension.Of(-1, 1, -2) * Dimension.Of(1).Power(1, 2)!.Value;
        Assert.Equal(Quantity.FromSi(50e3, toughness), Comparison.Min(Quantity.FromSi(50e3, toughness), Quantity.FromSi(150e3, toughness)));
    }

    [Fact]
    public void Max_OfQuantitiesWithDifferentDimensions_IsRefused()
    {
        var refusal = Assert.Throws<DomainException>(() => Comparison.Max(Quantity.FromSi(1, Dimension.Of(1)), Quantity.FromSi(1, Dimension.None)));
        Assert.Equal("second", refusal.Parameter);
        Assert.Equal("second is a pure number and cannot be compared with a value in m.", refusal.Message);
    }

    [Fact]
    public void Max_OfNaN_IsRefusedAndNamesTheParameter() =>
        Assert.Equal("first must be a finite number.", Assert.Throws<DomainException>(() => Comparison.Max(double.NaN, 1)).Message);

    [Fact]
    public void Max_OfSomethingThatIsNoQuantity_IsRefused() =>
        Assert.Equal("A Boolean is neither a number nor a quantity.", Assert.Throws<DomainException>(() => Comparison.Max(true, false)).Message);

    [Fact]
    public void Abs_OfATemperature_IsRefused() => Assert.Throws<DomainException>(() => Comparison.Abs(Temperature.FromDegreesCelsius(-10)));

    [Fact]
    public void EveryKindOfQuantity_GoesToSiAndBack()
    {
        foreach (QuantityKind kind in QuantityKinds.All.Where(kind => kind != QuantityKinds.Temperature))
        {
            object negative = kind.FromSi(-2.5);
            object back = typeof(Comparison).GetMethod(nameof(Comparison.Abs))!.MakeGenericMethod(kind.ClrType).Invoke(null, [negative])!;
            Assert.Equal(2.5, kind.ToSi(back), 12);
        }
    }

    [Fact]
    public void Clamp_WithBoundsInTheWrongOrder_IsRefused() =>
        Assert.Equal("lowest must not be greater than highest.", Assert.Throws<DomainException>(() => Comparison.Clamp(1.0, 3.0, 2.0)).Message);

    [Theory]
    [InlineData(8.47, 0.1, 8.5)]
    [InlineData(0.4372, 0.001, 0.437)]
    [InlineData(2.5, 1, 2)]
    [InlineData(3.5, 1, 4)]
    [InlineData(-7.4, 5, -5)]
    public void Round_ToAStep_GivesTheNearestMultiple(double value, double step, double expected) => Assert.Equal(expected, Comparison.Round(value, step));

    [Fact]
    public void Round_OfALengthToAMillimetre_GivesTheNearestDouble() =>
        Assert.Equal(0.437, Comparison.Round(Length.FromMeters(0.43719), Length.FromMillimeters(1)).Meters);

    [Fact]
    public void Round_ToANegativeStep_IsRefused() => Assert.Equal("step", Assert.Throws<DomainException>(() => Comparison.Round(1.0, -0.1)).Parameter);

    [Fact]
    public void Near_WithinTheTolerance_Holds()
    {
        Assert.True(Comparison.Near(Length.FromMeters(1), Length.FromCentimeters(100.5), Length.FromMillimeters(5)));
        Assert.False(Comparison.Near(Length.FromMeters(1), Length.FromCentimeters(100.6), Length.FromMillimeters(5)));
    }

    [Fact]
    public void Near_OfTemperaturesWithAToleranceInCelsius_IsRefused()
    {
        Temperature a = Temperature.FromDegreesCelsius(-10), b = Temperature.FromDegreesCelsius(-10.3);
        Assert.True(Comparison.Near(a, b, Temperature.FromKelvins(0.5)));
        Assert.Throws<DomainException>(() => Comparison.Near(a, b, Temperature.FromDegreesCelsius(0.5)));
    }

    [Fact]
    public void MaxAndMin_AreSymmetricAndBoundTheirArguments() =>
        Gen.Select(Gen.Double[-1e9, 1e9], Gen.Double[-1e9, 1e9]).Sample((a, b) =>
            Comparison.Max(a, b) == Comparison.Max(b, a) && Comparison.Min(a, b) <= Comparison.Max(a, b) && Comparison.Min(a, b) + Comparison.Max(a, b) == a + b);
}
