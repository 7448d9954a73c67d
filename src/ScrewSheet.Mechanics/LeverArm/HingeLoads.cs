using MathNet.Numerics.RootFinding;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>The load at the hanger that first yields the tube or hinges it, and what it carries while it folds over.</summary>
public static class HingeLoads
{
    private const string Topic = "Lever arm";
    private const string Own = "rigid-plastic hinge at the ice face with the moment rule of EN 1993-1-1, derived here";
    private const string Folding = "Saying when the screw comes out: a hinge is the onset of folding, not separation; see FoldOverLoad.";
    private const string ShortArm = "At so short an arm shear lowers the plastic moment: see HingeLoadWithShear.";

    /// <summary>Load in N along the face at which the extreme fibre yields: f_y/(|sin α|/A + a cos α/W_el); EN 1993-1-1, equation 6.1.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The load at the hanger at which the tube first yields.", Assumes = "Elastic; the load runs down the face; no offset of the load line from the axis.", NotFor = Folding)]
    [Formula("yieldStrength/(Abs(Sin(setAngle))/area + leverArm*Cos(setAngle)/elasticModulus)", Symbol = "F_el")]
    [Example("FirstYieldLoad(73.04203 mm², 260.4808 mm³, 517.1068 MPa, 50 mm, 10 °)", "2701.511 N")]
    [Source("EN 1993-1-1:2005, equation 6.1", Standing.FromMemory)]
    public static Force FirstYieldLoad(
        [Parameter("A", "mm²", "area of the metal", Above = 0, AtMost = Most.SquareMillimetres)] Area area,
        [Parameter("W_el", "mm³", "elastic section modulus", Above = 0, AtMost = Most.CubicMillimetres)] Volume elasticModulus,
        [Parameter("f_y", "MPa", "yield strength", Above = 0, AtMost = Most.Megapascals, UsualFrom = 30, UsualTo = 2500)] Pressure yieldStrength,
        [Parameter("a", "mm", "lever arm from the sound ice to the load line", Above = 0, AtMost = Most.Millimetres)] Length leverArm,
        [Parameter("α", "°", SetAngles.Meaning, Above = -90, Below = 90)] Angle setAngle)
    {
        double set = Admit.Inside(setAngle.Radians, -90, 90, Scale.Degree, nameof(setAngle));
        double pull = Math.Abs(Math.Sin(set)) / Admit.Positive(area.SquareMeters, Most.SquareMillimetres, Scale.SquareMillimetre, nameof(area));
        double bend = Arm(leverArm) * Math.Cos(set) / Admit.Positive(elasticModulus.CubicMeters, Most.CubicMillimetres, Scale.CubicMillimetre, nameof(elasticModulus));
        return Force.FromNewtons(SectionStrength.Yield(yieldStrength) / (pull + bend));
    }

