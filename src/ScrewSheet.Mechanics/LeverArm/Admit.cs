using System.Runtime.CompilerServices;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.LeverArm;

/// <summary>A unit in which limits are declared and refusals are worded.</summary>
/// <param name="Symbol">Its symbol.</param>
/// <param name="Si">Its size in coherent SI.</param>
internal readonly record struct Scale(string Symbol, double Si)
{
    public static readonly Scale None = new("", 1), Metre = new("m", 1), Millimetre = new("mm", 1e-3), Kilonewton = new("kN", 1e3), Newton = new("N", 1),
        Megapascal = new("MPa", 1e6), Gigapascal = new("GPa", 1e9), NewtonMetre = new("N·m", 1), SquareMillimetre = new("mm²", 1e-6),
        CubicMillimetre = new("mm³", 1e-9), QuarticMillimetre = new("mm⁴", 1e-12), Degree = new("°", Math.PI / 180), Kilogram = new("kg", 1),
        KilonewtonPerMetre = new("kN/m", 1e3);
}

/// <summary>Magnitudes beyond which an input is a slip of the pen, in the units of <see cref="Scale"/> that its parameters use.</summary>
internal static class Most
{
    public const double Kilonewtons = 1e6, Millimetres = 1e5, Metres = 1e4, Megapascals = 1e5, Gigapascals = 1e4, NewtonMetres = 1e9,
        SquareMillimetres = 1e10, CubicMillimetres = 1e15, QuarticMillimetres = 1e20, KilonewtonsPerMetre = 1e12, AxialKilonewtons = 1e12, Kilograms = 1e6;
}

/// <summary>Lets a value in coherent SI in, or refuses it in the unit its declaration uses. The way in is two comparisons; the refusals stand apart so that it is inlined.</summary>
internal static class Admit
{
    private const double Rounding = 1e-12;

    /// <summary>Greater than 0 and at most <paramref name="most"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Positive(double si, double most, in Scale unit, string name) =>
        si > 0 && si <= most * unit.Si * (1 + Rounding) ? si : RefusePositive(si, most, unit, name);

    /// <summary>At least <paramref name="least"/> and at most <paramref name="most"/>; rounding of the unit is forgiven.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Between(double si, double least, double most, in Scale unit, string name)
    {
        double low = least * unit.Si, high = most * unit.Si;
        return si >= low - (Rounding * Math.Abs(low)) && si <= high + (Rounding * Math.Abs(high)) ? si : RefuseBetween(si, least, most, unit, name);
    }

    /// <summary>Within plus or minus <paramref name="most"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Signed(double si, double most, in Scale unit, string name) => Between(si, -most, most, unit, name);

    /// <summary>At least <paramref name="least"/> and truly less than <paramref name="below"/>: what comes within rounding of it is refused.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Under(double si, double least, double below, in Scale unit, string name)
    {
        double low = least * unit.Si, high = below * unit.Si;
        return si >= low - (Rounding * Math.Abs(low)) && si < high - (Rounding * Math.Abs(high)) ? si : RefuseUnder(si, least, below, unit, name);
    }

    /// <summary>Truly greater than <paramref name="above"/> and truly less than <paramref name="below"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static double Inside(double si, double above, double below, in Scale unit, string name)
    {
        double low = above * unit.Si, high = below * unit.Si;
        return si > low + (Rounding * Math.Abs(low)) && si < high - (Rounding * Math.Abs(high)) ? si : RefuseInside(si, above, below, unit, name);
    }

    private static double RefusePositive(double si, double most, in Scale unit, string name)
    {
        Require.Above(si / unit.Si, 0, unit.Symbol, name);
        return Require.AtMost(si / unit.Si, most, unit.Symbol, name) * unit.Si;
    }

    private static double RefuseBetween(double si, double least, double most, in Scale unit, string name)
    {
        Require.AtLeast(si / unit.Si, least, unit.Symbol, name);
        return Require.AtMost(si / unit.Si, most, unit.Symbol, name) * unit.Si;
    }

    private static double RefuseUnder(double si, double least, double below, in Scale unit, string name)
    {
        Require.AtLeast(si / unit.Si, least, unit.Symbol, name);
        return Require.Below(Math.Max(si / unit.Si, below), below, unit.Symbol, name);
    }

    private static double RefuseInside(double si, double above, double below, in Scale unit, string name)
    {
        double value = si / unit.Si;
        if (value < (above + below) / 2) return Require.Above(Math.Min(value, above), above, unit.Symbol, name);
        return Require.Below(double.IsNaN(value) ? value : Math.Max(value, below), below, unit.Symbol, name);
    }
}
