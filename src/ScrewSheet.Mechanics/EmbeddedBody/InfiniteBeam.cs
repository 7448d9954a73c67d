using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics;

/// <summary>A beam without ends on an elastic bed under one load: the case of the published rail examples.</summary>
public static class InfiniteBeam
{
    private const string Superpose = "Several loads add up.";

    /// <summary>Deflection of an infinite beam at a distance from its load, in m.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "How far does a beam without ends sink at a distance from its load?", Assumes = BodyText.Elastic + " " + Superpose, NotFor = "A body loaded at its end: use LongBodyDeflection.")]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("u", "beta*Abs(distance)", "")]
    [Formula("load*beta/(2*foundationStiffness)*Exp(-u)*(Cos(u) + Sin(u))", Symbol = "y")]
    [Source("Boresi, Schmidt and Sidebottom, Advanced Mechanics of Materials, ch. 10", Standing.Read)]
    [Example("InfiniteBeamDeflection(170 kN, 14 MPa, 7380000 N·m², 0 m)", "5.038414 mm")]
    public static Length InfiniteBeamDeflection(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("x", "mm", "distance from the load, either way", AtLeast = -Most.Millimetres, AtMost = Most.Millimetres)] Length distance)
    {
        double k = BodyText.Bed(foundationStiffness), beta = WinklerBeam.Beta(k, BodyText.Rigid(flexuralRigidity)), u = beta * Math.Abs(Admit.Signed(distance.Meters, Most.Millimetres, Scale.Millimetre, nameof(distance)));
        return Length.FromMeters(BodyText.Newtons(load) * beta / (2 * k) * Math.Exp(-u) * (Math.Cos(u) + Math.Sin(u)));
    }

    /// <summary>Bending moment of an infinite beam at a distance from its load, in N·m.</summary>
    /// <exception cref="DomainException">A value is out of range, or the rigidity is not in N·m².</exception>
    [Callable(BodyText.Topic, "What bending moment does a beam without ends carry at a distance from its load?", Assumes = BodyText.Elastic + " " + Superpose, NotFor = "A body loaded at its end: use LongBodyMoment.")]
    [Let("beta", BodyText.BetaFormula, "1/m")]
    [Let("u", "beta*Abs(distance)", "")]
    [Formula("load/(4*beta)*Exp(-u)*(Cos(u) - Sin(u))", Symbol = "M")]
    [Source("Boresi, Schmidt and Sidebottom, Advanced Mechanics of Materials, ch. 10", Standing.Read)]
    [Example("InfiniteBeamMoment(170 kN, 14 MPa, 7380000 N·m², 0 m)", "51213.68 N·m")]
    public static Torque InfiniteBeamMoment(
        [Parameter("P", "kN", BodyText.Load, AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force load,
        [Parameter("k", "MPa", BodyText.Stiffness, Above = 0, AtMost = Most.Megapascals)] Pressure foundationStiffness,
        [Parameter("EI", "N·m²", BodyText.Rigidity, Above = 0, AtMost = BodyText.MostRigidity)] Quantity flexuralRigidity,
        [Parameter("x", "mm", "distance from the load, either way", AtLeast = -Most.Millimetres, AtMost = Most.Millimetres)] Length distance)
    {
        double beta = WinklerBeam.Beta(BodyText.Bed(foundationStiffness), BodyText.Rigid(flexuralRigidity)), u = beta * Math.Abs(Admit.Signed(distance.Meters, Most.Millimetres, Scale.Millimetre, nameof(distance)));
        return Torque.FromNewtonMeters(BodyText.Newtons(load) / (4 * beta) * Math.Exp(-u) * (Math.Cos(u) - Math.Sin(u)));
    }
}
