namespace ScrewSheet.Quantities.Units;

/// <summary>A unit as it is written in a workbook, with its way to coherent SI: <c>si = value · Multiplier / Divisor + Offset</c>.</summary>
/// <param name="Symbol">The canonical spelling, such as <c>N/mm²</c>.</param>
/// <param name="Dimension">The powers of the base quantities.</param>
/// <param name="Kind">The kind a literal in this unit is (N·m a torque, J an energy), or null where only the dimension is known.</param>
/// <param name="Multiplier">Factor to SI; with <paramref name="Divisor"/> both exact doubles, so that 40 mm is 40 / 1000.</param>
/// <param name="Divisor">Divisor to SI.</param>
/// <param name="Offset">Added after scaling; only for temperatures.</param>
public sealed record Unit(string Symbol, Dimension Dimension, QuantityKind? Kind, double Multiplier, double Divisor = 1, double Offset = 0)
{
    /// <summary>From a value in this unit to coherent SI.</summary>
    public double ToSi(double value) => value * Multiplier / Divisor + Offset;

    /// <summary>From coherent SI to a value in this unit.</summary>
    public double FromSi(double si) => (si - Offset) * Divisor / Multiplier;

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}

/// <summary>Which units a workbook shows where a cell does not say.</summary>
public enum UnitSystem
{
    /// <summary>kN, mm, N·m, MPa.</summary>
    SI,

    /// <summary>lbf, in, ft·lbf, ksi.</summary>
    US,
}
