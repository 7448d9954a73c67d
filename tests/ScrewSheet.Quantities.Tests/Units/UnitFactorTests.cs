using CsCheck;
using ScrewSheet.Quantities.Units;
using UnitsNet;

namespace ScrewSheet.Quantities.Tests.Units;

public sealed class UnitFactorTests
{
    // exact products of 0.0254 m, 0.45359237 kg and 9.80665 m/s² (NIST SP 811, 2008, Appendix B), to 18 digits
    [Theory]
    [InlineData("lbf", 4.4482216152605)]
    [InlineData("kip", 4448.2216152605)]
    [InlineData("psi", 6894.75729316836133672)]
    [InlineData("ksi", 6894757.29316836133672)]
    [InlineData("lbf/ft²", 47.8802589803358426)]
    [InlineData("in²", 0.00064516)]
    [InlineData("in³", 1.6387064e-5)]
    [InlineData("ft·lbf", 1.3558179483314004)]
    [InlineData("in·lbf", 0.1129848290276167)]
    [InlineData("lbf/in", 175.126835246476378)]
    [InlineData("lbf/ft", 14.5939029372063648)]
    [InlineData("kgf/mm²", 9806650)]
    [InlineData("lb/ft³", 16.0184633739601396)]
    [InlineData("lb/in³", 0.45359237 / 1.6387064e-5)]
    [InlineData("lbf·s²/ft", 14.5939029372063648)]
    public void FactorsAreTheDefinitionsMultipliedOut(string symbol, double factor) =>
        Assert.InRange(Read(symbol).ToSi(1) / factor, 1 - 1e-15, 1 + 1e-15);

    [Theory]
    [InlineData("kN", 8.5, 8500)]
    [InlineData("mm", 40, 0.04)]
    [InlineData("mm", 0.1, 0.0001)]
    [InlineData("cm", 7, 0.07)]
    [InlineData("mm²", 70, 70e-6)]
    [InlineData("g/cm³", 7.85, 7850)]
    [InlineData("%", 5, 0.05)]
    [InlineData("in", 1, 0.0254)]
    [InlineData("ft", 1, 0.3048)]
    [InlineData("km/h", 36, 10)]
    [InlineData("N/mm²", 355, 355e6)]
    public void WhatIsWrittenIsHeldExactly(string symbol, double written, double si) => Assert.Equal(si, Read(symbol).ToSi(written));

    public static TheoryData<string> Symbols => [.. UnitTable.All.Select(unit => unit.Symbol)];

    [Theory]
    [MemberData(nameof(Symbols))]
    public void EveryUnitComesBackFromSi(string symbol)
    {
        Unit unit = Read(symbol);
        Gen.Double[-1e6, 1e6].Sample(value =>
        {
            double slack = unit.Offset == 0 ? 4 * Math.BitIncrement(Math.Abs(value)) * 1.2e-16 : 1e-9;
            Assert.InRange(unit.FromSi(unit.ToSi(value)) - value, -slack, slack);
        }, iter: 1000);
    }

