using UnitsNet;

namespace ScrewSheet.Quantities;

// One line for each of UnnamedTypes.
public readonly partial record struct Quantity
{
    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(AreaDensity value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(BrakeSpecificFuelConsumption value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(Entropy value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(HeatFlux value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(Jerk value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(KinematicViscosity value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(MassFlow value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(MassFlux value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(PressureChangeRate value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(Ratio value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(ReciprocalArea value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(ReciprocalLength value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(RotationalStiffness value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(RotationalStiffnessPerLength value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(SpecificEnergy value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(SpecificEntropy value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(TemperatureChangeRate value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(TemperatureGradient value) => From(value);

    /// <summary>The value in coherent SI with its dimension.</summary>
    public static implicit operator Quantity(VolumeFlow value) => From(value);
}
