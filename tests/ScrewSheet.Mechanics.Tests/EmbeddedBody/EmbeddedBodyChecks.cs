using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests;

internal static class EmbeddedBodyChecks
{
    private const string Group = "Embedded body";
    private const string Rail = "Boresi, Schmidt and Sidebottom, Advanced Mechanics of Materials, ch. 10, example 1 (railway rail)";
    private const string Rubber = "Boresi, Schmidt and Sidebottom, Advanced Mechanics of Materials, ch. 10 (I-beam on rubber; inputs from memory)";

    /// <summary>Tube S of the lever-arm checks, 17.0 × 1.5 mm of steel: 442.8173 N·m².</summary>
    internal static Quantity TubeS => FoundationStiffness.FlexuralRigidity(Pressure.FromGigapascals(200), AreaMomentOfInertia.FromMillimetersToTheFourth(Math.PI / 64 * (Math.Pow(17, 4) - Math.Pow(14, 4))));

    internal static Force Kilonewton => Force.FromKilonewtons(1);

    internal static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    internal static Pressure MPa(double megapascals) => Pressure.FromMegapascals(megapascals);

    private static Quantity RailRigidity => FoundationStiffness.FlexuralRigidity(Pressure.FromGigapascals(200), AreaMomentOfInertia.FromMillimetersToTheFourth(36.9e6));

    private static double RailDeflection(params double[] metres) =>
        metres.Sum(x => InfiniteBeam.InfiniteBeamDeflection(Force.FromKilonewtons(170), MPa(14), RailRigidity, Length.FromMeters(x)).Millimeters);

    private static double RailMoment(params double[] metres) =>
        metres.Sum(x => InfiniteBeam.InfiniteBeamMoment(Force.FromKilonewtons(170), MPa(14), RailRigidity, Length.FromMeters(x)).KilonewtonMeters);

    private static double RailStress(params double[] metres) => RailMoment(metres) * 1e6 * 99.1 / 36.9e6;

