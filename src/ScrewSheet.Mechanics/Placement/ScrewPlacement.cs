using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>A screw as it stands in the ice: body, geometry, ice, and the factors of the safety format. Made by <see cref="Placements.PlaceScrew"/>, changed by <c>with</c>.</summary>
[SheetRecord("a screw as it stands in the ice: body, geometry, ice and factors")]
public sealed record ScrewPlacement
{
    private readonly double? rating, tension, strain;

    /// <summary>The section that carries the load.</summary>
    [Member("", "", "section of the tube that carries the load; at a thread the root")]
    public required TubeSection Tube { get; init; }

    /// <summary>The material of the tube.</summary>
    [Member("", "", "material of the tube")]
    public required Material Material { get; init; }

    /// <summary>Length of the body from hanger seat to tip.</summary>
    [Member("L", "mm", "length of the body from the hanger seat to the tip")]
    public required Length BodyLength { get; init; }

    /// <summary>Set angle from the normal of the face.</summary>
    [Member("α", "°", SetAngles.Meaning)]
    public required Angle SetAngle { get; init; }

    /// <summary>How far the body stands out of the original face.</summary>
    [Member("p", "mm", "how far the body stands out of the original face")]
    public required Length Protrusion { get; init; }

    /// <summary>Depth of ice lost along the axis.</summary>
    [Member("c", "mm", "depth of ice lost, along the axis; common practice 30 to 50 mm")]
    public required Length IceLost { get; init; }

    /// <summary>From the hanger seat to the load line.</summary>
    [Member("e", "mm", "from the face of the hanger's seat outward to the line of the load")]
    public required Length Offset { get; init; }

    /// <summary>Unthreaded tip.</summary>
    [Member("l_t", "mm", "unthreaded tip, teeth included")]
    public required Length UnthreadedTip { get; init; }

    /// <summary>Length running in old grooves.</summary>
    [Member("l_r", "mm", "length running in the grooves of an old hole")]
    public Length ReboredLength { get; init; } = Length.Zero;

    /// <summary>Outer thread diameter.</summary>
    [Member("D_t", "mm", "outer diameter of the thread; that of the tube's crest unless written")]
    public required Length ThreadDiameter { get; init; }

    /// <summary>Width that bears on the ice.</summary>
    [Member("D", "mm", "width that bears sideways on the ice; the tube's own diameter unless written")]
    public required Length ContactWidth { get; init; }

    /// <summary>Bearing strength of the ice.</summary>
    [Member("σ_b", "MPa", "bearing (crushing) strength of confined ice")]
    public required Pressure BearingStrength { get; init; }

    /// <summary>Shear strength of the ice.</summary>
    [Member("τ", "MPa", "shear strength of the ice round the thread")]
    public required Pressure ShearStrength { get; init; }

    /// <summary>Thread-shape factor.</summary>
    [Member("TSF", "", "share of the shear cylinder the thread uses, see ThreadShapeFactor; 1 unless written")]
    public double ThreadShapeFactor { get; init; } = 1;

    /// <summary>Tensile strength of the surface ice; without it the cone is not looked at.</summary>
    /// <exception cref="DomainException">None is given, or it is not positive.</exception>
    [Member("f_t", "MPa", "tensile strength of the surface ice; without it the surface cone is not looked at")]
    public Pressure TensileStrength
    {
        get => Pressure.FromPascals(tension ?? throw new DomainException("No tensile strength of the surface ice is given."));
        init => tension = Admit.Positive(value.Pascals, Most.Megapascals, Scale.Megapascal, nameof(TensileStrength));
    }

    /// <summary>Rating of the weakest of hanger, connector and sling; without it they are not looked at.</summary>
    /// <exception cref="DomainException">None is given, or it is not positive.</exception>
    [Member("F_R", "kN", "rating of the weakest of hanger, connector and sling; without it they are not looked at")]
    public Force HangerRating
    {
        get => Force.FromNewtons(rating ?? throw new DomainException("No hanger rating is given."));
        init => rating = Admit.Positive(value.Newtons, Most.Kilonewtons, Scale.Kilonewton, nameof(HangerRating));
    }

    /// <summary>Strain at fracture of the tube as made; without it tearing is not looked at.</summary>
    /// <exception cref="DomainException">None is given, or it is not positive.</exception>
    [Member("ε_u", "", "strain at fracture of the wall as made, notches and welds included; without it tearing is not looked at")]
    public double UltimateStrain
    {
        get => strain ?? throw new DomainException("No strain at fracture is given.");
        init => strain = Admit.Positive(value, 1, Scale.None, nameof(UltimateStrain));
    }

    /// <summary>Calibration factors against your own tests.</summary>
    [Member("", "", "calibration factor of each mode against your own tests; above 1 a caution")]
    public ModeFactors Calibration { get; init; } = new();

    /// <summary>Partial factors of the resistances.</summary>
    [Member("γ_M", "", "partial factor of each resistance, γ_M = γ_m·γ_Rd (EN 1990)")]
    public ModeFactors GammaM { get; init; } = new();

    /// <summary>Partial factor of the load.</summary>
    [Member("γ_F", "", "partial factor of the load, γ_F = γ_f·γ_Sd (EN 1990): γ_G for a permanent, γ_Q for a variable load")]
    public double GammaF { get; init; } = 1;

    internal double? Rating => rating;

    internal double? Tension => tension;

    internal double? Strain => strain;
}
