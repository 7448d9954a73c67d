using System.Globalization;
using System.Text.Json;
using CsvHelper;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Output;

/// <summary>The spread of a result, for programs.</summary>
internal static class UncertaintyData
{
    /// <summary>One object; the words are explained in <c>docs/json.md</c>.</summary>
    public static void WriteJson(UncertaintyReport report, Head head, TextWriter output)
    {
        StudyFigures figures = new(report.Type, report.Format, head.Units);
        JsonPage.Write(output, head, json =>
        {
            json.WriteString("cell", report.Cell.ToString());
            json.WriteString("name", report.Label);
            json.WriteString("type", report.Type.Name);
            json.WriteString("unit", figures.Symbol);
            json.WritePropertyName("value");
            JsonValues.Write(json, report.Value, report.Type is Workbooks.Expressions.TruthType ? null : figures.Unit, head.Units);
            json.WriteNumber("samples", report.Samples);
            json.WriteNumber("seed", report.Seed);
            WriteFirst(json, report.FirstOrder, figures);
            WriteDrawn(json, report.MonteCarlo, figures);
            json.WriteStartArray("givens");
            foreach (GivenShare share in report.Givens) WriteGiven(json, share, figures, head);
            json.WriteEndArray();
            json.WriteStartArray("checks");
            foreach (CheckOdds odds in report.Checks) WriteOdds(json, odds);
            json.WriteEndArray();
            json.WriteStartArray("faults");
            foreach (var fault in report.Faults)
            {
                json.WriteStartObject();
                json.WriteString("message", OriginText.Of(fault.Fault with { Place = null }));
                json.WriteNumber("count", fault.Count);
                json.WriteEndObject();
            }
            json.WriteEndArray();
            JsonPage.WriteCautions(json, report.Cautions);
            JsonPage.WriteNotes(json, report.Notes);
        });
    }

