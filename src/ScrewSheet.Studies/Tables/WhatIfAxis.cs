using System.Collections.Immutable;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tables;

/// <summary>A varied given and the values it takes.</summary>
/// <param name="Cell">The given.</param>
/// <param name="Label">How it is called.</param>
/// <param name="Type">The type of its values.</param>
/// <param name="Values">The values, in order.</param>
/// <param name="Unit">The unit they are written in; null where they have none.</param>
/// <param name="Words">The values as written where they are no numbers; else empty.</param>
public sealed record WhatIfAxis(CellId Cell, string Label, CellType Type, ImmutableArray<CellValue> Values, Unit? Unit, ImmutableArray<string> Words)
{
    /// <summary>True for numbers and quantities.</summary>
    public bool IsNumeric => Type is NumberType or QuantityType;

    /// <summary>A value in the axis' unit; NaN for one that is no number.</summary>
    /// <param name="at">Which, from 0.</param>
    public double InUnit(int at) => Values[at] switch
    {
        NumberValue number => Unit is null ? number.Value : Unit.FromSi(number.Value),
        QuantityValue quantity => Unit is null ? quantity.Si : Unit.FromSi(quantity.Si),
        _ => double.NaN,
    };
}
