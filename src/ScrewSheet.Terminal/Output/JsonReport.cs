using System.Text.Json;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>A calculated workbook for programs; the words are explained in <c>docs/json.md</c>.</summary>
internal static class JsonReport
{
    /// <summary>Writes one object and ends the line.</summary>
    public static void Write(Selection selection, TextWriter output) => JsonPage.Write(output, selection.Calculation.Workbook.Head, json =>
    {
        json.WriteStartArray("sheets");
        foreach (SelectedSheet part in selection.Sheets)
        {
            json.WriteStartObject();
            json.WriteString("name", part.Sheet.Name);
            json.WriteStartArray("cells");
            foreach (CellResult cell in part.Cells) WriteCell(json, selection, cell);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        json.WriteEndArray();
    });

    private static void WriteCell(Utf8JsonWriter json, Selection selection, CellResult cell)
    {
        PlainCell plain = PlainCell.Of(selection, cell);
        json.WriteStartObject();
        json.WriteString("cell", cell.Id.Address.ToString());
        json.WriteString("name", cell.Cell.Name);
        json.WriteString("kind", plain.Kind);
        json.WriteString("type", plain.Type);
        WriteValue(json, selection, cell, plain.Unit);
        json.WriteString("unit", plain.Unit?.Symbol is { Length: > 0 } symbol ? symbol : null);
        JsonPage.WriteNumber(json, "si", plain.Si);
        JsonPage.WriteNumber(json, "tolerance", plain.Tolerance);
        json.WriteString("text", plain.Text);
        JsonPage.WriteFault(json, cell.Fault);
        json.WriteStartArray("cautions");
        foreach (Caution caution in cell.Cautions) json.WriteStringValue(caution.Origin is null ? caution.Message : $"{caution.Origin}: {caution.Message}");
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteValue(Utf8JsonWriter json, Selection selection, CellResult cell, Unit? unit)
    {
        json.WritePropertyName("value");
        if (cell.Value is null) json.WriteNullValue();
        else JsonValues.Write(json, cell.Value, unit, selection.Calculation.Workbook.Head.Units);
    }
}
