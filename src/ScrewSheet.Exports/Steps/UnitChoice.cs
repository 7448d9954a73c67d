using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Exports.Steps;

/// <summary>Which units an export shows: those the workbook asks for, or all in one system.</summary>
/// <param name="System">The system of values whose cell does not say.</param>
/// <param name="All">True where also cells that do say are shown in that system.</param>
public sealed record UnitChoice(UnitSystem System, bool All)
{
    private const int LeastDigits = 3;

    private static readonly string[] Customary = ["lbf", "kip", "in", "ft", "psi", "ksi", "lb"];

    /// <summary>The format a value of a type is shown in.</summary>
    /// <param name="type">The value's type.</param>
    /// <param name="format">What its cell asks for, or null.</param>
    /// <param name="si">The value in coherent SI, from which it is seen how many digits its cell asks for.</param>
    public DisplayFormat? Format(CellType type, DisplayFormat? format, double si)
    {
        if (!All || type is not QuantityType quantity || format?.Unit is not { } unit || Unit(quantity, unit) is not { } other) return format;
        return new DisplayFormat(other, format.Digits is null ? null : new Digits(Math.Max(LeastDigits, DigitsOf(si, unit, format.Digits)), true, format.Digits.Rounding));
    }

    /// <summary>The unit that stands for one written in a workbook; null where it stays.</summary>
    public Unit? Unit(QuantityType type, Unit unit)
    {
        if (!All || type.Dimension.IsNone || unit.Symbol is "°C" or "K" or "°" or "rad" or "%" || IsCustomary(unit) == (System == UnitSystem.US)) return null;
        string? length = (unit.Symbol, System) switch { ("m", UnitSystem.US) => "ft", ("ft", UnitSystem.SI) => "m", _ => null };
        if (length is not null && UnitText.TryParse(length, out Unit? found, out _)) return found;
        Unit shown = DisplayUnits.For(type.Dimension, unit.Kind ?? type.Kind, System);
        return shown.Symbol == unit.Symbol || IsCustomary(shown) != (System == UnitSystem.US) ? null : shown;
    }

    private static bool IsCustomary(Unit unit) => unit.Symbol.Split('/', '·', '(', ')').Any(part => Customary.Contains(part.TrimEnd('²', '³', '⁴')));

    /// <summary>How many significant digits a format comes to.</summary>
    private static int DigitsOf(double si, Unit unit, Digits digits)
    {
        if (digits.Significant) return digits.Count;
        string figure = QuantityText.Format(si, unit, digits).Number.TrimStart('-').Split('e')[0].Replace(".", "", StringComparison.Ordinal);
        return Math.Clamp(figure.TrimStart('0').Length, 1, 15);
    }
}
