using System.Runtime.CompilerServices;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Falls;

/// <summary>The door of the fall and rope functions: each check answers with the value in coherent SI or refuses with parameter, limit and unit.</summary>
/// <remarks>What lies well inside passes by two comparisons; the sentences are made, and values at the rim looked at closely, only off that path, so that the way in is short enough to be inlined.</remarks>
internal static class Inputs
{
    private const double Kilo = 1000;

    /// <summary>A mass above 0, in kg.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Mass(Mass value, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        AboveZero(value.Kilograms, Limits.MassKilograms, 1, "kg", parameter);

    /// <summary>A length of 0 or more, in m.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Distance(Length value, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        AtLeast(value.Meters, 0, Limits.LengthMetres, 1, "m", parameter);

    /// <summary>A length above 0, in m.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double RopeLength(Length value, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        AboveZero(value.Meters, Limits.LengthMetres, 1, "m", parameter);

    /// <summary>A force above 0, in N; the limits are said in kN.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double PositiveForce(Force value, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        AboveZero(value.Newtons, Limits.ForceKilonewtons, Kilo, "kN", parameter);

    /// <summary>A force of 0 or more, in N; the limits are said in kN.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Tension(Force value, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        AtLeast(value.Newtons, 0, Limits.ForceKilonewtons, Kilo, "kN", parameter);

    /// <summary>A spring rate above 0, in N/m; the limits are said in kN/m.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Stiffness(ForcePerLength value, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        AboveZero(value.NewtonsPerMeter, Limits.StiffnessKilonewtonsPerMetre, Kilo, "kN/m", parameter);

    /// <summary>A number from <paramref name="least"/> to <paramref name="most"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Number(double value, double least, double most, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        AtLeast(value, least, most, 1, "", parameter);

    /// <summary>An angle from 0 to <paramref name="mostDegrees"/>, in rad; the limits are said in degrees.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Angle(Angle value, double mostDegrees, [CallerArgumentExpression(nameof(value))] string parameter = "") =>
        AtLeast(value.Radians, 0, mostDegrees, Math.PI / 180, "deg", parameter);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double AboveZero(double si, double most, double unit, string symbol, string parameter) =>
        si > 0 && si < most * unit ? si : AtTheRim(si, double.NaN, most, unit, symbol, parameter);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double AtLeast(double si, double least, double most, double unit, string symbol, string parameter) =>
        si >= least * unit && si < most * unit ? si : AtTheRim(si, least, most, unit, symbol, parameter);

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static double AtTheRim(double si, double least, double most, double unit, string symbol, string parameter)
    {
        double value = si / unit;
        if (double.IsNaN(least)) Require.Above(value, 0, symbol, parameter);
        else Require.AtLeast(value, least, symbol, parameter);
        Require.AtMost(Math.Abs(value - most) <= most * 1e-12 ? most : value, most, symbol, parameter);
        return si;
    }
}
