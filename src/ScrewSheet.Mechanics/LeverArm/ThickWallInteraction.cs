using MathNet.Numerics.RootFinding;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>One point of the exact curve of pull against plastic moment of a tube of any wall.</summary>
[SheetRecord("one point of the exact curve of pull against plastic moment of a tube")]
public readonly record struct InteractionPoint
{
    internal InteractionPoint(double axialRatio, double momentFactor)
    {
        AxialRatio = axialRatio;
        MomentFactor = momentFactor;
    }

    /// <summary>|N|/N_pl, 0 to 1.</summary>
    [Member("n", "", "load along the body over the plastic axial load")]
    public double AxialRatio { get; }

    /// <summary>M/M_pl, 0 to 1.</summary>
    [Member("m", "", "moment over the plastic moment")]
    public double MomentFactor { get; }
}

/// <summary>Which rule says how much moment is left beside a pull.</summary>
[SheetOption("the rule for the plastic moment left beside a pull")]
public enum InteractionRule
{
    /// <summary>Exact for the wall the tube has.</summary>
    ExactThickWall,

    /// <summary>Exact for a thin wall, cos(π n/2).</summary>
    ExactThinWall,

    /// <summary>EN 1993-1-1, 1 − n^1.7.</summary>
    Code,

    /// <summary>National annex, min(1, 1.04 (1 − n^1.7)).</summary>
    NationalAnnex,
}

/// <summary>Pull, shear and plastic moment together, for a tube of any wall.</summary>
public static class ThickWallInteraction
{
    private const string Topic = "Lever arm";
    private const string Exact = "plastic analysis of a ring with its neutral axis shifted, derived here";

