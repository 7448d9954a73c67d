using System.Globalization;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.TestKit;
using UnitsNet;

namespace ScrewSheet.Mechanics.Tests;

internal static class MaterialChecks
{
    private const string Group = "Materials";

    [CheckTable]
    public static IEnumerable<CheckRow> Allowables =>
        new (Material Material, double Yield, double Ultimate, double? Modulus, double? Density)[]
        {
            (Materials.Steel4130Normalised, 517.1068, 655.0019, 199.9480, 7861.093),
            (Materials.Steel4130Treated125, 772.2128, 861.8447, 199.9480, 7861.093),
            (Materials.Steel4130Treated150, 910.1080, 1034.214, 199.9480, 7861.093),
            (Materials.Aluminium6061T6, 241.3165, 289.5798, 68.94757, 2712.631),
            (Materials.Aluminium7075T6, 461.9487, 530.8963, 71.70548, 2795.670),
        }.SelectMany(row => new[]
        {
            CheckRow.Arithmetic(Group, row.Material.Name + ", yield", row.Yield, "MPa", () => row.Material.YieldStrength.Megapascals),
            CheckRow.Arithmetic(Group, row.Material.Name + ", ultimate", row.Ultimate, "MPa", () => row.Material.UltimateStrength.Megapascals),
            CheckRow.Arithmetic(Group, row.Material.Name + ", modulus", row.Modulus!.Value, "GPa", () => row.Material.ElasticModulus.Gigapascals),
            CheckRow.Arithmetic(Group, row.Material.Name + ", density", row.Density!.Value, "kg/m³", () => row.Material.Density.KilogramsPerCubicMeter),
        });

    [CheckTable]
    public static IEnumerable<CheckRow> InPrintedUnits =>
        new (Material Material, double Yield, double Ultimate, double Shear, double Modulus, double Density)[]
        {
            (Materials.Steel4130Normalised, 75, 95, 57, 29.0, 0.284), (Materials.Steel4130Treated125, 112, 125, 75, 29.0, 0.284), (Materials.Steel4130Treated150, 132, 150, 90, 29.0, 0.284),
            (Materials.Stainless17_4H1025, 145, 155, 93, 28.5, 0.282), (Materials.Aluminium6061T6, 35, 42, 25, 10.0, 0.098), (Materials.Aluminium7075T6, 67, 77, 46, 10.4, 0.101),
            (Materials.Titanium6Al4V, 120, 130, 78, 16.0, 0.160),
        }.SelectMany(row => new[]
        {
            Printed(row.Material, "yield", row.Yield, "F0", "ksi", m => m.YieldStrength.KilopoundsForcePerSquareInch),
            Printed(row.Material, "ultimate", row.Ultimate, "F0", "ksi", m => m.UltimateStrength.KilopoundsForcePerSquareInch),
            Printed(row.Material, "shear", row.Shear, "F0", "ksi", m => m.ShearStrength.KilopoundsForcePerSquareInch),
            Printed(row.Material, "modulus", row.Modulus, "F1", "Msi", m => m.ElasticModulus.KilopoundsForcePerSquareInch / 1000),
            Printed(row.Material, "density", row.Density, "F3", "lb/in³", m => m.Density.PoundsPerCubicInch),
        });

    [CheckTable]
    public static IEnumerable<CheckRow> Cord =>
        new (double Millimetres, string Kilonewtons)[] { (4, "3.2"), (5, "5.0"), (6, "7.2"), (7, "9.8"), (8, "12.8") }
            .Select(row => CheckRow.Printed(Group, $"CordRating, {row.Millimetres} mm", row.Kilonewtons, "kN", "EN 564, accessory cord", Standing.SecondHand,
                () => Cords.CordRating(Length.FromMillimeters(row.Millimetres)).Kilonewtons));

    private static CheckRow Printed(Material material, string what, double value, string format, string unit, Func<Material, double> ours) =>
        CheckRow.Printed(Group, $"{material.Name}, {what} as printed", value.ToString(format, CultureInfo.InvariantCulture), unit,
            "MMPDS-01 / MIL-HDBK-5, minimum design allowables, as transcribed", Standing.SecondHand, () => ours(material));
}
