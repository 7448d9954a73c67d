using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Between a value while it runs and the value of a cell.</summary>
internal static class Values
{
    /// <summary>The value of a cell that is a number or quantity.</summary>
    public static CellValue Wrap(CellType type, double value) => type is QuantityType quantity ? new QuantityValue(value, quantity) : new NumberValue(value);

    /// <summary>The value of any cell.</summary>
    public static CellValue Wrap(CellType type, object value) => type switch
    {
        NumberType or QuantityType => Wrap(type, (double)value),
        TruthType => new TruthValue((bool)value),
        TextType => new TextValue((string)value),
        OptionType => new OptionValue((Enum)value),
        SeriesType { Element: TextType } => new TextSeriesValue((TextSeries)value),
        SeriesType series => new SeriesValue((Series)value, series),
        RecordType record => new RecordValue(value, record),
        _ => throw new ArgumentOutOfRangeException(nameof(type), type, "It is no value of a cell."),
    };

    /// <summary>The value while it runs, when it is neither number nor quantity.</summary>
    public static object? Other(CellValue value) => value switch
    {
        TruthValue truth => truth.Value,
        TextValue text => text.Value,
        OptionValue option => option.Value,
        SeriesValue series => series.Value,
        TextSeriesValue texts => texts.Value,
        RecordValue record => record.Value,
        _ => null,
    };
}
