using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>What a body carries sideways when the ice crushes at a constant pressure: turning as a whole, or with a plastic hinge.</summary>
public static class CrushingIce
{
    private const string Assumes = "The ice crushes at one pressure over the width of the body, at every depth; the body is rigid up to its plastic moment.";
    private const string NotFor = "More than a first finder of the governing mode: confinement growing with depth, rate and fold-over are left out, so these lie below pull tests in good ice.";
    private const string Broms = "Broms, Lateral resistance of piles in cohesive soils, J. Soil Mech. Found. Div. ASCE 90(SM2), 27-63, 1964";
    private const string Derivation = "formula derived here from equilibrium of a rigid-plastic body; same algebra as dowel-type fasteners";
    private const string Strength = "bearing (crushing) strength of confined ice at the rate and temperature of the load";
    private const string ArmMeaning = "lever arm: distance from the sound ice to the load line, 0 or more";

    /// <summary>Transverse load at which a short body turns as a whole in crushing ice, in N: q(√((L+2a)²+L²) − (L+2a)), q = σ_b·D.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(BodyText.Topic, "At which load does a short body turn in crushing ice?", Assumes = Assumes, NotFor = NotFor)]
    [Let("reach", "embeddedLength + 2*leverArm", "m")]
    [Formula("bearingStrength*width*embeddedLength*embeddedLength/(Sqrt(reach*reach + embeddedLength*embeddedLength) + reach)", Symbol = "P_s")]
    [Source(Broms, Standing.SecondHand)]
    [Source(Derivation, Standing.Derived)]
    [Example("ShortBodyCrushing(10 MPa, 17 mm, 120 mm, 40 mm)", "5650.473 N")]
    public static Force ShortBodyCrushing(
        [Parameter("σ_b", "MPa", Strength, Above = 0, AtMost = Most.Megapascals, UsualFrom = 5, UsualTo = 25)] Pressure bearingStrength,
        [Parameter("D", "mm", BodyText.Width, Above = 0, AtMost = Most.Millimetres)] Length width,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength,
        [Parameter("a", "mm", ArmMeaning, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm)
    {
        double length = BodyText.Embedded(embeddedLength), reach = length + (2 * BodyText.LeverArm(leverArm));
        return Force.FromNewtons(Bearing(bearingStrength, width) * length * length / (Math.Sqrt((reach * reach) + (length * length)) + reach));
    }

    /// <summary>Transverse load at which a long body forms a plastic hinge in crushing ice, in N: q(√(a² + 2M_pl/q) − a), q = σ_b·D.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(BodyText.Topic, "At which load does a long body bend over in crushing ice?", Assumes = Assumes, NotFor = NotFor)]
    [Formula("2*plasticMoment/(Sqrt(leverArm*leverArm + 2*plasticMoment/(bearingStrength*width)) + leverArm)", Symbol = "P_l")]
    [Source(Broms, Standing.SecondHand)]
    [Source(Derivation, Standing.Derived)]
    [Example("LongBodyCrushing(10 MPa, 17 mm, 186.9341 N·m, 40 mm)", "3678.435 N")]
    public static Force LongBodyCrushing(
        [Parameter("σ_b", "MPa", Strength, Above = 0, AtMost = Most.Megapascals, UsualFrom = 5, UsualTo = 25)] Pressure bearingStrength,
        [Parameter("D", "mm", BodyText.Width, Above = 0, AtMost = Most.Millimetres)] Length width,
        [Parameter("M_pl", "N·m", "plastic moment of the body", Above = 0, AtMost = Most.NewtonMetres)] Torque plasticMoment,
        [Parameter("a", "mm", ArmMeaning, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm) =>
        Force.FromNewtons(LongCapacity(Bearing(bearingStrength, width), plasticMoment, leverArm));

    /// <summary>Depth of the plastic hinge of a long body in crushing ice, in m: P_l/q.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(BodyText.Topic, "How deep in crushing ice does a long body bend?", Assumes = Assumes, NotFor = NotFor)]
    [Let("q", "bearingStrength*width", "N/m")]
    [Formula("2*plasticMoment/(Sqrt(leverArm*leverArm + 2*plasticMoment/q) + leverArm)/q", Symbol = "f")]
    [Source(Derivation, Standing.Derived)]
    [Example("CrushingHingeDepth(10 MPa, 17 mm, 186.9341 N·m, 40 mm)", "21.63785 mm")]
    public static Length CrushingHingeDepth(
        [Parameter("σ_b", "MPa", Strength, Above = 0, AtMost = Most.Megapascals, UsualFrom = 5, UsualTo = 25)] Pressure bearingStrength,
        [Parameter("D", "mm", BodyText.Width, Above = 0, AtMost = Most.Millimetres)] Length width,
        [Parameter("M_pl", "N·m", "plastic moment of the body", Above = 0, AtMost = Most.NewtonMetres)] Torque plasticMoment,
        [Parameter("a", "mm", ArmMeaning, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm)
    {
        double q = Bearing(bearingStrength, width);
        return Length.FromMeters(LongCapacity(q, plasticMoment, leverArm) / q);
    }

    // The usual form q(√(a² + 2M/q) − a) loses digits in strong ice; this is the same number.
    private static double LongCapacity(double q, Torque plasticMoment, Length leverArm)
    {
        double twice = 2 * Admit.Positive(plasticMoment.NewtonMeters, Most.NewtonMetres, Scale.NewtonMetre, nameof(plasticMoment)), arm = BodyText.LeverArm(leverArm);
        return twice / (Math.Sqrt((arm * arm) + (twice / q)) + arm);
    }

    private static double Bearing(Pressure bearingStrength, Length width) =>
        Admit.Positive(bearingStrength.Pascals, Most.Megapascals, Scale.Megapascal, nameof(bearingStrength)) * BodyText.Wide(width);
}
