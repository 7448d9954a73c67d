using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>A value as people are shown it.</summary>
/// <param name="Figure">The numeral, or words.</param>
/// <param name="Unit">The unit's symbol, or empty.</param>
/// <param name="IsProse">True for words that may be broken over lines.</param>
internal readonly record struct ShownValue(string Figure, string Unit, bool IsProse = false)
{
    /// <summary>Figure and unit.</summary>
    public override string ToString() => Unit.Length == 0 ? Figure : $"{Figure} {Unit}";
}

/// <summary>Writes values for people.</summary>
internal static class ValueText
{
    private const int LongestList = 8;

    /// <summary>A value in the format of its cell, or in the workbook's units.</summary>
    public static ShownValue Of(CellValue value, DisplayFormat? format, UnitSystem system, bool isCheck) => value switch
    {
        NumberValue number => Number(number.Value, UnitOf(number, format, system), format?.Digits),
        QuantityValue quantity => Number(quantity.Si, UnitOf(quantity, format, system), format?.Digits),
        TruthValue truth => new ShownValue(Truth(truth.Value, isCheck), ""),
        TextValue text => new ShownValue(PlainText.Of(text.Value), "", IsProse: true),
        OptionValue option => new ShownValue(option.Value.ToString(), ""),
        SeriesValue series => Series(series, format, system),
        RecordValue record => new ShownValue(record.Record.Name, ""),
        _ => throw new InvalidOperationException($"{value.GetType().Name} cannot be shown."),
    };

    /// <summary>The unit a value is shown in; null for what has none.</summary>
    public static Unit? UnitOf(CellValue value, DisplayFormat? format, UnitSystem system) => value.Type switch
    {
        NumberType => format?.Unit,
        QuantityType quantity => format?.Unit ?? DisplayUnits.For(quantity.Dimension, quantity.Kind, system),
        SeriesType { Element: QuantityType element } => format?.Unit ?? DisplayUnits.For(element.Dimension, element.Kind, system),
        SeriesType { Element: NumberType } => format?.Unit,
        _ => null,
    };

    private static ShownValue Number(double si, Unit? unit, Digits? digits)
    {
        (string figure, string symbol) = QuantityText.Format(si, unit ?? UnitTable.Number, digits);
        return new ShownValue(figure, symbol);
    }

    private static string Truth(bool value, bool isCheck) => (value, isCheck) switch
    {
        (true, true) => "holds",
        (false, true) => "FAILS",
        (true, false) => "true",
        (false, false) => "false",
    };

    private static ShownValue Series(SeriesValue series, DisplayFormat? format, UnitSystem system)
    {
        Unit unit = UnitOf(series, format, system) ?? UnitTable.Number;
        string Figure(double si) => QuantityText.Format(si, unit, format?.Digits).Number;
        int count = series.Value.Count;
        string figures = count switch
        {
            0 => "no values",
            <= LongestList => string.Join(", ", series.Value.Si.Select(Figure)),
            _ => $"{count} values from {Figure(series.Value.Si.Min())} to {Figure(series.Value.Si.Max())}",
        };
        return new ShownValue(count == 0 || unit.Symbol.Length == 0 ? figures : $"{figures} {unit.Symbol}", "", IsProse: true);
    }
}
