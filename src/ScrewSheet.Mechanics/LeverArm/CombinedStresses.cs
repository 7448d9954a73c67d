using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>Elastic stresses of a tube at its two critical points, which lie at different places and are never added.</summary>
[SheetRecord("elastic stresses at the two critical points of a tube: extreme fibre and neutral axis")]
public readonly record struct TubeStress
{
    private readonly double axialStress, bendingStress, shear;

    internal TubeStress(double axialStress, double bendingStress, double shear)
    {
        this.axialStress = axialStress;
        this.bendingStress = bendingStress;
        this.shear = shear;
    }

    /// <summary>Stress at the extreme fibre, where transverse shear is zero, so it is the equivalent stress there.</summary>
    [Member("σ", "MPa", "stress at the extreme fibre (no shear there): |N|/A + |M|/W_el")]
    public Pressure ExtremeFibre => Pressure.FromPascals(axialStress + bendingStress);

    /// <summary>Normal stress at the neutral axis.</summary>
    [Member("σ_N", "MPa", "normal stress at the neutral axis: |N|/A")]
    public Pressure AxialStress => Pressure.FromPascals(axialStress);

    /// <summary>Greatest shear stress, at the neutral axis.</summary>
    [Member("τ", "MPa", "greatest shear stress, at the neutral axis")]
    public Pressure NeutralAxisShear => Pressure.FromPascals(shear);

    /// <summary>Equivalent stress at the neutral axis by von Mises.</summary>
    [Member("σ_eq", "MPa", "equivalent stress at the neutral axis, √(σ_N² + 3 τ²)")]
    public Pressure NeutralAxis => Pressure.FromPascals(AtNeutralAxis);

    /// <summary>The larger of the equivalent stresses at the two points.</summary>
    [Member("σ_max", "MPa", "the larger of the equivalent stresses at the two points")]
    public Pressure Governing => Pressure.FromPascals(Math.Max(axialStress + bendingStress, AtNeutralAxis));

    private double AtNeutralAxis => Math.Sqrt((axialStress * axialStress) + (3 * shear * shear));
}

/// <summary>Elastic stress checks of the tube at the sound ice.</summary>
public static class CombinedStresses
{
    private const string Topic = "Lever arm";
    private const string VonMises = "EN 1993-1-1:2005, equation 6.1 (von Mises)";
    private const string Beam = "beam theory, shear flow in a circular ring";

