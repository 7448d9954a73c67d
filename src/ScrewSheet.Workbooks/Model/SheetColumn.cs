using System.Collections.Immutable;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Model;

/// <summary>A column of a sheet that is a series by name: <c>column B force [kN]</c>.</summary>
/// <remarks>Its values are all givens and results of the column. Notes above the first of them are headings; a note further down is a fault of whoever reads the column.</remarks>
/// <param name="Column">Its number, from 1.</param>
/// <param name="Name">Its name, unique among the names of the sheet.</param>
/// <param name="Unit">The unit every value is measured in; null for pure numbers and for texts.</param>
/// <param name="Place">Where the letters stand.</param>
public sealed record SheetColumn(int Column, string Name, Unit? Unit, Place Place)
{
    /// <summary>True where both lines say the same, wherever they stand.</summary>
    public bool SaysTheSame(SheetColumn other) => other is not null && Column == other.Column && Name == other.Name && Unit?.Symbol == other.Unit?.Symbol;
}

/// <summary>The columns of two versions of a sheet.</summary>
public static class SheetColumns
{
    /// <summary>True where both have the same columns in the same order.</summary>
    public static bool AreTheSame(ImmutableArray<SheetColumn> one, ImmutableArray<SheetColumn> other) =>
        one == other || (one.Length == other.Length && one.Zip(other).All(pair => pair.First.SaysTheSame(pair.Second)));
}
