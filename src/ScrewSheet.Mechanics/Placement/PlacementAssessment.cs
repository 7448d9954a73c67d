using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>What a load does to a placement: two limit states that are never mixed, and the design resistance of every mode behind them.</summary>
[SheetRecord("what a load does to a placement: two limit states and every mode behind them")]
public sealed record PlacementAssessment : ICautioned
{
    internal PlacementAssessment() { }

    /// <summary>Damage begins: cone, first yield, hinge.</summary>
    [Member("", "", "limit state 'damage begins': surface cone, first yield, hinge at the face or in crushing ice")]
    public required PlacementLimit DamageBegins { get; init; }

    /// <summary>Comes out or breaks: rotation, pull-out, fold-over then pull-out, tearing, rated hanger.</summary>
    [Member("", "", "limit state 'comes out or breaks': rotation, pull-out, fold-over then pull-out, tearing, rated hanger")]
    public required PlacementLimit ComesOut { get; init; }

    /// <summary>The load times its partial factor.</summary>
    [Member("E_d", "kN", "design load, γ_F times the load given")]
    public required Force DesignLoad { get; init; }

    /// <summary>Lever arm after cone-out.</summary>
    [Member("a", "mm", "lever arm after cone-out: protrusion, ice lost and offset")]
    public required Length LeverArm { get; init; }

    /// <summary>Length in sound ice after cone-out.</summary>
    [Member("L_emb", "mm", "length in sound ice after cone-out")]
    public required Length EmbeddedLength { get; init; }

    /// <summary>Thread in sound ice after cone-out.</summary>
    [Member("L_eff", "mm", "thread in sound ice after cone-out")]
    public required Length EngagedThread { get; init; }

    /// <summary>Design resistance of the surface cone (analogue).</summary>
    [Member("", "", "surface cone (analogue): design resistance or does not act")]
    public required Capacity SurfaceCone { get; init; }

    /// <summary>Design resistance of first yield.</summary>
    [Member("", "", "first yield: design resistance or does not act")]
    public required Capacity FirstYield { get; init; }

    /// <summary>Design resistance of the hinge at the face.</summary>
    [Member("", "", "plastic hinge at the face: design resistance or does not act")]
    public required Capacity PlasticHinge { get; init; }

    /// <summary>Design resistance of the hinge in crushing ice.</summary>
    [Member("", "", "hinge in crushing ice: design resistance")]
    public required Capacity HingeInIce { get; init; }

    /// <summary>Design resistance of the short body turning in crushing ice.</summary>
    [Member("", "", "short body turning in crushing ice: design resistance")]
    public required Capacity ShortRotation { get; init; }

    /// <summary>Design resistance of the thread of the straight body.</summary>
    [Member("", "", "thread of the straight body: design resistance or does not act")]
    public required Capacity ThreadPullOut { get; init; }

    /// <summary>Design resistance of fold-over and then pull-out.</summary>
    [Member("", "", "fold-over and then pull-out: design resistance")]
    public required Capacity FoldOverPullOut { get; init; }

    /// <summary>Design resistance of tearing at the hinge.</summary>
    [Member("", "", "tearing at the hinge: design resistance or does not act")]
    public required Capacity Tearing { get; init; }

    /// <summary>Design resistance of the rated hanger.</summary>
    [Member("", "", "rated hanger, connector or sling: design resistance or does not act")]
    public required Capacity Hanger { get; init; }

    /// <inheritdoc/>
    public required IReadOnlyList<string> Cautions { get; init; }
}
