using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>A short, rigid embedded body at a depth: it turns about its pivot without bending. Its slope is the same at every depth, see RigidBody.</summary>
public static class RigidBodyAtDepth
{
    private const string Assumes = "The ice is a bed of independent linear springs (Winkler); the body itself does not bend.";
    private const string NotFor = "Bodies longer than π/4 characteristic lengths.";
    private const string Statics = "Equilibrium of a rigid bar on linear springs";

    /// <summary>Deflection of a rigid embedded body at a depth, in m: y_0 − θ·x.</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(BodyText.Topic, "How far is a short, rigid body pushed aside at a depth?", Assumes = Assumes, NotFor = NotFor)]
    [Let("headDeflection", "load/(foundationStiffness*embeddedLength)*(4 + 6*leverArm/embeddedLength)", "m")]
    [Let("slope", "load/(foundationStiffness*embeddedLength*embeddedLength)*(6 + 12*leverArm/embeddedLength)", "rad")]
    [Needs("depth <= embeddedLength")]
    [Formula("headDeflection - slope*depth", Symbol = "y")]
    [Source(Statics, Standing.Derived)]
    [Example("RigidBodyDeflection(1 kN, 40 mm, 1 GPa, 120 mm, 36 mm)", "0.02500000 mm")]
    public static Length RigidBodyDeflection(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals, UsualFrom = 100, UsualTo = 11000)] Pressure foundationStiffness,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth)
    {
        double p = BodyText.Newtons(load), k = BodyText.Bed(foundationStiffness), arm = BodyText.LeverArm(leverArm), length = BodyText.Embedded(embeddedLength);
        double head = p / (k * length) * (4 + (6 * arm / length)), slope = p / (k * length * length) * (6 + (12 * arm / length));
        return Length.FromMeters(head - (slope * BodyText.At(depth, length)));
    }

    /// <summary>Bending moment in a rigid embedded body at a depth, in N·m: P(a + x) − k·x²(y_0/2 − θ·x/6).</summary>
    /// <exception cref="DomainException">A value is out of range.</exception>
    [Callable(BodyText.Topic, "What bending moment does a short, rigid body carry at a depth?", Assumes = Assumes, NotFor = NotFor)]
    [Let("share", "depth/embeddedLength", "")]
    [Needs("depth <= embeddedLength")]
    [Formula("load*(leverArm + depth) - load*depth*share*(2 + 3*leverArm/embeddedLength - share*(1 + 2*leverArm/embeddedLength))", Symbol = "M")]
    [Source(Statics, Standing.Derived)]
    [Example("RigidBodyMoment(1 kN, 40 mm, 120 mm, 24 mm)", "51.20000 N·m")]
    public static Torque RigidBodyMoment(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("a", "mm", BodyText.Arm, AtLeast = 0, AtMost = Most.Millimetres, UsualTo = 300)] Length leverArm,
        [Parameter("L", "mm", BodyText.Length, Above = 0, AtMost = Most.Millimetres, UsualFrom = 30, UsualTo = 250)] Length embeddedLength,
        [Parameter("x", "mm", BodyText.Depth, AtLeast = 0, AtMost = Most.Millimetres)] Length depth)
    {
        double p = BodyText.Newtons(load), arm = BodyText.LeverArm(leverArm), length = BodyText.Embedded(embeddedLength), x = BodyText.At(depth, length), share = x / length;
        return Torque.FromNewtonMeters((p * (arm + x)) - (p * x * share * (2 + (3 * arm / length) - (share * (1 + (2 * arm / length))))));
    }
}
