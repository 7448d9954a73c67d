using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities.Formatting;

/// <summary>Values as they are shown: a numeral and a unit.</summary>
public static class QuantityText
{
    /// <summary>The numeral and the symbol, the symbol empty for a pure number. A value too large for its unit is shown in the coherent SI unit.</summary>
    /// <param name="si">The value in coherent SI; finite.</param>
    /// <param name="unit">The unit to show it in.</param>
    /// <param name="digits">How many digits, or null for the default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static (string Number, string Unit) Format(double si, Unit unit, Digits? digits)
    {
        ArgumentNullException.ThrowIfNull(unit);
        double shown = InUnit(si, unit);
        return double.IsFinite(shown)
            ? (NumberText.Format(shown, digits), unit.Symbol)
            : (NumberText.Format(si, digits), DisplayUnits.Coherent(unit.Dimension).Symbol);
    }

    /// <summary>Numeral, blank and symbol; the numeral alone for a pure number.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static string Write(double si, Unit unit, Digits? digits)
    {
        (string number, string symbol) = Format(si, unit, digits);
        return symbol.Length == 0 ? number : $"{number} {symbol}";
    }

    /// <summary>A difference of two values: without the zero of a scale, so that one in °C is in K.</summary>
    /// <param name="si">The difference in coherent SI; finite.</param>
    /// <param name="unit">The unit the values are shown in.</param>
    /// <param name="digits">How many digits.</param>
    /// <exception cref="ArgumentOutOfRangeException">The difference is not finite.</exception>
    public static string WriteDifference(double si, Unit unit, Digits digits)
    {
        string number = NumberText.Format(DifferenceInUnit(si, unit), digits);
        return unit.Symbol.Length == 0 ? number : $"{number} {(unit.Symbol == "°C" ? "K" : unit.Symbol)}";
    }

    /// <summary>A difference as a number in the unit.</summary>
    public static double DifferenceInUnit(double si, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return si * unit.Divisor / unit.Multiplier;
    }

    private static double InUnit(double si, Unit unit)
    {
        double shown = unit.FromSi(si);
        return double.IsFinite(shown) ? shown : (si - unit.Offset) / unit.Multiplier * unit.Divisor;
    }
}
