using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;
using static ScrewSheet.Mechanics.Falls.ImpactForces;
using static ScrewSheet.Mechanics.Falls.RopeModuli;
using static ScrewSheet.Mechanics.Falls.RopeStrands;
using static ScrewSheet.Mechanics.Tests.Rope.RopeUnits;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>Impact force, rope modulus, strands: published rows and arithmetic done elsewhere.</summary>
internal static class ImpactForceChecks
{
    private const string Group = "Impact force";
    private const string Modulus = "Rope modulus";
    private const string Springs = "Mass falling on a spring";
    private const string Textbook = "textbook problem, J. D. Cutnell & K. W. Johnson, Physics; book answer";

    [CheckTable]
    public static IEnumerable<CheckRow> Rows =>
    [
        Linear(80, 20000, 0, 1569.06400),
        Linear(80, 20000, 0.3, 3951.52970),
        Linear(80, 20000, 1.0, 6441.10079),
        Linear(80, 20000, 2.0, 8745.56525),
        Linear(100, 20000, 0.5, 5516.63280),
        Linear(80, 24080.86626, 1.0, 6981.29816),
        Linear(60, 24080.86626, 1.0, 5944.19293),
        Linear(100, 24080.86626, 1.0, 7922.72732),
        Stretch(80, 20000, 0, 0.0784532), Stretch(80, 20000, 0.3, 0.197576485), Stretch(80, 20000, 1.0, 0.322055039), Stretch(80, 20000, 2.0, 0.437278263),
        Stretch(100, 20000, 0.5, 0.275831640), Stretch(80, 24080.86626, 1.0, 0.289910591), Stretch(60, 24080.86626, 1.0, 0.246842986), Stretch(100, 24080.86626, 1.0, 0.329005080),
        CheckRow.Printed(Group, "a zero-factor fall in units of the weight", "2", "", "encyclopedia article \"Fall factor\": zero-factor fall gives 2 m g", Standing.SecondHand, () => ImpactForce(Kg(80), KN(20), 0).Newtons / (80 * G)),
        CheckRow.Arithmetic(Group, "f = 2 over f = 1, 80 kg, 20 kN", 1.35777494, "", () => ImpactForce(Kg(80), KN(20), 2) / ImpactForce(Kg(80), KN(20), 1)),
        CheckRow.Arithmetic(Group, "from stretch 0.30, 80 kg, f = 1", 6799.27733, "N", () => ImpactForceFromStretch(Kg(80), 1, 0.30).Newtons),
        CheckRow.Arithmetic(Group, "peak time, 80 kg, 20 kN, 4.6 m on 2.6 m", 0.170888422, "s", () => BodyLoads.ElasticPeakTime(Kg(80), KN(20), M(4.6), M(2.6)).Seconds),
        CheckRow.Arithmetic(Group, "80 kg, 20 kN, 4.6 m on 2.6 m", 8276.94260, "N", () => ImpactForce(Kg(80), KN(20), 4.6 / 2.6).Newtons),
        CheckRow.Arithmetic(Group, "stretch, 80 kg, 20 kN, 4.6 m on 2.6 m", 1.07600254, "m", () => RopeStretch(ImpactForce(Kg(80), KN(20), 4.6 / 2.6), KN(20), M(2.6)).Meters),
        CheckRow.Arithmetic(Group, "200 lb, modulus 6000 lbf, f = 2, in lbf", 2400, "lbf", () => ImpactForce(Mass.FromPounds(200), Force.FromPoundsForce(6000), 2).PoundsForce, 1e-9),
        CheckRow.Arithmetic(Group, "200 lb, modulus 6000 lbf, f = 2, in N", 10675.7319, "N", () => ImpactForce(Kg(90.718474), N(26689.3297), 2).Newtons),
        CheckRow.Arithmetic(Group, "low-stretch rope, 80 kg, f = 1", 8861.30180, "N", () => ImpactForce(Kg(80), RopeModulus(KN(6), Kg(100), 0.3), 1).Newtons),
        CheckRow.Arithmetic(Group, "low-stretch rope, 80 kg, f = 2", 12179.8350, "N", () => ImpactForce(Kg(80), RopeModulus(KN(6), Kg(100), 0.3), 2).Newtons),
        CheckRow.Arithmetic(Group, "low-stretch rope, 100 kg, f = 0.2", 5117.86017, "N", () => ImpactForce(Kg(100), RopeModulus(KN(6), Kg(100), 0.3), 0.2).Newtons),
        CheckRow.Arithmetic(Group, "low-stretch rope, 100 kg, f = 1", 10021.4119, "N", () => ImpactForce(Kg(100), RopeModulus(KN(6), Kg(100), 0.3), 1).Newtons),
        CheckRow.Arithmetic(Group, "dynamic-rope lanyard, 80 kg, f = 5", 14551.7972, "N", () => ImpactForce(Kg(80), N(24080.87), 5).Newtons),
        CheckRow.Arithmetic(Group, "modulus of 8 % static elongation used for the standard drop", 6061.93129, "N", () => ImpactForce(Kg(80), N(9806.65), 1.77).Newtons),
        CheckRow.Arithmetic(Group, "linear rope that stretches 40 % at f = 1.77 under 80 kg", 8512.17220, "N", () => ImpactForceFromStretch(Kg(80), 1.77, 0.40).Newtons),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> ModulusRows =>
    [
        FromPeak(9000, 80, 1.77, 24080.8663),
        FromPeak(9000, 80, 4.6 / 2.6, 24091.3362),
        FromPeak(9000, 80, 4.8 / 2.8, 24863.4944),
        FromPeak(12000, 80, 1.77, 45070.3159),
        FromPeak(8000, 55, 1.77, 28999.4030),
        FromPeak(6000, 55, 1.77, 15464.7066),
        FromPeak(8500, 80, 1.77, 21212.7459),
        StretchAtPeak(9000, 80, 1.77, 0.373740708), StretchAtPeak(9000, 80, 4.6 / 2.6, 0.373578282), StretchAtPeak(9000, 80, 4.8 / 2.8, 0.361976472), StretchAtPeak(12000, 80, 1.77, 0.266250630),
        StretchAtPeak(8000, 55, 1.77, 0.275867748), StretchAtPeak(6000, 55, 1.77, 0.387980204), StretchAtPeak(8500, 80, 1.77, 0.400702485),
        CheckRow.Arithmetic(Modulus, "low-stretch rope, 6 kN, 100 kg, f0 = 0.3", 41182.9728, "N", () => RopeModulus(KN(6), Kg(100), 0.3).Newtons),
        CheckRow.Arithmetic(Modulus, "slope limit from 5 % between 50 and 150 kg", 19613.3, "N", () => StaticRopeModulus(Kg(50), Kg(150), 0.05).Newtons),
        CheckRow.Arithmetic(Modulus, "8 % under 80 kg", 9806.65, "N", () => StaticRopeModulus(Kg(0), Kg(80), 0.08).Newtons),
        CheckRow.Arithmetic(Modulus, "certificate to 95 kg, f = 0.5", 5758.89156, "N", () => ImpactForceFromCertificate(N(9000), Kg(80), Kg(95), 0.5).Newtons),
        GeometryEffect("1.71", 1.71, 7087.36), GeometryEffect("1.75", 1.75, 7016.04), GeometryEffect("1.77", 1.77, 6981.30), GeometryEffect("5/2.8", 5 / 2.8, 6954.41),
        CheckRow.Arithmetic(Modulus, "half rope 6 kN, 80 kg on one strand", 7384.89130, "N", () => ImpactForce(Kg(80), RopeModulusInUse(KN(6), RopeUse.Half, 1), 1.77).Newtons),
        CheckRow.Arithmetic(Modulus, "half rope 6 kN, 80 kg on two strands", 10085.8220, "N", () => ImpactForce(Kg(80), RopeModulusInUse(KN(6), RopeUse.Half, 2), 1.77).Newtons),
        CheckRow.Arithmetic(Modulus, "triple-rated rope, 7.3 kN single", 15063.7984, "N", () => RopeModulusInUse(KN(7.3), RopeUse.Single, 1).Newtons),
        CheckRow.Arithmetic(Modulus, "triple-rated rope, stretch at 7.3 kN", 0.4846, "", () => RelativeStretch(KN(7.3), RopeModulusInUse(KN(7.3), RopeUse.Single, 1)), 1e-4),
        CheckRow.Arithmetic(Modulus, "triple-rated rope, 55 kg on one strand", 5929.45392, "N", () => ImpactForce(Kg(55), RopeModulusInUse(KN(7.3), RopeUse.Single, 1), 1.77).Newtons),
        CheckRow.Arithmetic(Modulus, "triple-rated rope, 80 kg on two strands", 9965.33567, "N", () => ImpactForce(Kg(80), RopeModulusInUse(KN(7.3), RopeUse.Single, 2), 1.77).Newtons),
        CheckRow.Arithmetic(Modulus, "sling back-computed, 11.5 kN at f = 1", 72785.9, "N", () => RopeModulus(KN(11.5), Kg(80), 1).Newtons),
        CheckRow.Arithmetic(Modulus, "sling back-computed, 19.7 kN at f = 2", 113819, "N", () => RopeModulus(KN(19.7), Kg(80), 2).Newtons, 5e-6),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> SpringRows =>
    [
        CheckRow.Printed(Springs, "86.0 kg, 1200 N/m, 0.750 m", "1.95", "m", Textbook, Standing.FromMemory, () => DropOnSpring(86.0, 1200, 0.750)),
        CheckRow.Misprint(Springs, "86.0 kg, 1200 N/m, 0.750 m without the weight's work in the stretch", "1.03", "m", "public question-and-answer thread on these inputs", Standing.Read, () => DropOnSpring(86.0, 1200, 0.750)),
        CheckRow.Arithmetic(Springs, "86.0 kg, 1200 N/m, 0.750 m, to nine digits", 1.94602627, "m", () => DropOnSpring(86.0, 1200, 0.750)),
        CheckRow.Arithmetic(Springs, "74.2 kg, 1620 N/m, 0.959 m", 1.47959239, "m", () => DropOnSpring(74.2, 1620, 0.959)),
        CheckRow.Arithmetic(Springs, "85.3 kg, 1160 N/m, 0.757 m", 1.98963945, "m", () => DropOnSpring(85.3, 1160, 0.757)),
        CheckRow.Arithmetic(Springs, "85.3 kg, 0.757 m: constant of the quadratic, w h", 632.80658, "J", () => FreeFalls.FallEnergy(Kg(85.3 * 9.80 / G), M(0.757)).Joules),
        CheckRow.Misprint(Springs, "85.3 kg, 0.757 m: constant of the quadratic, w h", "612.96", "J", "circulated solution 580 h^2 - 835.94 h - 612.96 = 0", Standing.Read, () => FreeFalls.FallEnergy(Kg(85.3 * 9.80 / G), M(0.757)).Joules),
        CheckRow.Arithmetic(Springs, "85 kg, 850 N/m, 16 m: stretch over 8.0 m", 0.833137918 * 8, "m", () => DropOnSpring(85, 850, 16)),
        CheckRow.Arithmetic(Springs, "85 kg, 850 N/m, 16 m: force over weight", 6.80112586, "", () => 850 * DropOnSpring(85, 850, 16) / (85 * 9.80)),
    ];

    /// <summary>Stretch of a spring under a falling mass; the problems use g = 9.80, which a mass smaller by 9.80/9.80665 stands for.</summary>
    private static double DropOnSpring(double kilograms, double newtonsPerMetre, double metres) =>
        ImpactForceOnSpring(Kg(kilograms * 9.80 / G), ForcePerLength.FromNewtonsPerMeter(newtonsPerMetre), M(metres)).Newtons / newtonsPerMetre;

    private static CheckRow Linear(double m, double k, double f, double force) =>
        CheckRow.Arithmetic(Group, $"{m} kg, {k} N, f = {f}", force, "N", () => ImpactForce(Kg(m), N(k), f).Newtons);

    private static CheckRow Stretch(double m, double k, double f, double stretch) =>
        CheckRow.Arithmetic(Group, $"stretch, {m} kg, {k} N, f = {f}", stretch, "", () => RelativeStretch(ImpactForce(Kg(m), N(k), f), N(k)));

    private static CheckRow FromPeak(double peak, double m, double f, double modulus) =>
        CheckRow.Arithmetic(Modulus, $"{peak} N, {m} kg, f0 = {f:G6}", modulus, "N", () => RopeModulus(N(peak), Kg(m), f).Newtons);

    private static CheckRow StretchAtPeak(double peak, double m, double f, double stretch) =>
        CheckRow.Arithmetic(Modulus, $"stretch at {peak} N, {m} kg, f0 = {f:G6}", stretch, "", () => RelativeStretch(N(peak), RopeModulus(N(peak), Kg(m), f)));

    private static CheckRow GeometryEffect(string name, double f0, double force) =>
        CheckRow.Arithmetic(Modulus, $"9 kN, 80 kg with f0 = {name}: force at f = 1", force, "N", () => ImpactForceFromCertificate(N(9000), Kg(80), Kg(80), 1, f0).Newtons);
}
