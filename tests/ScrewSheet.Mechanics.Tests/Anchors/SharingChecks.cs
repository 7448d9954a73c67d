using ScrewSheet.Mechanics.Anchors;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.Anchors;

internal static class SharingChecks
{
    private const string Group = "Legs in space and shared by stiffness";
    private const string Cylinder = "Beer & Johnston, Vector Mechanics for Engineers: Statics, 200 kg cylinder held off a wall by two cables and a horizontal force";

    [CheckTable]
    public static IEnumerable<CheckRow> Space =>
    [
        Held("horizontal force", 2, "235"), Held("first cable", 0, "1402"), Held("second cable", 1, "1238"),
        HeldFull("horizontal force", 2, 235.4400), HeldFull("first cable", 0, 1401.996), HeldFull("second cable", 1, 1237.626),
        Tripod(30, 0.3849002), Tripod(45, 0.4714045), Tripod(60, 0.6666667),
        .. Rows("three legs in space, 10 kN down", Skew, 3.817600, 2.800042, 4.229114),
        .. Rows("the same shared by stiffness", () => StiffnessSharing.ShareSpace(N(0), N(0), KN(-10), SkewX, SkewY, SkewZ, Kilonewtons(100, 300, 50)), 3.817600, 2.800042, 4.229114),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Stiffness =>
    [
        .. Rows("parallel legs of 0.3, 0.5, 0.8 m", () => StiffnessSharing.ShareParallel(KN(10), Metres(0.3, 0.5, 0.8), Kilonewtons(100, 100, 100)), 5.063291, 3.037975, 1.898734),
        .. Bars(30, 3.479716, 2.609787), .. Bars(45, 4.686292, 2.343146), .. Bars(60, 6.4, 1.6),
        .. Rows("legs at -30°, 0°, 30°", Plane, 3.012262, 4.782609, 3.012262),
        CheckRow.Arithmetic(Group, "legs at -30°, 0°, 30°: movement x", 0.003012262, "m", () => Plane().MovedX.Meters),
        CheckRow.Arithmetic(Group, "legs at -30°, 0°, 30°: movement y", 0.01913043, "m", () => Plane().MovedY.Meters),
        CheckRow.Arithmetic(Group, "one of two legs 10 mm long: shorter", 6, "kN", () => StiffnessSharing.PairWithLengthError(KN(10), KNm(200), Mm(10)).First.Kilonewtons),
        CheckRow.Arithmetic(Group, "one of two legs 10 mm long: longer", 4, "kN", () => StiffnessSharing.PairWithLengthError(KN(10), KNm(200), Mm(10)).Second.Kilonewtons),
        .. Rows("the same by the general function", () => StiffnessSharing.ShareWithSlack(KN(10), Series.Of<ForcePerLength>([200e3, 200e3]), Metres(0, 0.01)), 6, 4),
    ];

    private static Series<Length> SkewX => Metres(0.3, -0.4, 0.05);

    private static Series<Length> SkewY => Metres(0.1, 0.1, -0.2);

    private static Series<Length> SkewZ => Metres(0.8, 0.6, 1.0);

    private static LegSharing Skew() => LegsInSpace.ThreeLegs(N(0), N(0), KN(-10), SkewX, SkewY, SkewZ);

    private static LegSharing Plane() => StiffnessSharing.SharePlane(KN(10), Deg(0), Degrees(-30, 0, 30), Metres(0.5, 0.4, 0.6), Kilonewtons(100, 100, 100));

    /// <summary>The unknown horizontal force stands as a third leg along x.</summary>
    private static LegSharing HeldOffTheWall() => LegsInSpace.ThreeLegs(N(0), N(-200 * 9.81), N(0), Metres(-1.2, -1.2, 1), Metres(10, 10, 0), Metres(8, -10, 0));

    private static CheckRow Held(string what, int leg, string printed) => CheckRow.Printed(Group, $"cylinder held off a wall: {what}", printed, "N", Cylinder, Standing.FromMemory, () => HeldOffTheWall().Tensions[leg].Newtons);

    private static CheckRow HeldFull(string what, int leg, double value) => CheckRow.Arithmetic(Group, $"cylinder held off a wall, g = 9.81: {what}", value, "N", () => HeldOffTheWall().Tensions[leg].Newtons);

    private static CheckRow Tripod(double fromVertical, double share) => CheckRow.Arithmetic(Group, $"symmetric tripod, legs {fromVertical}° from vertical", share, "", () =>
    {
        double radius = Math.Tan(fromVertical * Math.PI / 180);
        double[] turns = [0, 2 * Math.PI / 3, 4 * Math.PI / 3];
        return LegsInSpace.ThreeLegs(N(0), N(0), N(-1), Metres([.. turns.Select(t => radius * Math.Cos(t))]), Metres([.. turns.Select(t => radius * Math.Sin(t))]), Metres(1, 1, 1)).Tensions[1].Newtons;
    });

    private static IEnumerable<CheckRow> Bars(double angle, double middle, double side)
    {
        yield return CheckRow.Arithmetic(Group, $"8 kN on three bars at {angle}°: middle", middle, "kN", () => StiffnessSharing.ThreeBar(KN(8), Deg(angle)).Middle.Kilonewtons);
        yield return CheckRow.Arithmetic(Group, $"8 kN on three bars at {angle}°: side", side, "kN", () => StiffnessSharing.ThreeBar(KN(8), Deg(angle)).Side.Kilonewtons);
        double slant = 1 / Math.Cos(angle * Math.PI / 180);
        yield return CheckRow.Arithmetic(Group, $"8 kN on three bars at {angle}°: side, by the general function", side, "kN",
            () => StiffnessSharing.SharePlane(KN(8), Deg(0), Degrees(-angle, 0, angle), Metres(slant, 1, slant), Kilonewtons(100, 100, 100)).Tensions[0].Kilonewtons);
    }

    private static IEnumerable<CheckRow> Rows(string what, Func<LegSharing> sharing, params double[] kilonewtons) =>
        kilonewtons.Select((tension, leg) => CheckRow.Arithmetic(Group, $"{what}: leg {leg + 1}", tension, "kN", () => sharing().Tensions[leg].Kilonewtons));
}
