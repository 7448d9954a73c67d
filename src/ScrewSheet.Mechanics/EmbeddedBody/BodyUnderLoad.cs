using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>What a transverse load on a lever arm does to a long, a finite and a rigid embedded body: deflections, greatest moment and where it sits.</summary>
public static class BodyUnderLoad
{
    private const string Usual = "use FiniteBody for one length and LongBody where L exceeds π characteristic lengths";

    /// <summary>A long (semi-infinite) embedded body under a load on a lever arm.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "What does a load do to a long embedded body?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("arm", "beta*leverArm", "")]
    [Let("u", "Atan2(1, 1 + 2*arm)", "")]
    [Formula("2*beta*load*(1 + arm)/foundationStiffness", Member = "HeadDeflection", Symbol = "y_0")]
    [Formula("2*beta*beta*load*(1 + 2*arm)/foundationStiffness", Member = "HeadSlope", Symbol = "θ_0")]
    [Formula("load/(2*beta)*Sqrt((1 + 2*arm)*(1 + 2*arm) + 1)*Exp(-u)", Member = "MaxMoment", Symbol = "M_max")]
    [Formula("u/beta", Member = "MaxMomentDepth", Symbol = "x_m")]
    [Formula("load*(Pow(1 + arm, 3) + 0.5)/(3*flexuralRigidity*Pow(beta, 3))", Member = "LoadPointDeflection", Symbol = "y_top")]
    [Formula("0*leverArm", Member = "TipDeflection", Symbol = "y_L")]
    [Formula("Atan2(1 + arm, arm)/beta", Member = "PivotDepth", Symbol = "x_0")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("LongBody(1 kN, 40 mm, 1 GPa, 442.8173 N·m²).MaxMoment", "45.05360 N·m")]
    [Example("LongBody(1 kN, 50 mm, 5 GPa, 442.8173 N·m²).LoadPointDeflection", "0.3154303 mm")]
    public static BodyResponse LongBody(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity)
    {
        double p = BodyText.Newtons(load), k = BodyText.Bed(foundationStiffness), rigid = BodyText.Rigid(flexuralRigidity);
        double beta = WinklerBeam.Beta(k, rigid), arm = beta * BodyText.LeverArm(leverArm), twice = 1 + (2 * arm), u = Math.Atan2(1, twice);
        return new BodyResponse
        {
            HeadDeflection = Length.FromMeters(2 * beta * p * (1 + arm) / k),
            HeadSlope = Angle.FromRadians(2 * beta * beta * p * twice / k),
            MaxMoment = Torque.FromNewtonMeters(p / (2 * beta) * Math.Sqrt((twice * twice) + 1) * Math.Exp(-u)),
            MaxMomentDepth = Length.FromMeters(u / beta),
            LoadPointDeflection = Length.FromMeters(p * (((1 + arm) * (1 + arm) * (1 + arm)) + 0.5) / (3 * rigid * beta * beta * beta)),
            PivotDepth = Length.FromMeters(Math.Atan2(1 + arm, arm) / beta),
        };
    }