    /// <summary>Exact n and m of a tube whose plastic neutral axis is shifted by h in mm, up to the radius of the bore.</summary>
    /// <exception cref="DomainException">A dimension is out of range or the shift exceeds the radius of the bore.</exception>
    [Callable(Topic, "The pull and the plastic moment that go together when the neutral axis of a tube is shifted, exact for any wall.",
        Assumes = "Rigid-plastic; the neutral axis still crosses the bore.", NotFor = "Shear.")]
    [Let("R", "outerDiameter/2", "m")]
    [Let("r", "outerDiameter/2 - wall", "m")]
    [Let("h", "neutralAxisShift", "m")]
    [Let("sR", "2*(h*Sqrt(R*R - h*h) + R*R*Asin(h/R))", "m²")]
    [Let("sr", "2*(h*Sqrt(r*r - h*h) + r*r*Asin(h/r))", "m²")]
    [Formula("(sR - sr)/(pi*(R*R - r*r))", Symbol = "n", Member = "AxialRatio")]
    [Formula("(Pow(R*R - h*h, 1.5) - Pow(r*r - h*h, 1.5))/(R*R*R - r*r*r)", Symbol = "m", Member = "MomentFactor")]
    [Example("ThickWallPoint(3 mm, 17 mm, 1.5 mm).MomentFactor", "0.922247")]
    [Source(Exact, Standing.Derived)]
    public static InteractionPoint ThickWallPoint(
        [Parameter("h", "mm", "shift of the neutral axis from the centre, at most the radius of the bore", AtLeast = 0, AtMost = Most.Millimetres)] Length neutralAxisShift,
        [Parameter("D", "mm", "outer diameter, at a thread the root diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, less than half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall)
    {
        double outer = Admit.Positive(outerDiameter.Meters, Most.Millimetres, Scale.Millimetre, nameof(outerDiameter)) / 2;
        double inner = outer - Admit.Inside(wall.Meters, 0, outer / 1e-3, Scale.Millimetre, nameof(wall));
        double shift = Admit.Between(neutralAxisShift.Meters, 0, inner / 1e-3, Scale.Millimetre, nameof(neutralAxisShift));
        return At(Math.Min(shift, inner), outer, inner);
    }

    /// <summary>Part of the plastic moment left beside a pull, a number, exact for any wall; n from 0 to 1.</summary>
    /// <exception cref="DomainException">The ratio is not from 0 to 1 or a dimension is out of range.</exception>
    [Callable(Topic, "The part of the plastic moment left beside a pull, exact for any wall.", Assumes = "Rigid-plastic.", NotFor = "Adding shear: see ShearReduction.")]
    [NoFormula("Finds the shift of the neutral axis that gives the pull (Brent's method to 1e-14 of the radius), then the moment of ThickWallPoint; beyond the bore the same integrals without the bore.")]
    [Example("ThickWallMomentFactor(0.2531186, 17 mm, 1.5 mm)", "0.922247")]
    [Source(Exact, Standing.Derived)]
    public static double ThickWallMomentFactor(
        [Parameter("n", "", "magnitude of the load along the body over what the section holds, |N|/N_pl", AtLeast = 0, AtMost = 1)] double axialRatio,
        [Parameter("D", "mm", "outer diameter, at a thread the root diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall)
    {
        double n = Math.Clamp(Admit.Between(axialRatio, 0, 1, Scale.None, nameof(axialRatio)), 0, 1);
        TubeSection tube = TubeSections.Tube(outerDiameter, wall);
        return MomentFactor(n, tube.Bore.Meters / tube.OuterDiameter.Meters);
    }

    /// <summary>Plastic moment in N·m left beside a pull and a shear force, by the rule chosen; EN 1993-1-1, 6.2.8 to 6.2.10.</summary>
    /// <exception cref="DomainException">A dimension or strength is out of range, or a load exceeds what the section holds alone.</exception>
    [Callable(Topic, "The plastic moment a tube still holds beside a pull and a shear force.",
        Assumes = "Section class 1 or 2. Shear lowers the yield strength for pull and bending alike.", NotFor = "Saying when the tube breaks: it folds on, see FoldOverLoad.")]
    [NoFormula("The yield strength lowered by ShearReduction, then the moment factor of the rule at |N| over the lowered plastic axial load.")]
    [Example("ReducedPlasticMoment(1736.482 N, 3000 N, 17 mm, 1.5 mm, 517.1068 MPa, InteractionRule.Code)", "185.9388 N·m")]
    [Source("EN 1993-1-1:2005, 6.2.8 to 6.2.10", Standing.FromMemory)]
    public static Torque ReducedPlasticMoment(
        [Parameter("N", "kN", "load along the body, positive outward; its sign does not matter here", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force axial,
        [Parameter("V", "kN", "load square to the body; its sign does not matter here", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force transverse,
        [Parameter("D", "mm", "outer diameter, at a thread the root diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall,
        [Parameter("f_y", "MPa", "yield strength", Above = 0, AtMost = Most.Megapascals, UsualFrom = 30, UsualTo = 2500)] Pressure yieldStrength,
        [Parameter("", "", "rule for the moment beside a pull")] InteractionRule rule)
    {
        TubeSection tube = TubeSections.Tube(outerDiameter, wall);
        double strength = SectionStrength.Yield(yieldStrength);
        double left = MomentInteraction.ShearReduction(transverse, Force.FromNewtons(tube.ShearAreaSi * strength / Math.Sqrt(3))) * strength;
        if (left <= 0) return Torque.Zero;
        double n = MomentInteraction.AxialRatio(axial, Force.FromNewtons(tube.AreaSi * left));
        return Torque.FromNewtonMeters(tube.PlasticModulusSi * left * Factor(rule, n, tube));
    }

    private static double Factor(InteractionRule rule, double n, in TubeSection tube) => rule switch
    {
        InteractionRule.ExactThickWall => MomentFactor(n, tube.Bore.Meters / tube.OuterDiameter.Meters),
        InteractionRule.ExactThinWall => MomentInteraction.ThinWallMomentFactor(n),
        InteractionRule.Code => MomentInteraction.CodeMomentFactor(n),
        InteractionRule.NationalAnnex => MomentInteraction.AnnexMomentFactor(n),
        _ => throw new DomainException($"rule must be one of {string.Join(", ", Enum.GetNames<InteractionRule>())}.", nameof(rule)),
    };

    /// <summary>Dimensionless: outer radius 1, inner radius the ratio of the diameters.</summary>
    private static double MomentFactor(double n, double inner)
    {
        if (n <= 0) return 1;
        if (n >= 1) return 0;
        return At(Brent.FindRoot(shift => At(shift, 1, inner).AxialRatio - n, 0, 1, 1e-14, 200), 1, inner).MomentFactor;
    }

    private static InteractionPoint At(double shift, double outer, double inner)
    {
        double cut = Math.Min(shift, inner);
        double axial = (Segment(outer, shift) - Segment(inner, cut)) / (Math.PI * ((outer * outer) - (inner * inner)));
        double moment = (Chord(outer, shift) - Chord(inner, cut)) / (Cube(outer) - Cube(inner));
        return new InteractionPoint(axial, moment);
    }

    /// <summary>Area of a disc within h of a diameter, on both sides of it.</summary>
    private static double Segment(double radius, double h) =>
        radius > 0 ? 2 * ((h * Math.Sqrt(Math.Max(0, (radius * radius) - (h * h)))) + (radius * radius * Math.Asin(Math.Min(1, h / radius)))) : 0;

    private static double Chord(double radius, double h) => Math.Pow(Math.Max(0, (radius * radius) - (h * h)), 1.5);

    private static double Cube(double x) => x * x * x;
}
