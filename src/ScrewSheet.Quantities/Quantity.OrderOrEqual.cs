using UnitsNet;

namespace ScrewSheet.Quantities;

// One pair of lines for each kind of QuantityKinds but Temperature. They are written out because the compiler,
// with conversions both ways, finds an operator only where both operands fit exactly.
public readonly partial record struct Quantity
{
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Force right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Force left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Force right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Force left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Length right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Length left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Length right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Length left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Area right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Area left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Area right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Area left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Volume right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Volume left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Volume right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Volume left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, AreaMomentOfInertia right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(AreaMomentOfInertia left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, AreaMomentOfInertia right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(AreaMomentOfInertia left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Pressure right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Pressure left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Pressure right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Pressure left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Torque right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Torque left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Torque right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Torque left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Energy right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Energy left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Energy right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Energy left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Mass right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Mass left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Mass right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Mass left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Density right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Density left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Density right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Density left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, LinearDensity right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(LinearDensity left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, LinearDensity right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(LinearDensity left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, ForcePerLength right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(ForcePerLength left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, ForcePerLength right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(ForcePerLength left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, SpecificWeight right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(SpecificWeight left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, SpecificWeight right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(SpecificWeight left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Speed right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Speed left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Speed right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Speed left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Acceleration right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Acceleration left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Acceleration right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Acceleration left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Duration right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Duration left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Duration right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Duration left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Frequency right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Frequency left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Frequency right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Frequency left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, RotationalSpeed right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(RotationalSpeed left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, RotationalSpeed right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(RotationalSpeed left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Power right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Power left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Power right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Power left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, MassMomentOfInertia right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(MassMomentOfInertia left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, MassMomentOfInertia right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(MassMomentOfInertia left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, RotationalAcceleration right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(RotationalAcceleration left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, RotationalAcceleration right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(RotationalAcceleration left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, DynamicViscosity right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(DynamicViscosity left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, DynamicViscosity right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(DynamicViscosity left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, Angle right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Angle left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, Angle right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Angle left, Quantity right) => (Quantity)left >= right;

    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(Quantity left, TemperatureDelta right) => left <= (Quantity)right;
    /// <summary>True when less, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator <=(TemperatureDelta left, Quantity right) => (Quantity)left <= right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(Quantity left, TemperatureDelta right) => left >= (Quantity)right;
    /// <summary>True when greater, or equal within 1e-12 relative; both of one dimension.</summary>
    public static bool operator >=(TemperatureDelta left, Quantity right) => (Quantity)left >= right;
}