    /// <summary>An embedded body of finite length with a free tip under a load on a lever arm. Holds for short and long bodies too.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "What does a load do to an embedded body of given length?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [NoFormula("head and tip by FiniteBodyDeflection and FiniteBodySlope; greatest moment and pivot by bisection for the first depth where shear or deflection vanishes")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("FiniteBody(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 80 mm).MaxMoment", "44.60553 N·m")]
    [Example("FiniteBody(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 80 mm).HeadDeflection", "0.1238463 mm")]
    public static BodyResponse FiniteBody(
        [Parameter("P", "kN", BodyText.Load + "; not zero, for a place of the greatest moment to exist", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength)
    {
        double p = BodyText.Newtons(load), k = BodyText.Bed(foundationStiffness), rigid = BodyText.Rigid(flexuralRigidity);
        if (p == 0) throw new DomainException("load must not be zero: without a load there is no place of the greatest moment.", nameof(load));
        double beta = WinklerBeam.Beta(k, rigid), arm = BodyText.LeverArm(leverArm), length = BodyText.Embedded(embeddedLength);
        WinklerBeam.State head = WinklerBeam.Finite(p, p * arm, k, beta, length, 0);
        double deepest = WinklerBeam.DepthOfMaxMoment(p, p * arm, k, beta, length);
        return new BodyResponse
        {
            HeadDeflection = Length.FromMeters(head.Deflection),
            HeadSlope = Angle.FromRadians(head.Slope),
            MaxMoment = Torque.FromNewtonMeters(WinklerBeam.Finite(p, p * arm, k, beta, length, deepest).Moment),
            MaxMomentDepth = Length.FromMeters(deepest),
            LoadPointDeflection = Length.FromMeters(head.Deflection + (head.Slope * arm) + (p * arm * arm * arm / (3 * rigid))),
            TipDeflection = Length.FromMeters(WinklerBeam.Finite(p, p * arm, k, beta, length, length).Deflection),
            PivotDepth = Length.FromMeters(WinklerBeam.PivotDepth(p, p * arm, k, beta, length)),
        };
    }

    /// <summary>A short embedded body that turns as a rigid bar under a load on a lever arm.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(BodyText.Topic, "What does a load do to a short, rigid embedded body?", Assumes = "The ice is a bed of independent linear springs (Winkler); the body itself does not bend.",
        NotFor = "Bodies longer than π/4 characteristic lengths: " + Usual + ".")]
    [Let("headDeflection", "load/(foundationStiffness*embeddedLength)*(4 + 6*leverArm/embeddedLength)", "m")]
    [Let("headSlope", "load/(foundationStiffness*embeddedLength*embeddedLength)*(6 + 12*leverArm/embeddedLength)", "rad")]
    [Let("depth", "embeddedLength*embeddedLength/(3*embeddedLength + 6*leverArm)", "m")]
    [Formula("headDeflection", Member = "HeadDeflection", Symbol = "y_0")]
    [Formula("headSlope", Member = "HeadSlope", Symbol = "θ_0")]
    [Formula("load*(leverArm + depth) - foundationStiffness*depth*depth*(headDeflection/2 - headSlope*depth/6)", Member = "MaxMoment", Symbol = "M_max")]
    [Formula("depth", Member = "MaxMomentDepth", Symbol = "x_m")]
    [Formula("headDeflection + headSlope*leverArm", Member = "LoadPointDeflection", Symbol = "y_top")]
    [Formula("headDeflection - headSlope*embeddedLength", Member = "TipDeflection", Symbol = "y_L")]
    [Formula("embeddedLength*(4*embeddedLength + 6*leverArm)/(6*embeddedLength + 12*leverArm)", Member = "PivotDepth", Symbol = "x_0")]
    [Source("Equilibrium of a rigid bar on linear springs", Standing.Derived)]
    [Example("RigidBody(1 kN, 40 mm, 1 GPa, 120 mm).HeadDeflection", "0.05000000 mm")]
    [Example("RigidBody(1 kN, 40 mm, 1 GPa, 120 mm).PivotDepth", "72.00000 mm")]
    public static BodyResponse RigidBody(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength)
    {
        double p = BodyText.Newtons(load), k = BodyText.Bed(foundationStiffness), arm = BodyText.LeverArm(leverArm), length = BodyText.Embedded(embeddedLength);
        double head = p / (k * length) * (4 + (6 * arm / length)), slope = p / (k * length * length) * (6 + (12 * arm / length));
        double deepest = length * length / ((3 * length) + (6 * arm));
        return new BodyResponse
        {
            HeadDeflection = Length.FromMeters(head),
            HeadSlope = Angle.FromRadians(slope),
            MaxMoment = Torque.FromNewtonMeters((p * (arm + deepest)) - (k * deepest * deepest * ((head / 2) - (slope * deepest / 6)))),
            MaxMomentDepth = Length.FromMeters(deepest),
            LoadPointDeflection = Length.FromMeters(head + (slope * arm)),
            TipDeflection = Length.FromMeters(head - (slope * length)),
            PivotDepth = Length.FromMeters(length * ((4 * length) + (6 * arm)) / ((6 * length) + (12 * arm))),
        };
    }
}
