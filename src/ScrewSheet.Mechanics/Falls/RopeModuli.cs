using System.Globalization;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Falls;

/// <summary>The rope modulus and what a certificate predicts.</summary>
public static class RopeModuli
{
    /// <summary>Fall factor of the standard drop where its lengths are counted from the deflection edge, 4.6 m on 2.6 m.</summary>
    internal const double StandardDropFallFactor = 1.77;

    /// <summary>Rope modulus from the certified peak force, which must exceed twice the test weight.</summary>
    /// <exception cref="DomainException">A value is outside its limits, or the certified force is no more than twice the test weight.</exception>
    [Callable(Topics.Impact, "What rope modulus belongs to the peak force on the rope's certificate?",
        Assumes = "A linear rope, a fixed belay and no edge friction in the certified drop; 1.77 is the fall factor counted from the edge (4.6 m on 2.6 m), other texts count 1.71 for the same drop.",
        NotFor = "A peak force from a static test, or the strength of the rope: the certified peak is no breaking load.")]
    [Let("w", "testMass * gn", "N")]
    [Needs("certifiedPeak > 2 * w")]
    [Formula("certifiedPeak * (certifiedPeak - 2 * w) / (2 * w * testFallFactor)", Symbol = "K")]
    [Example("RopeModulus(9 kN, 80 kg)", "24080.8663 N")]
    [Source("(4.1), the impact force solved for K with the test data of the " + Works.FallFactor, Standing.Derived)]
    public static Force RopeModulus(
        [Parameter("F0", "kN", "certified peak force of the first drop", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 4, UsualTo = 12)] Force certifiedPeak,
        [Parameter("m0", "kg", "mass in that drop: 80 kg single and twin, 55 kg half rope", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 55, UsualTo = 100)] Mass testMass,
        [Parameter("f0", "", "fall factor of that drop", Above = 0, AtMost = Limits.FallFactor, UsualFrom = 0.3, UsualTo = 2)] double testFallFactor = StandardDropFallFactor)
    {
        double w = Inputs.Mass(testMass) * StandardGravity.MetresPerSecondSquared;
        double f = TestFallFactor(testFallFactor);
        return Force.FromNewtons(ModulusTimesFallFactor(certifiedPeak, w) / f);
    }

    /// <summary>Peak force of another fall directly from the certified values, rope modulus eliminated.</summary>
    /// <exception cref="DomainException">A value is outside its limits, or the certified force is no more than twice the test weight.</exception>
    [Callable(Topics.Impact, "What peak force does a certified rope give for another mass and fall factor?",
        Assumes = "A linear rope, fixed belay, no friction; the same number of strands as in the certified drop.",
        NotFor = "More or fewer strands than were certified.")]
    [Let("w", "mass * gn", "N")]
    [Let("w0", "testMass * gn", "N")]
    [Needs("certifiedPeak > 2 * w0")]
    [Formula("w + Sqrt(w * w + certifiedPeak * (certifiedPeak - 2 * w0) * (w / w0) * (fallFactor / testFallFactor))", Symbol = "F")]
    [Example("ImpactForceFromCertificate(9 kN, 80 kg, 95 kg, 0.5)", "5758.89156 N")]
    [CautionWhen("Abs(mass - testMass) > 0.01 * testMass", "For another mass than the certified one a linear rope is right only to about 10 % either way.")]
    [CautionWhen("fallFactor > 2", "Above fall factor 2 the result is only a formal bound for a dynamic rope.")]
    [Source("(4.2), K eliminated from (3.1) and (4.1) as described in the " + Works.FallFactor, Standing.Derived)]
    public static Force ImpactForceFromCertificate(
        [Parameter("F0", "kN", "certified peak force of the first drop", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 4, UsualTo = 12)] Force certifiedPeak,
        [Parameter("m0", "kg", "mass in that drop: 80 kg single and twin, 55 kg half rope", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 55, UsualTo = 100)] Mass testMass,
        [Parameter("m", "kg", "mass of the faller", Above = 0, AtMost = Limits.MassKilograms, UsualFrom = 30, UsualTo = 150)] Mass mass,
        [Parameter("f", "", "fall factor of the fall", AtLeast = 0, AtMost = Limits.FallFactor)] double fallFactor,
        [Parameter("f0", "", "fall factor of the certified drop", Above = 0, AtMost = Limits.FallFactor, UsualFrom = 0.3, UsualTo = 2)] double testFallFactor = StandardDropFallFactor)
    {
        double w = Inputs.Mass(mass) * StandardGravity.MetresPerSecondSquared;
        double w0 = Inputs.Mass(testMass) * StandardGravity.MetresPerSecondSquared;
        double severity = Inputs.Number(fallFactor, 0, Limits.FallFactor) / TestFallFactor(testFallFactor);
        return Force.FromNewtons(ImpactForces.Elastic(w, ModulusTimesFallFactor(certifiedPeak, w0) * severity));
    }

