using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities.Formatting;

/// <summary>Which way a numeral is rounded when it is shown.</summary>
public enum Rounding
{
    /// <summary>To the nearest, a tie to the even digit.</summary>
    HalfEven,

    /// <summary>Toward zero.</summary>
    Down,

    /// <summary>Away from zero.</summary>
    Up,
}

/// <summary>How many digits are shown: <c>3 digits</c> (significant) or <c>1 decimal</c>, with <c>down</c> or <c>up</c>.</summary>
/// <param name="Count">1 to 15 significant digits, or 0 to 15 decimals.</param>
/// <param name="Significant">True for significant digits.</param>
/// <param name="Rounding">The direction.</param>
public sealed record Digits(int Count, bool Significant, Rounding Rounding = Rounding.HalfEven);

/// <summary>What a cell says about how its value is shown.</summary>
/// <param name="Unit">The unit, or null for the workbook's own.</param>
/// <param name="Digits">The digits, or null for the default.</param>
public sealed record DisplayFormat(Unit? Unit, Digits? Digits);
