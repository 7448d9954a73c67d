using ScrewSheet.Quantities;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests.LeverArm;

/// <summary>Short words for quantities, and the two tubes the checks use.</summary>
internal static class In
{
    public const double Ksi = 6.894757293168361;

    public static Length Mm(double value) => Length.FromMillimeters(value);

    public static Length M(double value) => Length.FromMeters(value);

    public static Force N(double value) => Force.FromNewtons(value);

    public static Force KN(double value) => Force.FromKilonewtons(value);

    public static Pressure MPa(double value) => Pressure.FromMegapascals(value);

    public static Pressure GPa(double value) => Pressure.FromGigapascals(value);

    public static Torque Nm(double value) => Torque.FromNewtonMeters(value);

    public static Angle Deg(double value) => Angle.FromDegrees(value);

    public static Volume Mm3(double value) => Volume.FromCubicMillimeters(value);

    public static Area Mm2(double value) => Area.FromSquareMillimeters(value);

    public static ForcePerLength KNm(double value) => ForcePerLength.FromKilonewtonsPerMeter(value);

    public static Series<Length> Metres(params double[] values) => Series.Of<Length>(values);

    public static Series<Force> Kilonewtons(params double[] values) => Series.Of<Force>(values.Select(value => value * 1e3));

    public static Series<Angle> Degrees(params double[] values) => Series.Of<Angle>(values.Select(value => value * Math.PI / 180));

    public static bool Close(double a, double b, double relative = 1e-9) => Math.Abs(a - b) <= relative * Math.Max(Math.Abs(a), Math.Abs(b)) + 1e-300;
}
