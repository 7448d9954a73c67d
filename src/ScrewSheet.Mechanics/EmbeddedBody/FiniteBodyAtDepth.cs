using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>An embedded body of finite length with a free tip, at a depth. Holds for short and long bodies too.</summary>
public static class FiniteBodyAtDepth
{
    /// <summary>Deflection of an embedded body of finite length at a depth, in m.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "How far is a body of finite length pushed aside at a depth?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("rootMoment", "load*leverArm", "N·m")]
    [Let("u", "beta*depth", "")]
    [Let("v", "beta*embeddedLength - u", "")]
    [Let("q", "(Sinh(u + v) - Sin(u + v))*(Sinh(u + v) + Sin(u + v))", "")]
    [Let("near", "Sinh(u + v)/q", "")]
    [Let("far", "Sin(u + v)/q", "")]
    [Needs("depth <= embeddedLength")]
    [Formula("2*beta/foundationStiffness*(load*(near*Cos(u)*Cosh(v) - far*Cosh(u)*Cos(v)) + beta*rootMoment*(near*(Sinh(v)*Cos(u) - Cosh(v)*Sin(u)) + far*(Cosh(u)*Sin(v) - Sinh(u)*Cos(v))))", Symbol = "y")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("FiniteBodyDeflection(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 80 mm, 20 mm)", "0.04291001 mm")]
    public static Length FiniteBodyDeflection(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth) =>
        Length.FromMeters(Shape(load, leverArm, foundationStiffness, flexuralRigidity, embeddedLength, depth).Deflection);

    /// <summary>Slope −dy/dx of an embedded body of finite length at a depth, in rad: positive where the outer end leans with the load.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "How far does a body of finite length lean at a depth?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("rootMoment", "load*leverArm", "N·m")]
    [Let("u", "beta*depth", "")]
    [Let("v", "beta*embeddedLength - u", "")]
    [Let("q", "(Sinh(u + v) - Sin(u + v))*(Sinh(u + v) + Sin(u + v))", "")]
    [Let("near", "Sinh(u + v)/q", "")]
    [Let("far", "Sin(u + v)/q", "")]
    [Needs("depth <= embeddedLength")]
    [Formula("2*beta*beta/foundationStiffness*(load*(near*(Sin(u)*Cosh(v) + Cos(u)*Sinh(v)) + far*(Sinh(u)*Cos(v) + Cosh(u)*Sin(v))) + 2*beta*rootMoment*(near*Cos(u)*Cosh(v) + far*Cosh(u)*Cos(v)))", Symbol = "θ")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("FiniteBodySlope(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 80 mm, 20 mm)", "0.003066398 rad")]
    public static Angle FiniteBodySlope(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth) =>
        Angle.FromRadians(Shape(load, leverArm, foundationStiffness, flexuralRigidity, embeddedLength, depth).Slope);

    /// <summary>Bending moment in an embedded body of finite length at a depth, in N·m.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "What bending moment does a body of finite length carry at a depth?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("rootMoment", "load*leverArm", "N·m")]
    [Let("u", "beta*depth", "")]
    [Let("v", "beta*embeddedLength - u", "")]
    [Let("q", "(Sinh(u + v) - Sin(u + v))*(Sinh(u + v) + Sin(u + v))", "")]
    [Let("near", "Sinh(u + v)/q", "")]
    [Let("far", "Sin(u + v)/q", "")]
    [Needs("depth <= embeddedLength")]
    [Formula("load/beta*(near*Sin(u)*Sinh(v) - far*Sinh(u)*Sin(v)) + rootMoment*(near*(Sin(u)*Cosh(v) + Cos(u)*Sinh(v)) - far*(Sinh(u)*Cos(v) + Cosh(u)*Sin(v)))", Symbol = "M")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("FiniteBodyMoment(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 80 mm, 20 mm)", "41.28591 N·m")]
    public static Torque FiniteBodyMoment(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth) =>
        Torque.FromNewtonMeters(Shape(load, leverArm, foundationStiffness, flexuralRigidity, embeddedLength, depth).Moment);

    /// <summary>Shear force in an embedded body of finite length at a depth, in N.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "What shear force does a body of finite length carry at a depth?", Assumes = BodyText.Elastic, NotFor = BodyText.NotStrength)]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("rootMoment", "load*leverArm", "N·m")]
    [Let("u", "beta*depth", "")]
    [Let("v", "beta*embeddedLength - u", "")]
    [Let("q", "(Sinh(u + v) - Sin(u + v))*(Sinh(u + v) + Sin(u + v))", "")]
    [Let("near", "Sinh(u + v)/q", "")]
    [Let("far", "Sin(u + v)/q", "")]
    [Needs("depth <= embeddedLength")]
    [Formula("load*(near*(Cos(u)*Sinh(v) - Sin(u)*Cosh(v)) - far*(Cosh(u)*Sin(v) - Sinh(u)*Cos(v))) - 2*beta*rootMoment*(near*Sin(u)*Sinh(v) + far*Sinh(u)*Sin(v))", Symbol = "V")]
    [Source(BodyText.Hetenyi, Standing.SecondHand)]
    [Example("FiniteBodyShear(1 kN, 40 mm, 1 GPa, 442.8173 N·m², 80 mm, 20 mm)", "-601.5951 N")]
    public static Force FiniteBodyShear(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth) =>
        Force.FromNewtons(Shape(load, leverArm, foundationStiffness, flexuralRigidity, embeddedLength, depth).Shear);

    private static WinklerBeam.State Shape(Force load, Length leverArm, Pressure foundationStiffness, Quantity flexuralRigidity, Length embeddedLength, Length depth)
    {
        double newtons = BodyText.Newtons(load), stiffness = BodyText.Bed(foundationStiffness), length = BodyText.Embedded(embeddedLength);
        double beta = WinklerBeam.Beta(stiffness, BodyText.Rigid(flexuralRigidity));
        return WinklerBeam.Finite(newtons, newtons * BodyText.LeverArm(leverArm), stiffness, beta, length, BodyText.At(depth, length));
    }
}
