using System.Globalization;
using CsvHelper;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Csv;

/// <summary>
/// A sheet or a what-if table as lines of values with commas between (RFC 4180, lines end with a line feed). Numbers have a point and all their digits and stand without a unit:
/// the unit is in the head. Text that a program could take for a formula has an apostrophe before it; what cannot be seen is shown by its number.
/// </summary>
public static class CsvExport
{
    private static readonly string[] ListHead = ["cell", "name", "value", "unit", "fault"];

    /// <summary>
    /// A sheet. One whose columns have names is written as their table, a line for each row; any other with a line for each cell.
    /// </summary>
    /// <param name="calculation">The workbook, calculated.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="output">Where to.</param>
    /// <returns>How many given and computed cells stand outside the named columns and are not in the table.</returns>
    public static int Write(Calculation calculation, Sheet sheet, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(calculation);
        ArgumentNullException.ThrowIfNull(sheet);
        using CsvWriter csv = Begin(output);
        CellResult[] cells = [.. calculation.Of(sheet).Where(cell => cell.Cell.Content is not NoteContent)];
        if (!sheet.Columns.IsEmpty) return Columns(calculation, sheet, cells, csv);
        csv.WriteRecord(ListHead);
        foreach (CellResult cell in calculation.Of(sheet)) csv.WriteRecord(Line(cell, calculation.Workbook.Head.Units));
        return 0;
    }

    /// <summary>A what-if table: a line for each scenario, the varied givens first, a column of faults after each result that has one.</summary>
    /// <param name="table">The table; one without a fault of its own.</param>
    /// <param name="output">Where to.</param>
    public static void Write(ComputedTable table, TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(table);
        using CsvWriter csv = Begin(output);
        bool[] faulty = [.. table.Columns.Select(column => column.Entries.Any(entry => entry.Fault is not null))];
        csv.WriteRecord([.. table.Axes.Select(axis => Head(axis.Label, axis.Unit)), .. table.Columns.SelectMany((column, i) => faulty[i] ? (string[])[Head(column.Label, column.Unit), HarmlessStart.Of(column.Label) + " fault"] : [Head(column.Label, column.Unit)])]);
        for (int scenario = 0; scenario < table.Scenarios; scenario++)
        {
            int[] places = table.Places(scenario), at = [scenario];
            csv.WriteRecord([.. table.Axes.Select((axis, i) => Entry(axis.Values[places[i]])), .. table.Columns.SelectMany((column, i) => Fields(column.Entries[at[0]], faulty[i]))]);
        }
    }

    private static CsvWriter Begin(TextWriter output)
    {
        ArgumentNullException.ThrowIfNull(output);
        return CsvWriter.Create(output, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true);
    }

    private static int Columns(Calculation calculation, Sheet sheet, CellResult[] cells, CsvWriter csv)
    {
        Dictionary<CellAddress, CellResult> at = cells.ToDictionary(cell => cell.Id.Address);
        HashSet<int> named = [.. sheet.Columns.Select(column => column.Column)];
        csv.WriteRecord([.. sheet.Columns.Select(column => Head(column.Name, column.Unit))]);
        foreach (int row in cells.Where(cell => named.Contains(cell.Id.Address.Column)).Select(cell => cell.Id.Address.Row).Distinct().Order())
            csv.WriteRecord([.. sheet.Columns.Select(column => at.TryGetValue(new CellAddress(column.Column, row), out CellResult? cell) ? Figure(cell, column.Unit ?? UnitTable.Number) : "")]);
        return cells.Count(cell => !named.Contains(cell.Id.Address.Column));
    }

    private static string[] Line(CellResult cell, UnitSystem system)
    {
        if (cell.Cell.Content is NoteContent note) return [cell.Id.Address.ToString(), "", HarmlessStart.Of(note.Text), "", ""];
        Unit unit = cell.Value?.Type is QuantityType or NumberType ? ValueText.UnitOf(cell.Value.Type, cell.Cell.Format, system) : UnitTable.Number;
        return [cell.Id.Address.ToString(), HarmlessStart.Of(cell.Cell.Name ?? ""), Figure(cell, unit), HarmlessStart.Of(unit.Symbol), HarmlessStart.Of(cell.Fault?.Sentence ?? "")];
    }

    private static string Figure(CellResult cell, Unit unit) => cell.Value switch
    {
        // as it is written, without the way to coherent SI and back
        NumberValue or QuantityValue when cell.Cell.Content is GivenContent { Literal: NumberLiteral literal } && (literal.Unit?.Symbol ?? "") == unit.Symbol => Number(literal.Value),
        NumberValue number => Number(unit.FromSi(number.Value)),
        QuantityValue quantity => Number(unit.FromSi(quantity.Si)),
        TruthValue truth => truth.Value ? "true" : "false",
        TextValue text => HarmlessStart.Of(text.Value),
        OptionValue option => HarmlessStart.Of(option.Value.ToString()),
        _ => "",
    };

    private static string[] Fields(TableEntry entry, bool isFaulty) => isFaulty ? [Entry(entry), HarmlessStart.Of(entry.Fault ?? "")] : [Entry(entry)];

    private static string Entry(TableEntry entry)
    {
        if (entry.Fault is not null) return "";
        return entry.Truth is { } truth ? truth ? "true" : "false" : entry.Number is { } number ? Number(number) : HarmlessStart.Of(entry.Text);
    }

    private static string Head(string label, Unit? unit) => UnitLabel.Of(HarmlessStart.Of(label), unit);

    private static string Number(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
