using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics;

/// <summary>The ways in which a placement gives way. The first four begin the damage, the others end the hold; the two groups are never ranked together.</summary>
[SheetOption("a way in which a placement gives way")]
public enum FailureMode
{
    /// <summary>Damage begins: the surface ice breaks out as a half cone under the body (analogue).</summary>
    SurfaceCone,

    /// <summary>Damage begins: the extreme fibre of the tube yields.</summary>
    FirstYield,

    /// <summary>Damage begins: the tube forms a plastic hinge at the face of the sound ice.</summary>
    PlasticHinge,

    /// <summary>Damage begins: the ice crushes and the tube forms a plastic hinge below the face.</summary>
    HingeInIce,

    /// <summary>Comes out: the short body turns as a whole in crushing ice.</summary>
    ShortRotation,

    /// <summary>Comes out: the thread shears while the body stands straight.</summary>
    ThreadPullOut,

    /// <summary>Comes out: the tube folds into the line of the pull and the thread then carries it all.</summary>
    FoldOverPullOut,

    /// <summary>Breaks: the wall tears at the hinge before the tube has lined up with the pull.</summary>
    Tearing,

    /// <summary>Breaks: hanger, connector or sling at its rating.</summary>
    Hanger,
}

/// <summary>One factor for each failure mode: a calibration factor or a partial factor γ_M. All are 1 unless written.</summary>
[SheetRecord("one factor for each failure mode")]
public sealed record ModeFactors
{
    /// <summary>Factor of the surface cone.</summary>
    [Member("", "", "factor of the surface cone")]
    public double SurfaceCone { get; init; } = 1;

    /// <summary>Factor of first yield.</summary>
    [Member("", "", "factor of first yield")]
    public double FirstYield { get; init; } = 1;

    /// <summary>Factor of the plastic hinge at the face.</summary>
    [Member("", "", "factor of the plastic hinge at the face")]
    public double PlasticHinge { get; init; } = 1;

    /// <summary>Factor of the hinge in crushing ice.</summary>
    [Member("", "", "factor of the hinge in crushing ice")]
    public double HingeInIce { get; init; } = 1;

    /// <summary>Factor of the short body turning in crushing ice.</summary>
    [Member("", "", "factor of the short body turning in crushing ice")]
    public double ShortRotation { get; init; } = 1;

    /// <summary>Factor of pull-out of the straight body.</summary>
    [Member("", "", "factor of pull-out of the straight body")]
    public double ThreadPullOut { get; init; } = 1;

    /// <summary>Factor of fold-over and then pull-out.</summary>
    [Member("", "", "factor of fold-over and then pull-out")]
    public double FoldOverPullOut { get; init; } = 1;

    /// <summary>Factor of tearing at the hinge.</summary>
    [Member("", "", "factor of tearing at the hinge")]
    public double Tearing { get; init; } = 1;

    /// <summary>Factor of the rated hanger.</summary>
    [Member("", "", "factor of the rated hanger, connector or sling")]
    public double Hanger { get; init; } = 1;

    internal double Of(FailureMode mode) => mode switch
    {
        FailureMode.SurfaceCone => SurfaceCone,
        FailureMode.FirstYield => FirstYield,
        FailureMode.PlasticHinge => PlasticHinge,
        FailureMode.HingeInIce => HingeInIce,
        FailureMode.ShortRotation => ShortRotation,
        FailureMode.ThreadPullOut => ThreadPullOut,
        FailureMode.FoldOverPullOut => FoldOverPullOut,
        FailureMode.Tearing => Tearing,
        FailureMode.Hanger => Hanger,
        _ => throw new ArgumentOutOfRangeException(nameof(mode), mode, "No such mode."),
    };
}
