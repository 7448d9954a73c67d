using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.TestKit;

namespace ScrewSheet.Quantities.Tests.Units;

/// <summary>Factors against what standards bodies print.</summary>
internal static class UnitFactorChecks
{
    private const string Group = "Units";
    private const string Sp811 = "Thompson and Taylor, NIST Special Publication 811 (2008), Appendix B, factors";
    private const string Brochure = "BIPM, The International System of Units, 9th edition (2019)";

    [CheckTable]
    public static IEnumerable<CheckRow> Printed =>
    [
        Row("lbf", "4.448222", Sp811, Standing.SecondHand),
        Row("kip", "4448.222", Sp811, Standing.SecondHand),
        Row("kgf", "9.80665", Sp811 + ", exact", Standing.SecondHand),
        Row("psi", "6894.757", Sp811, Standing.FromMemory),
        Row("ksi", "6894757", Sp811, Standing.FromMemory),
        Row("lb", "0.4535924", Sp811, Standing.SecondHand),
        Row("in³", "1.6387064e-5", Sp811 + ", exact in a footnote", Standing.SecondHand),
        Row("ft·lbf", "1.355818", Sp811, Standing.FromMemory),
        Row("in·lbf", "0.1129848", Sp811, Standing.FromMemory),
        Row("lbf/in", "175.1268", Sp811, Standing.FromMemory),
        Row("lbf/ft", "14.59390", Sp811, Standing.FromMemory),
        Row("lbf/ft²", "47.88026", Sp811, Standing.FromMemory),
        Row("lb/ft³", "16.01846", Sp811, Standing.FromMemory),
        Row("min", "60", Brochure + ", Table 8", Standing.FromMemory),
        Row("h", "3600", Brochure + ", Table 8", Standing.FromMemory),
        Row("t", "1000", Brochure + ", Table 8", Standing.FromMemory),
        Row("°", "0.0174532925199433", Brochure + ", Table 8: pi/180", Standing.FromMemory),
        CheckRow.Printed(Group, "0 °C in K", "273.15", "K", Brochure + ", section 2.3.1", Standing.FromMemory, () => Si("°C", 0)),
        CheckRow.Printed(Group, "1 kg·m/s² in N", "1", "N", Brochure + ", Table 4", Standing.FromMemory, () => Si("kg·m/s²", 1)),
        CheckRow.Printed(Group, "1 gn", "9.80665", "m/s²", Sp811 + ", exact", Standing.SecondHand, () => Si("gn", 1)),
    ];

    [CheckTable]
    public static IEnumerable<CheckRow> Trade =>
    [
        Pull(1, "101.971621", "224.808943"), Pull(6, "611.829728", "1348.85366"), Pull(12, "1223.65946", "2697.70732"),
        Pull(22, "2243.37567", "4945.79675"), Pull(25, "2549.29053", "5620.22358"),
        Pull(1, "101.971621", "224.808943", "lbf"), Pull(6, "611.829728", "1348.85366", "lbf"), Pull(12, "1223.65946", "2697.70732", "lbf"),
        Pull(22, "2243.37567", "4945.79675", "lbf"), Pull(25, "2549.29053", "5620.22358", "lbf"),
        Derived("1800 lbf in kN", "8.00679891", "kN", () => Si("lbf", 1800) / 1000),
        Derived("900 lbf in kN", "4.00339945", "kN", () => Si("lbf", 900) / 1000),
        Derived("5000 lbf in kN", "22.2411081", "kN", () => Si("lbf", 5000) / 1000),
        Derived("weight of 80 kg", "784.532", "N", () => Si("gn", 80)),
        Derived("200 lb in kg", "90.718474", "kg", () => Si("lb", 200)),
        Derived("weight of 200 lb", "889.644323", "N", () => Si("lb", 200) * Si("gn", 1)),
    ];

    private static CheckRow Pull(double kilonewtons, string kilopond, string poundForce, string unit = "kgf") =>
        Derived($"{kilonewtons} kN in {unit}", unit == "kgf" ? kilopond : poundForce, unit, () => UnitTable.Get(unit).FromSi(Si("kN", kilonewtons)));

    private static CheckRow Derived(string what, string published, string unit, Func<double> ours) =>
        CheckRow.Printed(Group, what, published, unit, "arithmetic from the exact definitions of pound, foot and standard gravity", Standing.Derived, ours);

    private static CheckRow Row(string symbol, string published, string source, Standing standing) =>
        CheckRow.Printed(Group, $"1 {symbol} in coherent SI", published, Read(symbol).Dimension.ToString(), source, standing, () => Si(symbol, 1));

    private static double Si(string symbol, double value) => Read(symbol).ToSi(value);

    private static Unit Read(string text) => UnitText.TryParse(text, out Unit? unit, out string? problem) ? unit : throw new InvalidOperationException(problem);
}
