using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>The file's what-if tables, worked out and put as exports take them.</summary>
internal static class ComputedTables
{
    /// <summary>All tables, sheet by sheet.</summary>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static ImmutableArray<ComputedTable> Of(Calculation calculation, StudyRunner studies, CancellationToken stop) =>
        [.. from sheet in calculation.Workbook.Sheets from block in sheet.WhatIfs select Of(calculation, sheet, block, studies, stop)];

    private static ComputedTable Of(Calculation calculation, Sheet sheet, WhatIfBlock block, StudyRunner studies, CancellationToken stop)
    {
        StudyOutcome<WhatIfRequest> request = WhatIfRequest.Of(block, sheet.Name);
        StudyOutcome<WhatIfTable> outcome = request.IsAnswered ? studies.WhatIf(calculation, request.Answer, null, stop) : request.Fault;
        ComputedTable bare = new() { Sheet = sheet.Name, Anchor = block.Anchor, Title = block.Title };
        if (!outcome.IsAnswered) return bare with { Fault = outcome.Fault.Sentence };
        WhatIfTable table = outcome.Answer;
        UnitSystem system = calculation.Workbook.Head.Units;
        return bare with
        {
            Axes = [.. table.Axes.Select(Axis)],
            Columns = [.. table.Columns.Select(column => Column(table, column, system))],
            Notes = [.. table.Notes.Select(note => note.Sentence)],
        };
    }

    private static TableAxis Axis(WhatIfAxis axis) =>
        new(axis.Cell, axis.Label, axis.Unit, [.. axis.Values.Select((value, at) => new TableEntry(WhatIfText.Figure(axis, at), axis.IsNumeric ? Plain(axis.InUnit(at)) : null, (value as TruthValue)?.Value))]);

    private static TableColumn Column(WhatIfTable table, WhatIfColumn column, UnitSystem system)
    {
        Unit? unit = column.Type is QuantityType or NumberType ? new StudyFigures(column.Type, column.Format, system).Unit : null;
        return new TableColumn(column.Cell, column.Label, unit, column.Format, column.IsCheck, [.. Enumerable.Range(0, table.Scenarios).Select(scenario => Entry(column, scenario, unit, system))])
        {
            Remarks = [.. column.Cautions.Select(caution => string.Create(CultureInfo.InvariantCulture, $"{caution.Sentence} (in {caution.Count:#,0} of {table.Scenarios:#,0} entries)"))],
        };
    }

    private static TableEntry Entry(WhatIfColumn column, int scenario, Unit? unit, UnitSystem system)
    {
        if (column.Value(scenario) is not { } value) return new TableEntry("fault", Fault: FaultOf(column.Fault(scenario)));
        PrintedValue shown = PrintedText.Of(value, column.Format, system, column.IsCheck);
        double? si = value switch { NumberValue number => number.Value, QuantityValue quantity => quantity.Si, _ => null };
        string text = shown.Unit.Length == 0 || shown.Unit == unit?.Symbol ? shown.Figure : shown.ToString();
        return new TableEntry(text, si is { } known ? unit?.FromSi(known) ?? known : null, (value as TruthValue)?.Value);
    }

    private static string FaultOf(Fault? fault) => fault is null ? "It has no value." : OriginText.Of(fault with { Place = null });

    /// <summary>The value a person would have written: 30, not 30.000000000000004.</summary>
    private static double Plain(double value) => double.Parse(value.ToString("G15", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
