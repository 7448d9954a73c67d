using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Falls;

/// <summary>The standard equation for impact force in its equivalent forms.</summary>
public static class ImpactForces
{
    private const string Rigid = "A rigid mass on a linear rope; fixed belay, no friction at pieces, first loading; rope mass and knots ignored.";
    private const string AboveTwo = "Above fall factor 2 the result is only a formal bound for a dynamic rope.";

    /// <summary>Peak rope tension on the climber's side, from rope modulus (above 0, up to 10⁶ kN) and fall factor (0 to 1000).</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "How hard does the rope pull on a climber who falls with this fall factor?", Assumes = Rigid,
        NotFor = "What a person's body feels in a short slip (it gives way, a rigid mass does not), or a rope modulus taken from static elongation.")]
    [Let("w", "mass * gn", "N")]
    [Formula("w * (1 + Sqrt(1 + 2 * modulus * fallFactor / w))", Symbol = "F")]
    [Example("ImpactForce(80 kg, 20 kN, 1)", "6441.10079 N")]
    [CautionWhen("fallFactor > 2", AboveTwo)]
    [Source(Works.Wexler, Standing.FromMemory)]
    [Source(Works.Goldstone, Standing.SecondHand)]
    [Source(Works.ChocForce, Standing.Read)]
    public static Force ImpactForce(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "rope modulus E A: force per unit relative stretch, all strands together (not N/m, not Pa)", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 5, UsualTo = 200)] Force modulus,
        [Parameter("f", "", "fall factor", AtLeast = 0, AtMost = Limits.FallFactor)] double fallFactor)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        double f = Inputs.Number(fallFactor, 0, Limits.FallFactor);
        return Force.FromNewtons(Elastic(w, Inputs.PositiveForce(modulus) * f));
    }

    /// <summary>Peak force of a mass that falls onto any linear spring, from spring rate and fall height.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "How hard does a spring of this rate pull on a mass that falls this far before it tightens?", Assumes = Rigid,
        NotFor = "A rope modulus in N: divide it by the rope's length first (RopeSpringRate).")]
    [Let("w", "mass * gn", "N")]
    [Formula("w + Sqrt(w * w + 2 * w * stiffness * fall)", Symbol = "F")]
    [Example("ImpactForceOnSpring(80 kg, 9.5492599 kN/m, 2 m)", "6314.65771 N")]
    [Source("F = w + sqrt(w^2 + 2 w k h); " + Works.FallFactor, Standing.SecondHand)]
    public static Force ImpactForceOnSpring(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("k", "kN/m", "spring rate of everything that gives way, in series", Above = 0, AtMost = Limits.StiffnessKilonewtonsPerMetre)] ForcePerLength stiffness,
        [Parameter("h", "m", "free-fall height before the spring tightens", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        return Force.FromNewtons(Elastic(w, Inputs.Stiffness(stiffness) * Inputs.Distance(fall)));
    }

    /// <summary>Peak force from the greatest relative stretch instead of the rope modulus.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "How hard did the rope pull, if its greatest stretch is known?", Assumes = Rigid,
        NotFor = "The mean stopping force, which is half of it (MeanStoppingForce).")]
    [Let("w", "mass * gn", "N")]
    [Formula("2 * w * (1 + fallFactor / relativeStretch)", Symbol = "F")]
    [Example("ImpactForceFromStretch(80 kg, 1, 0.3)", "6799.27733 N")]
    [CautionWhen("fallFactor > 2", AboveTwo)]
    [Source("F = 2 w (1 + f/eps); rearranged from " + Works.Goldstone, Standing.Derived)]
    public static Force ImpactForceFromStretch(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("f", "", "fall factor", AtLeast = 0, AtMost = Limits.FallFactor)] double fallFactor,
        [Parameter("ε", "", "greatest stretch over unstretched length", AtLeast = 1e-6, AtMost = 10, UsualFrom = 0.02, UsualTo = 0.5)] double relativeStretch) =>
        Force.FromNewtons(2 * MeanForce(mass, fallFactor, relativeStretch));

    /// <summary>Mean force along the stretch while a fall is stopped; half the peak of a linear rope.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "What is the mean force while a fall is stopped within this stretch?", Assumes = "Energy balance alone: any rope, mean over the stretch (not over time).",
        NotFor = "The peak force; a linear rope peaks at twice the mean.")]
    [Let("w", "mass * gn", "N")]
    [Formula("w * (1 + fallFactor / relativeStretch)", Symbol = "F_mean")]
    [Example("MeanStoppingForce(80 kg, 1, 0.3)", "3399.63867 N")]
    [Source("w (h + x) / x; energy balance", Standing.Derived)]
    public static Force MeanStoppingForce(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("f", "", "fall factor", AtLeast = 0, AtMost = Limits.FallFactor)] double fallFactor,
        [Parameter("ε", "", "greatest stretch over unstretched length", AtLeast = 1e-6, AtMost = 10, UsualFrom = 0.02, UsualTo = 0.5)] double relativeStretch) =>
        Force.FromNewtons(MeanForce(mass, fallFactor, relativeStretch));

    /// <summary>Peak force in N from weight in N and the product of stiffness and fall in N; 2 w for none.</summary>
    internal static double Elastic(double w, double stiffnessTimesFall) => w * (1 + Math.Sqrt(1 + (2 * stiffnessTimesFall / w)));

    private static double MeanForce(Mass mass, double fallFactor, double relativeStretch)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        return w * (1 + (Inputs.Number(fallFactor, 0, Limits.FallFactor) / Inputs.Number(relativeStretch, 1e-6, 10)));
    }
}
