using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests;

internal static class EverydayChecks
{
    private const string Group = "Everyday";

    [CheckTable]
    public static IEnumerable<CheckRow> Weights =>
    [
        CheckRow.Arithmetic(Group, "Weight of 80 kg", 784.532, "N", () => WorkAndWeight.Weight(Mass.FromKilograms(80)).Newtons),
        CheckRow.Arithmetic(Group, "Weight of 200 lb", 889.644323, "N", () => WorkAndWeight.Weight(Mass.FromPounds(200)).Newtons),
        CheckRow.Arithmetic(Group, "Mass of which 10 kN is the weight", 1019.716, "kg", () => 10000 / WorkAndWeight.StandardGravity().MetersPerSecondSquared),
        CheckRow.Arithmetic(Group, "Sine of 15 degrees", 0.258819, "", () => Angles.Sin(Angle.FromDegrees(15)), 1e-5),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> TradeFacts =>
    [
        CheckRow.Printed(Group, "10 kN is about ten people of 100 kg: their weight", "10", "kN", "common practice, no source", Standing.CommonPractice,
            () => 10 * WorkAndWeight.Weight(Mass.FromKilograms(100)).Kilonewtons),
        CheckRow.Misprint(Group, "Degrees taken for radians: sine of 15", "0.650288", "", "a usual slip, common practice, no source", Standing.CommonPractice,
            () => Angles.Sin(Angle.FromDegrees(15))),
    ];
}
