using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests;

internal static class PlacementChecks
{
    private const string Group = "Placement";

    internal static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    internal static Force Kn(double kilonewtons) => Force.FromKilonewtons(kilonewtons);

    /// <summary>Tube S of the worked set: 17.0 × 1.5 mm, outer thread diameter 20 mm.</summary>
    internal static TubeSection TubeS => TubeSections.TubeAtThreadRoot(Mm(20), Mm(17), Mm(14));

    /// <summary>The worked set: set angle 10°, offset 10 mm, unthreaded tip 10 mm, σ_b 20 MPa, τ 1.1 MPa.</summary>
    internal static ScrewPlacement Worked(double length, double iceLost, double bearing = 20, Material? material = null, double degrees = 10) =>
        Placements.PlaceScrew(TubeS, material ?? Materials.Steel4130Normalised, Mm(length), Angle.FromDegrees(degrees), Mm(0), Mm(iceLost), Mm(10), Mm(10),
            Pressure.FromMegapascals(bearing), Pressure.FromMegapascals(1.1));

    /// <summary>The case of the first row: lever arm 50 mm, 90 mm in sound ice.</summary>
    internal static ScrewPlacement First => Worked(130, 40);

    internal static double PullOut(ScrewPlacement placement) =>
        ThreadPullOuts.ThreadPullOut(placement.ThreadDiameter, Placements.AssessPlacement(placement, Kn(1)).EngagedThread, placement.ShearStrength).Newtons;

    [CheckTable]
    public static IEnumerable<CheckRow> WorkedSet =>
        new (string Case, ScrewPlacement Placement, double Yield, double Hinge, double Short, double Long, double Thread)[]
        {
            ("a 50 mm", First, 2701.511, 3792.469, 6987.056, 3451.335, 5529.203),
            ("a 40 mm", Worked(120, 30), 3366.436, 4738.349, 7717.553, 4128.369, 5529.203),
            ("a 10 mm, no cone-out", Worked(90, 0), 12868.26, 18689.16, 11091.59, 8505.257, 5529.203),
            ("a 10 mm, 60 mm embedded", Worked(60, 0), 12868.26, 18689.16, 6904.901, 8505.257, 3455.752),
            ("a 10 mm, σ_b 5 MPa", Worked(90, 0, bearing: 5), 12868.26, 18689.16, 2772.896, 4925.825, 5529.203),
            ("a 50 mm, aluminium 35 ksi", Worked(130, 40, material: Materials.Aluminium6061T6), 1260.705, 1769.819, 6987.056, 1689.004, 5529.203),
        }.SelectMany(row =>
        {
            PlacementAssessment found = Placements.AssessPlacement(row.Placement, Kn(1));
            return new[]
            {
                CheckRow.Arithmetic(Group, $"{row.Case}: first yield", row.Yield, "N", () => found.FirstYield.Force.Newtons),
                CheckRow.Arithmetic(Group, $"{row.Case}: plastic hinge", row.Hinge, "N", () => found.PlasticHinge.Force.Newtons),
                CheckRow.Arithmetic(Group, $"{row.Case}: short rotation", row.Short, "N", () => found.ShortRotation.Force.Newtons),
                CheckRow.Arithmetic(Group, $"{row.Case}: hinge in crushing ice", row.Long, "N", () => found.HingeInIce.Force.Newtons),
                CheckRow.Arithmetic(Group, $"{row.Case}: thread, axial", row.Thread, "N", () => PullOut(row.Placement)),
            };
        });

    [CheckTable]
    public static IEnumerable<CheckRow> ThreadThroughTheSetAngle =>
    [
        CheckRow.Arithmetic(Group, "a 10 mm, no cone-out: thread through sin α", 31841.41, "N", () => Placements.AssessPlacement(Worked(90, 0), Kn(1)).ThreadPullOut.Force.Newtons),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Sensitivities
    {
        get
        {
            yield return Sensitivity("plastic hinge to a", "-0.9983", s => Longer(s), a => a.PlasticHinge);
            yield return Sensitivity("plastic hinge to f_y", "1.0000", s => First with { Material = Yielding(s) }, a => a.PlasticHinge);
            yield return Sensitivity("hinge in ice to a", "-0.8346", s => Longer(s), a => a.HingeInIce);
            yield return Sensitivity("hinge in ice to f_y", "0.9164", s => First with { Material = Yielding(s) }, a => a.HingeInIce);
            yield return Sensitivity("hinge in ice to σ_b", "0.0830", s => First with { BearingStrength = Pressure.FromMegapascals(20 * s) }, a => a.HingeInIce);
            yield return Sensitivity("short rotation to a", "-0.4770", s => Longer(s), a => a.ShortRotation);
            yield return Sensitivity("short rotation to L_emb", "1.4743", s => First with { BodyLength = Mm(40 + (90 * s)) }, a => a.ShortRotation);
            yield return Sensitivity("short rotation to σ_b", "1.0000", s => First with { BearingStrength = Pressure.FromMegapascals(20 * s) }, a => a.ShortRotation);
            yield return Sensitivity("thread to L_emb", "1.1243", s => First with { BodyLength = Mm(40 + (90 * s)) }, a => a.ThreadPullOut);
            yield return Sensitivity("thread to τ", "1.0000", s => First with { ShearStrength = Pressure.FromMegapascals(1.1 * s) }, a => a.ThreadPullOut);
            yield return CheckRow.Printed(Group, "sensitivity of W_pl to D", "2.1857", "", Secant, Standing.Derived,
                () => Math.Log(TubeSections.Tube(Mm(17.17), Mm(1.5)).PlasticModulus / TubeSections.Tube(Mm(17), Mm(1.5)).PlasticModulus) / Math.Log(1.01));
            yield return CheckRow.Printed(Group, "sensitivity of W_pl to t", "0.8123", "", Secant, Standing.Derived,
                () => Math.Log(TubeSections.Tube(Mm(17), Mm(1.515)).PlasticModulus / TubeSections.Tube(Mm(17), Mm(1.5)).PlasticModulus) / Math.Log(1.01));
        }
    }

    [CheckTable]
    public static IEnumerable<CheckRow> TradeFacts =>
        new[] { 100.0, 130, 160, 190, 220 }.Select(length => CheckRow.Printed(Group, $"Every length carries the same rating: hanger of a {length} mm screw", "10", "kN", "common practice, no source", Standing.CommonPractice,
            () => Placements.AssessPlacement(Worked(length, 40) with { HangerRating = Standards.En568.Radial }, Kn(1)).Hanger.Force.Kilonewtons));

    private const string Secant = "computed apart from the program, secant over 1 %";

    private static ScrewPlacement Longer(double share) => First with { Offset = Mm((50 * share) - 40) };

    private static Material Yielding(double share) => Materials.Steel4130Normalised with { YieldStrength = Materials.Steel4130Normalised.YieldStrength * share };

    private static CheckRow Sensitivity(string what, string printed, Func<double, ScrewPlacement> placed, Func<PlacementAssessment, Capacity> mode) =>
        CheckRow.Printed(Group, "sensitivity of " + what, printed, "", Secant, Standing.Derived,
            () => Math.Log(mode(Placements.AssessPlacement(placed(1.01), Kn(1))).Force / mode(Placements.AssessPlacement(placed(1), Kn(1))).Force) / Math.Log(1.01));
}
