using System.Globalization;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>Writes the numbers of studies, which are values and differences in coherent SI.</summary>
/// <param name="Type">What they are values of.</param>
/// <param name="Format">How its cell shows it, or null.</param>
/// <param name="System">The workbook's units.</param>
internal readonly record struct StudyFigures(CellType Type, DisplayFormat? Format, UnitSystem System)
{
    /// <summary>The unit they are shown in; no symbol for a number.</summary>
    public Unit Unit => ValueText.UnitOf(Type, Format, System);

    /// <summary>A value with its unit.</summary>
    public string Value(double si, Digits? digits = null) => double.IsFinite(si) ? QuantityText.Write(si, Unit, digits ?? Format?.Digits) : "none";

    /// <summary>A difference with its unit: without the zero of a scale.</summary>
    public string Difference(double si, int digits = 3) => QuantityText.WriteDifference(si, Unit, new Digits(digits, true));

    /// <summary>A difference as a number in the unit.</summary>
    public double InUnit(double si) => QuantityText.DifferenceInUnit(si, Unit);

    /// <summary>A value as a number in the unit, or null where there is none.</summary>
    public double? Number(double si) => double.IsFinite(si) ? Unit.FromSi(si) : null;

    /// <summary>The unit's symbol, or null.</summary>
    public string? Symbol => Unit.Symbol.Length == 0 ? null : Unit.Symbol;

    /// <summary>A share in percent.</summary>
    public static string Percent(double share) => double.IsFinite(share) ? (100 * share).ToString("0.0", CultureInfo.InvariantCulture) + " %" : "";

    /// <summary>A count.</summary>
    public static string Count(long count) => count.ToString("#,0", CultureInfo.InvariantCulture);
}
