using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.ViscoElastic;

/// <summary>First loading of a visco-elastic rope by a fall; times are counted from the rope just taut.</summary>
[SheetRecord("first loading of a visco-elastic rope by a fall; times from the rope just taut")]
public readonly record struct ViscoElasticFall
{
    /// <summary>Greatest tension.</summary>
    [Member("F", "N", "greatest tension of the first loading")]
    public Force PeakForce { get; init; }

    /// <summary>When it occurs.</summary>
    [Member("t_F", "s", "time of the greatest tension")]
    public Duration PeakTime { get; init; }

    /// <summary>Greatest stretch of the first loading.</summary>
    [Member("x", "m", "greatest stretch of the first loading, where the climber first comes to rest; a rope that creeps may stretch further later")]
    public Length MaxStretch { get; init; }

    /// <summary>When it occurs.</summary>
    [Member("t_x", "s", "time of the greatest stretch")]
    public Duration StretchTime { get; init; }

    /// <summary>Tension as the rope comes taut.</summary>
    [Member("F(0)", "N", "tension as the rope comes taut: 0 but for a Kelvin-Voigt rope, where the model jumps")]
    public Force StartForce { get; init; }

    /// <summary>Tension at the greatest stretch.</summary>
    [Member("F_x", "N", "tension at the greatest stretch")]
    public Force ForceAtMaxStretch { get; init; }

    /// <summary>Work of the weight down to the greatest stretch.</summary>
    [Member("E", "J", "work of the weight down to the greatest stretch")]
    public Energy FallEnergy { get; init; }

    /// <summary>Energy in the springs at the greatest stretch.</summary>
    [Member("E_s", "J", "energy in the springs at the greatest stretch")]
    public Energy StoredEnergy { get; init; }

    /// <summary>Part of the fall energy already turned to heat, 0 to 1.</summary>
    [Member("η", "", "part of the fall energy turned to heat by then, 0 to 1")]
    public double DissipatedFraction { get; init; }
}
