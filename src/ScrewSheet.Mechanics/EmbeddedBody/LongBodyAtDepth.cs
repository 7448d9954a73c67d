using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>A long embedded body (longer than about π characteristic lengths) at a depth: the projecting long pile.</summary>
public static class LongBodyAtDepth
{
    /// <summary>Deflection of a long (semi-infinite) embedded body at a depth, in m.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "How far is a long body pushed aside at a depth?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("rootMoment", "load*leverArm", "N·m")]
    [Let("u", "beta*depth", "")]
    [Formula("2*beta/foundationStiffness*Exp(-u)*(load*Cos(u) + beta*rootMoment*(Cos(u) - Sin(u)))", Symbol = "y")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("LongBodyDeflection(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 20 mm)", "0.03858651 mm")]
    public static Length LongBodyDeflection(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth) =>
        Length.FromMeters(Shape(load, leverArm, foundationStiffness, flexuralRigidity, depth).Deflection);

    /// <summary>Slope −dy/dx of a long (semi-infinite) embedded body at a depth, in rad: positive where the outer end leans with the load.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "How far does a long body lean at a depth?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("rootMoment", "load*leverArm", "N·m")]
    [Let("u", "beta*depth", "")]
    [Formula("2*beta*beta/foundationStiffness*Exp(-u)*(load*(Cos(u) + Sin(u)) + 2*beta*rootMoment*Cos(u))", Symbol = "θ")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("LongBodySlope(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 20 mm)", "0.002819461 rad")]
    public static Angle LongBodySlope(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth) =>
        Angle.FromRadians(Shape(load, leverArm, foundationStiffness, flexuralRigidity, depth).Slope);

    /// <summary>Bending moment in a long (semi-infinite) embedded body at a depth, in N·m.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "What bending moment does a long body carry at a depth?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("rootMoment", "load*leverArm", "N·m")]
    [Let("u", "beta*depth", "")]
    [Formula("Exp(-u)*(rootMoment*(Cos(u) + Sin(u)) + load/beta*Sin(u))", Symbol = "M")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("LongBodyMoment(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 20 mm)", "42.76902 N·m")]
    public static Torque LongBodyMoment(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth) =>
        Torque.FromNewtonMeters(Shape(load, leverArm, foundationStiffness, flexuralRigidity, depth).Moment);

    /// <summary>Shear force in a long (semi-infinite) embedded body at a depth, in N.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "What shear force does a long body carry at a depth?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("rootMoment", "load*leverArm", "N·m")]
    [Let("u", "beta*depth", "")]
    [Formula("Exp(-u)*(load*(Cos(u) - Sin(u)) - 2*beta*rootMoment*Sin(u))", Symbol = "V")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("LongBodyShear(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 20 mm)", "-468.5081 N")]
    public static Force LongBodyShear(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth) =>
        Force.FromNewtons(Shape(load, leverArm, foundationStiffness, flexuralRigidity, depth).Shear);

    private static WinklerBeam.State Shape(Force load, Length leverArm, Pressure foundationStiffness, Quantity flexuralRigidity, Length depth)
    {
        double newtons = BodyText.Newtons(load), stiffness = BodyText.Bed(foundationStiffness);
        double beta = WinklerBeam.Beta(stiffness, BodyText.Rigid(flexuralRigidity));
        return WinklerBeam.Long(newtons, newtons * BodyText.LeverArm(leverArm), stiffness, beta, BodyText.At(depth));
    }
}
