using ScrewSheet.Mechanics.Anchors;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.Anchors;

internal static class AnchorChecks
{
    private const string Group = "Anchor legs";
    private const string Article = "Climbing-physics article, load on each anchor of a two-leg belay, F = 8 kN";
    private const string ThreeLegArticle = "Climbing-physics article, load on each anchor of a three-leg equal-tension belay, F = 8 kN";
    private const string Chart = "Trade sling-angle chart in the manner of ASME B30.9, angle from horizontal";
    private const string Manual = "Guides' manual chart as quoted, share of the load on each of two legs";

    [CheckTable]
    public static IEnumerable<CheckRow> Shares =>
    [
        .. new (double Angle, double Share)[]
        {
            (0, 0.5), (30, 0.5176381), (45, 0.5411961), (60, 0.5773503), (75, 0.6302362), (90, 0.7071068), (105, 0.8213398), (120, 1), (135, 1.306563),
            (150, 1.931852), (165, 3.830649), (170, 5.736857),
        }.Select(row => CheckRow.Arithmetic(Group, $"share at {row.Angle}°", row.Share, "", () => EqualLegs.LegShare(Deg(row.Angle)))),
        .. new (double Angle, string Tension)[]
        {
            (15, "4.03"), (30, "4.14"), (45, "4.33"), (60, "4.62"), (75, "5.04"), (90, "5.66"), (105, "6.57"), (120, "8"), (135, "10.45"), (150, "15.45"), (165, "30.65"),
        }.Select(row => CheckRow.Printed(Group, $"8 kN on two legs at {row.Angle}°", row.Tension, "kN", Article, Standing.Read, () => EqualLegs.LegTension(KN(8), Deg(row.Angle)).Kilonewtons)),
        Percent(45, "54"), Percent(120, "100"),
        CheckRow.Misprint(Group, "share at 80°", "70", "%", Manual + "; 70 % belongs to 90°", Standing.Read, () => 100 * EqualLegs.LegShare(Deg(80))),
        CheckRow.Arithmetic(Group, "share at 80° in %", 65.27036, "%", () => 100 * EqualLegs.LegShare(Deg(80))),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> SlingChart =>
    [
        .. Sling(90, "1", "1"), .. Sling(85, "1.004", ".996"), .. Sling(80, "1.015", ".985"), .. Sling(75, "1.035", ".966"), .. Sling(70, "1.064", ".940"),
        .. Sling(65, "1.104", ".906", 1.5), .. Sling(60, "1.155", ".866"), .. Sling(55, "1.221", ".819"), .. Sling(50, "1.305", ".766"), .. Sling(45, "1.414", ".707"),
        .. Sling(40, "1.555", ".643", 1.5), .. Sling(35, "1.742", ".574", 1.5), .. Sling(30, "2", ".5"),
        CheckRow.Arithmetic(Group, "sling factor at 65°", 1.103378, "", () => EqualLegs.SlingFactor(Deg(65))),
        CheckRow.Arithmetic(Group, "sling factor at 40°", 1.555724, "", () => EqualLegs.SlingFactor(Deg(40))),
        CheckRow.Arithmetic(Group, "sling factor at 35°", 1.743447, "", () => EqualLegs.SlingFactor(Deg(35))),
        CheckRow.Printed(Group, "1200 lbf a leg, 120 in long and 96 in high", "1500", "lbf", Chart, Standing.Read,
            () => EqualLegs.SlantTension(Force.FromPoundsForce(1200), Length.FromInches(120), Length.FromInches(96)).PoundsForce),
        CheckRow.Printed(Group, "capacity 8000 lbf, 96 in long and 84 in high", "7000", "lbf", Chart, Standing.Read,
            () => EqualLegs.SlantCapacity(Force.FromPoundsForce(8000), Length.FromInches(96), Length.FromInches(84)).PoundsForce),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Unequal =>
    [
        CheckRow.Printed(Group, "traffic light 15.0 kg, wires 30° and 45° from horizontal: T₂/T₁", "1.225", "", "OpenStax, University Physics, traffic light example", Standing.Read, () => Light.Second / Light.First),
        CheckRow.Printed(Group, "traffic light 15.0 kg: T₁", "108", "N", "OpenStax, University Physics, traffic light example", Standing.FromMemory, () => Light.First.Newtons),
        CheckRow.Printed(Group, "traffic light 15.0 kg: T₂", "132", "N", "OpenStax, University Physics, traffic light example", Standing.FromMemory, () => Light.Second.Newtons),
        CheckRow.Arithmetic(Group, "traffic light 15.0 kg, g = 9.80: T₁", 107.6115, "N", () => Light.First.Newtons),
        CheckRow.Arithmetic(Group, "traffic light 15.0 kg, g = 9.80: T₂", 131.7966, "N", () => Light.Second.Newtons),
        CheckRow.Printed(Group, "light of 122 N, cable 37° from horizontal", "73.4", "N", "University physics textbook, hanging traffic light of 122 N", Standing.Read, () => Cables.First.Newtons),
        CheckRow.Printed(Group, "light of 122 N, cable 53° from horizontal", "97.4", "N", "University physics textbook, hanging traffic light of 122 N", Standing.Read, () => Cables.Second.Newtons),
        CheckRow.Arithmetic(Group, "light of 122 N, cable 37°, seven digits", 73.42143, "N", () => Cables.First.Newtons),
        CheckRow.Arithmetic(Group, "light of 122 N, cable 53°, seven digits", 97.43353, "N", () => Cables.Second.Newtons),
        CheckRow.Misprint(Group, "light of 122 N, first cable by the sine of its own angle", "97.4", "N", "A public page that prints F sin α for both legs, right only for equal ones", Standing.Read, () => Cables.First.Newtons),
        CheckRow.Printed(Group, "crate of 75 kg, rope 50° from horizontal", "647", "N", "Beer & Johnston, Vector Mechanics for Engineers: Statics, crate of 75 kg", Standing.FromMemory, () => Crate.First.Newtons),
        CheckRow.Printed(Group, "crate of 75 kg, rope 30° from horizontal", "480", "N", "Beer & Johnston, Vector Mechanics for Engineers: Statics, crate of 75 kg", Standing.FromMemory, () => Crate.Second.Newtons),
        CheckRow.Arithmetic(Group, "crate of 75 kg, g = 9.81, rope 50°, seven digits", 647.0077, "N", () => Crate.First.Newtons),
        CheckRow.Arithmetic(Group, "crate of 75 kg, g = 9.81, rope 30°, seven digits", 480.2267, "N", () => Crate.Second.Newtons),
        CheckRow.Printed(Group, "tightrope, 70.0 kg, 5.0° a side", "3.9e3", "N", "University physics textbook, tightrope walker", Standing.FromMemory, () => EqualLegs.LegTensionFromHorizontal(N(70 * 9.80), Deg(5)).Newtons),
        CheckRow.Arithmetic(Group, "tightrope, 70.0 kg, 5.0°, g = 9.80", 3935.484, "N", () => EqualLegs.LegTensionFromHorizontal(N(70 * 9.80), Deg(5)).Newtons),
        .. OffAxis(30, 5, 0.6840403, 0.3472964), .. OffAxis(60, 5, 0.6623090, 0.4879975), .. OffAxis(90, 5, 0.7660444, 0.6427876), .. OffAxis(30, 15, 1, 0),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Sliding =>
    [
        .. new (double Angle, string Tension)[] { (0, "2.67"), (15, "2.73"), (30, "2.93"), (60, "4"), (75, "5.27"), (90, "8") }
            .Select(row => CheckRow.Printed(Group, $"8 kN on three sliding legs, {row.Angle}° to each side", row.Tension, "kN", ThreeLegArticle, Standing.Read, () => SlidingRigs.SlidingThreeLegs(KN(8), Deg(row.Angle)).Kilonewtons)),
        CheckRow.Misprint(Group, "8 kN on three sliding legs, 45° to each side", "3.13", "kN", ThreeLegArticle + "; digits swapped", Standing.Read, () => SlidingRigs.SlidingThreeLegs(KN(8), Deg(45)).Kilonewtons),
        CheckRow.Arithmetic(Group, "8 kN on three sliding legs, 45°, seven digits", 3.313708, "kN", () => SlidingRigs.SlidingThreeLegs(KN(8), Deg(45)).Kilonewtons),
        CheckRow.Arithmetic(Group, "8 kN on a sliding line at -45°, 0°, 45°", 3.313708, "kN", () => SlidingRigs.SlidingLine(KN(8), Degrees(-45, 0, 45)).Kilonewtons),
        CheckRow.Arithmetic(Group, "friction 0.25 over 120°: ratio", 1.688092, "", () => SlidingRigs.SlidingLegsWithFriction(KN(10), Deg(60), 0.25, Deg(120)).Ratio),
        CheckRow.Arithmetic(Group, "friction 0.25 over 120°: lighter share", 0.3720111, "", () => SlidingRigs.SlidingLegsWithFriction(KN(10), Deg(60), 0.25, Deg(120)).LighterShare),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Failure =>
    [
        CheckRow.Arithmetic(Group, "0.4 m apart at 60°: leg length", 0.4, "m", () => LegFailure.LoopExtension(M(0.4), M(0)).Meters),
        CheckRow.Arithmetic(Group, "0.4 m apart at 60°: drop of a sliding loop", 0.4535898, "m", () => LegFailure.SlidingDrop(M(0.4), Deg(60)).Meters),
        CheckRow.Arithmetic(Group, "0.4 m apart at 60°: drop of tied legs", 0.05358984, "m", () => LegFailure.FixedLegDrop(M(0.4), Deg(60)).Meters),
        CheckRow.Arithmetic(Group, "0.4 m apart at 60°: depth before", 0.3464102, "m", () => 0.8 - LegFailure.SlidingDrop(M(0.4), Deg(60)).Meters),
        Shock(0, 1569.064), Shock(0.05, 2262.556), Shock(0.45359, 4638.066),
    ];

    private static LegPair Light => UnequalLegs.TwoLegs(N(15 * 9.80), Deg(60), Deg(45));

    private static LegPair Cables => UnequalLegs.TwoLegs(N(122), Deg(53), Deg(37));

    private static LegPair Crate => UnequalLegs.TwoLegs(N(75 * 9.81), Deg(40), Deg(60));

    private static CheckRow Percent(double angle, string printed) =>
        CheckRow.Printed(Group, $"share at {angle}° in %", printed, "%", Manual, Standing.Read, () => 100 * EqualLegs.LegShare(Deg(angle)));

    private static IEnumerable<CheckRow> Sling(double fromHorizontal, string factor, string capacity, double units = 0.5)
    {
        yield return CheckRow.Printed(Group, $"chart: factor at {fromHorizontal}° from horizontal", factor, "", Chart + (units > 0.5 ? "; this row is one unit off in its last digit" : ""), Standing.Read, () => EqualLegs.SlingFactor(Deg(fromHorizontal)), units);
        yield return CheckRow.Printed(Group, $"chart: capacity at {fromHorizontal}° from horizontal", capacity, "", Chart, Standing.Read, () => EqualLegs.SlingCapacityFactor(Deg(fromHorizontal)));
    }

    private static IEnumerable<CheckRow> OffAxis(double included, double swing, double first, double second)
    {
        yield return CheckRow.Arithmetic(Group, $"legs at {included}°, pull {swing}° off: near leg", first, "", () => UnequalLegs.OffAxisLegs(N(1), Deg(included), Deg(swing)).First.Newtons);
        if (second > 0) yield return CheckRow.Arithmetic(Group, $"legs at {included}°, pull {swing}° off: far leg", second, "", () => UnequalLegs.OffAxisLegs(N(1), Deg(included), Deg(swing)).Second.Newtons);
    }

    private static CheckRow Shock(double drop, double force) => CheckRow.Arithmetic(Group, FormattableString.Invariant($"80 kg on 20 kN/m dropped {drop} m"), force, "N",
        () => LegFailure.ShockBound(Mass.FromKilograms(80), KNm(20), M(drop)).Newtons);
}
