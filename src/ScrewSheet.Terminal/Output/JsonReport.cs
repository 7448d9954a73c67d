using System.Text.Encodings.Web;
using System.Text.Json;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>A calculated workbook for programs; the words are explained in <c>docs/json.md</c>.</summary>
internal static class JsonReport
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes one object and ends the line.</summary>
    public static void Write(Selection selection, TextWriter output)
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter json = new(bytes, Options)) WriteWorkbook(json, selection);
        output.Write(HarmlessJson.Of(System.Text.Encoding.UTF8.GetString(bytes.ToArray())) + "\n");
    }

    private static void WriteWorkbook(Utf8JsonWriter json, Selection selection)
    {
        Head head = selection.Calculation.Workbook.Head;
        json.WriteStartObject();
        json.WriteString("title", head.Title);
        json.WriteString("units", head.Units == UnitSystem.US ? "US" : "SI");
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
        json.WriteEndObject();
    }

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
        WriteNumber(json, "si", plain.Si);
        WriteNumber(json, "tolerance", plain.Tolerance);
        json.WriteString("text", plain.Text);
        WriteFault(json, cell.Fault);
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

    private static void WriteNumber(Utf8JsonWriter json, string name, double? number)
    {
        if (number is double value) json.WriteNumber(name, value);
        else json.WriteNull(name);
    }

    private static void WriteFault(Utf8JsonWriter json, Fault? fault)
    {
        json.WritePropertyName("fault");
        if (fault is null)
        {
            json.WriteNullValue();
            return;
        }
        json.WriteStartObject();
        json.WriteString("kind", fault.Kind.ToString().ToLowerInvariant());
        json.WriteString("message", fault.Sentence);
        json.WriteString("cause", fault.Cause);
        json.WriteEndObject();
    }
}
