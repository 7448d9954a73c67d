using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Workbooks.Results;

/// <summary>A computed value. A closed family, compared by value.</summary>
/// <param name="Type">Its type.</param>
public abstract record CellValue(CellType Type);

/// <summary>A pure number; finite.</summary>
/// <param name="Value">The number.</param>
public sealed record NumberValue(double Value) : CellValue(CellType.Number);

/// <summary>A quantity in coherent SI; finite.</summary>
/// <param name="Si">The value in coherent SI.</param>
/// <param name="Quantity">Its type.</param>
public sealed record QuantityValue(double Si, QuantityType Quantity) : CellValue(Quantity);

/// <summary>Holds or fails, yes or no.</summary>
/// <param name="Value">Which.</param>
public sealed record TruthValue(bool Value) : CellValue(CellType.Truth);

/// <summary>Words.</summary>
/// <param name="Value">The text.</param>
public sealed record TextValue(string Value) : CellValue(CellType.Text);

/// <summary>A library option.</summary>
/// <param name="Value">The enumeration value.</param>
public sealed record OptionValue(Enum Value) : CellValue(new OptionType(Value.GetType()));

/// <summary>A series.</summary>
/// <param name="Value">The values.</param>
/// <param name="Series">Its type.</param>
public sealed record SeriesValue(Series Value, SeriesType Series) : CellValue(Series);

/// <summary>A series of texts.</summary>
/// <param name="Value">The texts.</param>
public sealed record TextSeriesValue(TextSeries Value) : CellValue(new SeriesType(CellType.Text));

/// <summary>A library record.</summary>
/// <param name="Value">The record.</param>
/// <param name="Record">Its type.</param>
public sealed record RecordValue(object Value, RecordType Record) : CellValue(Record);
