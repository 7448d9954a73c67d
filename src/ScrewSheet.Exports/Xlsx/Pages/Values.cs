using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>Values as cells of the file hold and show them.</summary>
/// <param name="system">The workbook's units.</param>
/// <param name="formatOf">How the value of a cell is shown.</param>
internal sealed class Values(UnitSystem system, Func<CellResult, DisplayFormat?> formatOf)
{
    private const int LongestText = 32_767;

    /// <summary>The unit a cell's number is in.</summary>
    public CellUnit UnitOf(CellResult cell) => new(ValueText.UnitOf(cell.Value?.Type ?? cell.Type ?? CellType.Number, cell.Cell.Format, system));

    /// <summary>The value.</summary>
    public Content Of(CellResult cell)
    {
        CellUnit unit = UnitOf(cell);
        if (cell.Cell.Content is GivenContent { Literal: NumberLiteral literal } && literal.Unit?.Symbol == unit.Shown.Symbol && !unit.IsPercent && cell.Value is not null) return new Content.Number(literal.Value);
        return cell.Value switch
        {
            NumberValue number => Number(unit.FromSi(number.Value)),
            QuantityValue quantity => Number(unit.FromSi(quantity.Si)),
            TruthValue truth => cell.IsCheck ? new Content.Number(truth.Value ? 1 : 0) : new Content.Truth(truth.Value),
            TextValue text => Words(text.Value),
            null => new Content.None(),
            CellValue other => Words(ValueText.Format(other, cell.Cell.Format, system).Joined),
        };
    }

    /// <summary>The number format.</summary>
    public string FormatOf(CellResult cell)
    {
        if (cell.Value is TruthValue && cell.IsCheck) return NumberFormats.Check;
        if (cell.Value is not (NumberValue or QuantityValue)) return NumberFormats.General;
        CellUnit unit = UnitOf(cell);
        string shown = ValueText.Format(cell.Value, formatOf(cell), system).Number;
        return cell.Cell is { Content: GivenContent, Format: null or { Digits: null } } ? NumberFormats.Whole(unit, shown) : NumberFormats.For(unit, shown, formatOf(cell)?.Digits);
    }

    /// <summary>Words, harmless and as long as a cell may hold.</summary>
    public static Content.Words Words(string text)
    {
        string plain = VisibleText.Of(text);
        return new Content.Words(plain.Length <= LongestText ? plain : plain[..LongestText]);
    }

    private static Content Number(double value) => double.IsFinite(value) ? new Content.Number(value) : new Content.None();
}
