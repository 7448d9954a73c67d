using ScrewSheet.Mechanics.LeverArm;
using ScrewSheet.TestKit;
using UnitsNet;
using static ScrewSheet.Mechanics.Tests.LeverArm.In;

namespace ScrewSheet.Mechanics.Tests.LeverArm;

/// <summary>Moments, loads, stresses, deflection and folding of the illustrative tubes S (17.0 x 1.5) and A (18.0 x 2.0).</summary>
internal static class StrengthChecks
{
    private const string Group = "Lever arm";
    private static readonly TubeSection S = TubeSections.Tube(Mm(17), Mm(1.5)), A = TubeSections.Tube(Mm(18), Mm(2));

    [CheckTable]
    public static IEnumerable<CheckRow> SetAngles =>
    [
        Load("N at +10°", 1736.482, () => Mechanics.LeverArm.SetAngles.AxialLoad(KN(10), Deg(10))),
        Load("V at +10°", 9848.078, () => Mechanics.LeverArm.SetAngles.TransverseLoad(KN(10), Deg(10))),
        Load("N at +15°", 2588.190, () => Mechanics.LeverArm.SetAngles.AxialLoad(KN(10), Deg(15))),
        Load("V at +15°", 9659.258, () => Mechanics.LeverArm.SetAngles.TransverseLoad(KN(10), Deg(15))),
        Load("N at -10°", -1736.482, () => Mechanics.LeverArm.SetAngles.AxialLoad(KN(10), Deg(-10))),
        Load("V at -10°", 9848.078, () => Mechanics.LeverArm.SetAngles.TransverseLoad(KN(10), Deg(-10))),
        Load("N at +10°, general pull with no tilt", 1736.482, () => Mechanics.LeverArm.SetAngles.PullComponents(KN(10), Deg(10), Deg(0)).Axial),
        Load("V at +10° and 5° outward", 9659.258, () => Mechanics.LeverArm.SetAngles.PullComponents(KN(10), Deg(10), Deg(5)).Transverse),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> MomentsAndLoads =>
    [
        .. Strength("S", S, 75, 134.6964, 186.9341, 3.738682), .. Strength("S", S, 67, 120.3288, 166.9945, 3.339889), .. Strength("S", S, 35, 62.85831, 87.23591, 1.744718),
        .. Strength("A", A, 67, 167.7005, 237.7496, 4.754992), .. Strength("A", A, 35, 87.60476, 124.1976, 2.483951),
        .. AxialAndShear(75, 37.77053, 13.88266), .. AxialAndShear(67, 33.74167, 12.40184), .. AxialAndShear(35, 17.62625, 6.478573),
        CheckRow.Arithmetic(Group, "tube S, 75 ksi: lever arm of a hinge under 10 kN", 18.69341, "mm", () => SectionStrength.HingeArm(Plastic(S, 75), KN(10)).Millimeters),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Stresses =>
    [
        .. Stress(2, 377.9111, 52.56979, 91.32892), .. Stress(10, 1889.555, 262.8489, 456.6446),
        CheckRow.Arithmetic(Group, "tube S, 10 kN at 15°: thin-wall shear", 264.4849, "MPa",
            () => CombinedStresses.ThinWallShearStress(Mechanics.LeverArm.SetAngles.TransverseLoad(KN(10), Deg(15)), S.Area).Megapascals),
        CheckRow.Arithmetic(Group, "equivalent stress of 35.43423 and 262.8489 MPa", 456.6446, "MPa", () => CombinedStresses.EquivalentStress(MPa(35.43423), MPa(262.8489)).Megapascals),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Bending =>
    [
        CheckRow.Arithmetic(Group, "tube S, 1 kN at 50 mm: deflection", 0.09409449, "mm", () => Deflections.CantileverDeflection(KN(1), Mm(50), GPa(200), S.SecondMoment).Millimeters),
        CheckRow.Arithmetic(Group, "tube S, 1 kN at 50 mm: slope", 0.002822835, "rad", () => Deflections.CantileverSlope(KN(1), Mm(50), GPa(200), S.SecondMoment).Radians),
        CheckRow.Arithmetic(Group, "tube A in aluminium, 1 kN at 50 mm: deflection", 0.1849637, "mm", () => Deflections.CantileverDeflection(KN(1), Mm(50), GPa(68.94757), A.SecondMoment).Millimeters),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> FoldOver =>
    [
        .. Fold(0, 3.738682, 3.738682), .. Fold(30, 4.317058, 4.284214), .. Fold(45, 5.287295, 5.186938), .. Fold(60, 7.477364, 7.133047), .. Fold(75, 14.44516, 12.39611),
        CheckRow.Arithmetic(Group, "rotation capacity at a strain of 0.20", 22.91831, "°", () => HingeLoads.RotationCapacity(Mm(17), 0.20, Mm(17)).Degrees),
        CheckRow.Arithmetic(Group, "rotation capacity at a strain of 0.08", 9.167325, "°", () => HingeLoads.RotationCapacity(Mm(17), 0.08, Mm(17)).Degrees),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> YieldAndHingeAtTenDegrees =>
    [
        .. AtTenDegrees(50, 75, 2701.511, 3792.469), .. AtTenDegrees(40, 75, 3366.436, 4738.349), .. AtTenDegrees(10, 75, 12868.26, 18689.16), .. AtTenDegrees(50, 35, 1260.705, 1769.819),
    ];

    /// <summary>Relative change of the result for +1 % of one input, over 1 %, as natural logarithms.</summary>
    [CheckTable]
    public static IEnumerable<CheckRow> Sensitivities =>
    [
        Sensitivity("hinge load to lever arm", -0.9983, x => HingeLoads.HingeLoad(Mm(17), Mm(1.5), MPa(75 * Ksi), Mm(50 * x), Deg(10)).Newtons),
        Sensitivity("hinge load to yield strength", 1.0000, x => HingeLoads.HingeLoad(Mm(17), Mm(1.5), MPa(75 * Ksi * x), Mm(50), Deg(10)).Newtons),
        Sensitivity("W_pl to diameter", 2.1857, x => TubeSections.Tube(Mm(17 * x), Mm(1.5)).PlasticModulus.CubicMillimeters),
        Sensitivity("W_pl to wall", 0.8123, x => TubeSections.Tube(Mm(17), Mm(1.5 * x)).PlasticModulus.CubicMillimeters),
    ];

    private static CheckRow Sensitivity(string what, double value, Func<double, double> of) =>
        CheckRow.Arithmetic(Group, $"tube S, sensitivity of {what}", value, "", () => Math.Log(of(1.01) / of(1)) / Math.Log(1.01), 0.00005 / Math.Abs(value));

    private static CheckRow Load(string what, double newtons, Func<Force> ours) => CheckRow.Arithmetic(Group, $"10 kN: {what}", newtons, "N", () => ours().Newtons);

    private static Torque Plastic(TubeSection tube, double ksi) => SectionStrength.PlasticMoment(tube.PlasticModulus, MPa(ksi * Ksi));

    private static IEnumerable<CheckRow> Strength(string name, TubeSection tube, double ksi, double elastic, double plastic, double load)
    {
        yield return CheckRow.Arithmetic(Group, $"tube {name}, {ksi} ksi: M_el", elastic, "N·m", () => SectionStrength.ElasticMoment(tube.ElasticModulus, MPa(ksi * Ksi)).NewtonMeters);
        yield return CheckRow.Arithmetic(Group, $"tube {name}, {ksi} ksi: M_pl", plastic, "N·m", () => Plastic(tube, ksi).NewtonMeters);
        yield return CheckRow.Arithmetic(Group, $"tube {name}, {ksi} ksi: F_pl at 50 mm", load, "kN", () => SectionStrength.LeverArmLoad(Plastic(tube, ksi), Mm(50)).Kilonewtons);
    }

    private static IEnumerable<CheckRow> AxialAndShear(double ksi, double axial, double shear)
    {
        yield return CheckRow.Arithmetic(Group, $"tube S, {ksi} ksi: N_pl", axial, "kN", () => SectionStrength.PlasticAxialLoad(S.Area, MPa(ksi * Ksi)).Kilonewtons);
        yield return CheckRow.Arithmetic(Group, $"tube S, {ksi} ksi: V_pl", shear, "kN", () => SectionStrength.PlasticShearLoad(S.ShearArea, MPa(ksi * Ksi)).Kilonewtons);
    }

    private static IEnumerable<CheckRow> Stress(double load, double extreme, double shear, double neutral)
    {
        ScrewPull pull = Mechanics.LeverArm.SetAngles.PullComponents(KN(load), Deg(15), Deg(0));
        Torque moment = Mechanics.LeverArm.Bending.BendingMoment(pull.Transverse, Mm(50));
        TubeStress stress = CombinedStresses.CombinedStress(pull.Axial, pull.Transverse, moment, Mm(17), Mm(1.5));
        string what = $"tube S, {load} kN at 15°, 50 mm:";
        yield return CheckRow.Arithmetic(Group, $"{what} extreme fibre", extreme, "MPa", () => stress.ExtremeFibre.Megapascals);
        yield return CheckRow.Arithmetic(Group, $"{what} shear", shear, "MPa", () => stress.NeutralAxisShear.Megapascals);
        yield return CheckRow.Arithmetic(Group, $"{what} shear alone", shear, "MPa", () => CombinedStresses.PeakShearStress(pull.Transverse, Mm(17), Mm(1.5)).Megapascals);
        yield return CheckRow.Arithmetic(Group, $"{what} neutral axis", neutral, "MPa", () => stress.NeutralAxis.Megapascals);
    }

    private static IEnumerable<CheckRow> Fold(double degrees, double bendingOnly, double withPull)
    {
        yield return CheckRow.Arithmetic(Group, $"tube S folded {degrees}°, bending only", bendingOnly, "kN", () => HingeLoads.FoldOverLoadBendingOnly(Plastic(S, 75), Mm(50), Deg(degrees)).Kilonewtons);
        yield return CheckRow.Arithmetic(Group, $"tube S folded {degrees}°, with its pull", withPull, "kN",
            () => HingeLoads.FoldOverLoad(Plastic(S, 75), SectionStrength.PlasticAxialLoad(S.Area, MPa(75 * Ksi)), Mm(50), Deg(degrees)).Kilonewtons);
    }

    private static IEnumerable<CheckRow> AtTenDegrees(double arm, double ksi, double yield, double hinge)
    {
        yield return CheckRow.Arithmetic(Group, $"tube S, {ksi} ksi, {arm} mm, 10°: first yield", yield, "N",
            () => HingeLoads.FirstYieldLoad(S.Area, S.ElasticModulus, MPa(ksi * Ksi), Mm(arm), Deg(10)).Newtons);
        yield return CheckRow.Arithmetic(Group, $"tube S, {ksi} ksi, {arm} mm, 10°: plastic hinge", hinge, "N", () => HingeLoads.HingeLoad(Mm(17), Mm(1.5), MPa(ksi * Ksi), Mm(arm), Deg(10)).Newtons);
    }
}