    /// <summary>A line for each given, then one for the result by either method.</summary>
    public static void WriteCsv(UncertaintyReport report, Head head, TextWriter output)
    {
        StudyFigures figures = new(report.Type, report.Format, head.Units);
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true);
        csv.WriteRecord(["name", "kind", "unit", "value", "u", "low", "high", "share", "sobol", "sobol total"]);
        foreach (GivenShare share in report.Givens)
        {
            StudyFigures given = new(share.Given.Type, share.Given.Format, head.Units);
            csv.WriteRecord([CsvReport.Harmless(share.Given.Label), "given", CsvReport.Harmless(given.Unit.Symbol), Number(given.Unit.FromSi(share.Given.Si)), Number(given.InUnit(share.Given.StandardUncertainty)),
                Number(given.Unit.FromSi(share.Given.Si - share.Given.ReachSi)), Number(given.Unit.FromSi(share.Given.Si + share.Given.ReachSi)), Number(share.Share), Number(share.Sobol), Number(share.SobolTotal)]);
        }
        string label = CsvReport.Harmless(report.Label), unit = CsvReport.Harmless(figures.Unit.Symbol);
        if (report.FirstOrder is { } first) csv.WriteRecord([label, "first order", unit, Number((figures.Unit.FromSi(first.Low) + figures.Unit.FromSi(first.High)) / 2), Number(figures.InUnit(first.StandardUncertainty)), Number(figures.Unit.FromSi(first.Low)), Number(figures.Unit.FromSi(first.High)), "", "", ""]);
        if (report.MonteCarlo is { } drawn) csv.WriteRecord([label, "monte carlo", unit, Number(figures.Unit.FromSi(drawn.Mean)), Number(figures.InUnit(drawn.StandardUncertainty)), Number(figures.Unit.FromSi(drawn.Low)), Number(figures.Unit.FromSi(drawn.High)), "", "", ""]);
        foreach (CheckOdds odds in report.Checks) csv.WriteRecord([CsvReport.Harmless(odds.Label), "fails", "", Number(odds.Probability), "", Number(odds.Low), Number(odds.High), "", "", ""]);
    }

    private static void WriteFirst(Utf8JsonWriter json, FirstOrder? first, StudyFigures figures)
    {
        json.WritePropertyName("firstOrder");
        if (first is null)
        {
            json.WriteNullValue();
            return;
        }
        json.WriteStartObject();
        JsonPage.WriteNumber(json, "u", figures.InUnit(first.StandardUncertainty));
        JsonPage.WriteNumber(json, "secondOrderU", figures.InUnit(first.SecondOrder));
        JsonPage.WriteNumber(json, "dof", first.Freedom);
        JsonPage.WriteNumber(json, "k", first.Coverage);
        JsonPage.WriteNumber(json, "low", figures.Number(first.Low));
        JsonPage.WriteNumber(json, "high", figures.Number(first.High));
        json.WriteEndObject();
    }

    private static void WriteDrawn(Utf8JsonWriter json, MonteCarlo? drawn, StudyFigures figures)
    {
        json.WritePropertyName("monteCarlo");
        if (drawn is null)
        {
            json.WriteNullValue();
            return;
        }
        json.WriteStartObject();
        json.WriteNumber("draws", drawn.Draws);
        foreach (var (name, si) in new[] { ("mean", drawn.Mean), ("low", drawn.Low), ("high", drawn.High), ("shortestLow", drawn.ShortestLow), ("shortestHigh", drawn.ShortestHigh), ("least", drawn.Least), ("most", drawn.Most) })
            JsonPage.WriteNumber(json, name, figures.Number(si));
        JsonPage.WriteNumber(json, "u", figures.InUnit(drawn.StandardUncertainty));
        json.WriteEndObject();
    }

    private static void WriteGiven(Utf8JsonWriter json, GivenShare share, StudyFigures figures, Head head)
    {
        StudyFigures given = new(share.Given.Type, share.Given.Format, head.Units);
        json.WriteStartObject();
        json.WriteString("cell", share.Given.Cell.ToString());
        json.WriteString("name", share.Given.Label);
        json.WriteString("unit", given.Symbol);
        JsonPage.WriteNumber(json, "value", given.Number(share.Given.Si));
        JsonPage.WriteNumber(json, "tolerance", given.InUnit(share.Given.HalfWidthSi));
        json.WriteString("shape", share.Given.Shape.ToString().ToLowerInvariant());
        JsonPage.WriteNumber(json, "u", given.InUnit(share.Given.StandardUncertainty));
        JsonPage.WriteNumber(json, "dof", share.Given.Freedom);
        JsonPage.WriteNumber(json, "sensitivity", share.Sensitivity);
        JsonPage.WriteNumber(json, "contribution", figures.InUnit(share.Contribution));
        JsonPage.WriteNumber(json, "share", share.Share);
        JsonPage.WriteNumber(json, "sobol", share.Sobol);
        JsonPage.WriteNumber(json, "sobolTotal", share.SobolTotal);
        JsonPage.WriteNumber(json, "sobolError", share.SobolError);
        JsonPage.WriteNumber(json, "atLow", figures.Number(share.AtLow));
        JsonPage.WriteNumber(json, "atHigh", figures.Number(share.AtHigh));
        json.WriteEndObject();
    }

    private static void WriteOdds(Utf8JsonWriter json, CheckOdds odds)
    {
        json.WriteStartObject();
        json.WriteString("cell", odds.Cell.ToString());
        json.WriteString("name", odds.Label);
        json.WriteNumber("failed", odds.Failed);
        json.WriteNumber("faulted", odds.Faulted);
        json.WriteNumber("draws", odds.Draws);
        json.WriteNumber("probability", odds.Probability);
        json.WriteNumber("low", odds.Low);
        json.WriteNumber("high", odds.High);
        json.WriteEndObject();
    }

    private static string Number(double value) => double.IsFinite(value) ? value.ToString("R", CultureInfo.InvariantCulture) : "";
}
