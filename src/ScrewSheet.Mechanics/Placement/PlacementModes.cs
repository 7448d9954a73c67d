using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Mechanics;

/// <summary>The geometry of a placement after cone-out and the design resistance of each of its modes.</summary>
internal sealed class PlacementModes
{
    private const string NoArm = "there is no lever arm";

    private readonly ScrewPlacement placement;
    private readonly double plasticMoment, hingeAtFace;

    private PlacementModes(ScrewPlacement placement, double arm, double embedded)
    {
        this.placement = placement;
        Arm = arm;
        Embedded = embedded;
        Thread = ThreadPullOuts.EngagedThreadLength(placement.BodyLength, placement.Protrusion, placement.IceLost, placement.UnthreadedTip, placement.ReboredLength).Meters;
        plasticMoment = SectionStrength.PlasticMoment(placement.Tube.PlasticModulus, placement.Material.YieldStrength).NewtonMeters;
        hingeAtFace = arm > 0
            ? HingeLoads.HingeLoad(placement.Tube.OuterDiameter, placement.Tube.Wall, placement.Material.YieldStrength, Length.FromMeters(arm), placement.SetAngle).Newtons
            : double.PositiveInfinity;
    }

    /// <summary>Lever arm after cone-out, m.</summary>
    public double Arm { get; }

    /// <summary>Length in sound ice after cone-out, m.</summary>
    public double Embedded { get; }

    /// <summary>Thread in sound ice after cone-out, m.</summary>
    public double Thread { get; }

    /// <summary>The checked placement after its surface ice has gone.</summary>
    public static PlacementModes Of(ScrewPlacement placement)
    {
        Check(placement);
        double gone = placement.Protrusion.Meters + placement.IceLost.Meters;
        double embedded = placement.BodyLength.Meters - gone;
        if (embedded <= 0) throw new DomainException("Nothing is left in sound ice: protrusion and ice lost take up the whole body.", nameof(placement));
        return new PlacementModes(placement, gone + placement.Offset.Meters, embedded);
    }

    /// <summary>Refuses what no placement can have.</summary>
    public static void Check(ScrewPlacement placement)
    {
        if (placement.Tube.OuterDiameter.Meters <= 0) throw new DomainException("tube must be a section made by Tube or TubeAtThreadRoot.", "tube");
        Positive(placement.BodyLength, "bodyLength");
        Admit.Inside(placement.SetAngle.Radians, -90, 90, Scale.Degree, "setAngle");
        NotNegative(placement.Protrusion, "protrusion");
        NotNegative(placement.IceLost, "iceLost");
        NotNegative(placement.Offset, "offset");
        NotNegative(placement.UnthreadedTip, "unthreadedTip");
        NotNegative(placement.ReboredLength, "reboredLength");
        Positive(placement.ThreadDiameter, "threadDiameter");
        Positive(placement.ContactWidth, "contactWidth");
        Admit.Positive(placement.BearingStrength.Pascals, Most.Megapascals, Scale.Megapascal, "bearingStrength");
        Admit.Positive(placement.ShearStrength.Pascals, Most.Megapascals, Scale.Megapascal, "shearStrength");
        Admit.Positive(placement.ThreadShapeFactor, 2, Scale.None, "threadShapeFactor");
        Admit.Positive(placement.GammaF, 100, Scale.None, "gammaF");
        foreach (FailureMode mode in Enum.GetValues<FailureMode>())
        {
            Admit.Positive(placement.Calibration.Of(mode), 100, Scale.None, $"calibration of {mode}");
            Admit.Positive(placement.GammaM.Of(mode), 100, Scale.None, $"gammaM of {mode}");
        }
    }

    /// <summary>Half cone over the depth of ice lost; a stage, after which everything else is computed.</summary>
    public Capacity SurfaceCone()
    {
        if (placement.Tension is not { } tension) return Capacity.DoesNotAct("no tensile strength of the surface ice was given");
        if (placement.IceLost.Meters == 0) return Capacity.DoesNotAct("no ice is lost");
        double depth = placement.IceLost.Meters * Cosine;
        return Design(FailureMode.SurfaceCone, ConeBreakout.IceHalfConeAnalogue(Pressure.FromPascals(tension), Length.FromMeters(depth)).Newtons / Cosine);
    }

