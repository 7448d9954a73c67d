using ScrewSheet.Quantities;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>Short spellings for the units that the fall and rope tests use.</summary>
internal static class RopeUnits
{
    public const double G = 9.80665;

    public static Mass Kg(double value) => Mass.FromKilograms(value);

    public static Force N(double value) => Force.FromNewtons(value);

    public static Force KN(double value) => Force.FromKilonewtons(value);

    public static Length M(double value) => Length.FromMeters(value);

    public static Length Ft(double value) => Length.FromFeet(value);

    public static Angle Deg(double value) => Angle.FromDegrees(value);

    public static Duration S(double value) => Duration.FromSeconds(value);

    public static ForcePerLength KNm(double value) => ForcePerLength.FromKilonewtonsPerMeter(value);

    public static Series<Length> Strands(params double[] metres) => Series.Of<Length>(metres);

    public static Series<Angle> Bends(params double[] degrees) => Series.Of<Angle>(degrees.Select(d => d * Math.PI / 180));
}
