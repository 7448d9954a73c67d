using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Studies;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Output;

/// <summary>What everything printed in JSON has in common.</summary>
internal static class JsonPage
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One object: title and units, then what the caller adds; ends the line.</summary>
    public static void Write(TextWriter output, Head head, Action<Utf8JsonWriter> rest)
    {
        using MemoryStream bytes = new();
        using (Utf8JsonWriter json = new(bytes, Options))
        {
            json.WriteStartObject();
            json.WriteString("title", head.Title);
            json.WriteString("units", head.Units == UnitSystem.US ? "US" : "SI");
            rest(json);
            json.WriteEndObject();
        }
        output.Write(HarmlessJson.Of(Encoding.UTF8.GetString(bytes.ToArray())) + "\n");
    }

    /// <summary>A fault, or null.</summary>
    public static void WriteFault(Utf8JsonWriter json, Fault? fault)
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

    /// <summary>Sentences about a study.</summary>
    public static void WriteNotes(Utf8JsonWriter json, IEnumerable<Fault> notes)
    {
        json.WriteStartArray("notes");
        foreach (Fault note in notes) json.WriteStringValue(note.Sentence);
        json.WriteEndArray();
    }

    /// <summary>Cautions and how often they applied.</summary>
    public static void WriteCautions(Utf8JsonWriter json, IEnumerable<CautionCount> cautions)
    {
        json.WriteStartArray("cautions");
        foreach (CautionCount caution in cautions)
        {
            json.WriteStartObject();
            json.WriteString("message", caution.Sentence);
            json.WriteNumber("count", caution.Count);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    /// <summary>A number, or null where there is none.</summary>
    public static void WriteNumber(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number)) json.WriteNumber(name, number);
        else json.WriteNull(name);
    }
}
