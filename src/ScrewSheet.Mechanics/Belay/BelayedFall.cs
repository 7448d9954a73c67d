using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Belay;

/// <summary>A fall held by a belay that may slip: peak, drop, and where the energy went.</summary>
[SheetRecord("a fall held by a belay that may slip: peak, drop, and where the energy went")]
public readonly record struct BelayedFall
{
    /// <summary>Peak tension on the climber.</summary>
    [Member("F", "N", "peak tension on the climber")]
    public Force PeakForce { get; init; }

    /// <summary>Tension on the belayer's side at the peak.</summary>
    [Member("T_b", "N", "tension on the belayer's side at the peak")]
    public Force BelayerForce { get; init; }

    /// <summary>Tension on the climber's side at which the belay slips.</summary>
    [Member("T_c", "N", "tension on the climber's side at which the belay slips")]
    public Force SlipLimit { get; init; }

    /// <summary>How far the climber sinks by stretch.</summary>
    [Member("x", "m", "how far the climber sinks by stretch of the rope")]
    public Length Stretch { get; init; }

    /// <summary>How far the climber sinks by slip, 0 where the belay does not slip.</summary>
    [Member("s", "m", "how far the climber sinks by slip of the belay; 0 where it does not slip")]
    public Length Slip { get; init; }

    /// <summary>Unstretched rope that runs through the device.</summary>
    [Member("s_0", "m", "rope through the device, measured slack")]
    public Length RopeThroughDevice { get; init; }

    /// <summary>Free fall, stretch and slip together.</summary>
    [Member("H", "m", "free fall, stretch and slip together")]
    public Length TotalDrop { get; init; }

    /// <summary>Work of the weight over the total drop.</summary>
    [Member("E", "J", "work of the weight over the total drop; the three energies below together")]
    public Energy FallEnergy { get; init; }

    /// <summary>Energy in the rope, with the friction at the pieces while it stretches.</summary>
    [Member("E_rope", "J", "energy in the rope and in friction at the pieces while it stretches")]
    public Energy RopeEnergy { get; init; }

    /// <summary>Energy turned to heat in the belay device while slipping.</summary>
    [Member("E_device", "J", "energy turned to heat in the belay device while it slips")]
    public Energy DeviceEnergy { get; init; }

    /// <summary>Energy turned to heat at the pieces while slipping.</summary>
    [Member("E_pieces", "J", "energy turned to heat at the pieces while the belay slips")]
    public Energy PiecesEnergy { get; init; }
}