    public static TheoryData<string, double> Reference => new()
    {
        { "N", Force.FromNewtons(1).Newtons }, { "kN", Force.FromKilonewtons(1).Newtons }, { "daN", Force.FromDecanewtons(1).Newtons }, { "MN", Force.FromMeganewtons(1).Newtons },
        { "kgf", Force.FromKilogramsForce(1).Newtons }, { "lbf", Force.FromPoundsForce(1).Newtons }, { "kip", Force.FromKilopoundsForce(1).Newtons },
        { "mm", Length.FromMillimeters(1).Meters }, { "cm", Length.FromCentimeters(1).Meters }, { "m", Length.FromMeters(1).Meters }, { "in", Length.FromInches(1).Meters }, { "ft", Length.FromFeet(1).Meters },
        { "mm²", Area.FromSquareMillimeters(1).SquareMeters }, { "cm²", Area.FromSquareCentimeters(1).SquareMeters }, { "m²", Area.FromSquareMeters(1).SquareMeters }, { "in²", Area.FromSquareInches(1).SquareMeters },
        { "mm³", Volume.FromCubicMillimeters(1).CubicMeters }, { "cm³", Volume.FromCubicCentimeters(1).CubicMeters }, { "m³", Volume.FromCubicMeters(1).CubicMeters }, { "in³", Volume.FromCubicInches(1).CubicMeters },
        { "mm⁴", AreaMomentOfInertia.FromMillimetersToTheFourth(1).MetersToTheFourth }, { "cm⁴", AreaMomentOfInertia.FromCentimetersToTheFourth(1).MetersToTheFourth },
        { "m⁴", AreaMomentOfInertia.FromMetersToTheFourth(1).MetersToTheFourth }, { "in⁴", AreaMomentOfInertia.FromInchesToTheFourth(1).MetersToTheFourth },
        { "Pa", Pressure.FromPascals(1).Pascals }, { "kPa", Pressure.FromKilopascals(1).Pascals }, { "MPa", Pressure.FromMegapascals(1).Pascals }, { "GPa", Pressure.FromGigapascals(1).Pascals },
        { "psi", Pressure.FromPoundsForcePerSquareInch(1).Pascals }, { "ksi", Pressure.FromKilopoundsForcePerSquareInch(1).Pascals },
        { "N/mm²", Pressure.FromNewtonsPerSquareMillimeter(1).Pascals }, { "kN/m²", Pressure.FromKilonewtonsPerSquareMeter(1).Pascals },
        { "N·m", Torque.FromNewtonMeters(1).NewtonMeters }, { "kN·m", Torque.FromKilonewtonMeters(1).NewtonMeters }, { "N·mm", Torque.FromNewtonMillimeters(1).NewtonMeters },
        { "ft·lbf", Torque.FromPoundForceFeet(1).NewtonMeters }, { "in·lbf", Torque.FromPoundForceInches(1).NewtonMeters },
        { "kg", Mass.FromKilograms(1).Kilograms }, { "g", Mass.FromGrams(1).Kilograms }, { "t", Mass.FromTonnes(1).Kilograms }, { "lb", Mass.FromPounds(1).Kilograms },
        { "kg/m³", Density.FromKilogramsPerCubicMeter(1).KilogramsPerCubicMeter }, { "g/cm³", Density.FromGramsPerCubicCentimeter(1).KilogramsPerCubicMeter },
        { "lb/ft³", Density.FromPoundsPerCubicFoot(1).KilogramsPerCubicMeter }, { "lb/in³", Density.FromPoundsPerCubicInch(1).KilogramsPerCubicMeter },
        { "N/m", ForcePerLength.FromNewtonsPerMeter(1).NewtonsPerMeter }, { "kN/m", ForcePerLength.FromKilonewtonsPerMeter(1).NewtonsPerMeter },
        { "N/mm", ForcePerLength.FromNewtonsPerMillimeter(1).NewtonsPerMeter }, { "lbf/in", ForcePerLength.FromPoundsForcePerInch(1).NewtonsPerMeter },
        { "N/m³", SpecificWeight.FromNewtonsPerCubicMeter(1).NewtonsPerCubicMeter },
        { "m/s", Speed.FromMetersPerSecond(1).MetersPerSecond }, { "km/h", Speed.FromKilometersPerHour(1).MetersPerSecond }, { "ft/s", Speed.FromFeetPerSecond(1).MetersPerSecond },
        { "m/s²", Acceleration.FromMetersPerSecondSquared(1).MetersPerSecondSquared }, { "gn", Acceleration.FromStandardGravity(1).MetersPerSecondSquared },
        { "s", Duration.FromSeconds(1).Seconds }, { "ms", Duration.FromMilliseconds(1).Seconds }, { "min", Duration.FromMinutes(1).Seconds }, { "h", Duration.FromHours(1).Seconds },
        { "1/s", Frequency.FromPerSecond(1).Hertz }, { "rad/s", RotationalSpeed.FromRadiansPerSecond(1).RadiansPerSecond },
        { "J", Energy.FromJoules(1).Joules }, { "kJ", Energy.FromKilojoules(1).Joules }, { "W", (double)UnitsNet.Power.FromWatts(1).Watts },
        { "°", Angle.FromDegrees(1).Radians }, { "rad", Angle.FromRadians(1).Radians }, { "°C", Temperature.FromDegreesCelsius(1).Kelvins }, { "K", TemperatureDelta.FromKelvins(1).Kelvins },
        { "%", Ratio.FromPercent(1).DecimalFractions },
    };

    [Theory]
    [MemberData(nameof(Reference))]
    public void EveryNamedUnitAgreesWithTheUnitLibrary(string symbol, double si)
    {
        // the library's factors of these three are rounded decimals; ours are the definitions multiplied out, tested above
        double allowed = symbol switch { "lb/ft³" or "lbf/in" => 1e-8, "lb/in³" => 2e-7, _ => 1e-12 };
        Assert.InRange(Read(symbol).ToSi(1) / si, 1 - allowed, 1 + allowed);
    }

    [Fact]
    public void OnlyUnitsWithoutALibraryTypeAreNotCompared() =>
        Assert.Equal(["N·m²", "kPa·m^0.5", "MPa·m^0.5"], UnitTable.All.Select(unit => unit.Symbol).Except(Reference.Select(row => (string)row[0])));

    private static Unit Read(string text) => UnitText.TryParse(text, out Unit? unit, out string? problem) ? unit : throw new InvalidOperationException(problem);
}
