using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>The what-if tables of a file as exports take them.</summary>
internal static class TablesForExport
{
    private const int MostSentences = 6;

    /// <summary>Every table of the file, worked out.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImmutableArray<ComputedTable> Of(StudyRunner studies, Calculation calculation, UnitChoice units, CancellationToken stop, IProgress<double>? progress = null)
    {
        int all = calculation.Workbook.Sheets.Sum(sheet => sheet.WhatIfs.Length);
        var tables = ImmutableArray.CreateBuilder<ComputedTable>();
        foreach (Sheet sheet in calculation.Workbook.Sheets)
        {
            foreach (WhatIfBlock block in sheet.WhatIfs)
            {
                StudyOutcome<WhatIfRequest> request = WhatIfRequest.Of(block, sheet.Name);
                StudyOutcome<WhatIfTable> table = request.IsAnswered ? studies.WhatIf(calculation, request.Answer, progress is null ? null : new PartOfWork(progress, (double)tables.Count / all, (double)(tables.Count + 1) / all), stop) : request.Fault;
                ComputedTable empty = new() { Sheet = sheet.Name, Anchor = block.Anchor, Title = block.Title };
                tables.Add(table.IsAnswered ? Filled(empty, table.Answer, units) : empty with { Fault = table.Fault.Sentence });
            }
        }
        return tables.ToImmutable();
    }

    private static ComputedTable Filled(ComputedTable empty, WhatIfTable table, UnitChoice units) => empty with
    {
        Axes = [.. table.Axes.Select(axis => Axis(axis, units))],
        Columns = [.. table.Columns.Select(column => Column(column, table.Scenarios, units))],
        Notes = [.. table.Notes.Select(note => note.Sentence)],
    };

    private static TableAxis Axis(WhatIfAxis axis, UnitChoice units)
    {
        if (!axis.IsNumeric) return new TableAxis(axis.Cell, axis.Label, null, [.. axis.Values.Select((value, at) => new TableEntry(WhatIfText.Figure(axis, at), null, (value as TruthValue)?.Value))]);
        Unit? other = axis is { Type: QuantityType quantity, Unit: { } unit } ? units.Unit(quantity, unit) : null;
        if (other is null) return new TableAxis(axis.Cell, axis.Label, axis.Unit, [.. Enumerable.Range(0, axis.Values.Length).Select(at => new TableEntry(WhatIfText.Figure(axis, at), Plain(axis.InUnit(at))))]);
        return new TableAxis(axis.Cell, axis.Label, other, [.. axis.Values.Select(value => Entry(other.FromSi(((QuantityValue)value).Si)))]);
    }

    private static TableEntry Entry(double number) => new(NumberText.Format(number, null), number);

    private static TableColumn Column(WhatIfColumn column, int scenarios, UnitChoice units)
    {
        CellType? type = column.Type;
        bool isNumeric = type is NumberType or QuantityType;
        double sample = Enumerable.Range(0, scenarios).Select(scenario => SiValue.Of(column.Value(scenario))).FirstOrDefault(si => si is not null) ?? 0;
        DisplayFormat? format = type is null ? column.Format : units.Format(type, column.Format, sample);
        Unit? unit = isNumeric ? ValueText.UnitOf(type!, format, units.System) : null;
        return new TableColumn(column.Cell, column.Label, unit, format, column.IsCheck, [.. Enumerable.Range(0, scenarios).Select(scenario => Entry(column, scenario, format, unit, units.System))])
        {
            Remarks = [.. Faults(column, scenarios), .. column.Cautions.Select(caution => $"caution in {Share(caution.Count, scenarios)}: {caution.Sentence}")],
        };
    }

    private static TableEntry Entry(WhatIfColumn column, int scenario, DisplayFormat? format, Unit? unit, UnitSystem system)
    {
        if (column.Value(scenario) is not { } value) return new TableEntry("fault", Fault: FaultOf(column.Fault(scenario)));
        PrintedValue shown = PrintedText.Of(value, format, system, column.IsCheck);
        string text = shown.Unit.Length == 0 || shown.Unit == unit?.Symbol ? shown.Figure : shown.ToString();
        return new TableEntry(text, SiValue.Of(value) is { } si ? (unit ?? UnitTable.Number).FromSi(si) : null, (value as TruthValue)?.Value);
    }

    private static IEnumerable<string> Faults(WhatIfColumn column, int scenarios) => Enumerable.Range(0, scenarios).Select(column.Fault).OfType<Fault>()
        .GroupBy(fault => (fault.Code, fault.Cause)).Take(MostSentences).Select(sort => $"fault in {Share(sort.Count(), scenarios)}: {sort.First().Sentence}");

    private static string Share(long count, int scenarios) => count == scenarios ? "every entry" : $"{StudyFigures.Count(count)} of {StudyFigures.Count(scenarios)} entries";

    private static string FaultOf(Fault? fault) => fault is null ? "It has no value." : OriginText.Of(fault with { Place = null });

    /// <summary>The value a person would have written: 30, not 30.000000000000004.</summary>
    private static double Plain(double value) => double.Parse(value.ToString("G15", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
