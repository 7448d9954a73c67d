using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Workbooks.Results;

/// <summary>A value as it is shown: the numeral or word, and its unit apart so that it can be dimmed or aligned.</summary>
/// <param name="Number">The numeral, word or text.</param>
/// <param name="Unit">The unit's symbol, or empty.</param>
public readonly record struct ShownValue(string Number, string Unit)
{
    /// <summary>Numeral, blank and unit.</summary>
    public string Joined => Unit.Length == 0 ? Number : $"{Number} {Unit}";

    /// <inheritdoc/>
    public override string ToString() => Joined;
}

/// <summary>Shows values: in the cell's own format, else in the units of the workbook's system.</summary>
public static class ValueText
{
    /// <summary>The value as shown. A check says <c>holds</c> or <c>fails</c> where <paramref name="isCheck"/>, else <c>true</c> or <c>false</c>.</summary>
    public static ShownValue Format(CellValue value, DisplayFormat? format, UnitSystem system, bool isCheck = false) => value switch
    {
        NumberValue number => Numeral(number.Value, format?.Unit ?? UnitTable.Number, format?.Digits),
        QuantityValue quantity => Numeral(quantity.Si, UnitOf(quantity.Quantity, format, system), format?.Digits),
        TruthValue truth => new ShownValue(isCheck ? truth.Value ? "holds" : "fails" : truth.Value ? "true" : "false", ""),
        TextValue text => new ShownValue(text.Value, ""),
        OptionValue option => new ShownValue(option.Value.ToString(), ""),
        SeriesValue series => new ShownValue($"{series.Value.Count} values", series.Series.Element is QuantityType element ? UnitOf(element, format, system).Symbol : ""),
        TextSeriesValue series => new ShownValue($"{series.Value.Count} texts", ""),
        RecordValue record => new ShownValue(record.Record.Name, ""),
        _ => throw new ArgumentOutOfRangeException(nameof(value), value, "It has no text."),
    };

    /// <summary>The unit a quantity is shown in.</summary>
    public static Unit UnitOf(QuantityType type, DisplayFormat? format, UnitSystem system) =>
        format?.Unit is { } unit && unit.Dimension == type.Dimension ? unit : DisplayUnits.For(type.Dimension, type.Kind ?? UndecidedAs(type.Dimension), system);

    /// <summary>The unit a number or quantity is shown in.</summary>
    public static Unit UnitOf(CellType type, DisplayFormat? format, UnitSystem system) =>
        type is QuantityType quantity ? UnitOf(quantity, format, system) : format?.Unit ?? UnitTable.Number;

    /// <summary>A bare product in N·m is shown as a torque would be.</summary>
    private static QuantityKind? UndecidedAs(Dimension dimension) => dimension == QuantityKinds.Torque.Dimension ? QuantityKinds.Torque : null;

    private static ShownValue Numeral(double si, Unit unit, Digits? digits)
    {
        (string number, string symbol) = QuantityText.Format(si, unit, digits);
        return new ShownValue(number, symbol);
    }
}
