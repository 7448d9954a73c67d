using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>What gives way first in a placement, and at which load.</summary>
public static class Placements
{
    private const string Topic = "Placement";

    private const string WhyLow = "A promise that it holds, or a forecast of a pull test: these capacities lie below the 10 to 20 kN measured in good ice, because confinement under the surface, "
        + "friction and the rise of the load while the tube folds are left out. Calibrate with one factor for each mode against your own tests; never tune the material.";

    /// <summary>A placement from what is always needed; the rest (hanger rating, tensile strength, strain at fracture, old grooves, factors) is added by <c>with</c>.</summary>
    [Callable(Topic, "Which screw stands how in which ice?", Assumes = "Thread diameter and contact width are those of the tube unless changed by 'with'; all factors are 1.", NotFor = "Ice whose strengths were not estimated on the spot.")]
    [NoFormula("collects what is given; values are checked when the placement is assessed")]
    [Source("collects inputs", Standing.Derived)]
    [Example("PlaceScrew(TubeAtThreadRoot(20 mm, 17 mm, 14 mm), Materials.Steel4130Normalised, 130 mm, 10 °, 0 mm, 40 mm, 10 mm, 10 mm, 20 MPa, 1.1 MPa).ThreadDiameter", "20.0000 mm")]
    public static ScrewPlacement PlaceScrew(
        [Parameter("", "", "section of the tube that carries the load, see Tube and TubeAtThreadRoot")] TubeSection tube,
        [Parameter("", "", "material of the tube, see Materials")] Material material,
        [Parameter("L", "mm", "length of the body from the hanger seat to the tip", Above = 0, AtMost = Most.Millimetres, UsualFrom = 80, UsualTo = 250)] Length bodyLength,
        [Parameter("α", "°", SetAngles.Meaning, Above = -90, Below = 90)] Angle setAngle,
        [Parameter("p", "mm", "how far the body stands out of the original face", AtLeast = 0, AtMost = Most.Millimetres)] Length protrusion,
        [Parameter("c", "mm", "depth of ice lost, along the axis; common practice 30 to 50 mm", AtLeast = 0, AtMost = Most.Millimetres)] Length iceLost,
        [Parameter("e", "mm", "from the face of the hanger's seat outward to the line of the load", AtLeast = 0, AtMost = Most.Millimetres)] Length offset,
        [Parameter("l_t", "mm", "unthreaded tip, teeth included", AtLeast = 0, AtMost = Most.Millimetres)] Length unthreadedTip,
        [Parameter("σ_b", "MPa", "bearing (crushing) strength of confined ice", Above = 0, AtMost = Most.Megapascals, UsualFrom = 5, UsualTo = 25)] Pressure bearingStrength,
        [Parameter("τ", "MPa", "shear strength of the ice round the thread", Above = 0, AtMost = Most.Megapascals, UsualFrom = 0.3, UsualTo = 2)] Pressure shearStrength)
    {
        ScrewPlacement placement = new()
        {
            Tube = tube, Material = material, BodyLength = bodyLength, SetAngle = setAngle, Protrusion = protrusion, IceLost = iceLost, Offset = offset, UnthreadedTip = unthreadedTip,
            ThreadDiameter = tube.ContactDiameter, ContactWidth = tube.OuterDiameter, BearingStrength = bearingStrength, ShearStrength = shearStrength,
        };
        PlacementModes.Check(placement);
        return placement;
    }

    /// <summary>One factor for all failure modes, to be changed for single modes by <c>with</c>.</summary>
    /// <exception cref="DomainException">The factor is not positive or absurd.</exception>
    [Callable(Topic, "How is one factor given to all modes?")]
    [NoFormula("the same factor for each mode")]
    [Source("collects inputs", Standing.Derived)]
    [Example("FactorsForAll(1.25).ThreadPullOut", "1.25000")]
    public static ModeFactors FactorsForAll([Parameter("γ", "", "the factor", Above = 0, AtMost = 100)] double factor)
    {
        double same = Admit.Positive(factor, 100, Scale.None, nameof(factor));
        return new ModeFactors
        {
            SurfaceCone = same, FirstYield = same, PlasticHinge = same, HingeInIce = same, ShortRotation = same, ThreadPullOut = same, FoldOverPullOut = same, Tearing = same, Hanger = same,
        };
    }

