using UnitsNet;

namespace ScrewSheet.Quantities;

// One pair of lines for each kind of QuantityKinds but Temperature. They are written out because the compiler,
// with conversions both ways, finds an operator only where both operands fit exactly.
public readonly partial record struct Quantity
{
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Force right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Force left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Force right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Force left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Length right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Length left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Length right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Length left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Area right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Area left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Area right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Area left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Volume right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Volume left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Volume right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Volume left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, AreaMomentOfInertia right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(AreaMomentOfInertia left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, AreaMomentOfInertia right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(AreaMomentOfInertia left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Pressure right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Pressure left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Pressure right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Pressure left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Torque right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Torque left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Torque right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Torque left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Energy right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Energy left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Energy right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Energy left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Mass right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Mass left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Mass right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Mass left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Density right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Density left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Density right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Density left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, LinearDensity right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(LinearDensity left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, LinearDensity right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(LinearDensity left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, ForcePerLength right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(ForcePerLength left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, ForcePerLength right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(ForcePerLength left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, SpecificWeight right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(SpecificWeight left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, SpecificWeight right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(SpecificWeight left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Speed right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Speed left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Speed right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Speed left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Acceleration right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Acceleration left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Acceleration right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Acceleration left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Duration right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Duration left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Duration right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Duration left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Frequency right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Frequency left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Frequency right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Frequency left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, RotationalSpeed right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(RotationalSpeed left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, RotationalSpeed right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(RotationalSpeed left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Power right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Power left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Power right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Power left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, MassMomentOfInertia right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(MassMomentOfInertia left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, MassMomentOfInertia right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(MassMomentOfInertia left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, RotationalAcceleration right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(RotationalAcceleration left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, RotationalAcceleration right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(RotationalAcceleration left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, DynamicViscosity right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(DynamicViscosity left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, DynamicViscosity right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(DynamicViscosity left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, Angle right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Angle left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, Angle right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Angle left, Quantity right) => (Quantity)left - right;

    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(Quantity left, TemperatureDelta right) => left + (Quantity)right;
    /// <summary>The sum; both of one dimension.</summary>
    public static Quantity operator +(TemperatureDelta left, Quantity right) => (Quantity)left + right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(Quantity left, TemperatureDelta right) => left - (Quantity)right;
    /// <summary>The difference; both of one dimension.</summary>
    public static Quantity operator -(TemperatureDelta left, Quantity right) => (Quantity)left - right;
}
