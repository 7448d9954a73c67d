using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Friction;

/// <summary>A fall held over pieces with friction, at its peak.</summary>
[SheetRecord("a fall held over pieces with friction, at its peak")]
public readonly record struct DraggedFall
{
    /// <summary>Length of frictionless rope as stiff for the climber.</summary>
    [Member("L_eff", "m", "length of frictionless rope as stiff for the climber")]
    public Length EffectiveLength { get; init; }

    /// <summary>Fall height over all the rope.</summary>
    [Member("f", "", "fall height over all the rope")]
    public double FallFactor { get; init; }

    /// <summary>Fall height over effective length.</summary>
    [Member("f_eff", "", "fall height over effective length")]
    public double EffectiveFallFactor { get; init; }

    /// <summary>Peak tension on the climber.</summary>
    [Member("T0", "N", "peak tension on the climber")]
    public Force ClimberForce { get; init; }

    /// <summary>Tension on the belayer at that moment.</summary>
    [Member("Tn", "N", "tension on the belayer at that moment")]
    public Force BelayerForce { get; init; }

    /// <summary>Load on the first piece from the climber; 0 where there is none.</summary>
    [Member("R", "N", "load on the first piece from the climber, its strands at 180° less its wrap; 0 where there is none")]
    public Force TopPieceForce { get; init; }

    /// <summary>How far the climber sinks while the rope stretches.</summary>
    [Member("x", "m", "how far the climber sinks while the rope stretches")]
    public Length Stretch { get; init; }

    /// <summary>Work of the weight down to the peak.</summary>
    [Member("E", "J", "work of the weight down to the peak: rope energy and friction energy together")]
    public Energy FallEnergy { get; init; }

    /// <summary>Energy in the stretched rope.</summary>
    [Member("E_rope", "J", "energy in the stretched rope")]
    public Energy RopeEnergy { get; init; }

    /// <summary>Energy lost at the pieces.</summary>
    [Member("E_friction", "J", "energy lost at the pieces")]
    public Energy FrictionEnergy { get; init; }
}
