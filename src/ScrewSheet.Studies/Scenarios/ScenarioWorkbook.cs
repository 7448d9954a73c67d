using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>A workbook with other givens, for the engine: what a colleague would open who had typed them.</summary>
internal static class ScenarioWorkbook
{
    /// <summary>The workbook with that given changed; the tolerance, limits and everything else of the cell stay.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="given">A given of it.</param>
    /// <param name="value">Its value.</param>
    /// <param name="written">The value as written, for one that is no number, text or yes-or-no.</param>
    public static Workbook With(Workbook workbook, CellId given, CellValue value, string? written)
    {
        int at = workbook.Sheets.IndexOf(workbook.Find(given.Sheet)!);
        Sheet sheet = workbook.Sheets[at];
        Cell cell = sheet.Cells[given.Address];
        var content = (GivenContent)cell.Content;
        Literal? literal = LiteralOf(value);
        GivenContent changed = content with { Text = literal is null ? written ?? content.Text : content.Text, Literal = literal };
        return workbook with { Sheets = workbook.Sheets.SetItem(at, sheet with { Cells = sheet.Cells.With(cell with { Content = changed }) }) };
    }

    private static Literal? LiteralOf(CellValue value) => value switch
    {
        NumberValue number => new NumberLiteral(number.Value, null),
        // a unit of the value's own kind with factor one keeps every bit of it
        QuantityValue quantity => new NumberLiteral(quantity.Si, Coherent(quantity.Quantity)),
        TruthValue truth => new TruthLiteral(truth.Value),
        TextValue text => new TextLiteral(text.Value),
        _ => null,
    };

    private static Unit Coherent(QuantityType type) =>
        new(type.Kind?.SiSymbol ?? DisplayUnits.Coherent(type.Dimension).Symbol, type.Dimension, type.Kind ?? QuantityKinds.DefaultOf(type.Dimension), 1);
}
