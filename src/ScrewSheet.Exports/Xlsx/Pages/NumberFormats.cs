using System.Globalization;
using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>Number formats of ECMA-376 (Part 1, 18.8.31) that show a number with its unit.</summary>
internal static class NumberFormats
{
    /// <summary>A check, held as 1 or 0.</summary>
    public const string Check = "[=1]\"holds\";[=0]\"FAILS\";General";

    /// <summary>As many digits as the number has; for what a reader types over.</summary>
    public const string General = "General";

    private const int Most = 15;

    /// <summary>For a given whose cell asks for no digits: all it is typed with.</summary>
    public static string Whole(CellUnit unit, string shown) => unit.IsPercent ? Decimals(Decimals(shown)) + Suffix(unit) : General + Suffix(unit);

    /// <summary>
    /// For a number shown as that text. The standard rounds to decimals and to the nearest: significant digits become the decimals they are now, and a number that is to be
    /// rounded down or up shows two more digits, so that it is not shown on the wrong side.
    /// </summary>
    /// <param name="unit">The cell's unit.</param>
    /// <param name="shown">The numeral as shown elsewhere.</param>
    /// <param name="digits">What the cell asks for, or null.</param>
    public static string For(CellUnit unit, string shown, Digits? digits)
    {
        int more = digits?.Rounding is Rounding.Down or Rounding.Up ? 2 : 0;
        int exponent = shown.IndexOf('e', StringComparison.OrdinalIgnoreCase);
        if (exponent >= 0) return Decimals(Math.Max(Decimals(shown[..exponent]), 3) + more) + "E+00" + Suffix(unit);
        int decimals = digits is null ? Math.Max(Decimals(shown), NumberText.DefaultDigits - Whole(shown)) : Decimals(shown);
        return Decimals(decimals + more) + Suffix(unit);
    }

    private static string Decimals(int count) => count <= 0 ? "0" : "0." + new string('0', Math.Min(count, Most));

    private static int Decimals(string numeral)
    {
        int point = numeral.IndexOf('.', StringComparison.Ordinal);
        return point < 0 ? 0 : numeral.Length - point - 1;
    }

    /// <summary>How many digits stand before the point, from the first that counts; 0 and less for 0.05, negative zeros counted.</summary>
    private static int Whole(string numeral)
    {
        if (!double.TryParse(numeral, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) || value == 0) return NumberText.DefaultDigits;
        return (int)Math.Floor(Math.Log10(Math.Abs(value))) + 1;
    }

    private static string Suffix(CellUnit unit) => unit.IsPercent ? "\\ %" : unit.Shown.Symbol.Length == 0 ? "" : $"\" {unit.Shown.Symbol}\"";
}
