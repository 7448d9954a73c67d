using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>Sine, cosine, tangent and their inverses: from an angle to a number and back, so that degrees are never taken for radians.</summary>
public static class Angles
{
    /// <summary>The sine of an angle.</summary>
    [Callable("Everyday", "What is the sine of an angle?")]
    [Formula("Sin(angle)")]
    [Source("Trigonometry", Standing.Derived)]
    [Example("Sin(30 deg)", "0.500000")]
    public static double Sin([Parameter("α", "°", "the angle")] Angle angle) => Math.Sin(Require.Finite(angle.Radians, nameof(angle)));

    /// <summary>The cosine of an angle.</summary>
    [Callable("Everyday", "What is the cosine of an angle?")]
    [Formula("Cos(angle)")]
    [Source("Trigonometry", Standing.Derived)]
    [Example("Cos(60 deg)", "0.500000")]
    public static double Cos([Parameter("α", "°", "the angle")] Angle angle) => Math.Cos(Require.Finite(angle.Radians, nameof(angle)));

    /// <summary>The tangent of an angle.</summary>
    /// <exception cref="DomainException">The angle is an odd multiple of 90°, where there is none.</exception>
    [Callable("Everyday", "What is the tangent of an angle?")]
    [Formula("Tan(angle)")]
    [Source("Trigonometry", Standing.Derived)]
    [Example("Tan(45 deg)", "1.00000")]
    public static double Tan([Parameter("α", "°", "the angle, no odd multiple of 90°")] Angle angle)
    {
        double radians = Require.Finite(angle.Radians, nameof(angle));
        if (Math.Abs(Math.Cos(radians)) < 1e-12) throw new DomainException("angle must not be an odd multiple of 90°: its tangent has no value there.", nameof(angle));
        return Math.Tan(radians);
    }

    /// <summary>The angle between −90° and 90° with that sine.</summary>
    /// <exception cref="DomainException">The sine is beyond ±1.</exception>
    [Callable("Everyday", "Which angle has this sine?")]
    [Formula("Asin(sine)")]
    [Source("Trigonometry", Standing.Derived)]
    [Example("Asin(0.5)", "30.0000 deg")]
    public static Angle Asin([Parameter("s", "", "the sine", AtLeast = -1, AtMost = 1)] double sine) =>
        Angle.FromRadians(Math.Asin(Require.AtMost(Require.AtLeast(sine, -1, "", nameof(sine)), 1, "", nameof(sine))));

    /// <summary>The angle between 0° and 180° with that cosine.</summary>
    /// <exception cref="DomainException">The cosine is beyond ±1.</exception>
    [Callable("Everyday", "Which angle has this cosine?")]
    [Formula("Acos(cosine)")]
    [Source("Trigonometry", Standing.Derived)]
    [Example("Acos(0.5)", "60.0000 deg")]
    public static Angle Acos([Parameter("c", "", "the cosine", AtLeast = -1, AtMost = 1)] double cosine) =>
        Angle.FromRadians(Math.Acos(Require.AtMost(Require.AtLeast(cosine, -1, "", nameof(cosine)), 1, "", nameof(cosine))));

    /// <summary>The angle between −90° and 90° with that tangent.</summary>
    [Callable("Everyday", "Which angle has this tangent?")]
    [Formula("Atan(tangent)")]
    [Source("Trigonometry", Standing.Derived)]
    [Example("Atan(1)", "45.0000 deg")]
    public static Angle Atan([Parameter("t", "", "the tangent")] double tangent) => Angle.FromRadians(Math.Atan(Require.Finite(tangent, nameof(tangent))));

    /// <summary>The angle from the first axis to the point with these two coordinates, between −180° and 180°.</summary>
    /// <typeparam name="T">A number or a quantity of any kind but a temperature; both of the same.</typeparam>
    /// <exception cref="DomainException">Both coordinates are zero, or their dimensions differ.</exception>
    [Callable("Everyday", "Which direction has a pair of components?")]
    [Formula("Atan2(y, x)")]
    [Source("Trigonometry", Standing.Derived)]
    [Example("Atan2(1 kN, 1 kN)", "45.0000 deg")]
    public static Angle Atan2<T>(
        [Parameter("y", "", "the component across the axis the angle is measured from")] T y,
        [Parameter("x", "", "the component along the axis the angle is measured from")] T x) where T : struct
    {
        SiOf<T>.RequireNoScale(nameof(Atan2), nameof(y));
        SiOf<T>.RequireSameDimension(y, x, nameof(x));
        double up = SiOf<T>.Read(y, nameof(y)), level = SiOf<T>.Read(x, nameof(x));
        if (up == 0 && level == 0) throw new DomainException("Two components of zero have no direction.", nameof(y));
        return Angle.FromRadians(Math.Atan2(up, level));
    }
}
