using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.ViscoElastic;

/// <summary>The moment the rope comes taut, in SI.</summary>
internal readonly record struct Start(double Mass, double Fall, double Length)
{
    /// <summary>Speed at that moment, in m/s.</summary>
    public double Speed => Math.Sqrt(2 * StandardGravity.MetresPerSecondSquared * Fall);

    /// <summary>Checks mass, fall and rope.</summary>
    public static Start Of(Mass mass, Length fall, Length ropeOut) =>
        new(Inputs.Mass(mass), Inputs.Distance(fall), Require.AtLeast(Inputs.RopeLength(ropeOut), 0.01, "m", nameof(ropeOut)));
}
