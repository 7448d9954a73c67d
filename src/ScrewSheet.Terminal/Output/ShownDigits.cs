using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>
/// How many digits each value is shown with. A cell that says so has them; a given shows all it was written with;
/// and where a rounded figure would contradict a check beside it (a moment of 499.96 N·m shown as 500.0 beside
/// <c>moment &lt; 500 N·m</c> that holds), it is shown with as many more as it takes.
/// </summary>
internal sealed class ShownDigits
{
    private readonly Dictionary<CellId, DisplayFormat> raised = [];
    private readonly HashSet<CellId> whole = [];
    private readonly UnitSystem system;

    private ShownDigits(UnitSystem system) => this.system = system;

    /// <summary>For every value of a calculation.</summary>
    public static ShownDigits Of(Calculation calculation)
    {
        ShownDigits digits = new(calculation.Workbook.Head.Units);
        foreach (CellResult check in calculation.Cells.Values.Where(cell => cell is { IsCheck: true, Value: TruthValue }))
        {
            foreach (ShownComparison comparison in ShownComparison.In(check, calculation)) digits.Agree(comparison);
        }
        return digits;
    }

    /// <summary>The format a value is shown in.</summary>
    public DisplayFormat? FormatOf(CellResult cell)
    {
        // looked into when first asked for: a workbook may hold far more givens than are ever shown
        if (cell.Cell.Content is GivenContent && cell.Cell.Format?.Digits is null && whole.Add(cell.Id)) ShowWhole(cell);
        return raised.GetValueOrDefault(cell.Id) ?? cell.Cell.Format;
    }

    private void ShowWhole(CellResult cell)
    {
        if (SiValue.Of(cell.Value) is not double si) return;
        while (!IsWhole(cell, si) && Raise(cell))
        {
        }
    }

    // 15 digits are all that a figure is rounded from
    private bool IsWhole(CellResult cell, double si)
    {
        Unit unit = UnitOf(cell);
        double shown = Shown(cell) ?? si;
        return NumberText.Format(unit.FromSi(shown), new Digits(15, true)) == NumberText.Format(unit.FromSi(si), new Digits(15, true));
    }

    private void Agree(ShownComparison comparison)
    {
        bool truth = comparison.Of(comparison.Left.Si, comparison.Right.Si);
        while (comparison.Of(Shown(comparison.Left), Shown(comparison.Right)) != truth)
        {
            bool left = comparison.Left.Cell is CellResult one && Raise(one);
            bool right = comparison.Right.Cell is CellResult other && Raise(other);
            if (!left && !right) return;
        }
    }

    private double Shown(ShownSide side) => side.Cell is CellResult cell ? Shown(cell) ?? side.Si : side.Si;

    /// <summary>One more digit; false when there are no more.</summary>
    private bool Raise(CellResult cell)
    {
        DisplayFormat? format = FormatOf(cell);
        Digits more = DigitsText.OneMore(format?.Digits);
        if (more == format?.Digits) return false;
        raised[cell.Id] = new DisplayFormat(format?.Unit, more);
        return true;
    }

    private double? Shown(CellResult cell)
    {
        if (SiValue.Of(cell.Value) is not double si) return null;
        Unit unit = UnitOf(cell);
        (string figure, string symbol) = QuantityText.Format(si, unit, FormatOf(cell)?.Digits);
        return symbol == unit.Symbol && NumberText.TryParse(figure, out double shown, out _) ? unit.ToSi(shown) : si;
    }

    private Unit UnitOf(CellResult cell) => PrintedText.UnitOf(cell.Value!, cell.Cell.Format, system) ?? UnitTable.Number;
}
