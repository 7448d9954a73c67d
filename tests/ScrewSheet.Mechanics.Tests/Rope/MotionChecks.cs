using ScrewSheet.Mechanics.ViscoElastic;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;
using static ScrewSheet.Mechanics.Falls.BodyLoads;
using static ScrewSheet.Mechanics.Falls.FreeFalls;
using static ScrewSheet.Mechanics.Friction.TopPieces;
using static ScrewSheet.Mechanics.Hauling.TopRopes;
using static ScrewSheet.Mechanics.Tests.Rope.RopeUnits;
using static ScrewSheet.Mechanics.ViscoElastic.ViscoElasticRopes;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>Free fall, drag, body loads, top rope, hauling, visco-elastic falls.</summary>
internal static class MotionChecks
{
    private const string Falling = "Free fall";
    private const string Body = "Body loads";
    private const string Hauls = "Top rope, hauling, rappel";
    private const string Visco = "Visco-elastic rope";
    private const string OpenStax = "P. P. Urone, R. Hinrichs et al., College Physics (OpenStax), 2012, section 5.2, air 1.21 kg/m^3, g = 9.80";
    private const string Knots = "bergundsteigen, article on rope-joining knots";

    [CheckTable]
    public static IEnumerable<CheckRow> FallRows =>
    [
        CheckRow.Printed(Falling, "speed of the standard drop, 4.6 m", "9.5", "m/s", "encyclopedia article \"Fall factor\", UIAA test data", Standing.SecondHand, () => FallSpeed(M(4.6)).MetersPerSecond),
        CheckRow.Printed(Falling, "85 kg, 0.70 m^2, C 1.0 (Example 5.2)", "44", "m/s", OpenStax, Standing.Read, () => Terminal(85, 0.70, 1.0)),
        CheckRow.Printed(Falling, "75 kg, 0.18 m^2, C 0.70", "98", "m/s", OpenStax, Standing.Read, () => Terminal(75, 0.18, 0.70)),
        CheckRow.Printed(Falling, "75 kg, 0.18 m^2, C 0.70, in km/h (two digits)", "3.5e2", "km/h", OpenStax, Standing.Read, () => Terminal(75, 0.18, 0.70) * 3.6),
        CheckRow.Printed(Falling, "80.0 kg, 0.140 m^2, C 0.70", "115", "m/s", OpenStax, Standing.Read, () => Terminal(80, 0.140, 0.70)),
        CheckRow.Printed(Falling, "80.0 kg, 0.140 m^2, C 0.70, in km/h", "414", "km/h", OpenStax, Standing.Read, () => Terminal(80, 0.140, 0.70) * 3.6),
        CheckRow.Printed(Falling, "0.560 kg, 0.0144 m^2, C 1.0", "25.1", "m/s", OpenStax, Standing.Read, () => Terminal(0.560, 0.0144, 1.0)),
        CheckRow.Printed(Falling, "5.0 m without drag", "9.90", "m/s", OpenStax, Standing.Read, () => FallSpeed(M(5)).MetersPerSecond),
        CheckRow.Misprint(Falling, "85 kg, 0.70 m^2, C 1.0", "95", "m/s", "derived note set in a public repository", Standing.Read, () => Terminal(85, 0.70, 1.0)),
        CheckRow.Arithmetic(Falling, "4.6 m", 9.49848304, "m/s", () => FallSpeed(M(4.6)).MetersPerSecond),
        CheckRow.Arithmetic(Falling, "4.8 m", 9.70277486, "m/s", () => FallSpeed(M(4.8)).MetersPerSecond),
        CheckRow.Arithmetic(Falling, "5.0 m", 9.90285312, "m/s", () => FallSpeed(M(5.0)).MetersPerSecond),
        CheckRow.Arithmetic(Falling, "terminal 85 kg with g = 9.80", 44.3502215, "m/s", () => TerminalAt980(85, 0.70, 1.0)),
        CheckRow.Arithmetic(Falling, "terminal 75 kg with g = 9.80", 98.1930409, "m/s", () => TerminalAt980(75, 0.18, 0.70)),
        CheckRow.Arithmetic(Falling, "terminal 75 kg with g = 9.80, in km/h", 353.494947, "km/h", () => TerminalAt980(75, 0.18, 0.70) * 3.6),
        CheckRow.Arithmetic(Falling, "terminal 80 kg with g = 9.80", 114.991915, "m/s", () => TerminalAt980(80, 0.140, 0.70)),
        CheckRow.Arithmetic(Falling, "terminal 80 kg with g = 9.80, in km/h", 413.970894, "km/h", () => TerminalAt980(80, 0.140, 0.70) * 3.6),
        CheckRow.Arithmetic(Falling, "terminal 0.560 kg with g = 9.80", 25.0985203, "m/s", () => TerminalAt980(0.560, 0.0144, 1.0)),
        CheckRow.Arithmetic(Falling, "5.0 m with g = 9.80", 9.89949494, "m/s", () => FallSpeed(M(5 * 9.80 / G)).MetersPerSecond),
        .. Drag(10, 14.0047492, 13.6630018, 1.42808698, 1.43997472),
        .. Drag(50, 31.3155712, 27.7911496, 3.19329957, 3.32738697),
        CheckRow.Arithmetic(Falling, "energy, 80 kg from 5 m", 3922.66, "J", () => FallEnergy(Kg(80), M(5)).Joules),
        CheckRow.Arithmetic(Falling, "energy, 80 kg from 20 m", 15690.64, "J", () => FallEnergy(Kg(80), M(20)).Joules),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> BodyRows =>
    [
        CheckRow.Printed(Body, "1200 kgf on 80 kg", "15", "", "anchor-line designer's note on parachutist studies: 80 kg, up to 15 g, about 1200 kgf", Standing.Read, () => LoadInG(Force.FromKilogramsForce(1200), Kg(80))),
        CheckRow.Arithmetic(Body, "15 g on 80 kg", 11767.98, "N", () => 15 * NetStoppingForce(N(2 * 80 * G), Kg(80)).Newtons),
        CheckRow.Arithmetic(Body, "12 kN on 80 kg", 15.2957432, "", () => LoadInG(KN(12), Kg(80))),
        CheckRow.Arithmetic(Body, "12 kN on 100 kg", 12.2365946, "", () => LoadInG(KN(12), Kg(100))),
        CheckRow.Arithmetic(Body, "6 kN on 80 kg", 7.64787160, "", () => LoadInG(KN(6), Kg(80))),
        CheckRow.Arithmetic(Body, "6 kN on 100 kg", 6.11829728, "", () => LoadInG(KN(6), Kg(100))),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> HaulRows =>
    [
        .. Top(20, 0, 1569.064, 2615.10667), .. Top(20, 0.5, 1967.75745, 3279.59575), .. Top(10, 1, 2721.95773, 4536.59622),
        CheckRow.Arithmetic(Hauls, "lip 90 deg, friction 0.1", 670.489290, "N", () => LipHoldingForce(N(80 * G), 0.1, Deg(90)).Newtons),
        CheckRow.Arithmetic(Hauls, "lip 90 deg, friction 0.2", 573.024284, "N", () => LipHoldingForce(N(80 * G), 0.2, Deg(90)).Newtons),
        CheckRow.Arithmetic(Hauls, "lip 90 deg, friction 0.3", 489.727181, "N", () => LipHoldingForce(N(80 * G), 0.3, Deg(90)).Newtons),
        .. Haul(1, 3, 261.510667), .. Haul(0.9, 2.71, 289.495203), .. Haul(0.66, 2.0956, 374.371063), .. Haul(0.5, 1.75, 448.304),
        CheckRow.Printed(Hauls, "rough rappel of 86 kg in body weights (about three times)", "3", "", Knots, Standing.Read, () => LoadInG(KN(2.6), Kg(86))),
        CheckRow.Printed(Hauls, "rough rappel scaled to 120 kg", "3.6", "kN", Knots, Standing.Read, () => RappelPeak(Kg(120)).Kilonewtons),
        CheckRow.Printed(Hauls, "rough rappel of 86 kg", "2.6", "kN", Knots, Standing.Read, () => RappelPeak(Kg(86)).Kilonewtons),
        CheckRow.Printed(Hauls, "smooth rappel of 120 kg: the weight", "1.2", "kN", Knots, Standing.Read, () => HaulingForce(Kg(120), 1).Kilonewtons),
        CheckRow.Arithmetic(Hauls, "2.6 kN over the weight of 86 kg", 3.08286297, "", () => LoadInG(KN(2.6), Kg(86))),
        CheckRow.Arithmetic(Hauls, "2.6 kN times 120/86", 3.62790698, "kN", () => RappelPeak(Kg(120)).Kilonewtons),
        CheckRow.Arithmetic(Hauls, "weight of 120 kg", 1.176798, "kN", () => HaulingForce(Kg(120), 1).Kilonewtons),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> ViscoRows =>
    [
        .. Visc("elastic 20 kN, 4.6 m on 2.6 m", () => KelvinVoigtFall(Kg(80), KN(20), S(0), M(4.6), M(2.6)), 8276.94260, 0.170888422, 1.07600254, 0.170888422),
        .. Visc("Kelvin-Voigt 200 N s, 4.6 m on 2.6 m", () => Voigt(200, 4.6, 2.6), 7699.61297, 0.15611242, 0.996631227, 0.166128477),
        .. Visc("Kelvin-Voigt 500 N s, 4.6 m on 2.6 m", () => Voigt(500, 4.6, 2.6), 7077.70047, 0.134364769, 0.895642227, 0.159618219),
        .. Visc("Kelvin-Voigt 500 N s, 10 m on 20 m", () => Voigt(500, 10, 20), 4509.05807, 0.462954424, 4.49451862, 0.487987027),
        .. Visc("Maxwell 1.0 s, 4.6 m on 2.6 m", () => MaxwellFall(Kg(80), KN(20), S(1), M(4.6), M(2.6)), 7643.65517, 0.165945467, 1.10481413, 0.177560016),
        .. Visc("Maxwell 0.5 s, 4.6 m on 2.6 m", () => MaxwellFall(Kg(80), KN(20), S(0.5), M(4.6), M(2.6)), 7092.32323, 0.161370927, 1.13578933, 0.184965412),
        .. Visc("standard solid, 4.6 m on 2.6 m", () => Solid(0.1, 4.6, 2.6), 6653.81824, 0.146190346, 1.10574098, 0.185726920),
        .. Visc("standard solid, 46 m on 26 m", () => Solid(0.1, 46, 26), 5537.78306, 0.572017964, 13.0520499, 0.703695735),
        CheckRow.Arithmetic(Visco, "Kelvin-Voigt 200 N s: start force", 730.652541, "N", () => Voigt(200, 4.6, 2.6).StartForce.Newtons),
        CheckRow.Arithmetic(Visco, "Kelvin-Voigt 500 N s: start force", 1826.63135, "N", () => Voigt(500, 4.6, 2.6).StartForce.Newtons),
        CheckRow.Arithmetic(Visco, "standard solid: force at greatest stretch", 6242.52091, "N", () => Solid(0.1, 4.6, 2.6).ForceAtMaxStretch.Newtons),
        CheckRow.Arithmetic(Visco, "standard solid: energy in", 4476.33638, "J", () => Solid(0.1, 4.6, 2.6).FallEnergy.Joules),
        CheckRow.Arithmetic(Visco, "standard solid: energy stored", 2718.87720, "J", () => Solid(0.1, 4.6, 2.6).StoredEnergy.Joules),
        CheckRow.Arithmetic(Visco, "standard solid: dissipated", 0.392611062, "", () => Solid(0.1, 4.6, 2.6).DissipatedFraction),
        CheckRow.Arithmetic(Visco, "standard solid, dashpot towards none: elastic with K1", 6111.43105, "N", () => Solid(1e-6, 4.6, 2.6).PeakForce.Newtons, 1e-4),
        CheckRow.Arithmetic(Visco, "standard solid, dashpot towards rigid: elastic with K1 + K2", 8984.55406, "N", () => Solid(1e6, 4.6, 2.6).PeakForce.Newtons),
        CheckRow.Arithmetic(Visco, "Maxwell, relaxation towards never: elastic", 8276.94260, "N", () => MaxwellFall(Kg(80), KN(20), S(1e7), M(4.6), M(2.6)).PeakForce.Newtons),
    ];

    private static double Terminal(double kilograms, double squareMetres, double drag) =>
        TerminalSpeed(Kg(kilograms), Density.FromKilogramsPerCubicMeter(1.21), Area.FromSquareMeters(squareMetres), drag).MetersPerSecond;

    private static double TerminalAt980(double kilograms, double squareMetres, double drag) => Terminal(kilograms * 9.80 / G, squareMetres, drag);

    private static IEnumerable<CheckRow> Drag(double h, double free, double slowed, double freeTime, double slowedTime)
    {
        Speed terminal() => TerminalSpeed(Kg(85), Density.FromKilogramsPerCubicMeter(1.21), Area.FromSquareMeters(0.70), 1.0);
        return
        [
            CheckRow.Arithmetic(Falling, $"{h} m: speed without drag", free, "m/s", () => FallSpeed(M(h)).MetersPerSecond),
            CheckRow.Arithmetic(Falling, $"{h} m: speed with drag, 85 kg", slowed, "m/s", () => FallSpeedWithDrag(M(h), terminal()).MetersPerSecond),
            CheckRow.Arithmetic(Falling, $"{h} m: time without drag", freeTime, "s", () => FallTime(M(h)).Seconds),
            CheckRow.Arithmetic(Falling, $"{h} m: time with drag, 85 kg", slowedTime, "s", () => FallTimeWithDrag(M(h), terminal()).Seconds),
        ];
    }

    private static IEnumerable<CheckRow> Top(double length, double slack, double climber, double anchor) =>
    [
        CheckRow.Arithmetic(Hauls, $"top rope {length} m, slack {slack} m: climber", climber, "N", () => TopRopeForce(Kg(80), KN(20), M(length), M(slack)).Newtons),
        CheckRow.Arithmetic(Hauls, $"top rope {length} m, slack {slack} m: anchor", anchor, "N", () => TopPieceLoad(TopRopeForce(Kg(80), KN(20), M(length), M(slack)), 1.5).Newtons),
    ];

    private static IEnumerable<CheckRow> Haul(double efficiency, double ratio, double hand) =>
    [
        CheckRow.Arithmetic(Hauls, $"3:1 with efficiency {efficiency}", ratio, "", () => HaulRatioThreeToOne(efficiency)),
        CheckRow.Arithmetic(Hauls, $"hand force for 80 kg, 3:1 with efficiency {efficiency}", hand, "N", () => HaulingForce(Kg(80), HaulRatioThreeToOne(efficiency)).Newtons),
    ];

    private static IEnumerable<CheckRow> Visc(string what, Func<ViscoElasticFall> fall, double force, double forceTime, double stretch, double stretchTime) =>
    [
        CheckRow.Arithmetic(Visco, what + ": peak", force, "N", () => fall().PeakForce.Newtons, 1e-8),
        CheckRow.Arithmetic(Visco, what + ": time of peak", forceTime, "s", () => fall().PeakTime.Seconds, 1e-7),
        CheckRow.Arithmetic(Visco, what + ": stretch", stretch, "m", () => fall().MaxStretch.Meters, 1e-8),
        CheckRow.Arithmetic(Visco, what + ": time of stretch", stretchTime, "s", () => fall().StretchTime.Seconds, 1e-8),
    ];

    private static ViscoElasticFall Voigt(double c, double h, double length) =>
        KelvinVoigtFall(Kg(80), KN(20), RelaxationTime(Quantities.Quantity.FromSi(c, Quantities.Dimension.Of(1, 1, -1)), KN(20)), M(h), M(length));

    private static ViscoElasticFall Solid(double seconds, double h, double length) => StandardSolidFall(Kg(80), KN(10), KN(14), S(seconds), M(h), M(length));
}
