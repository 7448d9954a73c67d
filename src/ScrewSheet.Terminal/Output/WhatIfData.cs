using System.Globalization;
using System.Text.Json;
using CsvHelper;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>What-if tables for programs.</summary>
internal static class WhatIfData
{
    /// <summary>Each table as lines of values, with a head that names the units; a blank line between tables.</summary>
    public static void WriteCsv(IReadOnlyList<(Sheet? Sheet, StudyOutcome<WhatIfTable> Table)> tables, UnitSystem system, TextWriter output)
    {
        bool first = true;
        foreach (var (_, outcome) in tables)
        {
            if (!outcome.IsAnswered) continue;
            if (!first) output.Write("\n");
            first = false;
            WhatIfTable table = outcome.Answer;
            using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true);
            csv.WriteRecord([.. table.Axes.Select(axis => Head(axis.Label, axis.Unit)), .. table.Columns.SelectMany(column => new[] { Head(column.Label, UnitOf(column, system)), CsvReport.Harmless(column.Label) + " fault" })]);
            for (int scenario = 0; scenario < table.Scenarios; scenario++) csv.WriteRecord(Row(table, scenario, system));
        }
    }

    /// <summary>One object with all tables; the words are explained in <c>docs/json.md</c>.</summary>
    public static void WriteJson(Head head, IReadOnlyList<(Sheet? Sheet, StudyOutcome<WhatIfTable> Table)> tables, TextWriter output) => JsonPage.Write(output, head, json =>
    {
        json.WriteStartArray("tables");
        foreach (var (sheet, outcome) in tables) WriteTable(json, sheet, outcome, head.Units);
        json.WriteEndArray();
    });

    private static void WriteTable(Utf8JsonWriter json, Sheet? sheet, StudyOutcome<WhatIfTable> outcome, UnitSystem system)
    {
        json.WriteStartObject();
        WhatIfTable? table = outcome.Answer;
        json.WriteString("sheet", sheet?.Name);
        json.WriteString("cell", table?.Anchor?.ToString());
        json.WriteString("title", table?.Title);
        json.WriteStartArray("vary");
        foreach (WhatIfAxis axis in table?.Axes ?? []) WriteAxis(json, axis);
        json.WriteEndArray();
        json.WriteStartArray("show");
        foreach (WhatIfColumn column in table?.Columns ?? []) WriteColumn(json, table!, column, system);
        json.WriteEndArray();
        JsonPage.WriteNotes(json, table?.Notes ?? []);
        JsonPage.WriteFault(json, outcome.Fault);
        json.WriteEndObject();
    }

    private static void WriteAxis(Utf8JsonWriter json, WhatIfAxis axis)
    {
        json.WriteStartObject();
        json.WriteString("cell", axis.Cell.ToString());
        json.WriteString("name", axis.Label);
        json.WriteString("type", axis.Type.Name);
        json.WriteString("unit", axis.Unit?.Symbol is { Length: > 0 } symbol ? symbol : null);
        json.WriteStartArray("values");
        for (int i = 0; i < axis.Values.Length; i++)
        {
            if (axis.IsNumeric) json.WriteNumberValue(double.Parse(axis.InUnit(i).ToString("G15", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
            else json.WriteStringValue(axis.Words[i]);
        }
        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void WriteColumn(Utf8JsonWriter json, WhatIfTable table, WhatIfColumn column, UnitSystem system)
    {
        Unit? unit = UnitOf(column, system);
        json.WriteStartObject();
        json.WriteString("cell", column.Cell.ToString());
        json.WriteString("name", column.Label);
        json.WriteString("type", column.Type?.Name);
        json.WriteString("unit", unit?.Symbol is { Length: > 0 } symbol ? symbol : null);
        json.WriteStartArray("entries");
        for (int scenario = 0; scenario < table.Scenarios; scenario++)
        {
            CellValue? value = column.Value(scenario);
            json.WriteStartObject();
            json.WritePropertyName("value");
            if (value is null) json.WriteNullValue();
            else JsonValues.Write(json, value, unit, system);
            if (SiValue.Of(value) is { } si) json.WriteNumber("si", si);
            else json.WriteNull("si");
            json.WriteString("text", value is null ? null : PrintedText.Of(value, column.Format, system, column.IsCheck).ToString());
            JsonPage.WriteFault(json, column.Fault(scenario));
            json.WriteEndObject();
        }
        json.WriteEndArray();
        JsonPage.WriteCautions(json, column.Cautions);
        json.WriteEndObject();
    }

    private static string Head(string label, Unit? unit) => UnitLabel.Of(CsvReport.Harmless(label), unit);

    private static string[] Row(WhatIfTable table, int scenario, UnitSystem system)
    {
        int[] places = table.Places(scenario);
        IEnumerable<string> givens = table.Axes.Select((axis, i) => axis.IsNumeric ? axis.InUnit(places[i]).ToString("G15", CultureInfo.InvariantCulture) : CsvReport.Harmless(axis.Words[places[i]]));
        IEnumerable<string> shown = table.Columns.SelectMany(column => new[] { Value(column, scenario, system), column.Fault(scenario) is { } fault ? CsvReport.Harmless(OriginText.Of(fault with { Place = null })) : "" });
        return [.. givens, .. shown];
    }

    private static string Value(WhatIfColumn column, int scenario, UnitSystem system)
    {
        CellValue? value = column.Value(scenario);
        if (value is TruthValue truth) return truth.Value ? "true" : "false";
        if (SiValue.Of(value) is not { } si) return value is null ? "" : CsvReport.Harmless(PrintedText.Of(value, column.Format, system, false).ToString());
        return (UnitOf(column, system)?.FromSi(si) ?? si).ToString("R", CultureInfo.InvariantCulture);
    }

    private static Unit? UnitOf(WhatIfColumn column, UnitSystem system) => column.Type is Workbooks.Expressions.QuantityType or Workbooks.Expressions.NumberType ? new StudyFigures(column.Type, column.Format, system).Unit : null;
}