    public Capacity FirstYield() => Arm == 0 ? Capacity.DoesNotAct(NoArm) : Design(FailureMode.FirstYield,
        HingeLoads.FirstYieldLoad(placement.Tube.Area, placement.Tube.ElasticModulus, placement.Material.YieldStrength, Length.FromMeters(Arm), placement.SetAngle).Newtons);

    public Capacity PlasticHinge() => Arm == 0 ? Capacity.DoesNotAct(NoArm) : Design(FailureMode.PlasticHinge, hingeAtFace);

    public Capacity HingeInIce() => Design(FailureMode.HingeInIce, Crushing);

    public Capacity ShortRotation() => Design(FailureMode.ShortRotation,
        CrushingIce.ShortBodyCrushing(placement.BearingStrength, placement.ContactWidth, Length.FromMeters(Embedded), Length.FromMeters(Arm)).Newtons / Cosine);

    /// <summary>Thread while the body stands straight: only F sin α pulls along it.</summary>
    public Capacity StraightThread()
    {
        Capacity limit = ThreadPullOuts.ThreadLimit(Force.FromNewtons(PullOut), placement.SetAngle);
        return limit.Acts ? Design(FailureMode.ThreadPullOut, limit.Newtons) : limit;
    }

    /// <summary>Below its hinge load the tube does not fold; once it folds the whole pull comes on the thread.</summary>
    public Capacity FoldOverPullOut()
    {
        // a calibration that lowers a hinge also lets the tube fold sooner; one that raises it must not raise this mode
        double face = hingeAtFace * Math.Min(1, placement.Calibration.PlasticHinge), inIce = Crushing * Math.Min(1, placement.Calibration.HingeInIce);
        return Design(FailureMode.FoldOverPullOut, Math.Max(PullOut, Math.Min(face, inIce)));
    }

    /// <summary>The load of the folding tube at the rotation where its wall cracks, hinge length one diameter.</summary>
    public Capacity Tearing()
    {
        if (placement.Strain is not { } strain) return Capacity.DoesNotAct("no strain at fracture was given");
        if (Arm == 0) return Capacity.DoesNotAct(NoArm);
        Length diameter = placement.Tube.OuterDiameter;
        double stands = Math.Abs(placement.SetAngle.Radians + HingeLoads.RotationCapacity(diameter, strain, diameter).Radians);
        if (stands >= Math.PI / 2) return Capacity.DoesNotAct("the tube lines up with the pull before its wall cracks");
        return Design(FailureMode.Tearing, HingeLoads.FoldOverLoad(
            Torque.FromNewtonMeters(plasticMoment), SectionStrength.PlasticAxialLoad(placement.Tube.Area, placement.Material.YieldStrength), Length.FromMeters(Arm), Angle.FromRadians(stands)).Newtons);
    }

    public Capacity Hanger() => placement.Rating is { } rating ? Design(FailureMode.Hanger, rating) : Capacity.DoesNotAct("no hanger rating was given");

    private double Cosine => Math.Cos(placement.SetAngle.Radians);

    private double Crushing => CrushingIce.LongBodyCrushing(placement.BearingStrength, placement.ContactWidth, Torque.FromNewtonMeters(plasticMoment), Length.FromMeters(Arm)).Newtons / Cosine;

    private double PullOut => placement.ThreadShapeFactor * ThreadPullOuts.ThreadPullOut(placement.ThreadDiameter, Length.FromMeters(Thread), placement.ShearStrength).Newtons;

    private Capacity Design(FailureMode mode, double newtons) => Capacity.Of(newtons * placement.Calibration.Of(mode) / placement.GammaM.Of(mode));

    private static void Positive(Length length, string name) => Admit.Positive(length.Meters, Most.Millimetres, Scale.Millimetre, name);

    private static void NotNegative(Length length, string name) => Admit.Between(length.Meters, 0, Most.Millimetres, Scale.Millimetre, name);
}
