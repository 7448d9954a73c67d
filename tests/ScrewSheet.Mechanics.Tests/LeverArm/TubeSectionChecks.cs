using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.LeverArm;

internal static class TubeSectionChecks
{
    private const string Group = "Tube section";
    private const string En = "EN 10210-2 / EN 10219-2, dimension tables as transcribed in open section data";
    private const string Wrong = "Open tables of section data in circulation; the true value follows from diameter and wall";

    [CheckTable]
    public static IEnumerable<CheckRow> Tables =>
    [
        .. Row(21.3, 2.6, "1.53", "0.68", "0.64", "0.92", "1.36"),
        .. Row(21.3, 2.9, "1.68", "0.73", "0.68", "0.99", "1.45"),
        .. Row(21.3, 3.2, "1.82", "0.77", "0.72", "1.06", "1.54"),
        .. Row(26.9, 2.6, "1.98", "1.48", "1.10", "1.54", "2.96"),
        .. Row(33.7, 2.6, "2.54", "3.09", "1.84", "2.52", "6.19"),
        .. Row(33.7, 2.9, "2.81", "3.36", "1.99", "2.76", "6.71"),
        .. Row(33.7, 3.2, "3.07", "3.60", "2.14", "2.99", "7.21"),
        .. Row(33.7, 3.6, "3.40", "3.91", "2.32", "3.28", "7.82"),
        .. Row(48.3, 2.6, "3.73", "9.78", "4.05", "5.44", "19.6"),
        .. Row(48.3, 2.9, "4.14", "10.7", "4.43", "5.99", "21.4"),
        .. Row(48.3, 3.2, "4.53", "11.6", "4.80", "6.52", "23.2"),
        .. Row(48.3, 3.6, "5.06", "12.7", "5.26", "7.21", null),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> FullPrecision =>
    [
        .. Full(17.0, 1.5, 73.04203, 2214.087, 260.4808, 361.5000, 46.50000),
        .. Full(18.0, 2.0, 100.5310, 3267.256, 363.0285, 514.6667, 64.00000),
        .. Full(33.7, 3.2, 306.6194, 36046.56, 2139.262, 2987.723, 195.2000),
        .. Full(48.3, 3.2, 453.3947, 115856.5, 4797.371, 6519.755, 288.6400),
        // the sheet's 25.4 cm⁴ is computed, not read, so it stands here to its own three digits
        CheckRow.Arithmetic(Group, "48.3 x 3.6 torsion constant", 25.4, "cm⁴", () => Tube(48.3, 3.6).TorsionConstant.CentimetersToTheFourth, 0.05 / 25.4),
        CheckRow.Arithmetic(Group, "thin-wall shape factor 4/π", 1.273240, "", () => Tube(1000, 1e-4).ShapeFactor),
        CheckRow.Arithmetic(Group, "solid shape factor 16/(3π)", 1.697653, "", () => Tube(17, 8.5).ShapeFactor),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> BadRowsInCirculation =>
    [
        Bad("48.3 x 3.2 I", "12.2", "cm⁴", () => Tube(48.3, 3.2).SecondMoment.CentimetersToTheFourth),
        Bad("48.3 x 3.2 I, another table", "12.3", "cm⁴", () => Tube(48.3, 3.2).SecondMoment.CentimetersToTheFourth),
        Bad("42.4 x 3.2 I", "8.0", "cm⁴", () => Tube(42.4, 3.2).SecondMoment.CentimetersToTheFourth),
        Bad("42.4 x 3.2 I, another table", "8.05", "cm⁴", () => Tube(42.4, 3.2).SecondMoment.CentimetersToTheFourth),
        Bad("21.3 x 2.0 I", "0.87", "cm⁴", () => Tube(21.3, 2.0).SecondMoment.CentimetersToTheFourth),
        Bad("21.3 x 2.0 W_el", "0.82", "cm³", () => Tube(21.3, 2.0).ElasticModulus.CubicCentimeters),
        CheckRow.Arithmetic(Group, "48.3 x 3.2 true I", 11.58565, "cm⁴", () => Tube(48.3, 3.2).SecondMoment.CentimetersToTheFourth),
        CheckRow.Arithmetic(Group, "42.4 x 3.2 true I", 7.62, "cm⁴", () => Tube(42.4, 3.2).SecondMoment.CentimetersToTheFourth, 0.005 / 7.62),
        CheckRow.Arithmetic(Group, "21.3 x 2.0 true I", 0.5707, "cm⁴", () => Tube(21.3, 2.0).SecondMoment.CentimetersToTheFourth, 0.00005 / 0.5707),
    ];

    private static TubeSection Tube(double outer, double wall) => TubeSections.Tube(Mm(outer), Mm(wall));

    private static IEnumerable<CheckRow> Row(double outer, double wall, string area, string second, string elastic, string plastic, string? torsion)
    {
        TubeSection tube = Tube(outer, wall);
        string size = FormattableString.Invariant($"{outer} x {wall}");
        yield return CheckRow.Printed(Group, $"{size} A", area, "cm²", En, Standing.SecondHand, () => tube.Area.SquareCentimeters);
        yield return CheckRow.Printed(Group, $"{size} I", second, "cm⁴", En, Standing.SecondHand, () => tube.SecondMoment.CentimetersToTheFourth);
        yield return CheckRow.Printed(Group, $"{size} W_el", elastic, "cm³", En, Standing.SecondHand, () => tube.ElasticModulus.CubicCentimeters);
        yield return CheckRow.Printed(Group, $"{size} W_pl", plastic, "cm³", En, Standing.SecondHand, () => tube.PlasticModulus.CubicCentimeters);
        if (torsion is not null) yield return CheckRow.Printed(Group, $"{size} I_t", torsion, "cm⁴", En, Standing.SecondHand, () => tube.TorsionConstant.CentimetersToTheFourth);
    }

    private static IEnumerable<CheckRow> Full(double outer, double wall, double area, double second, double elastic, double plastic, double shear)
    {
        TubeSection tube = Tube(outer, wall);
        string size = FormattableString.Invariant($"{outer} x {wall}, seven digits:");
        yield return CheckRow.Arithmetic(Group, $"{size} A", area, "mm²", () => tube.Area.SquareMillimeters);
        yield return CheckRow.Arithmetic(Group, $"{size} I", second, "mm⁴", () => tube.SecondMoment.MillimetersToTheFourth);
        yield return CheckRow.Arithmetic(Group, $"{size} W_el", elastic, "mm³", () => tube.ElasticModulus.CubicMillimeters);
        yield return CheckRow.Arithmetic(Group, $"{size} W_pl", plastic, "mm³", () => tube.PlasticModulus.CubicMillimeters);
        yield return CheckRow.Arithmetic(Group, $"{size} A_v", shear, "mm²", () => tube.ShearArea.SquareMillimeters);
    }

    private static CheckRow Bad(string what, string printed, string unit, Func<double> ours) => CheckRow.Misprint(Group, what, printed, unit, Wrong, Standing.Read, ours);
}
