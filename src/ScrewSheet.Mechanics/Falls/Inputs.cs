using System.Runtime.CompilerServices;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Falls;

/// <summary>The door of the fall and rope functions: each check answers with the value in coherent SI or refuses with parameter, limit and unit.</summary>
internal static class Inputs
{
    /// <summary>A mass above 0, in kg.</summary>
    public static double Mass(Mass value, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        double kilograms = Require.Above(value.Kilograms, 0, "kg", parameter);
        return Require.AtMost(kilograms, Limits.MassKilograms, "kg", parameter);
    }

    /// <summary>A length of 0 or more, in m.</summary>
    public static double Distance(Length value, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        double metres = Require.AtLeast(value.Meters, 0, "m", parameter);
        return Require.AtMost(metres, Limits.LengthMetres, "m", parameter);
    }

    /// <summary>A length above 0, in m.</summary>
    public static double RopeLength(Length value, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        double metres = Require.Above(value.Meters, 0, "m", parameter);
        return Require.AtMost(metres, Limits.LengthMetres, "m", parameter);
    }

    /// <summary>A force above 0, in N; the limits are said in kN.</summary>
    public static double PositiveForce(Force value, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        double newtons = value.Newtons;
        Require.Above(newtons / 1000, 0, "kN", parameter);
        Require.AtMost(newtons / 1000, Limits.ForceKilonewtons, "kN", parameter);
        return newtons;
    }

    /// <summary>A force of 0 or more, in N; the limits are said in kN.</summary>
    public static double Tension(Force value, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        double newtons = value.Newtons;
        Require.AtLeast(newtons / 1000, 0, "kN", parameter);
        Require.AtMost(newtons / 1000, Limits.ForceKilonewtons, "kN", parameter);
        return newtons;
    }

    /// <summary>A spring rate above 0, in N/m; the limits are said in kN/m.</summary>
    public static double Stiffness(ForcePerLength value, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        double newtonsPerMetre = value.NewtonsPerMeter;
        Require.Above(newtonsPerMetre / 1000, 0, "kN/m", parameter);
        Require.AtMost(newtonsPerMetre / 1000, Limits.StiffnessKilonewtonsPerMetre, "kN/m", parameter);
        return newtonsPerMetre;
    }

    /// <summary>A number from <paramref name="least"/> to <paramref name="most"/>.</summary>
    public static double Number(double value, double least, double most, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        Require.AtLeast(value, least, "", parameter);
        return Require.AtMost(value, most, "", parameter);
    }

    /// <summary>An angle from 0 to <paramref name="mostDegrees"/>, in rad; the limits are said in degrees.</summary>
    public static double Angle(Angle value, double mostDegrees, [CallerArgumentExpression(nameof(value))] string parameter = "")
    {
        Require.AtLeast(value.Degrees, 0, "deg", parameter);
        Require.AtMost(value.Degrees, mostDegrees, "deg", parameter);
        return value.Radians;
    }
}
