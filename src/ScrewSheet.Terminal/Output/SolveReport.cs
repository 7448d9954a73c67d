using System.Globalization;
using CsvHelper;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Studies.Solving;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Output;

/// <summary>What a search found, for people and for programs.</summary>
internal sealed class SolveReport
{
    private readonly Solution solution;
    private readonly StudyFigures by, cell;
    private readonly Head head;

    public SolveReport(Solution solution, Head head)
    {
        (this.solution, this.head) = (solution, head);
        (by, cell) = (new StudyFigures(solution.ByType, solution.ByFormat, head.Units), new StudyFigures(solution.Type, solution.Format, head.Units));
    }

    /// <summary>The lines in a width.</summary>
    public IEnumerable<StyledLine> Lines(int width)
    {
        foreach (string line in Wrapping.Lines(Answer, width)) yield return new StyledLine(line, solution.Answer is null ? Tone.Bad : Tone.Strong);
        if (solution.Answer is { } root)
        {
            string left = root.Kind == RootKind.Turning ? $"the nearest value for which it fails is {by.Difference(root.ResidualSi, 2)} away" : $"{PlainText.Of(solution.Label)} there is {cell.Value(root.ResultSi, new Digits(10, true))}, residual {cell.Difference(root.ResidualSi, 2)}";
            foreach (string line in Wrapping.Hanging("  ", left + ".", width)) yield return new StyledLine(line);
            if (double.IsFinite(solution.BySi)) foreach (string line in Wrapping.Hanging("  ", $"The file has {PlainText.Of(solution.ByLabel)} = {by.Value(solution.BySi)}; it stays as it is.", width)) yield return new StyledLine(line);
        }
        foreach (string line in Wrapping.Hanging("  ", Searched, width)) yield return new StyledLine(line);
        foreach (Fault note in solution.Notes.Skip(solution.Answer is null ? 1 : 0))
            foreach (string line in Wrapping.Hanging("note: ", PlainText.Of(note.Sentence), width)) yield return new StyledLine(line, Tone.Careful);
        yield return new StyledLine("");
        foreach (string line in Wrapping.Lines(TextReport.Caution, width)) yield return new StyledLine(line);
    }

    private string Answer => solution.Answer switch
    {
        null => PlainText.Of(solution.Notes.IsEmpty ? "There is no value." : solution.Notes[0].Sentence),
        { Kind: RootKind.Turning } turn => $"{PlainText.Of(solution.Label)} holds {(turn.HoldsBelow ? "up to" : "from")} {PlainText.Of(solution.ByLabel)} = {Holding(turn)}{(turn.HoldsBelow ? " and fails above" : " and fails below")}.",
        { } root => $"{PlainText.Of(solution.ByLabel)} = {by.Value(root.Si, new Digits(6, true))} makes {PlainText.Of(solution.Label)} {cell.Value(solution.TargetSi)}.",
    };

    /// <summary>Six digits, rounded to the side on which the check holds.</summary>
    private string Holding(Root turn) => by.Value(turn.Si, new Digits(6, true, turn.HoldsBelow == by.Unit.FromSi(turn.Si) >= 0 ? Rounding.Down : Rounding.Up));

    private string Searched
    {
        get
        {
            string whence = solution.Interval switch { SearchInterval.Asked => "as asked", SearchInterval.Limits => "its limits in the file", _ => "grown from the file's own value" };
            return $"Searched from {by.Value(solution.FromSi, new Digits(4, true))} to {by.Value(solution.ToSi, new Digits(4, true))} ({whence}), {StudyFigures.Count(solution.Tried)} values tried.";
        }
    }

    /// <summary>A line for each value found.</summary>
    public void WriteCsv(TextWriter output)
    {
        using CsvWriter csv = CsvWriter.Create(output, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true);
        csv.WriteRecord([Head(solution.ByLabel, by.Unit), Head(solution.Label, cell.Unit), Head("residual", cell.Unit), "kind", "answer"]);
        foreach (Root root in solution.Roots)
            csv.WriteRecord([Number(by.Unit.FromSi(root.Si)), root.Kind == RootKind.Turning ? "true" : Number(cell.Unit.FromSi(root.ResultSi)), Number(root.Kind == RootKind.Turning ? by.InUnit(root.ResidualSi) : cell.InUnit(root.ResidualSi)), Kind(root), root == solution.Answer ? "true" : "false"]);
    }

    /// <summary>One object.</summary>
    public void WriteJson(TextWriter output) => JsonPage.Write(output, head, json =>
    {
        json.WriteString("cell", solution.Cell.ToString());
        json.WriteString("name", solution.Label);
        json.WriteString("unit", cell.Symbol);
        JsonPage.WriteNumber(json, "target", cell.Number(solution.TargetSi));
        json.WriteString("by", solution.By.ToString());
        json.WriteString("byName", solution.ByLabel);
        json.WriteString("byUnit", by.Symbol);
        JsonPage.WriteNumber(json, "value", solution.Answer is { } answer ? by.Number(answer.Si) : null);
        JsonPage.WriteNumber(json, "si", solution.Answer?.Si);
        json.WriteStartArray("found");
        foreach (Root root in solution.Roots)
        {
            json.WriteStartObject();
            JsonPage.WriteNumber(json, "value", by.Number(root.Si));
            JsonPage.WriteNumber(json, "si", root.Si);
            JsonPage.WriteNumber(json, "result", root.Kind == RootKind.Turning ? null : cell.Number(root.ResultSi));
            JsonPage.WriteNumber(json, "residual", root.Kind == RootKind.Turning ? by.InUnit(root.ResidualSi) : cell.InUnit(root.ResidualSi));
            json.WriteString("kind", Kind(root));
            if (root.Kind == RootKind.Turning) json.WriteBoolean("holdsBelow", root.HoldsBelow);
            else json.WriteNull("holdsBelow");
            json.WriteEndObject();
        }
        json.WriteEndArray();
        json.WriteStartArray("jumps");
        foreach (double jump in solution.Jumps) json.WriteNumberValue(by.Unit.FromSi(jump));
        json.WriteEndArray();
        JsonPage.WriteNumber(json, "from", by.Number(solution.FromSi));
        JsonPage.WriteNumber(json, "to", by.Number(solution.ToSi));
        JsonPage.WriteNumber(json, "least", cell.Number(solution.LeastSi));
        JsonPage.WriteNumber(json, "most", cell.Number(solution.MostSi));
        json.WriteNumber("tried", solution.Tried);
        json.WriteNumber("faulted", solution.Faulted);
        JsonPage.WriteNotes(json, solution.Notes);
    });

    private static string Kind(Root root) => root.Kind switch { RootKind.Crossing => "crossing", RootKind.Touching => "touching", _ => "turning" };

    private static string Head(string label, Unit unit) => UnitLabel.Of(CsvReport.Harmless(label), unit);

    private static string Number(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