    [CheckTable]
    public static IEnumerable<CheckRow> PublishedRail =>
    [
        CheckRow.Printed(Group, "InfiniteBeamDeflection, one wheel", "5.04", "mm", Rail, Standing.Read, () => RailDeflection(0)),
        CheckRow.Printed(Group, "InfiniteBeamMoment, one wheel", "51.21", "kN·m", Rail, Standing.Read, () => RailMoment(0)),
        CheckRow.Printed(Group, "Rail stress from InfiniteBeamMoment, one wheel", "137.54", "MPa", Rail, Standing.Read, () => RailStress(0)),
        CheckRow.Printed(Group, "InfiniteBeamDeflection, three wheels, centre", "7.86", "mm", Rail, Standing.Read, () => RailDeflection(0, 1.7, -1.7)),
        CheckRow.Printed(Group, "InfiniteBeamMoment, three wheels, end", "37.02", "kN·m", Rail, Standing.Read, () => RailMoment(0, 1.7, 3.4)),
        CheckRow.Printed(Group, "Rail stress from InfiniteBeamMoment, three wheels, end", "99.42", "MPa", Rail, Standing.Read, () => RailStress(0, 1.7, 3.4)),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Beams
    {
        get
        {
            yield return CheckRow.Arithmetic(Group, "Rail 1/λ", 8.298563e-4, "1/mm", () => 1 / FoundationStiffness.CharacteristicLength(MPa(14), RailRigidity).Millimeters);
            yield return CheckRow.Arithmetic(Group, "Greatest moment without a lever arm, times β over P", 0.3223969, "", () =>
                BodyUnderLoad.LongBody(Kilonewton, Length.Zero, MPa(2000), TubeS).MaxMoment.NewtonMeters / Kilonewton.Newtons / FoundationStiffness.CharacteristicLength(MPa(2000), TubeS).Meters);
            yield return CheckRow.Arithmetic(Group, "Rail deflection, one wheel, full", 5.038414, "mm", () => RailDeflection(0));
            yield return CheckRow.Arithmetic(Group, "Rail moment, one wheel, full", 51.21368, "kN·m", () => RailMoment(0));
            yield return CheckRow.Arithmetic(Group, "Rail stress, one wheel, full", 137.5414, "MPa", () => RailStress(0));
            yield return CheckRow.Arithmetic(Group, "Rail deflection, three wheels, full", 7.857084, "mm", () => RailDeflection(0, 1.7, -1.7));
            yield return CheckRow.Arithmetic(Group, "Rail moment, three wheels, full", 37.01808, "kN·m", () => RailMoment(0, 1.7, 3.4));
            yield return CheckRow.Arithmetic(Group, "Rail stress, three wheels, full", 99.41712, "MPa", () => RailStress(0, 1.7, 3.4));

            Quantity rubberRigidity = FoundationStiffness.FlexuralRigidity(Pressure.FromGigapascals(200), AreaMomentOfInertia.FromMillimetersToTheFourth(2.53e6));
            Pressure rubber = FoundationStiffness.SubgradeStiffness(SpecificWeight.FromNewtonsPerCubicMillimeter(0.350), Mm(68));
            BodyResponse beam = BodyUnderLoad.LongBody(Force.FromKilonewtons(30), Mm(0), rubber, rubberRigidity);
            yield return CheckRow.Arithmetic(Group, "I-beam on rubber, k", 23.8, "N/mm²", () => rubber.Megapascals);
            yield return CheckRow.Arithmetic(Group, "I-beam on rubber, 1/λ", 0.001851789, "1/mm", () => 1 / FoundationStiffness.CharacteristicLength(rubber, rubberRigidity).Millimeters);
            yield return CheckRow.Printed(Group, "I-beam on rubber, end deflection", "4.668377", "mm", Rubber, Standing.FromMemory, () => beam.HeadDeflection.Millimeters);
            yield return CheckRow.Printed(Group, "I-beam on rubber, greatest moment", "5.223006", "kN·m", Rubber, Standing.FromMemory, () => beam.MaxMoment.KilonewtonMeters);
            yield return CheckRow.Printed(Group, "I-beam on rubber, its place", "424.1293", "mm", Rubber, Standing.FromMemory, () => beam.MaxMomentDepth.Millimeters);
        }
    }

    [CheckTable]
    public static IEnumerable<CheckRow> LongBodies =>
        new (double K, double A, double Beta, double Y0, double Theta, double Xm, double Mmax, double Ytop, double P0)[]
        {
            (1, 0, 27.41125, 0.0548225, 0.001502753, 28.65240, 11.76148, 0.0548225, 3.224853),
            (1, 40, 27.41125, 0.1149326, 0.004798141, 11.07275, 45.05360, 0.3550347, 6.760743),
            (1, 50, 27.41125, 0.1299602, 0.005621988, 9.528675, 54.39945, 0.5051541, 7.644716),
            (5, 0, 40.98938, 0.01639575, 0.0006720517, 19.16102, 7.865377, 0.01639575, 4.822280),
            (5, 50, 40.98938, 0.04999834, 0.003426750, 4.724670, 52.22372, 0.3154303, 14.70539),
        }.SelectMany(row =>
        {
            Pressure k = Pressure.FromGigapascals(row.K);
            BodyResponse body = BodyUnderLoad.LongBody(Kilonewton, Mm(row.A), k, TubeS);
            string what = $"LongBody, tube S, 1 kN, k {row.K} GPa, a {row.A} mm: ";
            return new[]
            {
                CheckRow.Arithmetic(Group, what + "FoundationBeta", row.Beta, "1/m", () => FoundationStiffness.FoundationBeta(k, TubeS).Si),
                CheckRow.Arithmetic(Group, what + "HeadDeflection", row.Y0, "mm", () => body.HeadDeflection.Millimeters),
                CheckRow.Arithmetic(Group, what + "HeadSlope", row.Theta, "rad", () => body.HeadSlope.Radians),
                CheckRow.Arithmetic(Group, what + "MaxMomentDepth", row.Xm, "mm", () => body.MaxMomentDepth.Millimeters),
                CheckRow.Arithmetic(Group, what + "MaxMoment", row.Mmax, "N·m", () => body.MaxMoment.NewtonMeters),
                CheckRow.Arithmetic(Group, what + "LoadPointDeflection", row.Ytop, "mm", () => body.LoadPointDeflection.Millimeters),
                CheckRow.Arithmetic(Group, what + "ContactPressure at the face", row.P0, "MPa", () => ContactPressures.ContactPressure(body.HeadDeflection, k, Mm(17)).Megapascals),
            };
        });

    [CheckTable]
    public static IEnumerable<CheckRow> FiniteBodies =>
        new (double L, double Bl, double A, double Y0, double Theta, double Yl, double Mmax)[]
        {
            (40, 1.096450, 0, 0.1013630, 0.003937682, -0.04898062, 5.872778),
            (40, 1.096450, 40, 0.2588703, 0.01277220, -0.1945667, 42.07471),
            (80, 2.192900, 40, 0.1238463, 0.005021614, -0.04100551, 44.60553),
            (120, 3.289350, 40, 0.1150619, 0.004810751, -0.002123047, 45.04854),
        }.SelectMany(row =>
        {
            Pressure k = Pressure.FromGigapascals(1);
            BodyResponse body = BodyUnderLoad.FiniteBody(Kilonewton, Mm(row.A), k, TubeS, Mm(row.L));
            string what = $"FiniteBody, tube S, 1 kN, k 1 GPa, L {row.L} mm, a {row.A} mm: ";
            return new[]
            {
                CheckRow.Arithmetic(Group, what + "L/λ", row.Bl, "", () => row.L / FoundationStiffness.CharacteristicLength(k, TubeS).Millimeters),
                CheckRow.Arithmetic(Group, what + "HeadDeflection", row.Y0, "mm", () => body.HeadDeflection.Millimeters),
                CheckRow.Arithmetic(Group, what + "HeadSlope", row.Theta, "rad", () => body.HeadSlope.Radians),
                CheckRow.Arithmetic(Group, what + "TipDeflection", row.Yl, "mm", () => body.TipDeflection.Millimeters),
                CheckRow.Arithmetic(Group, what + "MaxMoment", row.Mmax, "N·m", () => body.MaxMoment.NewtonMeters),
            };
        });

    [CheckTable]
    public static IEnumerable<CheckRow> RigidBodies
    {
        get
        {
            BodyResponse bar = BodyUnderLoad.RigidBody(Kilonewton, Mm(40), Pressure.FromGigapascals(1), Mm(120));
            yield return CheckRow.Arithmetic(Group, "RigidBody HeadDeflection", 0.05, "mm", () => bar.HeadDeflection.Millimeters);
            yield return CheckRow.Arithmetic(Group, "RigidBody HeadSlope", 6.944444e-4, "rad", () => bar.HeadSlope.Radians);
            yield return CheckRow.Arithmetic(Group, "RigidBody PivotDepth", 72, "mm", () => bar.PivotDepth.Millimeters);
        }
    }

    [CheckTable]
    public static IEnumerable<CheckRow> Moduli =>
        new (double E, double Vesic, double Biot, double Beta, double Lambda)[]
        {
            (9330, 7107.711, 10661.80, 0.04475703, 22.34286),
            (5000, 3616.114, 5341.464, 0.03779979, 26.45517),
            (1000, 632.4477, 897.8453, 0.02444472, 40.90863),
            (300, 171.6219, 236.5113, 0.01764298, 56.67976),
        }.SelectMany(row =>
        {
            Pressure vesic = FoundationStiffness.FoundationModulusVesic(MPa(row.E), 0.325, Mm(17), TubeS);
            return new[]
            {
                CheckRow.Arithmetic(Group, $"FoundationModulusVesic, ice {row.E} MPa", row.Vesic, "MPa", () => vesic.Megapascals),
                CheckRow.Arithmetic(Group, $"FoundationModulusBiot, ice {row.E} MPa", row.Biot, "MPa", () => FoundationStiffness.FoundationModulusBiot(MPa(row.E), 0.325, Mm(17), TubeS).Megapascals),
                CheckRow.Arithmetic(Group, $"CharacteristicLength, ice {row.E} MPa", row.Lambda, "mm", () => FoundationStiffness.CharacteristicLength(vesic, TubeS).Millimeters),
                CheckRow.Arithmetic(Group, $"1/λ, ice {row.E} MPa", row.Beta, "1/mm", () => 1 / FoundationStiffness.CharacteristicLength(vesic, TubeS).Millimeters),
            };
        });

    [CheckTable]
    public static IEnumerable<CheckRow> Crushing =>
        new (double Strength, double A, double Short120, double Short60, double Long75, double Long35)[]
        {
            (5, 0, 4224.978, 2112.489, 5637.269, 3850.988),
            (10, 0, 8449.957, 4224.978, 7972.302, 5446.119),
            (10, 40, 5650.473, 2093.629, 3678.435, 1912.073),
            (20, 40, 11300.95, 4187.257, 4065.650, 2029.473),
            (20, 50, 10403.76, 3699.225, 3398.902, 1663.344),
        }.SelectMany(row => new[]
        {
            CheckRow.Arithmetic(Group, $"ShortBodyCrushing, {row.Strength} MPa, a {row.A} mm, L 120 mm", row.Short120, "N", () => CrushingIce.ShortBodyCrushing(MPa(row.Strength), Mm(17), Mm(120), Mm(row.A)).Newtons),
            CheckRow.Arithmetic(Group, $"ShortBodyCrushing, {row.Strength} MPa, a {row.A} mm, L 60 mm", row.Short60, "N", () => CrushingIce.ShortBodyCrushing(MPa(row.Strength), Mm(17), Mm(60), Mm(row.A)).Newtons),
            CheckRow.Arithmetic(Group, $"LongBodyCrushing, {row.Strength} MPa, a {row.A} mm, 75 ksi", row.Long75, "N", () => CrushingIce.LongBodyCrushing(MPa(row.Strength), Mm(17), Torque.FromNewtonMeters(186.9341), Mm(row.A)).Newtons),
            CheckRow.Arithmetic(Group, $"LongBodyCrushing, {row.Strength} MPa, a {row.A} mm, 35 ksi", row.Long35, "N", () => CrushingIce.LongBodyCrushing(MPa(row.Strength), Mm(17), Torque.FromNewtonMeters(87.23591), Mm(row.A)).Newtons),
        });
}
