using System.Text.Json;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>Values in JSON: numbers in their unit, truths, texts; a series is an array, a record an object of its members.</summary>
internal static class JsonValues
{
    /// <summary>Writes one value; a quantity in <paramref name="unit"/>.</summary>
    public static void Write(Utf8JsonWriter json, CellValue value, Unit? unit, UnitSystem system)
    {
        switch (value)
        {
            case NumberValue number: json.WriteNumberValue(unit is null ? number.Value : unit.FromSi(number.Value)); break;
            case QuantityValue quantity: json.WriteNumberValue(unit is null ? quantity.Si : unit.FromSi(quantity.Si)); break;
            case TruthValue truth: json.WriteBooleanValue(truth.Value); break;
            case TextValue text: json.WriteStringValue(text.Value); break;
            case OptionValue option: json.WriteStringValue(option.Value.ToString()); break;
            case SeriesValue series: WriteSeries(json, series, unit); break;
            case TextSeriesValue series: WriteTexts(json, series); break;
            case RecordValue record: WriteRecord(json, record.Value, system); break;
            default: throw new InvalidOperationException($"{value.GetType().Name} has no form in JSON.");
        }
    }

    private static void WriteSeries(Utf8JsonWriter json, SeriesValue series, Unit? unit)
    {
        json.WriteStartArray();
        foreach (double si in series.Value.Si) json.WriteNumberValue(unit is null ? si : unit.FromSi(si));
        json.WriteEndArray();
    }

    private static void WriteTexts(Utf8JsonWriter json, TextSeriesValue series)
    {
        json.WriteStartArray();
        foreach (string text in series.Value.Texts) json.WriteStringValue(text);
        json.WriteEndArray();
    }

    private static void WriteRecord(Utf8JsonWriter json, object record, UnitSystem system)
    {
        json.WriteStartObject();
        foreach (MemberValue member in MemberValues.Of(record))
        {
            json.WriteStartObject(member.Name);
            Unit? unit = member.Value is null ? null : PrintedText.UnitOf(member.Value, null, system);
            json.WritePropertyName("value");
            if (member.Value is null) json.WriteNullValue();
            else Write(json, member.Value, unit, system);
            json.WriteString("unit", unit?.Symbol is { Length: > 0 } symbol ? symbol : null);
            json.WriteEndObject();
        }
        json.WriteEndObject();
    }
}
