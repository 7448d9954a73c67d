using ScrewSheet.Quantities;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>Units declared over a record's type parameters, such as <c>TY/TX</c> for a slope and <c>TY/TX²</c> for a curvature.</summary>
internal static class TypeUnits
{
    /// <summary>True for a unit written over type parameters.</summary>
    public static bool IsOne(string unit) => unit.Split('/') is [{ Length: > 1 } top, { } bottom] && IsParameter(top) && IsParameter(bottom.TrimEnd('²'));

    /// <summary>Its dimension with the types put in; null for any other unit.</summary>
    public static Dimension? Of(string? unit, IReadOnlyDictionary<string, CellType> arguments)
    {
        if (unit is null || !IsOne(unit)) return null;
        string[] parts = unit.Split('/');
        Dimension below = DimensionOf(arguments[parts[1].TrimEnd('²')]);
        return DimensionOf(arguments[parts[0]]) / (parts[1].EndsWith('²') ? below * below : below);
    }

    private static bool IsParameter(string name) => name.Length == 2 && name[0] == 'T' && char.IsAsciiLetterUpper(name[1]);

    private static Dimension DimensionOf(CellType type) => type is QuantityType quantity ? quantity.Dimension : Dimension.None;
}