    /// <summary>Load in N along the face at which the tube forms a plastic hinge beside its own pull: F a cos α = M_pl (1 − (F |sin α|/N_pl)^1.7).</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The load at the hanger at which the tube forms a plastic hinge.", Assumes = "Section class 1 or 2; the load runs down the face; shear left out.", NotFor = Folding)]
    [NoFormula("Newton's method on F a cos α = M_pl (1 − (F |sin α|/N_pl)^1.7), from above, where it converges without overshoot.")]
    [Let("d", "outerDiameter - 2*wall", "m")]
    [CautionWhen("leverArm < 2*Sqrt(3)*(Pow(outerDiameter, 3) - Pow(d, 3))/(3*(Pow(outerDiameter, 2) - Pow(d, 2)))", ShortArm)]
    [Example("HingeLoad(17 mm, 1.5 mm, 517.1068 MPa, 50 mm, 10 °)", "3792.469 N")]
    [Source(Own, Standing.Derived)]
    [Source("EN 1993-1-1:2005, 6.2.9.1, rule for circular hollow sections", Standing.FromMemory)]
    public static Force HingeLoad(
        [Parameter("D", "mm", "outer diameter, at a thread the root diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall,
        [Parameter("f_y", "MPa", "yield strength", Above = 0, AtMost = Most.Megapascals, UsualFrom = 30, UsualTo = 2500)] Pressure yieldStrength,
        [Parameter("a", "mm", "lever arm from the sound ice to the load line", Above = 0, AtMost = Most.Millimetres)] Length leverArm,
        [Parameter("α", "°", SetAngles.Meaning, Above = -90, Below = 90)] Angle setAngle)
    {
        TubeSection tube = TubeSections.Tube(outerDiameter, wall);
        double strength = SectionStrength.Yield(yieldStrength);
        double set = Admit.Inside(setAngle.Radians, -90, 90, Scale.Degree, nameof(setAngle));
        return Force.FromNewtons(Solve(tube.PlasticModulusSi * strength, tube.AreaSi * strength, Arm(leverArm), Math.Abs(set)));
    }

    /// <summary>As <see cref="HingeLoad"/>, in N, with the yield strength lowered by the shear on a short arm; EN 1993-1-1, 6.2.8 and 6.2.9.1.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The load at the hanger at which a tube on a short arm forms a plastic hinge, shear included.", Assumes = "Section class 1 or 2; the load runs down the face.", NotFor = Folding)]
    [NoFormula("Brent's method to 1e-12 of the load on F a cos α = s M_pl (1 − (F |sin α|/(s N_pl))^1.7), s from ShearReduction at F cos α.")]
    [Example("HingeLoadWithShear(17 mm, 1.5 mm, 517.1068 MPa, 50 mm, 10 °)", "3792.469 N")]
    [Source(Own, Standing.Derived)]
    [Source("EN 1993-1-1:2005, 6.2.8 and 6.2.9.1", Standing.FromMemory)]
    public static Force HingeLoadWithShear(
        [Parameter("D", "mm", "outer diameter, at a thread the root diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall,
        [Parameter("f_y", "MPa", "yield strength", Above = 0, AtMost = Most.Megapascals, UsualFrom = 30, UsualTo = 2500)] Pressure yieldStrength,
        [Parameter("a", "mm", "lever arm from the sound ice to the load line", Above = 0, AtMost = Most.Millimetres)] Length leverArm,
        [Parameter("α", "°", SetAngles.Meaning, Above = -90, Below = 90)] Angle setAngle)
    {
        double hinge = HingeLoad(outerDiameter, wall, yieldStrength, leverArm, setAngle).Newtons;
        TubeSection tube = TubeSections.Tube(outerDiameter, wall);
        double strength = yieldStrength.Pascals, sine = Math.Abs(Math.Sin(setAngle.Radians)), cosine = Math.Cos(setAngle.Radians);
        double shear = tube.ShearAreaSi * strength / Math.Sqrt(3);
        if (hinge * cosine <= 0.5 * shear) return Force.FromNewtons(hinge);
        double Excess(double load)
        {
            double left = MomentInteraction.ShearFactor(load * cosine / shear) * strength;
            double n = left > 0 ? Math.Min(1, load * sine / (left * tube.AreaSi)) : 1;
            return (load * cosine * leverArm.Meters) - (left * tube.PlasticModulusSi * (1 - Math.Pow(n, MomentInteraction.CodeExponent)));
        }
        double most = Math.Min(hinge, shear / cosine);
        return Force.FromNewtons(Brent.FindRoot(Excess, 0, most, most * 1e-12, 200));
    }

    /// <summary>Load in N that a folding tube carries when its arm stands at an angle φ from square to the pull: F a cos φ = M_pl (1 − (F sin φ/N_pl)^1.7).</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The load a tube carries while it folds over: it rises as the arm lines up with the pull.",
        Assumes = "Rigid-plastic hinge at the ice face; the wall neither cracks nor collapses; thread and hanger hold.",
        NotFor = "Brittle tubes, notched thread roots, welds and crimps: compare the rotation with RotationCapacity.")]
    [NoFormula("Newton's method on F a cos φ = M_pl (1 − (F sin φ/N_pl)^1.7), from above, where it converges without overshoot.")]
    [Example("FoldOverLoad(186.9341 N·m, 37.77053 kN, 50 mm, 60 °)", "7133.05 N")]
    [Source(Own, Standing.Derived)]
    public static Force FoldOverLoad(
        [Parameter("M_pl", "N·m", "plastic moment of the section", Above = 0, AtMost = Most.NewtonMetres)] Torque plasticMoment,
        [Parameter("N_pl", "kN", "pull at which the whole section yields", Above = 0, AtMost = Most.Kilonewtons)] Force plasticAxialLoad,
        [Parameter("a", "mm", "lever arm from the hinge to the load line", Above = 0, AtMost = Most.Millimetres)] Length leverArm,
        [Parameter("φ", "°", "angle of the arm from square to the pull: set angle plus how far it has folded", AtLeast = 0, Below = 90)] Angle rotation) =>
        Force.FromNewtons(Solve(
            Moment(plasticMoment),
            Admit.Positive(plasticAxialLoad.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(plasticAxialLoad)),
            Arm(leverArm),
            Admit.Under(rotation.Radians, 0, 90, Scale.Degree, nameof(rotation))));

    /// <summary>As <see cref="FoldOverLoad"/> in N but without the pull's own effect on the hinge: M_pl/(a cos φ).</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "The load a tube carries while it folds over, the pull along it left out.", Assumes = "Rigid-plastic hinge at the ice face.",
        NotFor = "Large rotations: without the pull's effect it is too high; see FoldOverLoad.")]
    [Formula("plasticMoment/(leverArm*Cos(rotation))", Symbol = "F")]
    [CautionWhen("rotation > 60*pi/180 + 1e-9", "Beyond about 60° the pull along the arm matters: see FoldOverLoad.")]
    [Example("FoldOverLoadBendingOnly(186.9341 N·m, 50 mm, 60 °)", "7477.364 N")]
    [Source(Own, Standing.Derived)]
    public static Force FoldOverLoadBendingOnly(
        [Parameter("M_pl", "N·m", "plastic moment of the section", Above = 0, AtMost = Most.NewtonMetres)] Torque plasticMoment,
        [Parameter("a", "mm", "lever arm from the hinge to the load line", Above = 0, AtMost = Most.Millimetres)] Length leverArm,
        [Parameter("φ", "°", "angle of the arm from square to the pull: set angle plus how far it has folded", AtLeast = 0, Below = 90)] Angle rotation) =>
        Force.FromNewtons(Moment(plasticMoment) / (Arm(leverArm) * Math.Cos(Admit.Under(rotation.Radians, 0, 90, Scale.Degree, nameof(rotation)))));