    /// <summary>
    /// What a load along the face does to a placement: design resistances R_d = calibration·R/γ_M of every mode after cone-out, and for each of two limit states the governing mode, runner-up and utilisation γ_F·F/R_d.
    /// </summary>
    /// <exception cref="DomainException">A value of the placement or the load is out of range, or nothing is left in sound ice.</exception>
    [Callable(Topic, "What gives way first, and how far does the load use it up?",
        Assumes = "The surface ice goes first: lever arm, embedment and thread are those after cone-out. The load runs down the face. Tube of section class 1 or 2. Below its hinge load the tube does not fold, so fold-over needs the greater of hinge load and thread pull-out.",
        NotFor = WhyLow)]
    [NoFormula("the modes in order: half cone (analogue), first yield, hinge at the face, hinge and rotation in crushing ice over cos α, thread over sin α, fold-over then thread, tearing at the rotation 2 ε_u, rated hanger")]
    [Source("EN 1990, partial factor format", Standing.FromMemory)]
    [Source("modes by FirstYieldLoad, HingeLoad, LongBodyCrushing, ShortBodyCrushing, ThreadPullOut, FoldOverLoad and IceHalfConeAnalogue; their order as a national guides' school's laboratory page describes it", Standing.Read)]
    [Example("AssessPlacement(PlaceScrew(TubeAtThreadRoot(20 mm, 17 mm, 14 mm), Materials.Steel4130Normalised, 130 mm, 10 °, 0 mm, 40 mm, 10 mm, 10 mm, 20 MPa, 1.1 MPa), 8 kN).ComesOut.Resistance", "5.529203 kN")]
    public static PlacementAssessment AssessPlacement(
        [Parameter("", "", "the placement, see PlaceScrew")] ScrewPlacement placement,
        [Parameter("E_k", "kN", "load at the hanger down the face, before its partial factor", AtLeast = 0, AtMost = Most.Kilonewtons)] Force load)
    {
        PlacementModes modes = PlacementModes.Of(placement);
        double design = placement.GammaF * Admit.Between(load.Newtons, 0, Most.Kilonewtons, Scale.Kilonewton, nameof(load));
        Capacity cone = modes.SurfaceCone(), yield = modes.FirstYield(), hinge = modes.PlasticHinge(), inIce = modes.HingeInIce();
        Capacity turns = modes.ShortRotation(), thread = modes.StraightThread(), folds = modes.FoldOverPullOut(), tears = modes.Tearing(), hanger = modes.Hanger();
        PlacementLimit damage = new("Damage begins", design,
            [(FailureMode.SurfaceCone, cone), (FailureMode.FirstYield, yield), (FailureMode.PlasticHinge, hinge), (FailureMode.HingeInIce, inIce)]);
        PlacementLimit end = new("Comes out or breaks", design,
            [(FailureMode.ShortRotation, turns), (FailureMode.ThreadPullOut, thread), (FailureMode.FoldOverPullOut, folds), (FailureMode.Tearing, tears), (FailureMode.Hanger, hanger)]);
        return new PlacementAssessment
        {
            DamageBegins = damage, ComesOut = end, DesignLoad = Force.FromNewtons(design),
            LeverArm = Length.FromMeters(modes.Arm), EmbeddedLength = Length.FromMeters(modes.Embedded), EngagedThread = Length.FromMeters(modes.Thread),
            SurfaceCone = cone, FirstYield = yield, PlasticHinge = hinge, HingeInIce = inIce, ShortRotation = turns, ThreadPullOut = thread, FoldOverPullOut = folds, Tearing = tears, Hanger = hanger,
            Cautions = PlacementCautions.Of(placement, modes, damage, end),
        };
    }
}