    /// <summary>Elastic stresses in Pa at extreme fibre and neutral axis from N, V (N) and M (N·m); EN 1993-1-1, equation 6.1.</summary>
    /// <exception cref="DomainException">A dimension is out of range or a load absurd.</exception>
    [Callable(Topic, "The elastic stresses of a tube at both critical points, under pull, shear and bending together.",
        Assumes = "Elastic; the greatest bending stress and the greatest shear stress act at different points and are not added.",
        NotFor = "Loads beyond first yield: the figures are then fictitious.")]
    [Let("D", "outerDiameter", "m")]
    [Let("d", "outerDiameter - 2*wall", "m")]
    [Let("A", "pi/4*(Pow(D, 2) - Pow(d, 2))", "m²")]
    [Let("W", "pi/32*(Pow(D, 4) - Pow(d, 4))/D", "m³")]
    [Let("sigmaN", "Abs(axial)/A", "Pa")]
    [Let("tau", "4*Abs(transverse)/(3*A)*(D*D + D*d + d*d)/(D*D + d*d)", "Pa")]
    [Needs("2*wall <= outerDiameter")]
    [Formula("sigmaN + Abs(moment)/W", Symbol = "σ", Member = "ExtremeFibre")]
    [Formula("sigmaN", Symbol = "σ_N", Member = "AxialStress")]
    [Formula("tau", Symbol = "τ", Member = "NeutralAxisShear")]
    [Formula("Sqrt(sigmaN*sigmaN + 3*tau*tau)", Symbol = "σ_eq", Member = "NeutralAxis")]
    [Formula("Max(sigmaN + Abs(moment)/W, Sqrt(sigmaN*sigmaN + 3*tau*tau))", Symbol = "σ_max", Member = "Governing")]
    [Example("CombinedStress(517.6381 N, 1931.852 N, 96.59258 N·m, 17 mm, 1.5 mm).ExtremeFibre", "377.911 MPa")]
    [Source(VonMises, Standing.FromMemory)]
    [Source(Beam, Standing.Derived)]
    public static TubeStress CombinedStress(
        [Parameter("N", "kN", "load along the body, positive outward; its sign does not matter here", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force axial,
        [Parameter("V", "kN", "load square to the body; its sign does not matter here", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force transverse,
        [Parameter("M", "N·m", "bending moment; its sign does not matter here", AtLeast = -Most.NewtonMetres, AtMost = Most.NewtonMetres)] Torque moment,
        [Parameter("D", "mm", "outer diameter, at a thread the root diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall)
    {
        TubeSection tube = TubeSections.Tube(outerDiameter, wall);
        double pull = Math.Abs(Admit.Signed(axial.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(axial)));
        double bend = Math.Abs(Admit.Signed(moment.NewtonMeters, Most.NewtonMetres, Scale.NewtonMetre, nameof(moment)));
        return new TubeStress(pull / tube.AreaSi, bend / tube.ElasticModulusSi, Math.Abs(ShearSi(transverse, tube)));
    }

    /// <summary>Greatest shear stress in Pa of a tube, at the neutral axis: 4 V/(3 A) (D² + D d + d²)/(D² + d²); exact for any wall.</summary>
    /// <exception cref="DomainException">A dimension is out of range or the load absurd.</exception>
    [Callable(Topic, "The greatest shear stress in a tube of any wall.", Assumes = "Elastic.", NotFor = "Adding to the bending stress of the extreme fibre.")]
    [Let("D", "outerDiameter", "m")]
    [Let("d", "outerDiameter - 2*wall", "m")]
    [Let("A", "pi/4*(Pow(D, 2) - Pow(d, 2))", "m²")]
    [Needs("2*wall <= outerDiameter")]
    [Formula("4*transverse/(3*A)*(D*D + D*d + d*d)/(D*D + d*d)", Symbol = "τ")]
    [Example("PeakShearStress(1931.852 N, 17 mm, 1.5 mm)", "52.56980 MPa")]
    [Source(Beam, Standing.Derived)]
    public static Pressure PeakShearStress(
        [Parameter("V", "kN", "load square to the body", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force transverse,
        [Parameter("D", "mm", "outer diameter, at a thread the root diameter", Above = 0, AtMost = Most.Millimetres)] Length outerDiameter,
        [Parameter("t", "mm", "wall thickness, at most half the outer diameter", Above = 0, AtMost = Most.Millimetres)] Length wall) =>
        Pressure.FromPascals(ShearSi(transverse, TubeSections.Tube(outerDiameter, wall)));

    /// <summary>Greatest shear stress in Pa of a thin tube, 2 V/A: the limit of a vanishing wall.</summary>
    /// <exception cref="DomainException">The area is not above 0 mm² or a value is absurd.</exception>
    [Callable(Topic, "The greatest shear stress in a thin tube.", Assumes = "The wall is thin against the radius; it is never less than the exact value.", NotFor = "Thick walls: use PeakShearStress.")]
    [Formula("2*transverse/area", Symbol = "τ")]
    [Example("ThinWallShearStress(9659.258 N, 73.04203 mm²)", "264.4849 MPa")]
    [Source(Beam, Standing.Derived)]
    public static Pressure ThinWallShearStress(
        [Parameter("V", "kN", "load square to the body", AtLeast = -Most.Kilonewtons, AtMost = Most.Kilonewtons)] Force transverse,
        [Parameter("A", "mm²", "area of the metal", Above = 0, AtMost = Most.SquareMillimetres)] Area area) =>
        Pressure.FromPascals(2 * Admit.Signed(transverse.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(transverse))
            / Admit.Positive(area.SquareMeters, Most.SquareMillimetres, Scale.SquareMillimetre, nameof(area)));

    /// <summary>Equivalent stress in Pa of a normal and a shear stress at one point: √(σ² + 3 τ²); EN 1993-1-1, equation 6.1.</summary>
    /// <exception cref="DomainException">A stress is absurd or not finite.</exception>
    [Callable(Topic, "The equivalent stress of a normal and a shear stress at one and the same point.", NotFor = "Stresses that act at different points.")]
    [Formula("Sqrt(Pow(normalStress, 2) + 3*Pow(shearStress, 2))", Symbol = "σ_eq")]
    [Example("EquivalentStress(35.43423 MPa, 262.8489 MPa)", "456.6445 MPa")]
    [Source(VonMises, Standing.FromMemory)]
    public static Pressure EquivalentStress(
        [Parameter("σ", "MPa", "normal stress at the point", AtLeast = -Most.Megapascals, AtMost = Most.Megapascals)] Pressure normalStress,
        [Parameter("τ", "MPa", "shear stress at the same point", AtLeast = -Most.Megapascals, AtMost = Most.Megapascals)] Pressure shearStress)
    {
        double normal = Admit.Signed(normalStress.Pascals, Most.Megapascals, Scale.Megapascal, nameof(normalStress));
        double shear = Admit.Signed(shearStress.Pascals, Most.Megapascals, Scale.Megapascal, nameof(shearStress));
        return Pressure.FromPascals(Math.Sqrt((normal * normal) + (3 * shear * shear)));
    }

    /// <summary>Peak stress in Pa at a notch: nominal stress times a stress concentration (1 to 20) that the user gives.</summary>
    /// <exception cref="DomainException">The factor is below 1 or above 20, or the stress is absurd.</exception>
    [Callable(Topic, "The peak stress at a notch, from a stress concentration of your own.",
        Assumes = "Elastic; the factor comes from your own measurement, analysis or handbook for your thread root, weld or crimp.",
        NotFor = "Ductile tubes under one static load, where the peak yields and spreads; it matters for fatigue and brittle material.")]
    [Formula("nominalStress*stressConcentration", Symbol = "σ_peak")]
    [CautionWhen("stressConcentration > 1", "The stress concentration is an input of yours; no value of it is given here.")]
    [Example("NotchStress(200 MPa, 2.5)", "500.000 MPa")]
    [Source("definition of the stress concentration factor", Standing.Derived)]
    public static Pressure NotchStress(
        [Parameter("σ", "MPa", "nominal stress of the section at the notch", AtLeast = -Most.Megapascals, AtMost = Most.Megapascals)] Pressure nominalStress,
        [Parameter("K_t", "", "stress concentration, peak over nominal stress", AtLeast = 1, AtMost = 20, UsualTo = 5)] double stressConcentration) =>
        Pressure.FromPascals(Admit.Signed(nominalStress.Pascals, Most.Megapascals, Scale.Megapascal, nameof(nominalStress))
            * Admit.Between(stressConcentration, 1, 20, Scale.None, nameof(stressConcentration)));

    private static double ShearSi(Force transverse, in TubeSection tube)
    {
        double outer = tube.OuterDiameter.Meters, bore = tube.Bore.Meters, squares = (outer * outer) + (bore * bore);
        return 4 * Admit.Signed(transverse.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(transverse)) / (3 * tube.AreaSi) * (squares + (outer * bore)) / squares;
    }
}
