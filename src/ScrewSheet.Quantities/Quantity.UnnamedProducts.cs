using UnitsNet;

namespace ScrewSheet.Quantities;

// One pair of products and quotients for each of UnnamedTypes.
public readonly partial record struct Quantity
{
    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, AreaDensity right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(AreaDensity left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, AreaDensity right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(AreaDensity left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, BrakeSpecificFuelConsumption right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(BrakeSpecificFuelConsumption left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, BrakeSpecificFuelConsumption right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(BrakeSpecificFuelConsumption left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, Entropy right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(Entropy left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, Entropy right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Entropy left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, HeatFlux right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(HeatFlux left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, HeatFlux right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(HeatFlux left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, Jerk right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(Jerk left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, Jerk right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Jerk left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, KinematicViscosity right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(KinematicViscosity left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, KinematicViscosity right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(KinematicViscosity left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, MassFlow right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(MassFlow left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, MassFlow right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(MassFlow left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, MassFlux right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(MassFlux left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, MassFlux right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(MassFlux left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, PressureChangeRate right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(PressureChangeRate left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, PressureChangeRate right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(PressureChangeRate left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, Ratio right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(Ratio left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, Ratio right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Ratio left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, ReciprocalArea right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(ReciprocalArea left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, ReciprocalArea right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(ReciprocalArea left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, ReciprocalLength right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(ReciprocalLength left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, ReciprocalLength right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(ReciprocalLength left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, RotationalStiffness right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(RotationalStiffness left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, RotationalStiffness right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(RotationalStiffness left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, RotationalStiffnessPerLength right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(RotationalStiffnessPerLength left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, RotationalStiffnessPerLength right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(RotationalStiffnessPerLength left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, SpecificEnergy right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(SpecificEnergy left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, SpecificEnergy right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(SpecificEnergy left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, SpecificEntropy right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(SpecificEntropy left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, SpecificEntropy right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(SpecificEntropy left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, TemperatureChangeRate right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(TemperatureChangeRate left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, TemperatureChangeRate right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(TemperatureChangeRate left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, TemperatureGradient right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(TemperatureGradient left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, TemperatureGradient right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(TemperatureGradient left, Quantity right) => From(left) / right;

    /// <summary>The product.</summary>
    public static Quantity operator *(Quantity left, VolumeFlow right) => left * From(right);
    /// <summary>The product.</summary>
    public static Quantity operator *(VolumeFlow left, Quantity right) => From(left) * right;
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(Quantity left, VolumeFlow right) => left / From(right);
    /// <summary>The quotient; dividing by zero throws.</summary>
    public static Quantity operator /(VolumeFlow left, Quantity right) => From(left) / right;
}
