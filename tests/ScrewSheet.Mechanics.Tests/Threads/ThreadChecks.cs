using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests;

internal static class ThreadChecks
{
    private const string Group = "Threads";

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static double PullOut(double diameter, double length, double megapascals) =>
        ThreadPullOuts.ThreadPullOut(Mm(diameter), Mm(length), Pressure.FromMegapascals(megapascals)).Kilonewtons;

    [CheckTable]
    public static IEnumerable<CheckRow> ShearCylinder =>
    [
        CheckRow.Arithmetic(Group, "ThreadPullOut, 20 mm, 60 mm, 1.1 MPa", 4.146902, "kN", () => PullOut(20, 60, 1.1)),
        CheckRow.Arithmetic(Group, "Sheared area, 20 mm, 60 mm", 3769.911, "mm²", () => PullOut(20, 60, 1) * 1000),
        CheckRow.Arithmetic(Group, "ThreadPullOut, 20 mm, 60 mm, 0.6 MPa", 2.261947, "kN", () => PullOut(20, 60, 0.6)),
        CheckRow.Arithmetic(Group, "ThreadPullOut, 20 mm, 120 mm, 1.1 MPa", 8.293805, "kN", () => PullOut(20, 120, 1.1)),
        CheckRow.Arithmetic(Group, "ThreadShapeFactor, 1.5 mm deep, pitch 3 mm", 0.7886750, "", () => ThreadPullOuts.ThreadShapeFactor(Mm(1.5), Mm(3))),
        CheckRow.Arithmetic(Group, "ThreadPullOut times ThreadShapeFactor", 3.270558, "kN", () => PullOut(20, 60, 1.1) * ThreadPullOuts.ThreadShapeFactor(Mm(1.5), Mm(3))),
        CheckRow.Arithmetic(Group, "Bonded anchor, European form, 10 MPa, 12 mm, 70 mm", 26.38938, "kN", () => PullOut(12, 70, 10)),
        CheckRow.Arithmetic(Group, "Bonded anchor, American form, 1000 psi, 0.5 in, 4 in", 6283.185, "lbf",
            () => ThreadPullOuts.ThreadPullOut(Length.FromInches(0.5), Length.FromInches(4), Pressure.FromPoundsForcePerSquareInch(1000)).PoundsForce),
        CheckRow.Arithmetic(Group, "RequiredIceShear, 10 kN, 20 mm, 60 mm", 2.652582, "MPa",
            () => ThreadPullOuts.RequiredIceShear(Force.FromKilonewtons(10), Mm(20), Mm(60)).Megapascals),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> LagScrews =>
        new (double Inches, string Pounds)[] { (0.25, "225"), (0.3125, "266"), (0.375, "305"), (0.4375, "342"), (0.5, "378"), (0.625, "447"), (0.75, "513"), (0.875, "576"), (1, "636") }
            .Select(row => CheckRow.Printed(Group, $"LagScrewWithdrawal, {row.Inches} in", row.Pounds, "lbf/in", "National Design Specification for Wood Construction, lag screw withdrawal, G = 0.50", Standing.FromMemory,
                () => ThreadPullOuts.LagScrewWithdrawal(0.5, Length.FromInches(row.Inches)).PoundsForcePerInch));

    [CheckTable]
    public static IEnumerable<CheckRow> ConeOut =>
        new (double Length, double Effective, double Share, double Force)[]
        {
            (100, 50, 0.5555556, 3.455752), (130, 80, 0.6666667, 5.529203), (160, 110, 0.7333333, 7.602654), (190, 140, 0.7777778, 9.676105), (220, 170, 0.8095238, 11.74956),
        }.SelectMany(row => new[]
        {
            CheckRow.Arithmetic(Group, $"EngagedThreadLength, {row.Length} mm after 40 mm of cone-out", row.Effective, "mm", () => Left(row.Length, 40)),
            CheckRow.Arithmetic(Group, $"Share of thread left, {row.Length} mm", row.Share, "", () => Left(row.Length, 40) / Left(row.Length, 0)),
            CheckRow.Arithmetic(Group, $"ThreadPullOut, {row.Length} mm after 40 mm of cone-out", row.Force, "kN", () => PullOut(20, Left(row.Length, 40), 1.1)),
        });

    [CheckTable]
    public static IEnumerable<CheckRow> AtSetAngle =>
        new (double Degrees, double Kilonewtons)[] { (5, 47.58037), (10, 23.88106), (15, 16.02240), (30, 8.293805) }
            .Select(row => CheckRow.Arithmetic(Group, $"ThreadLimit at {row.Degrees}°", row.Kilonewtons, "kN",
                () => ThreadPullOuts.ThreadLimit(Force.FromKilonewtons(4.146902), Angle.FromDegrees(row.Degrees)).Force.Kilonewtons));

    [CheckTable]
    public static IEnumerable<CheckRow> Drilled =>
    [
        CheckRow.Arithmetic(Group, "DrilledThread 180 mm, 60°, depth", 155.8846, "mm", () => Drill(60).Depth.Millimeters),
        CheckRow.Arithmetic(Group, "DrilledThread 180 mm, 60°, hole", 180, "mm", () => Drill(60).HoleLength.Millimeters),
        CheckRow.Arithmetic(Group, "DrilledThread 180 mm, 60°, area", 14029.61, "mm²", () => Drill(60).IceArea.SquareMillimeters),
        CheckRow.Arithmetic(Group, "DrilledThread 180 mm, 45°, depth", 90, "mm", () => Drill(45).Depth.Millimeters),
        CheckRow.Arithmetic(Group, "DrilledThread 180 mm, 45°, hole", 127.2792, "mm", () => Drill(45).HoleLength.Millimeters),
        CheckRow.Arithmetic(Group, "DrilledThread 180 mm, 45°, area", 8100, "mm²", () => Drill(45).IceArea.SquareMillimeters),
        CheckRow.Arithmetic(Group, "DrilledThread, ice at 45° over that at 60°", 57.735, "%", () => 100 * Drill(45).IceArea.SquareMillimeters / Drill(60).IceArea.SquareMillimeters),
    ];

    private static double Left(double length, double lost) =>
        ThreadPullOuts.EngagedThreadLength(Mm(length), Mm(0), Mm(lost), Mm(10), Mm(0)).Millimeters;

    private static DrilledThreadGeometry Drill(double degrees) => DrilledThreads.DrilledThread(Mm(180), Angle.FromDegrees(degrees));
}
