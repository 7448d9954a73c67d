using CsCheck;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests;

public sealed class AnglesAndNumbersTests
{
    [Fact]
    public void SineAndCosine_SquareToOne() =>
        Gen.Double[-720, 720].Sample(degrees =>
        {
            Angle angle = Angle.FromDegrees(degrees);
            return Math.Abs((Angles.Sin(angle) * Angles.Sin(angle)) + (Angles.Cos(angle) * Angles.Cos(angle)) - 1) < 1e-12;
        });

    [Fact]
    public void InverseFunctions_GiveTheAngleBack() =>
        Gen.Double[-89, 89].Sample(degrees =>
        {
            Angle angle = Angle.FromDegrees(degrees);
            return Math.Abs(Angles.Asin(Angles.Sin(angle)).Degrees - degrees) < 1e-6
                && Math.Abs(Angles.Atan(Angles.Tan(angle)).Degrees - degrees) < 1e-6
                && Math.Abs(Angles.Acos(Angles.Cos(angle)).Degrees - Math.Abs(degrees)) < 1e-6
                && Math.Abs(Angles.Atan2(Force.FromKilonewtons(3 * Angles.Sin(angle)), Force.FromNewtons(3000 * Angles.Cos(angle))).Degrees - degrees) < 1e-6;
        });

    [Theory]
    [InlineData(90)]
    [InlineData(-90)]
    [InlineData(270)]
    public void Tan_OfARightAngle_IsRefused(double degrees) => Assert.Throws<DomainException>(() => Angles.Tan(Angle.FromDegrees(degrees)));

    [Fact]
    public void Asin_BeyondOne_NamesParameterAndLimit() =>
        Assert.Equal("sine must be at most 1; it is 1.2.", Assert.Throws<DomainException>(() => Angles.Asin(1.2)).Message);

    [Fact]
    public void Atan2_OfTwoZeros_IsRefused() => Assert.Throws<DomainException>(() => Angles.Atan2(0.0, 0.0));

    [Fact]
    public void Ln_OfZero_NamesParameterAndLimit() =>
        Assert.Equal("number must be greater than 0; it is 0.", Assert.Throws<DomainException>(() => NumberFunctions.Ln(0)).Message);

    [Fact]
    public void Exp_TooLarge_IsRefused() => Assert.Throws<DomainException>(() => NumberFunctions.Exp(710));

    [Fact]
    public void Exp_AndLn_UndoEachOther() => Gen.Double[-100, 100].Sample(x => Math.Abs(NumberFunctions.Ln(NumberFunctions.Exp(x)) - x) < 1e-9);

    [Fact]
    public void Remainder_HasTheSignOfTheValue()
    {
        Assert.Equal(-1, NumberFunctions.Remainder(-7.0, 3.0));
        Assert.Equal(0.1, NumberFunctions.Remainder(Length.FromMeters(1), Length.FromCentimeters(30)).Meters, 12);
    }

    [Fact]
    public void Remainder_OfDivisionByZero_IsRefused() => Assert.Equal("divisor", Assert.Throws<DomainException>(() => NumberFunctions.Remainder(1.0, 0.0)).Parameter);

    [Fact]
    public void FloorAndCeiling_OfNegativeNumbers_RoundDownAndUp() => Assert.Equal((-3, -2), (NumberFunctions.Floor(-2.5), NumberFunctions.Ceiling(-2.5)));

    [Fact]
    public void Weight_OfANegativeMass_NamesParameterLimitAndUnit() =>
        Assert.Equal("mass must be at least 0 kg; it is -80 kg.", Assert.Throws<DomainException>(() => WorkAndWeight.Weight(Mass.FromKilograms(-80))).Message);

    [Fact]
    public void Work_OfAForceAlongAWay_IsAnEnergy() => Assert.Equal(1000, WorkAndWeight.Work(Force.FromKilonewtons(2), Length.FromCentimeters(50)).Joules, 1e-9);
}
