using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;
using Quantity = ScrewSheet.Quantities.Quantity;

namespace ScrewSheet.Mechanics.Tests;

internal static class IceChecks
{
    private const string Group = "Ice";
    private const string Petrovic = "Petrovic, J. Mater. Sci. 38, 2003 (review)";
    private const string Cone = "Surface cone (analogue)";

    private static Length Mm(double millimetres) => Length.FromMillimeters(millimetres);

    private static Pressure MPa(double megapascals) => Pressure.FromMegapascals(megapascals);

    private static ElasticAggregate Voigt => ElasticAggregates.VoigtAverage(IceValues.C11, IceValues.C12, IceValues.C13, IceValues.C33, IceValues.C44);

    private static ElasticAggregate Reuss => ElasticAggregates.ReussAverage(IceValues.C11, IceValues.C12, IceValues.C13, IceValues.C33, IceValues.C44);

    private static ElasticAggregate Hill => ElasticAggregates.HillAverage(IceValues.C11, IceValues.C12, IceValues.C13, IceValues.C33, IceValues.C44);

    [CheckTable]
    public static IEnumerable<CheckRow> Elastic =>
    [
        CheckRow.Arithmetic(Group, "VoigtAverage K", 8.899111, "GPa", () => Voigt.BulkModulus.Gigapascals),
        CheckRow.Arithmetic(Group, "VoigtAverage G", 3.507367, "GPa", () => Voigt.ShearModulus.Gigapascals),
        CheckRow.Arithmetic(Group, "VoigtAverage E", 9.300275, "GPa", () => Voigt.ElasticModulus.Gigapascals),
        CheckRow.Arithmetic(Group, "VoigtAverage ν", 0.3258202, "", () => Voigt.PoissonRatio),
        CheckRow.Arithmetic(Group, "ReussAverage K", 8.898669, "GPa", () => Reuss.BulkModulus.Gigapascals),
        CheckRow.Arithmetic(Group, "ReussAverage G", 3.419304, "GPa", () => Reuss.ShearModulus.Gigapascals),
        CheckRow.Arithmetic(Group, "ReussAverage E", 9.093224, "GPa", () => Reuss.ElasticModulus.Gigapascals),
        CheckRow.Arithmetic(Group, "ReussAverage ν", 0.3296894, "", () => Reuss.PoissonRatio),
        CheckRow.Arithmetic(Group, "HillAverage E", 9.196900, "GPa", () => Hill.ElasticModulus.Gigapascals),
        CheckRow.Arithmetic(Group, "HillAverage ν", 0.3277519, "", () => Hill.PoissonRatio),
        CheckRow.Printed(Group, "HillAverage E against the quoted isotropic value, within 1.5 %", "9.33", "GPa", "Gammon and others, J. Glaciol. 29, 1983, as usually quoted", Standing.FromMemory,
            () => Hill.ElasticModulus.Gigapascals, units: 14),
        CheckRow.Arithmetic(Group, "IceElasticModulus at 0 °C", 9.123017, "GPa", () => IceProperties.IceElasticModulus(Temperature.FromDegreesCelsius(0)).Gigapascals),
        CheckRow.Arithmetic(Group, "IceElasticModulus at −10 °C", 9.252381, "GPa", () => IceProperties.IceElasticModulus(Temperature.FromDegreesCelsius(-10)).Gigapascals),
        CheckRow.Arithmetic(Group, "IceElasticModulus at −20 °C", 9.381746, "GPa", () => IceProperties.IceElasticModulus(Temperature.FromDegreesCelsius(-20)).Gigapascals),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> StrengthAndMelting =>
    [
        CheckRow.Arithmetic(Group, "IceSizeEffect, 1000 times the volume", 0.2511886, "", () => IceProperties.IceSizeEffect(Volume.FromLiters(1000), Volume.FromLiters(1), 5)),
        CheckRow.Arithmetic(Group, "IceSizeEffect, 10 times the volume", 0.6309573, "", () => IceProperties.IceSizeEffect(Volume.FromLiters(10), Volume.FromLiters(1), 5)),
        CheckRow.Arithmetic(Group, "IceCrackStartStress, 1 mm", 1.232456, "MPa", () => IceProperties.IceCrackStartStress(Mm(1)).Megapascals),
        CheckRow.Arithmetic(Group, "IceCrackGrowthStress, 1 mm", 1.391402, "MPa", () => IceProperties.IceCrackGrowthStress(Mm(1)).Megapascals),
        CheckRow.Arithmetic(Group, "IceCrackStartStress, 10 mm", 0.8, "MPa", () => IceProperties.IceCrackStartStress(Mm(10)).Megapascals),
        CheckRow.Arithmetic(Group, "IceCrackGrowthStress, 10 mm", 0.44, "MPa", () => IceProperties.IceCrackGrowthStress(Mm(10)).Megapascals),
        CheckRow.Arithmetic(Group, "IceMeltingDepression under 10 MPa", 0.742, "K", () => IceProperties.IceMeltingDepression(MPa(10)).Kelvins),
        CheckRow.Printed(Group, "IceCreepParameter at −10 °C", "3.5e-25", "1/(s·Pa³)", "Cuffey and Paterson, 2010", Standing.FromMemory, () => Creep(-10)),
        CheckRow.Printed(Group, "IceCreepParameter at −5 °C", "9.3e-25", "1/(s·Pa³)", "Cuffey and Paterson, 2010", Standing.FromMemory, () => Creep(-5)),
        CheckRow.Printed(Group, "IceCreepParameter at 0 °C", "2.4e-24", "1/(s·Pa³)", "Cuffey and Paterson, 2010", Standing.FromMemory, () => Creep(0)),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Measured =>
    [
        CheckRow.Printed(Group, "Tensile strength, lower end", "0.7", "MPa", Petrovic, Standing.Read, () => IceValues.TensileStrengthLow.Megapascals),
        CheckRow.Printed(Group, "Tensile strength, upper end", "3.1", "MPa", Petrovic, Standing.Read, () => IceValues.TensileStrengthHigh.Megapascals),
        CheckRow.Printed(Group, "Compressive strength, lower end", "5", "MPa", Petrovic, Standing.Read, () => IceValues.CompressiveStrengthLow.Megapascals),
        CheckRow.Printed(Group, "Compressive strength, upper end", "25", "MPa", Petrovic, Standing.Read, () => IceValues.CompressiveStrengthHigh.Megapascals),
        CheckRow.Printed(Group, "Fracture toughness, lower end", "50", "kPa·m^0.5", Petrovic, Standing.Read, () => IceValues.FractureToughnessLow.Si / 1000),
        CheckRow.Printed(Group, "Fracture toughness, upper end", "150", "kPa·m^0.5", Petrovic, Standing.Read, () => IceValues.FractureToughnessHigh.Si / 1000),
        CheckRow.Printed(Group, "Shear strength, mean", "600", "kPa", "Frederking, Svec and Timco, 1988", Standing.Read, () => IceValues.ShearStrengthMean.Kilopascals),
        CheckRow.Printed(Group, "Shear strength, stress concentrations reduced", "1100", "kPa", "Frederking, Svec and Timco, 1988", Standing.Read, () => IceValues.ShearStrengthSmooth.Kilopascals),
        CheckRow.Printed(Group, "Shear modulus against that of HillAverage, within 2 %", "3.52", "GPa", "Gammon and others, J. Glaciol. 29, 1983, as usually quoted", Standing.FromMemory, () => Hill.ShearModulus.Gigapascals, units: 7),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> IceCones =>
        new (double Depth, double Full, double Half, double K50, double K100, double K150)[]
        {
            (30, 2.827433, 1.413717, 0.5455960, 1.091192, 1.636788), (40, 5.026548, 2.513274, 0.8400000, 1.680000, 2.520000), (50, 7.853982, 3.926991, 1.173936, 2.347871, 3.521807),
        }.SelectMany(row => new[]
        {
            CheckRow.Arithmetic(Cone, $"IceConeAnalogue, 1 MPa, {row.Depth} mm", row.Full, "kN", () => ConeBreakout.IceConeAnalogue(MPa(1), Mm(row.Depth)).Kilonewtons),
            CheckRow.Arithmetic(Cone, $"IceHalfConeAnalogue, 1 MPa, {row.Depth} mm", row.Half, "kN", () => ConeBreakout.IceHalfConeAnalogue(MPa(1), Mm(row.Depth)).Kilonewtons),
            CheckRow.Arithmetic(Cone, $"IceFractureAnalogue, 50 kPa·m^0.5, {row.Depth} mm", row.K50, "kN", () => Fracture(50, row.Depth)),
            CheckRow.Arithmetic(Cone, $"IceFractureAnalogue, 100 kPa·m^0.5, {row.Depth} mm", row.K100, "kN", () => Fracture(100, row.Depth)),
            CheckRow.Arithmetic(Cone, $"IceFractureAnalogue, 150 kPa·m^0.5, {row.Depth} mm", row.K150, "kN", () => Fracture(150, row.Depth)),
        });

    [CheckTable]
    public static IEnumerable<CheckRow> Concrete =>
    [
        CheckRow.Arithmetic(Cone, "ConcreteCone, ACI US, 4 in, 4000 psi, 24", 12143.15, "lbf", () => Aci(ConeCoefficients.AciCastInUs).PoundsForce),
        CheckRow.Arithmetic(Cone, "ConcreteCone, ACI US, in kN", 54.01541, "kN", () => Aci(ConeCoefficients.AciCastInUs).Kilonewtons),
        CheckRow.Arithmetic(Cone, "ConcreteCone, ACI SI, 10", 53.78112, "kN", () => Aci(ConeCoefficients.AciCastIn).Kilonewtons),
        .. new (double Depth, double Force)[] { (40, 8.711556), (50, 12.17477), (60, 16.00415), (70, 20.16753), (80, 24.64000), (100, 34.43545), (125, 48.12500) }
            .Select(row => CheckRow.Arithmetic(Cone, $"ConcreteCone, EN, 20 MPa, 7.7, {row.Depth} mm", row.Force, "kN", () => ConcreteCones.ConcreteCone(ConeCoefficients.EnCracked, MPa(20), Mm(row.Depth)).Kilonewtons)),
        CheckRow.Arithmetic(Cone, "ConcreteCone, EN headed, cracked, 25 MPa, 200 mm", 125.8650, "kN", () => ConcreteCones.ConcreteCone(ConeCoefficients.EnHeadedCracked, MPa(25), Mm(200)).Kilonewtons),
        CheckRow.Arithmetic(Cone, "ConcreteCone, EN headed, uncracked, 25 MPa, 200 mm", 179.6051, "kN", () => ConcreteCones.ConcreteCone(ConeCoefficients.EnHeadedUncracked, MPa(25), Mm(200)).Kilonewtons),
        CheckRow.Arithmetic(Cone, "ConeEccentricityFactor, e 10, h 50", 0.8823529, "", () => ConcreteCones.ConeEccentricityFactor(Mm(10), Mm(50))),
        CheckRow.Arithmetic(Cone, "ConeEdgeFactor, c 60, h 50", 0.94, "", () => ConcreteCones.ConeEdgeFactor(Mm(60), Mm(50))),
    ];

    private static double Creep(double celsius) => IceProperties.IceCreepParameter(Temperature.FromDegreesCelsius(celsius)).Si;

    private static double Fracture(double kilo, double depth) => ConeBreakout.IceFractureAnalogue(Quantity.FromSi(kilo * 1000, IceValues.FractureToughnessLow.Dimension), Mm(depth)).Kilonewtons;

    private static Force Aci(Quantity coefficient) => ConcreteCones.ConcreteCone(coefficient, Pressure.FromPoundsForcePerSquareInch(4000), Length.FromInches(4));
}
