using System.Text.Json;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Comparing;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>The differences of two versions for programs; the words are explained in <c>docs/json.md</c>.</summary>
internal static class DiffJson
{
    /// <summary>Writes one object and ends the line.</summary>
    public static void Write(Comparison comparison, DiffNames names, TextWriter output) => JsonPage.Write(output, comparison.After.Workbook.Head, json =>
    {
        WriteVersion(json, "before", names.Before, comparison.Before);
        WriteVersion(json, "after", names.After, comparison.After);
        WriteEach(json, "cells", comparison.Cells, WriteCell);
        WriteEach(json, "lines", comparison.Lines, (_, line) =>
        {
            json.WriteString("sheet", line.Sheet);
            WriteChange(json, line.Change);
        });
        WriteEach(json, "moved", comparison.Moved, WriteMoved);
        Selection before = Selection.Of(comparison.Before, comparison.Before.Workbook.Sheets), after = Selection.Of(comparison.After, comparison.After.Workbook.Sheets);
        WriteEach(json, "results", comparison.Results, (_, result) =>
        {
            json.WriteString("cell", result.After.Id.ToString());
            json.WriteString("name", result.After.Cell.Name);
            WriteResult(json, "before", before, result.Before);
            WriteResult(json, "after", after, result.After);
            JsonPage.WriteNumber(json, "relative", result.Relative);
            json.WriteBoolean("byAuthor", result.ByAuthor);
        });
        WriteEach(json, "library", comparison.Library, (_, change) =>
        {
            json.WriteString("cell", change.After.Id.ToString());
            json.WriteString("name", change.After.Cell.Name);
            json.WriteString("keptBefore", (change.Before.Cell.Content as ResultContent)?.Kept);
            json.WriteString("keptAfter", (change.After.Cell.Content as ResultContent)?.Kept);
            WriteResult(json, "now", after, change.After);
        });
    });

    private static void WriteEach<T>(Utf8JsonWriter json, string name, IEnumerable<T> all, Action<Utf8JsonWriter, T> write)
    {
        json.WriteStartArray(name);
        foreach (T one in all)
        {
            json.WriteStartObject();
            write(json, one);
            json.WriteEndObject();
        }
        json.WriteEndArray();
    }

    private static void WriteVersion(Utf8JsonWriter json, string name, string file, Calculation calculation)
    {
        json.WriteStartObject(name);
        json.WriteString("file", file);
        json.WriteString("title", calculation.Workbook.Head.Title);
        json.WriteString("madeWith", calculation.Workbook.Head.MadeWith);
        json.WriteEndObject();
    }

    private static void WriteCell(Utf8JsonWriter json, CellChange cell)
    {
        json.WriteString("before", cell.Before?.ToString());
        json.WriteString("after", cell.After?.ToString());
        json.WriteString("name", cell.Name);
        WriteEach(json, "changes", cell.Changes, WriteChange);
    }

    private static void WriteChange(Utf8JsonWriter json, TextChange change)
    {
        json.WriteString("what", change.What);
        json.WriteString("before", change.Before);
        json.WriteString("after", change.After);
    }

    private static void WriteMoved(Utf8JsonWriter json, MovedRows moved)
    {
        json.WriteString("sheet", moved.Sheet);
        json.WriteNumber("first", moved.First);
        json.WriteNumber("last", moved.Last);
        json.WriteNumber("down", moved.Down);
    }

    private static void WriteResult(Utf8JsonWriter json, string name, Selection selection, CellResult cell)
    {
        UnitSystem system = selection.Calculation.Workbook.Head.Units;
        PlainCell plain = PlainCell.Of(selection, cell);
        json.WriteStartObject(name);
        json.WritePropertyName("value");
        if (cell.Value is null) json.WriteNullValue();
        else JsonValues.Write(json, cell.Value, plain.Unit, system);
        json.WriteString("unit", plain.Unit?.Symbol is { Length: > 0 } symbol ? symbol : null);
        JsonPage.WriteNumber(json, "si", plain.Si);
        json.WriteString("text", plain.Text);
        JsonPage.WriteFault(json, cell.Fault);
        json.WriteEndObject();
    }
}
