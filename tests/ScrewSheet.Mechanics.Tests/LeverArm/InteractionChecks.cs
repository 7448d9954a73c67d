using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.TestKit;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.LeverArm;

internal static class InteractionChecks
{
    private const string Group = "Plastic interaction and wall";

    [CheckTable]
    public static IEnumerable<CheckRow> MomentBesidePull =>
    [
        .. Factors(0.1, 0.9876883, 0.9800474, 1), .. Factors(0.2, 0.9510565, 0.9351737, 0.9725807), .. Factors(0.3, 0.8910065, 0.8708465, 0.9056804),
        .. Factors(0.5, 0.7071068, 0.6922139, 0.7199025), .. Factors(0.8, 0.3090170, 0.3156899, 0.3283175),
        .. Thick(1, 0.08237636, 0.9916661), .. Thick(3, 0.2531186, 0.9222470), .. Thick(5, 0.4470327, 0.7642768),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> SectionClass =>
    [
        .. Steel(355, 33.09859, 46.33803, 59.57746), .. Steel(75 * Ksi, 22.72258, 31.81161, 40.90064),
        .. Aluminium(35 * Ksi, 13.92823, 29.46799, 55.71291), .. Aluminium(67 * Ksi, 7.275940, 15.39372, 29.10376),
        CheckRow.Arithmetic(Group, "tube S slenderness β", 10.0995, "", () => SectionClasses.AluminiumSlenderness(Mm(17), Mm(1.5)), 1e-5),
        CheckRow.Arithmetic(Group, "tube S in 7075-T6, β limit of class 1", 8.092185, "", () => 3 * Math.Sqrt(SectionClasses.AluminiumClassLimits(MPa(67 * Ksi)).Class1)),
        CheckRow.Arithmetic(Group, "tube S in 7075-T6, β limit of class 2", 11.77045, "", () => 3 * Math.Sqrt(SectionClasses.AluminiumClassLimits(MPa(67 * Ksi)).Class2)),
        CheckRow.Arithmetic(Group, "tube S in steel of 75 ksi, class", 1, "", () => SectionClasses.SteelTubeClass(Mm(17), Mm(1.5), MPa(75 * Ksi))),
        CheckRow.Arithmetic(Group, "tube S in 7075-T6, class", 2, "", () => SectionClasses.AluminiumTubeClass(Mm(17), Mm(1.5), MPa(67 * Ksi))),
        CheckRow.Arithmetic(Group, "tube A in 7075-T6, class", 2, "", () => SectionClasses.AluminiumTubeClass(Mm(18), Mm(2), MPa(67 * Ksi))),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Flattening =>
    [
        Brazier(200, 0.3, 7.75, 1.5, 3609.490), Brazier(70, 0.33, 8, 2, 2342.810), Brazier(100, 1, 20699.59),
        CheckRow.Arithmetic(Group, "wall buckling stress over E t/R at ν = 0.3", 0.6052275, "", () => WallBuckling.WallBucklingStress(GPa(200), 0.3, Mm(100), Mm(1)).Pascals / (200e9 * 1 / 100)),
        CheckRow.Arithmetic(Group, "Brazier moment over E R t²/√(1 − ν²)", 0.9873073, "", () => WallBuckling.BrazierMoment(GPa(200), 0.3, Mm(100), Mm(1)).NewtonMeters / (200e9 * 0.1 * 1e-6 / Math.Sqrt(0.91))),
        // the sheet says "20 times"; its own figures give 3609.490/186.9341
        CheckRow.Arithmetic(Group, "tube S, Brazier over plastic moment", 3609.490 / 186.9341, "", () => WallBuckling.BrazierRatio(Mm(17), Mm(1.5), GPa(200), 0.3, MPa(75 * Ksi))),
        CheckRow.Arithmetic(Group, "flattening at R 9 mm, 2R/9", 2, "mm", () => WallBuckling.BrazierFlattening(Mm(9)).Millimeters),
    ];

    private static IEnumerable<CheckRow> Factors(double n, double thin, double code, double annex)
    {
        yield return CheckRow.Arithmetic(Group, FormattableString.Invariant($"thin wall, n = {n}"), thin, "", () => MomentInteraction.ThinWallMomentFactor(n));
        yield return CheckRow.Arithmetic(Group, FormattableString.Invariant($"code, n = {n}"), code, "", () => MomentInteraction.CodeMomentFactor(n));
        yield return CheckRow.Arithmetic(Group, FormattableString.Invariant($"national annex, n = {n}"), annex, "", () => MomentInteraction.AnnexMomentFactor(n));
    }

    private static IEnumerable<CheckRow> Thick(double shift, double n, double m)
    {
        yield return CheckRow.Arithmetic(Group, $"tube S, neutral axis shifted {shift} mm: n", n, "", () => ThickWallInteraction.ThickWallPoint(Mm(shift), Mm(17), Mm(1.5)).AxialRatio);
        yield return CheckRow.Arithmetic(Group, $"tube S, neutral axis shifted {shift} mm: m", m, "", () => ThickWallInteraction.ThickWallPoint(Mm(shift), Mm(17), Mm(1.5)).MomentFactor);
        yield return CheckRow.Arithmetic(Group, $"tube S, m from the n of a shift of {shift} mm", m, "", () => ThickWallInteraction.ThickWallMomentFactor(n, Mm(17), Mm(1.5)));
    }

    private static IEnumerable<CheckRow> Steel(double strength, double class1, double class2, double class3) =>
        Limits($"steel {strength:F0} MPa", SectionClasses.SteelClassLimits(MPa(strength)), class1, class2, class3);

    private static IEnumerable<CheckRow> Aluminium(double strength, double class1, double class2, double class3) =>
        Limits($"aluminium {strength:F0} MPa", SectionClasses.AluminiumClassLimits(MPa(strength)), class1, class2, class3);

    private static IEnumerable<CheckRow> Limits(string what, SectionClassLimits limits, double class1, double class2, double class3)
    {
        yield return CheckRow.Arithmetic(Group, $"{what}, D/t of class 1", class1, "", () => limits.Class1);
        yield return CheckRow.Arithmetic(Group, $"{what}, D/t of class 2", class2, "", () => limits.Class2);
        yield return CheckRow.Arithmetic(Group, $"{what}, D/t of class 3", class3, "", () => limits.Class3);
    }

    private static CheckRow Brazier(double radius, double wall, double moment) => Brazier(200, 0.3, radius, wall, moment);

    private static CheckRow Brazier(double modulus, double poisson, double radius, double wall, double moment) =>
        CheckRow.Arithmetic(Group, FormattableString.Invariant($"Brazier moment, E {modulus} GPa, R {radius}, t {wall} mm"), moment, "N·m",
            () => WallBuckling.BrazierMoment(GPa(modulus), poisson, Mm(radius), Mm(wall)).NewtonMeters);
}
