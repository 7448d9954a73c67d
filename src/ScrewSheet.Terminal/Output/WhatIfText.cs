using System.Globalization;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>A what-if table for people: aligned, with a small plot beside a table of one given; of two givens one table for each shown cell.</summary>
internal sealed class WhatIfText
{
    private const int LeastPlot = 12, MostPlot = 40, MostSentences = 6;

    private readonly WhatIfTable table;
    private readonly UnitSystem system;
    private readonly int width;

    private WhatIfText(WhatIfTable table, UnitSystem system, int width) => (this.table, this.system, this.width) = (table, system, width);

    /// <summary>The lines in a width.</summary>
    public static IEnumerable<StyledLine> Lines(WhatIfTable table, UnitSystem system, int width) => new WhatIfText(table, system, width).Lines();

    /// <summary>What must be said below the table, of one shown cell or of all: faults and cautions counted, notes.</summary>
    public static IEnumerable<StyledLine> Remarks(WhatIfTable table, WhatIfColumn? only, UnitSystem system, int width) => new WhatIfText(table, system, width).Remarks(only is null ? table.Columns : [only]);

    /// <summary>What stands above the entries of a shown cell, where two givens are varied.</summary>
    public static string Heading(WhatIfTable table, WhatIfColumn column, UnitSystem system) => $"{Named(column, system)}, {Named(table.Axes[0])} down, {Named(table.Axes[1])} across";

    /// <summary>A varied given with its unit.</summary>
    public static string Named(WhatIfAxis axis) => UnitLabel.Of(PlainText.Of(axis.Label), axis.Unit);

    /// <summary>A shown cell with its unit.</summary>
    public static string Named(WhatIfColumn column, UnitSystem system) => UnitLabel.Of(PlainText.Of(column.Label), UnitOf(column, system));

    /// <summary>The unit the entries of a shown cell are in.</summary>
    public static Unit UnitOf(WhatIfColumn column, UnitSystem system) => column.Type is null ? UnitTable.Number : new StudyFigures(column.Type, column.Format, system).Unit;

    /// <summary>An entry without the unit all of its column are in.</summary>
    public static string Entry(WhatIfColumn column, int scenario, UnitSystem system)
    {
        if (column.Value(scenario) is not { } value) return "fault";
        PrintedValue shown = PrintedText.Of(value, column.Format, system, column.IsCheck);
        return shown.Unit.Length == 0 || shown.Unit == UnitOf(column, system).Symbol ? shown.Figure : shown.ToString();
    }

