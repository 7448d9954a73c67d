using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>
/// The unit a cell's number is in: the one its reader sees, so that what is typed over it is taken in that unit. Formulas bring every number they read into coherent SI and
/// what they give back out of it. A percentage is held as its share, as the standard's own format for it wants.
/// </summary>
/// <param name="Shown">The unit shown.</param>
internal readonly record struct CellUnit(Unit Shown)
{
    /// <summary>True where the number is a share shown in per cent.</summary>
    public bool IsPercent => Shown.Symbol == "%";

    private Unit Held => IsPercent ? UnitTable.Number : Shown;

    /// <summary>The number of a cell for a value in coherent SI.</summary>
    public double FromSi(double si)
    {
        double held = Held.FromSi(si);
        // a value in many more units than a number holds
        return double.IsFinite(held) ? held : (si - Held.Offset) / Held.Multiplier * Held.Divisor;
    }

    /// <summary>What a cell's number is in coherent SI.</summary>
    public FormulaText ToSi(FormulaText cell)
    {
        FormulaText scaled = Over(Times(cell, Held.Multiplier), Held.Divisor);
        return Held.Offset == 0 ? scaled : FormulaText.Binary(scaled, "+", FormulaText.Number(Held.Offset), Hold.Sum);
    }

    /// <summary>The cell's number for a value in coherent SI.</summary>
    public FormulaText FromSi(FormulaText si)
    {
        FormulaText shifted = Held.Offset == 0 ? si : FormulaText.Binary(si, "-", FormulaText.Number(Held.Offset), Hold.Sum);
        return Over(Times(shifted, Held.Divisor), Held.Multiplier);
    }

    private static FormulaText Times(FormulaText value, double factor) => factor == 1 ? value : FormulaText.Binary(value, "*", FormulaText.Number(factor), Hold.Product);

    private static FormulaText Over(FormulaText value, double factor) => factor == 1 ? value : FormulaText.Binary(value, "/", FormulaText.Number(factor), Hold.Product);
}
