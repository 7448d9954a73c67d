using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.Falls;

/// <summary>How a rope was certified, and so with what mass on how many strands.</summary>
[SheetOption("how a rope was certified: mass and strands of the standard drop")]
public enum RopeUse
{
    /// <summary>80 kg on one strand.</summary>
    Single,

    /// <summary>55 kg on one strand.</summary>
    Half,

    /// <summary>80 kg on two strands.</summary>
    Twin,
}

/// <summary>Single, half and twin ropes: test mass, strands, modulus in use.</summary>
public static class RopeStrands
{
    private const string En892 = "EN 892, test mass and strands, as quoted in three texts";

    /// <summary>The mass in the certified drop: 80 kg for single and twin, 55 kg for half rope.</summary>
    /// <exception cref="DomainException">The option is none of the three.</exception>
    [Callable(Topics.Impact, "What mass does the standard drop use for this kind of rope?", NotFor = "Low-stretch ropes, which are tested with 100 kg or 80 kg.")]
    [NoFormula("Chooses by the kind of rope.")]
    [Example("CertificationMass(RopeUse.Half)", "55.0000000 kg")]
    [Source(En892, Standing.SecondHand)]
    public static Mass CertificationMass([Parameter("use", "", "how the rope was certified")] RopeUse certifiedAs) => Mass.FromKilograms(certifiedAs switch
    {
        RopeUse.Single or RopeUse.Twin => 80,
        RopeUse.Half => 55,
        _ => throw Unknown(),
    });

    /// <summary>The strands in the certified drop: one for single and half, two for twin rope; a pure number.</summary>
    /// <exception cref="DomainException">The option is none of the three.</exception>
    [Callable(Topics.Impact, "On how many strands is the standard drop made for this kind of rope?", NotFor = "How many strands a party clips.")]
    [NoFormula("Chooses by the kind of rope.")]
    [Example("CertificationStrands(RopeUse.Twin)", "2")]
    [Source(En892, Standing.SecondHand)]
    public static double CertificationStrands([Parameter("use", "", "how the rope was certified")] RopeUse certifiedAs) => certifiedAs switch
    {
        RopeUse.Single or RopeUse.Half => 1,
        RopeUse.Twin => 2,
        _ => throw Unknown(),
    };

    /// <summary>Modulus of the strands in use from the certified peak force of that kind of rope.</summary>
    /// <exception cref="DomainException">A value is outside its limits, or the certified force is no more than twice the test weight.</exception>
    [Callable(Topics.Impact, "What modulus do so many strands have, by the certificate of this kind of rope?", Assumes = "Strands in parallel add; a linear rope.",
        NotFor = "Halving the force by clipping both strands: it rises.")]
    [NoFormula("RopeModulus with the test mass of the kind of rope, times strands in use over strands in the test.")]
    [Example("RopeModulusInUse(6 kN, RopeUse.Half, 2)", "30929.4131 N")]
    [CautionWhen("strands > 1", "A linear rope over-predicts the force on more strands, by up to about 20 %.")]
    [Source("K of strands in parallel; masses and strands of " + En892, Standing.SecondHand)]
    public static Force RopeModulusInUse(
        [Parameter("F0", "kN", "certified peak force of the first drop", Above = 0, AtMost = Limits.ForceKilonewtons, UsualFrom = 4, UsualTo = 12)] Force certifiedPeak,
        [Parameter("use", "", "how that peak was certified")] RopeUse certifiedAs,
        [Parameter("n", "", "strands that take the fall", AtLeast = 1, AtMost = Limits.Strands, UsualTo = 2)] double strands,
        [Parameter("f0", "", "fall factor of the certified drop", Above = 0, AtMost = Limits.FallFactor, UsualFrom = 0.3, UsualTo = 2)] double testFallFactor = RopeModuli.StandardDropFallFactor)
    {
        double share = Inputs.Number(strands, 1, Limits.Strands) / CertificationStrands(certifiedAs);
        return Force.FromNewtons(RopeModuli.RopeModulus(certifiedPeak, CertificationMass(certifiedAs), testFallFactor).Newtons * share);
    }

    /// <summary>Modulus of equal strands in parallel.</summary>
    /// <exception cref="DomainException">A value is outside its limits.</exception>
    [Callable(Topics.Impact, "What modulus do so many equal strands have together?", Assumes = "Strands in parallel add.", NotFor = "Strands of unequal length.")]
    [Formula("strandModulus * strands", Symbol = "K")]
    [Example("ParallelRopeModulus(15.4647066 kN, 2)", "30929.4132 N")]
    [CautionWhen("strands > 1", "A linear rope over-predicts the force on more strands, by up to about 20 %.")]
    [Source("K_total = sum K_i; springs in parallel", Standing.Derived)]
    public static Force ParallelRopeModulus(
        [Parameter("K1", "kN", "modulus of one strand", Above = 0, AtMost = Limits.ForceKilonewtons)] Force strandModulus,
        [Parameter("n", "", "strands that take the fall", AtLeast = 1, AtMost = Limits.Strands, UsualTo = 2)] double strands) =>
        Force.FromNewtons(Inputs.PositiveForce(strandModulus) * Inputs.Number(strands, 1, Limits.Strands));

    private static DomainException Unknown() => new("certifiedAs must be RopeUse.Single, RopeUse.Half or RopeUse.Twin.", "certifiedAs");
}