    /// <summary>Rough rotation in rad a hinge takes before it cracks: 2 ε_u L_p/D; derived.</summary>
    /// <exception cref="DomainException">A value is out of range or absurd.</exception>
    [Callable(Topic, "Roughly how far a tube folds before its outer fibre cracks.", Assumes = "Strain spread evenly over the hinge length, about one diameter.",
        NotFor = "Thread roots, welds and crimps, which lower the strain at fracture: take it from a test.")]
    [Formula("2*ultimateStrain/outerDiameter*hingeLength", Symbol = "φ_u")]
    [CautionWhen("true", "A rough limit: record the energy or the deflection of a test, not its peak load alone.")]
    [Example("RotationCapacity(17 mm, 0.20, 17 mm)", "22.91831 °")]
    [Source("curvature at fracture times hinge length, derived here", Standing.Derived)]
    public static Angle RotationCapacity(
        [Parameter("D", "mm", "outer diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("ε_u", "", "strain at fracture of the wall as made, notches and welds included", Above = 0, AtMost = 1, UsualTo = 0.4)] double ultimateStrain,
        [Parameter("L_p", "mm", "length of the hinge, about one diameter", Above = 0, AtMost = Most.Millimetres)] Length hingeLength) =>
        Angle.FromRadians(2 * Admit.Positive(ultimateStrain, 1, Scale.None, nameof(ultimateStrain))
            * Admit.Positive(hingeLength.Meters, Most.Millimetres, Scale.Millimetre, nameof(hingeLength))
            / Admit.Positive(outerDiameter.Meters, Most.Millimetres, Scale.Millimetre, nameof(outerDiameter)));

    /// <summary>The balance of the hinge is convex and rising in the load, so Newton's steps from above never overshoot.</summary>
    private static double Solve(double moment, double axial, double arm, double angle)
    {
        double lever = arm * Math.Cos(angle), sine = Math.Sin(angle);
        double load = moment / lever;
        if (sine <= 0) return load;
        load = Math.Min(load, axial / sine);
        for (int step = 0; step < 100; step++)
        {
            double spent = moment * Math.Pow(load * sine / axial, MomentInteraction.CodeExponent);
            double correction = ((load * lever) - moment + spent) / (lever + (MomentInteraction.CodeExponent * spent / load));
            load -= correction;
            if (Math.Abs(correction) <= 1e-15 * load) break;
        }
        return load;
    }

    private static double Arm(Length leverArm) => Admit.Positive(leverArm.Meters, Most.Millimetres, Scale.Millimetre, nameof(leverArm));

    private static double Moment(Torque plasticMoment) => Admit.Positive(plasticMoment.NewtonMeters, Most.NewtonMetres, Scale.NewtonMetre, nameof(plasticMoment));
}
