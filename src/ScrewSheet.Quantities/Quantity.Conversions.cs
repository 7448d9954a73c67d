using UnitsNet;

namespace ScrewSheet.Quantities;

// One pair of lines for each kind of QuantityKinds but Temperature: a point on a scale is no factor, and no factor is a point on a scale.
public readonly partial record struct Quantity
{
    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Force value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Force(Quantity value) => value.To<Force>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Length value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Length(Quantity value) => value.To<Length>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Area value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Area(Quantity value) => value.To<Area>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Volume value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Volume(Quantity value) => value.To<Volume>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(AreaMomentOfInertia value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator AreaMomentOfInertia(Quantity value) => value.To<AreaMomentOfInertia>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Pressure value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Pressure(Quantity value) => value.To<Pressure>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Torque value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Torque(Quantity value) => value.To<Torque>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Energy value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Energy(Quantity value) => value.To<Energy>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Mass value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Mass(Quantity value) => value.To<Mass>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Density value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Density(Quantity value) => value.To<Density>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(LinearDensity value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator LinearDensity(Quantity value) => value.To<LinearDensity>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(ForcePerLength value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator ForcePerLength(Quantity value) => value.To<ForcePerLength>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(SpecificWeight value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator SpecificWeight(Quantity value) => value.To<SpecificWeight>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Speed value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Speed(Quantity value) => value.To<Speed>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Acceleration value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Acceleration(Quantity value) => value.To<Acceleration>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Duration value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Duration(Quantity value) => value.To<Duration>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Frequency value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Frequency(Quantity value) => value.To<Frequency>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(RotationalSpeed value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator RotationalSpeed(Quantity value) => value.To<RotationalSpeed>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Power value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Power(Quantity value) => value.To<Power>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(MassMomentOfInertia value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator MassMomentOfInertia(Quantity value) => value.To<MassMomentOfInertia>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(RotationalAcceleration value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator RotationalAcceleration(Quantity value) => value.To<RotationalAcceleration>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(DynamicViscosity value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator DynamicViscosity(Quantity value) => value.To<DynamicViscosity>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(Angle value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator Angle(Quantity value) => value.To<Angle>();

    /// <summary>Forgets the name; the value in coherent SI stays.</summary>
    public static implicit operator Quantity(TemperatureDelta value) => OfNamed(value);
    /// <summary>Gives the name; throws <see cref="InvalidCastException"/> where the dimension differs.</summary>
    public static implicit operator TemperatureDelta(Quantity value) => value.To<TemperatureDelta>();
}