    /// <summary>Chord of the force–stretch curve between two hanging masses, from the elongation between them as a number (8 % is 0.08).</summary>
    /// <exception cref="DomainException">A value is outside its limits, or the masses are not in order.</exception>
    [Callable(Topics.Impact, "What modulus does a static elongation between two hanging masses stand for?",
        Assumes = "The chord of the force–stretch curve between the two loads.",
        NotFor = "The impact force: static elongation lies in the soft low end of the curve and predicts far too little.")]
    [Needs("lowerMass < upperMass")]
    [Formula("(upperMass - lowerMass) * gn / elongation", Symbol = "K_static")]
    [Example("StaticRopeModulus(50 kg, 150 kg, 5 %)", "19613.3000 N")]
    [CautionWhen("true", "Do not use a static modulus for an impact force; take RopeModulus from the certified peak force.")]
    [Source("slope from EN 1891 elongation, 50 kg to 150 kg; definition of modulus", Standing.Derived)]
    public static Force StaticRopeModulus(
        [Parameter("m1", "kg", "mass from which the elongation is counted; 0 for none", AtLeast = 0, AtMost = Limits.MassKilograms)] Mass lowerMass,
        [Parameter("m2", "kg", "mass to which it is counted, above the first", Above = 0, AtMost = Limits.MassKilograms)] Mass upperMass,
        [Parameter("ε", "", "elongation between the two, over the unloaded length", AtLeast = 1e-6, AtMost = 10, UsualFrom = 0.01, UsualTo = 0.15)] double elongation)
    {
        double lower = Require.AtMost(Require.AtLeast(lowerMass.Kilograms, 0, "kg", nameof(lowerMass)), Limits.MassKilograms, "kg", nameof(lowerMass));
        double upper = Require.Above(Inputs.Mass(upperMass), lower, "kg", nameof(upperMass));
        return Force.FromNewtons((upper - lower) * StandardGravity.MetresPerSecondSquared / Inputs.Number(elongation, 1e-6, 10));
    }

    /// <summary>Spring rate of a piece of rope.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "What spring rate does this length of rope have?", NotFor = "Confusing with the modulus: the modulus is a force, the rate a force per length.")]
    [Formula("modulus / ropeLength", Symbol = "k")]
    [Example("RopeSpringRate(20 kN, 20 m)", "1000.00000 N/m")]
    [Source("k = K / L; " + Works.Goldstone, Standing.Read)]
    public static ForcePerLength RopeSpringRate(
        [Parameter("K", "kN", "rope modulus, all strands together", Above = 0, AtMost = Limits.ForceKilonewtons)] Force modulus,
        [Parameter("L", "m", "unstretched length", AtLeast = 0.01, AtMost = Limits.LengthMetres)] Length ropeLength) =>
        ForcePerLength.FromNewtonsPerMeter(Inputs.PositiveForce(modulus) / Require.AtLeast(Inputs.RopeLength(ropeLength), 0.01, "m", nameof(ropeLength)));

    /// <summary>Relative stretch under a tension; a pure number.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "By what part of its length does the rope stretch under this tension?", Assumes = "A linear rope.",
        NotFor = "Certified elongation: a linear rope stretches more than ropes are measured to.")]
    [Formula("tension / modulus", Symbol = "ε")]
    [Example("RelativeStretch(9 kN, 24.0808663 kN)", "0.373740707")]
    [Source("T = K x / L; " + Works.Goldstone, Standing.Read)]
    public static double RelativeStretch(
        [Parameter("T", "kN", "tension", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force tension,
        [Parameter("K", "kN", "rope modulus, all strands together", Above = 0, AtMost = Limits.ForceKilonewtons)] Force modulus) =>
        Inputs.Tension(tension) / Inputs.PositiveForce(modulus);

    /// <summary>Stretch of a length of rope under a tension.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "How far does this length of rope stretch under this tension?", Assumes = "A linear rope, the same tension all along it.",
        NotFor = "Certified elongation: a linear rope stretches more than ropes are measured to.")]
    [Formula("tension * ropeLength / modulus", Symbol = "x")]
    [Example("RopeStretch(8276.94260 N, 20 kN, 2.6 m)", "1.07600254 m")]
    [Source("T = K x / L; " + Works.Goldstone, Standing.Read)]
    public static Length RopeStretch(
        [Parameter("T", "kN", "tension", AtLeast = 0, AtMost = Limits.ForceKilonewtons)] Force tension,
        [Parameter("K", "kN", "rope modulus, all strands together", Above = 0, AtMost = Limits.ForceKilonewtons)] Force modulus,
        [Parameter("L", "m", "unstretched length", Above = 0, AtMost = Limits.LengthMetres)] Length ropeLength) =>
        Length.FromMeters(Inputs.Tension(tension) * Inputs.RopeLength(ropeLength) / Inputs.PositiveForce(modulus));

    internal static double TestFallFactor(double testFallFactor) =>
        Require.AtMost(Require.Above(testFallFactor, 0, "", nameof(testFallFactor)), Limits.FallFactor, "", nameof(testFallFactor));

    private static double ModulusTimesFallFactor(Force certifiedPeak, double testWeight)
    {
        double peak = Inputs.PositiveForce(certifiedPeak);
        return peak > 2 * testWeight ? peak * (peak - (2 * testWeight)) / (2 * testWeight) : throw TooSmall(peak, testWeight);
    }

    private static DomainException TooSmall(double peak, double testWeight) => new(string.Create(CultureInfo.InvariantCulture,
        $"certifiedPeak must be greater than {2 * testWeight / 1000:G6} kN, twice the weight of the test mass; it is {peak / 1000:G6} kN."), "certifiedPeak");
}
