using System.Diagnostics.CodeAnalysis;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads units after numbers and says which of them go together.</summary>
internal static class UnitReader
{
    /// <summary>Reads the unit that fills the piece.</summary>
    /// <param name="line">The line.</param>
    /// <param name="start">Index of its first character.</param>
    /// <param name="end">Index behind its last.</param>
    /// <param name="unit">The unit.</param>
    /// <param name="fault">Otherwise what is wrong with it; null when the piece is more than a unit, an expression perhaps.</param>
    public static bool TryRead(LineText line, int start, int end, [NotNullWhen(true)] out Unit? unit, out Fault? fault)
    {
        fault = null;
        unit = null;
        if (end - start > UnitText.MaxLength) return false;
        if (UnitText.TryParse(line.Piece(start, end), out unit, out string? problem)) return true;
        if (UnitText.Scan(line.Span(start, end)) == end - start) fault = GivenFaults.Unit(line.At(start, end), problem);
        return false;
    }

    /// <summary>True where a value in one unit can be set beside a value in the other: the same dimension and no torque beside an energy, no angle beside a number.</summary>
    public static bool AreAlike(Unit? a, Unit? b)
    {
        if (DimensionOf(a) != DimensionOf(b) || IsAngle(a) != IsAngle(b)) return false;
        return IsTemperature(a) || a?.Kind is not { } kindA || b?.Kind is not { } kindB || ReferenceEquals(kindA, kindB);
    }

    /// <summary>True for every unit a temperature or a difference of two is written in.</summary>
    public static bool IsTemperature(Unit? unit) => DimensionOf(unit) == QuantityKinds.Temperature.Dimension;

    /// <summary>How a sentence names a value in that unit.</summary>
    public static string Phrase(Unit? unit)
    {
        if (IsTemperature(unit)) return QuantityKinds.Temperature.Phrase;
        Dimension dimension = DimensionOf(unit);
        QuantityKind? kind = unit?.Kind ?? QuantityKinds.DefaultOf(dimension);
        return kind?.Phrase ?? (dimension.IsNone ? "a number" : $"a quantity in {dimension}");
    }

    /// <summary>How a sentence names a literal.</summary>
    public static string Phrase(Literal? literal) => literal is NumberLiteral number ? Phrase(number.Unit) : "a constant";

    private static Dimension DimensionOf(Unit? unit) => unit?.Dimension ?? Dimension.None;

    private static bool IsAngle(Unit? unit) => ReferenceEquals(unit?.Kind, QuantityKinds.Angle);
}
