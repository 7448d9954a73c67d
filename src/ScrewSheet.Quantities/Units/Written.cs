using UnitsNet;

namespace ScrewSheet.Quantities.Units;

/// <summary>Quantities as they are written: a number and a symbol of the table.</summary>
internal static class Written
{
    /// <summary>Of the kind the unit's literals have.</summary>
    public static T As<T>(double value, string symbol) where T : struct, IQuantity
    {
        Unit unit = UnitTable.Get(symbol);
        return ((QuantityKind<T>)unit.Kind!).Make(unit.ToSi(value));
    }

    /// <summary>Where the unit's dimension has no kind.</summary>
    public static Quantity Bare(double value, string symbol)
    {
        Unit unit = UnitTable.Get(symbol);
        return Quantity.FromSi(unit.ToSi(value), unit.Dimension);
    }
}
