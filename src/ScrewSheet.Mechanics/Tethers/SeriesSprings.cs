using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tethers;

/// <summary>Compliances one behind the other: tether, anchor, body.</summary>
public static class SeriesSprings
{
    private const string Rigid = "a rigid part is left out of the series, or written as 1e12 kN/m";

    /// <summary>Spring rate of two springs in series.</summary>
    /// <exception cref="DomainException">A rate is 0, negative or beyond 10¹² kN/m.</exception>
    [Callable(Topics.Tethers, "How stiff are two springs one behind the other?", Assumes = "Both carry the same force; " + Rigid + ".", NotFor = "Springs side by side, whose rates add.")]
    [Formula("1 / (1 / first + 1 / second)", Symbol = "k")]
    [Example("TwoSpringsInSeries(200 kN/m, 60 kN/m)", "46153.8462 N/m")]
    [Source("1/k = 1/k1 + 1/k2; springs in series", Standing.Derived)]
    public static ForcePerLength TwoSpringsInSeries(
        [Parameter("k1", "kN/m", "one spring rate", Above = 0, AtMost = Limits.StiffnessKilonewtonsPerMetre)] ForcePerLength first,
        [Parameter("k2", "kN/m", "the other", Above = 0, AtMost = Limits.StiffnessKilonewtonsPerMetre)] ForcePerLength second) =>
        ForcePerLength.FromNewtonsPerMeter(1 / ((1 / Inputs.Stiffness(first)) + (1 / Inputs.Stiffness(second))));

    /// <summary>Spring rate of any number of springs in series; rigid parts are left out.</summary>
    /// <exception cref="DomainException">A rate is 0, negative or beyond 10¹² kN/m, or there is none.</exception>
    [Callable(Topics.Tethers, "How stiff is a chain of springs?", Assumes = "All carry the same force; " + Rigid + ".", NotFor = "Springs side by side, whose rates add.")]
    [NoFormula("One over the sum of one over each rate.")]
    [Example("SpringsInSeries(Values(12.0404331 kN/m, 200 kN/m, 60 kN/m))", "9549.25989 N/m")]
    [Source("1/k = sum of 1/k_i; springs in series", Standing.Derived)]
    public static ForcePerLength SpringsInSeries(
        [Parameter("k", "kN/m", "spring rates, in any order", Above = 0, AtMost = Limits.StiffnessKilonewtonsPerMetre)] Series<ForcePerLength> springs)
    {
        ArgumentNullException.ThrowIfNull(springs);
        if (springs.Count == 0) throw new DomainException("springs must have at least 1 spring rate; it is empty.", nameof(springs));
        double compliance = 0;
        foreach (double spring in springs.Si) compliance += 1 / Inputs.Stiffness(ForcePerLength.FromNewtonsPerMeter(spring), nameof(springs));
        return ForcePerLength.FromNewtonsPerMeter(1 / compliance);
    }

    /// <summary>Spring rate of a tether with the give of its anchor and of the body in the harness.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Tethers, "How stiff is a tether together with anchor and body?", Assumes = "All carry the same force; a rigid anchor or body is written as 1e12 kN/m.", NotFor = "Slings that stiffen under load: one modulus does not fit them.")]
    [Formula("1 / (tetherLength / modulus + 1 / anchorStiffness + 1 / bodyStiffness)", Symbol = "k")]
    [Example("TetherStiffness(24.0808663 kN, 2 m, 200 kN/m, 60 kN/m)", "9549.25993 N/m")]
    [Source("1/k = L/K + 1/k_anchor + 1/k_body; springs in series", Standing.Derived)]
    public static ForcePerLength TetherStiffness(
        [Parameter("K", "kN", "modulus of the tether", Above = 0, AtMost = Limits.ForceKilonewtons)] Force modulus,
        [Parameter("L", "m", "unstretched length of the tether", Above = 0, AtMost = Limits.LengthMetres)] Length tetherLength,
        [Parameter("k_a", "kN/m", "spring rate of the anchor; 1e12 for rigid", Above = 0, AtMost = Limits.StiffnessKilonewtonsPerMetre)] ForcePerLength anchorStiffness,
        [Parameter("k_b", "kN/m", "spring rate of body and harness; 1e12 for a rigid mass", Above = 0, AtMost = Limits.StiffnessKilonewtonsPerMetre)] ForcePerLength bodyStiffness) =>
        ForcePerLength.FromNewtonsPerMeter(Chain(modulus, tetherLength, anchorStiffness, bodyStiffness));

    /// <summary>Peak force of a fall onto a tether with the give of anchor and body.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Tethers, "How hard does a tether pull when anchor and body give way too?", Assumes = "Linear springs in series, a mass falling freely; a rigid anchor or body is written as 1e12 kN/m.", NotFor = "Slings that stiffen under load: one modulus does not fit them.")]
    [Let("w", "mass * gn", "N")]
    [Let("k", "1 / (tetherLength / modulus + 1 / anchorStiffness + 1 / bodyStiffness)", "N/m")]
    [Formula("w * (1 + Sqrt(1 + 2 * k * fall / w))", Symbol = "F")]
    [Example("TetherForce(80 kg, 24.0808663 kN, 2 m, 2 m, 200 kN/m, 60 kN/m)", "6314.65771 N")]
    [CautionWhen("fall > 2 * tetherLength", "Fall factor above 2, as on a fixed cable: a plain tether must not be used there, an energy absorber is needed.")]
    [Source("(3.1) with springs in series, energy balance", Standing.Derived)]
    public static Force TetherForce(
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("K", "kN", "modulus of the tether", Above = 0, AtMost = Limits.ForceKilonewtons)] Force modulus,
        [Parameter("L", "m", "unstretched length of the tether", Above = 0, AtMost = Limits.LengthMetres)] Length tetherLength,
        [Parameter("h", "m", "free-fall height before the tether tightens", AtLeast = 0, AtMost = Limits.LengthMetres)] Length fall,
        [Parameter("k_a", "kN/m", "spring rate of the anchor; 1e12 for rigid", Above = 0, AtMost = Limits.StiffnessKilonewtonsPerMetre)] ForcePerLength anchorStiffness,
        [Parameter("k_b", "kN/m", "spring rate of body and harness; 1e12 for a rigid mass", Above = 0, AtMost = Limits.StiffnessKilonewtonsPerMetre)] ForcePerLength bodyStiffness)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        double k = Chain(modulus, tetherLength, anchorStiffness, bodyStiffness);
        return Force.FromNewtons(ImpactForces.Elastic(w, k * Inputs.Distance(fall)));
    }

    private static double Chain(Force modulus, Length tetherLength, ForcePerLength anchorStiffness, ForcePerLength bodyStiffness) =>
        1 / ((Inputs.RopeLength(tetherLength) / Inputs.PositiveForce(modulus)) + (1 / Inputs.Stiffness(anchorStiffness)) + (1 / Inputs.Stiffness(bodyStiffness)));
}