    /// <summary>A value of an axis in its unit, short where that says it all.</summary>
    public static string Figure(WhatIfAxis axis, int at)
    {
        if (!axis.IsNumeric) return PlainText.Of(axis.Words[at]);
        double value = axis.InUnit(at), shorter = double.Parse(value.ToString("G6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        bool isAlone = Enumerable.Range(0, axis.Values.Length).All(other => other == at || axis.InUnit(other) == value || Math.Abs(axis.InUnit(other) - value) > 2e-6 * Math.Abs(value));
        return NumberText.Exact(isAlone ? shorter : double.Parse(value.ToString("G15", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture));
    }

    private IEnumerable<StyledLine> Lines()
    {
        string[] head = [.. new[] { table.Anchor?.ToString() ?? "", PlainText.Of(table.Title ?? "") }.Where(part => part.Length > 0)];
        if (head.Length > 0) foreach (string line in Wrapping.Lines(string.Join("  ", head), width)) yield return new StyledLine(line, Tone.Strong);
        IEnumerable<StyledLine> body = table.Axes.Length switch { 1 => OneGiven(), 2 => TwoGivens(), _ => List().Select(line => new StyledLine(line)) };
        foreach (StyledLine line in body) yield return line;
        foreach (StyledLine line in Remarks(table.Columns)) yield return line;
    }

    private IEnumerable<StyledLine> OneGiven()
    {
        IReadOnlyList<string> rows = List();
        string[] marks = Plot(width - rows.Max(DisplayWidth.Of) - 2);
        int widest = rows.Max(DisplayWidth.Of);
        return rows.Select((row, i) => new StyledLine(marks.Length == 0 ? row : (DisplayWidth.PadRight(row, widest) + "  " + marks[i]).TrimEnd()));
    }

    /// <summary>Every scenario a row: the givens, then the shown cells; two lines of heads, names and units.</summary>
    private IReadOnlyList<string> List()
    {
        List<IReadOnlyList<string>> rows =
        [
            [.. table.Axes.Select(axis => PlainText.Of(axis.Label)), .. table.Columns.Select(column => PlainText.Of(column.Label))],
            [.. table.Axes.Select(axis => axis.Unit?.Symbol ?? ""), .. table.Columns.Select(column => UnitOf(column).Symbol)],
        ];
        if (rows[1].All(unit => unit.Length == 0)) rows.RemoveAt(1);
        for (int scenario = 0; scenario < table.Scenarios; scenario++)
        {
            int[] places = table.Places(scenario), at = [scenario];
            rows.Add([.. table.Axes.Select((axis, i) => Figure(axis, places[i])), .. table.Columns.Select(column => Entry(column, at[0]))]);
        }
        return TextTable.Lines(rows, [.. Enumerable.Range(0, table.Axes.Length).Where(i => !table.Axes[i].IsNumeric)]);
    }

    /// <summary>For each shown cell the first given down and the second across, in as many parts as the width asks for.</summary>
    private IEnumerable<StyledLine> TwoGivens()
    {
        (WhatIfAxis down, WhatIfAxis across) = (table.Axes[0], table.Axes[1]);
        foreach (WhatIfColumn column in table.Columns)
        {
            yield return new StyledLine(Heading(table, column, system), Tone.Strong);
            for (int from = 0; from < across.Values.Length;)
            {
                (IReadOnlyList<string> lines, int to) = Part(column, down, across, from);
                foreach (string line in lines) yield return new StyledLine(line);
                from = to;
            }
        }
    }

    private (IReadOnlyList<string> Lines, int To) Part(WhatIfColumn column, WhatIfAxis down, WhatIfAxis across, int from)
    {
        IReadOnlyList<string> lines = [];
        int to = from;
        while (to < across.Values.Length)
        {
            int end = to + 1;
            List<IReadOnlyList<string>> rows = [["", .. Enumerable.Range(from, end - from).Select(at => Figure(across, at))]];
            for (int row = 0; row < down.Values.Length; row++) rows.Add([Figure(down, row), .. Enumerable.Range(from, end - from).Select(at => Entry(column, table.Scenario(row, at)))]);
            IReadOnlyList<string> wider = TextTable.Lines(rows, down.IsNumeric ? [] : [0]);
            if (to > from && wider.Max(DisplayWidth.Of) > width) break;
            (lines, to) = (wider, end);
        }
        return (lines, to);
    }

    private Unit UnitOf(WhatIfColumn column) => UnitOf(column, system);

    private string Entry(WhatIfColumn column, int scenario) => Entry(column, scenario, system);

    /// <summary>A mark for each row where the first numeric column lies between its least and greatest value; empty where there is no room or nothing to draw.</summary>
    private string[] Plot(int room)
    {
        int wide = Math.Min(room - 2, MostPlot);
        if (wide < LeastPlot || table.Columns.FirstOrDefault(column => column.Type is Workbooks.Expressions.NumberType or Workbooks.Expressions.QuantityType) is not { } drawn) return [];
        double?[] values = [.. Enumerable.Range(0, table.Scenarios).Select(scenario => SiValue.Of(drawn.Value(scenario)))];
        if (values.Count(value => value is not null) < 2) return [];
        double least = values.Min()!.Value, most = values.Max()!.Value, range = most > least ? most - least : 1;
        IEnumerable<string> heads = table.Axes.Any(axis => axis.Unit is { Symbol.Length: > 0 }) || table.Columns.Any(column => UnitOf(column).Symbol.Length > 0) ? [PlainText.Of(drawn.Label), Ends(drawn, least, most, wide)] : [Ends(drawn, least, most, wide)];
        return [.. heads, .. values.Select(value => "|" + (value is { } si ? new string(' ', (int)Math.Round((si - least) / range * (wide - 1))) + "*" : "").PadRight(wide) + "|")];
    }

    private string Ends(WhatIfColumn drawn, double least, double most, int wide)
    {
        StudyFigures figures = new(drawn.Type!, drawn.Format, system);
        string low = QuantityText.Format(least, figures.Unit, drawn.Format?.Digits).Number, high = QuantityText.Format(most, figures.Unit, drawn.Format?.Digits).Number;
        return low + DisplayWidth.PadLeft(high, Math.Max(DisplayWidth.Of(high) + 1, wide + 2 - DisplayWidth.Of(low)));
    }

    private IEnumerable<StyledLine> Remarks(IEnumerable<WhatIfColumn> columns)
    {
        foreach (WhatIfColumn column in columns)
        {
            foreach (StyledLine line in Faults(column)) yield return line;
            foreach (CautionCount caution in column.Cautions)
                foreach (StyledLine line in Remark("caution", $"{PlainText.Of(column.Label)}, {Of(caution.Count)}: {PlainText.Of(caution.Sentence)}", Tone.Careful)) yield return line;
        }
        foreach (Fault note in table.Notes)
            foreach (StyledLine line in Remark("note", PlainText.Of(note.Sentence), Tone.Careful)) yield return line;
    }

    private IEnumerable<StyledLine> Faults(WhatIfColumn column)
    {
        var sorts = Enumerable.Range(0, table.Scenarios).Select(column.Fault).OfType<Fault>().GroupBy(fault => (fault.Code, fault.Cause)).ToArray();
        foreach (var sort in sorts.Take(MostSentences))
        {
            string such = sort.Select(fault => fault.Message).Distinct().Count() > 1 ? ", such as" : "";
            foreach (StyledLine line in Remark("fault", $"{PlainText.Of(column.Label)}, {Of(sort.Count())}{such}: {OriginText.Of(sort.First() with { Place = null })}", Tone.Bad)) yield return line;
        }
    }

    private string Of(long count) => count == table.Scenarios ? "in every entry" : $"in {StudyFigures.Count(count)} of {StudyFigures.Count(table.Scenarios)} entries";

    private IEnumerable<StyledLine> Remark(string word, string text, Tone tone) => Wrapping.Hanging($"{word}: ", text, width).Select(line => new StyledLine(line, tone));
}
