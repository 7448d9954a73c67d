using ScrewSheet.Mechanics.Belay;
using ScrewSheet.Mechanics.Friction;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using static ScrewSheet.Mechanics.Belay.DynamicBelays;
using static ScrewSheet.Mechanics.Tests.Rope.RopeUnits;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>Slipping belay, tethers, absorbers, clearance.</summary>
internal static class BelayChecks
{
    private const string Group = "Dynamic belay";
    private const string Tether = "Tethers";
    private const string Absorber = "Energy absorbers";

    [CheckTable]
    public static IEnumerable<CheckRow> Rows =>
    [
        .. Row("20 kN, 10 m on 20 m, slips at 3000 N", Fall(20000, 10, 20, 3000), 3000, 3.0, 2.57233054, 15.5723305),
        .. Row("20 kN, 10 m on 15 m, slips at 3000 N", Fall(20000, 10, 15, 3000), 3000, 2.25, 2.81453715, 15.0645372),
        .. Row("20 kN, 10 m on 15 m, slips at 2500 N, ratio 1.5", Third, 3750, 2.8125, 1.61134052, 14.4238405),
        .. Row("24.08 kN, 4 m on 2 m, slips at 3000 N", Fall(24080.86626, 4, 2, 3000), 3000, 0.249160472, 1.33599838, 5.58515885),
        .. Row("20 kN, 10 m on 20 m, slips at 6000 N only", Fall(20000, 10, 20, 6000), 4822.61700, 4.82261700, 0, 14.8226170),
        CheckRow.Arithmetic(Group, "third row: energy of the fall", 11315.9645, "J", () => Third().FallEnergy.Joules),
        CheckRow.Arithmetic(Group, "third row: rope and friction while stretching", 5273.4375, "J", () => Third().RopeEnergy.Joules),
        CheckRow.Arithmetic(Group, "third row: slip", 6042.52695, "J", () => (Third().DeviceEnergy + Third().PiecesEnergy).Joules),
        CheckRow.Arithmetic(Group, "third row: device", 4028.35130, "J", () => Third().DeviceEnergy.Joules),
        CheckRow.Arithmetic(Group, "third row: carabiner", 2014.17565, "J", () => Third().PiecesEnergy.Joules),
        CheckRow.Arithmetic(Group, "third row: top piece", 6250, "N", () => TopPieces.TopPieceLoad(Third().PeakForce, 1.5).Newtons),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> TetherRows =>
    [
        CheckRow.Arithmetic(Tether, "dynamic rope 2 m with anchor and body: stiffness", 9549.25991, "N/m", () => Tethers.SeriesSprings.TetherStiffness(N(24080.86626), M(2), KNm(200), KNm(60)).NewtonsPerMeter),
        CheckRow.Arithmetic(Tether, "dynamic rope 2 m with anchor and body: force", 6314.65771, "N", () => TetherForce(24080.86626, 2, 200, 60)),
        CheckRow.Arithmetic(Tether, "dynamic rope 2 m alone", 6981.29816, "N", () => TetherForce(24080.86626, 2, 1e12, 1e12)),
        CheckRow.Arithmetic(Tether, "steel-like tether 1 m alone", 56809.0221, "N", () => TetherForce(2e6, 1, 1e12, 1e12)),
        CheckRow.Arithmetic(Tether, "steel-like tether 1 m with anchor and body", 9234.40375, "N", () => TetherForce(2e6, 1, 200, 60)),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> AbsorberRows =>
    [
        Tear(100, 4, 6, 0.781509901), Tear(100, 4, 4.5, 1.11460262), Tear(100, 4, 4, 1.29918012), Tear(120, 5, 6, 1.21993439), Tear(40, 5, 3.5, 0.631112573), Tear(80, 5, 6, 0.752120423),
        CheckRow.Arithmetic(Absorber, "mean force over 1.75 m, 100 kg from 4 m", 3222.185, "N", () => Tethers.EnergyAbsorbers.AbsorberMeanForce(Kg(100), M(4), M(1.75)).Newtons),
        CheckRow.Printed(Absorber, "clearance: lanyard 2, torn absorber 1.75, person 2, margin 1", "6.75", "m", "published clearance example, anchor-design booklet", Standing.Read, () => Tethers.EnergyAbsorbers.AbsorberClearance(M(2), M(1.75), M(2), M(1)).Meters),
    ];

    private static Func<BelayedFall> Fall(double k, double h, double length, double limit) => () => DynamicBelay(Kg(80), N(k), M(h), M(length), N(limit));

    private static BelayedFall Third() => DynamicBelay(Kg(80), N(20000), M(10), M(15), N(2500), 1.5);

    private static IEnumerable<CheckRow> Row(string what, Func<BelayedFall> fall, double peak, double stretch, double slip, double drop) =>
    [
        CheckRow.Arithmetic(Group, what + ": peak", peak, "N", () => fall().PeakForce.Newtons),
        CheckRow.Arithmetic(Group, what + ": stretch", stretch, "m", () => fall().Stretch.Meters),
        CheckRow.Arithmetic(Group, what + ": slip", slip, "m", () => fall().Slip.Meters),
        CheckRow.Arithmetic(Group, what + ": total drop", drop, "m", () => fall().TotalDrop.Meters),
    ];

    private static double TetherForce(double modulus, double length, double anchor, double body) =>
        Tethers.SeriesSprings.TetherForce(Kg(80), N(modulus), M(length), M(length), KNm(anchor), KNm(body)).Newtons;

    private static CheckRow Tear(double kilograms, double metres, double kilonewtons, double tear) =>
        CheckRow.Arithmetic(Absorber, $"tear length, {kilograms} kg, {metres} m, {kilonewtons} kN", tear, "m", () => Tethers.EnergyAbsorbers.AbsorberTear(Kg(kilograms), M(metres), KN(kilonewtons)).Meters);
}
