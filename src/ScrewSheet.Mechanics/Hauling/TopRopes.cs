using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Hauling;

/// <summary>Top rope, crevasse lip, hauling and rappel.</summary>
public static class TopRopes
{
    /// <summary>Force on a climber who falls on a top rope with slack; twice the weight on a taut rope.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Hauling, "How hard does a top rope pull on a climber who slips with this slack?", Assumes = "A rigid mass on a linear rope; fixed belay, no friction. Even without slack it is twice the weight.",
        NotFor = "The anchor's load, which is up to twice this (TopPieceLoad).")]
    [Let("w", "mass * gn", "N")]
    [Formula("w * (1 + Sqrt(1 + 2 * modulus * slack / (ropeOut * w)))", Symbol = "F")]
    [Example("TopRopeForce(80 kg, 20 kN, 20 m, 0.5 m)", "1967.75745 N")]
    [Source("(3.1) with f = s / L; zero-factor fall 2 m g in the " + Works.FallFactor, Standing.SecondHand)]
    public static Force TopRopeForce(
        [Parameter("m", "kg", "mass of the climber", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "rope modulus, all strands together", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 5, UsualTo = 200)] Force modulus,
        [Parameter("L", "m", "unstretched rope from climber over the anchor to the belayer", Above = 0, AtMost = Limits.LengthMetres)] Length ropeOut,
        [Parameter("s", "m", "slack", AtLeast = 0, AtMost = Limits.LengthMetres, UsualTo = 5)] Length slack)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        return Force.FromNewtons(ImpactForces.Elastic(w, Inputs.PositiveForce(modulus) * Inputs.Distance(slack) / Inputs.RopeLength(ropeOut)));
    }

    /// <summary>Force on those who hold a fallen partner when the rope bends over a lip.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Hauling, "How hard does a rope over a crevasse lip pull on those who hold it?", Assumes = "The rope slides toward the load; smooth round lip. A rope cut into snow can do much better.",
        NotFor = "Raising the load, which the same friction hinders (RaisingForce).")]
    [Formula("load * Exp(-friction * lipAngle)", Symbol = "T_hold")]
    [Example("LipHoldingForce(784.532 N, 0.2, 90 deg)", "573.024284 N")]
    [CautionWhen("friction > 0 && lipAngle > 0", "friction helps here; set 0 for design")]
    [Source(Works.Capstan + "; no measured lip force was found", Standing.Derived)]
    public static Force LipHoldingForce(
        [Parameter("T", "kN", "tension below the lip", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force load,
        [Parameter("μ", "", "friction coefficient between rope and lip", AtLeast = 0, AtMost = Limits.Friction, UsualTo = 0.3)] double friction,
        [Parameter("θ", "deg", "change of the rope's direction over the lip", AtLeast = 0, AtMost = 180, UsualTo = 90)] Angle lipAngle) =>
        Force.FromNewtons(Inputs.Tension(load) / Math.Exp(Inputs.Number(friction, 0, Limits.Friction) * Inputs.Angle(lipAngle, 180)));

    /// <summary>Load over hand force of a 3:1 haul with two wheels of that efficiency; a pure number from 1 to 3.</summary>
    /// <exception cref="DomainException">An efficiency outside 0 to 1.</exception>
    [Callable(Topics.Hauling, "What ratio does a 3:1 haul really have with wheels of this efficiency?", Assumes = "Two wheels alike, strands parallel, the load moving up.", NotFor = "Holding: standing still, friction helps.")]
    [Formula("1 + efficiency + efficiency * efficiency", Symbol = "i")]
    [Example("HaulRatioThreeToOne(0.9)", "2.71000000")]
    [Source("1 + e + e^2; sum of the strand tensions on the load", Standing.Derived)]
    public static double HaulRatioThreeToOne(
        [Parameter("e", "", "tension behind a wheel over tension before it; 1 without loss", AtLeast = 0, AtMost = 1, UsualFrom = 0.4)] double efficiency)
    {
        double e = Inputs.Number(efficiency, 0, 1);
        return 1 + e + (e * e);
    }

    /// <summary>Hand force that raises a mass with a haul of that ratio.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Hauling, "How hard must one pull to raise this mass?", Assumes = "The load hangs free and moves slowly up; losses are in the ratio.", NotFor = "A rope that rubs over a lip (RaisingForce first).")]
    [Formula("mass * gn / ratio", Symbol = "F_hand")]
    [Example("HaulingForce(80 kg, 2.71)", "289.495203 N")]
    [Source("w / ratio", Standing.Derived)]
    public static Force HaulingForce(
        [Parameter("m", "kg", "mass of the load", Above = 0, AtMost = Limits.MassKilograms, UsualTo = 300)] Mass mass,
        [Parameter("i", "", "load over hand force, losses included", AtLeast = 0.01, AtMost = 100, UsualFrom = 1, UsualTo = 9)] double ratio) =>
        Force.FromNewtons(Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared / Inputs.Number(ratio, 0.01, 100));

    /// <summary>Greatest measured anchor load of a rough rappel, scaled by mass from 2.6 kN at 86 kg.</summary>
    /// <exception cref="DomainException">The mass is outside its limits.</exception>
    [Callable(Topics.Hauling, "How hard can a rough rappel load the anchor?", Assumes = "In proportion to mass from the greatest value measured for 86 kg, 2.6 kN, by dropping onto the device or jerking.", NotFor = "A fall onto the anchor.")]
    [Formula("2600 * mass / 86", Symbol = "F")]
    [Example("RappelPeak(120 kg)", "3627.90698 N")]
    [Source("bergundsteigen, article on rope-joining knots: 86 kg, at most 2.6 kN; scaled there to 3.6 kN for 120 kg", Standing.Read)]
    public static Force RappelPeak(
        [Parameter("m", "kg", "mass of the person with load", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass) =>
        Force.FromNewtons(2600 * Inputs.Mass(mass) / 86);
}
