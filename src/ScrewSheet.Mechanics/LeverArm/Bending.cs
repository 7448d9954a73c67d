using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>The lever arm that lost ice leaves, the moment on it and what a section holds against it.</summary>
public static class Bending
{
    private const string Topic = "Lever arm";
    private const string Statics = "statics of a cantilever with an end load";

    /// <summary>Lever arm in mm from the sound ice to the load line: protrusion + ice lost + offset of the seat, each 0 mm or more; statics.</summary>
    /// <exception cref="DomainException">A length is negative, absurd or not finite.</exception>
    [Callable(Topic, "The lever arm from the sound ice to the line of the load.", Assumes = "All three lengths are measured along the axis of the body.",
        NotFor = "Deciding whether the ice that is left is sound.")]
    [Formula("protrusion + iceLost + seatOffset", Symbol = "a")]
    [Example("LeverArm(0 mm, 40 mm, 10 mm)", "50.0000 mm")]
    [Source("National guides' school, laboratory page: the ice under the screw fails as a half cone of 3 to 5 cm (a German version of one note prints 5 to 8 cm), so it is an input", Standing.Read)]
    public static Length LeverArm(
        [Parameter("p", "mm", "how far the body stands out of the original face", AtLeast = 0, AtMost = Most.Millimetres)] Length protrusion,
        [Parameter("c", "mm", "depth of ice lost, along the axis; common practice 30 to 50 mm", AtLeast = 0, AtMost = Most.Millimetres)] Length iceLost,
        [Parameter("e", "mm", "from the face of the hanger's seat outward to the line of the load", AtLeast = 0, AtMost = Most.Millimetres)] Length seatOffset) =>
        Length.FromMeters(
            Admit.Between(protrusion.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(protrusion))
            + Admit.Between(iceLost.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(iceLost))
            + Admit.Between(seatOffset.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(seatOffset)));

    /// <summary>Ice lost along the axis in mm from its depth square to the face: depth/cos(set angle); geometry.</summary>
    /// <exception cref="DomainException">The depth is negative or the set angle is not between −90° and 90°.</exception>
    [Callable(Topic, "Ice lost along the axis of the body from its depth square to the face.", NotFor = "Guessing the depth: measure it.")]
    [Formula("depth/Cos(setAngle)", Symbol = "c")]
    [Example("IceLostAlongAxis(40 mm, 15 °)", "41.4110 mm")]
    [Source("geometry", Standing.Derived)]
    public static Length IceLostAlongAxis(
        [Parameter("c_n", "mm", "depth of ice lost, square to the face", AtLeast = 0, AtMost = Most.Millimetres)] Length depth,
        [Parameter("α", "°", SetAngles.Meaning, Above = -90, Below = 90)] Angle setAngle) =>
        Length.FromMeters(Admit.Between(depth.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(depth))
            / Math.Cos(Admit.Inside(setAngle.Radians, -90, 90, Scale.Degree, nameof(setAngle))));

    /// <summary>Bending moment in N·m of a transverse load in N at the end of a lever arm in m; statics.</summary>
    /// <exception cref="DomainException">The lever arm is negative or a value is absurd.</exception>
    [Callable(Topic, "The bending moment that a load puts on its lever arm.", Assumes = "The load is square to the arm; take TransverseLoad of it first.",
        NotFor = "A load along the body.")]
    [Formula("transverse*leverArm", Symbol = "M")]
    [Example("BendingMoment(8.5 kN, 50 mm)", "425.000 N·m")]
    [Source(Statics, Standing.Derived)]
    public static Torque BendingMoment(
        [Parameter("V", "kN", "load square to the body, positive down the face", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force transverse,
        [Parameter("a", "mm", "lever arm from the sound ice to the load line", AtLeast = 0, AtMost = Most.Millimetres)] Length leverArm) =>
        Torque.FromNewtonMeters(Admit.Signed(transverse.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(transverse))
            * Admit.Between(leverArm.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(leverArm)));

    /// <summary>Bending moment at the sound ice in N·m from both load components: V a + N e_n; statics.</summary>
    /// <exception cref="DomainException">The lever arm is negative or a value is absurd.</exception>
    [Callable(Topic, "The bending moment at the sound ice of a transverse and an off-axis axial load.", NotFor = "An arm that has already folded: see FoldOverLoad.")]
    [Formula("transverse*leverArm + axial*eccentricity", Symbol = "M")]
    [Example("MomentAtIce(9848.078 N, 50 mm, 1736.482 N, 15 mm)", "518.451 N·m")]
    [Source(Statics, Standing.Derived)]
    public static Torque MomentAtIce(
        [Parameter("V", "kN", "load square to the body, positive down the face", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force transverse,
        [Parameter("a", "mm", "lever arm from the sound ice to the load line", AtLeast = 0, AtMost = Most.Millimetres)] Length leverArm,
        [Parameter("N", "kN", "load along the body, positive outward", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force axial,
        [Parameter("e_n", "mm", "offset of the load line from the axis, positive to the side where N bends the same way as V", AtLeast = -Most.Millimetres, AtMost = Most.Millimetres)] Length eccentricity) =>
        Torque.FromNewtonMeters(
            (Admit.Signed(transverse.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(transverse))
                * Admit.Between(leverArm.Meters, 0, Most.Millimetres, Scale.Millimetre, nameof(leverArm)))
            + (Admit.Signed(axial.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(axial))
                * Admit.Signed(eccentricity.Meters, Most.Millimetres, Scale.Millimetre, nameof(eccentricity))));

    /// <summary>Elastic bending stress in Pa at the extreme fibre: M/W_el; beam theory.</summary>
    /// <exception cref="DomainException">The section modulus is not above 0 mm³ or a value is absurd.</exception>
    [Callable(Topic, "The bending stress at the extreme fibre, while the tube is elastic.", Assumes = "Elastic: the stress stays below yield.",
        NotFor = "Loads beyond first yield: the figure is then fictitious.")]
    [Formula("moment/elasticModulus", Symbol = "σ")]
    [Example("BendingStress(96.59258 N·m, 260.4808 mm³)", "370.824 MPa")]
    [Source("beam theory", Standing.Derived)]
    public static Pressure BendingStress(
        [Parameter("M", "N·m", "bending moment", AtLeast = -Most.NewtonMetres, AtMost = Most.NewtonMetres)] Torque moment,
        [Parameter("W_el", "mm³", "elastic section modulus, as in Tube(…).ElasticModulus; moduli of outside and bore do not subtract", Above = 0, AtMost = Most.CubicMillimetres)] Volume elasticModulus) =>
        Pressure.FromPascals(Admit.Signed(moment.NewtonMeters, Most.NewtonMetres, Scale.NewtonMetre, nameof(moment))
            / Admit.Positive(elasticModulus.CubicMeters, Most.CubicMillimetres, Scale.CubicMillimetre, nameof(elasticModulus)));
}
