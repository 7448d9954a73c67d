using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>A value as people are shown it.</summary>
/// <param name="Figure">The numeral, or words.</param>
/// <param name="Unit">The unit's symbol, or empty.</param>
/// <param name="IsProse">True for words that may be broken over lines.</param>
internal readonly record struct PrintedValue(string Figure, string Unit, bool IsProse = false)
{
    /// <summary>Figure and unit.</summary>
    public override string ToString() => Unit.Length == 0 ? Figure : $"{Figure} {Unit}";
}

/// <summary>Writes values for people.</summary>
internal static class PrintedText
{
    private const int LongestList = 8;

    /// <summary>A value in the format of its cell, or in the workbook's units; a check that fails stands out without colour.</summary>
    public static PrintedValue Of(CellValue value, DisplayFormat? format, UnitSystem system, bool isCheck)
    {
        ShownValue shown = ValueText.Format(value, format, system, isCheck);
        return value switch
        {
            TruthValue { Value: false } when isCheck => new PrintedValue("FAILS", ""),
            TextValue => new PrintedValue(PlainText.Of(shown.Number), "", IsProse: true),
            SeriesValue series => Series(series, format, system),
            TextSeriesValue { Value.Count: > 0 and <= LongestList } series => new PrintedValue(PlainText.Of(string.Join(", ", series.Value.Texts)), "", IsProse: true),
            _ => new PrintedValue(shown.Number, shown.Unit),
        };
    }

    /// <summary>The unit a value is shown in; null for what has none.</summary>
    public static Unit? UnitOf(CellValue value, DisplayFormat? format, UnitSystem system) => value.Type switch
    {
        QuantityType quantity => ValueText.UnitOf(quantity, format, system),
        SeriesType { Element: QuantityType element } => ValueText.UnitOf(element, format, system),
        NumberType or SeriesType { Element: NumberType } => format?.Unit,
        _ => null,
    };

    private static PrintedValue Series(SeriesValue series, DisplayFormat? format, UnitSystem system)
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
        return new PrintedValue(count == 0 || unit.Symbol.Length == 0 ? figures : $"{figures} {unit.Symbol}", "", IsProse: true);
    }
}
