namespace ScrewSheet.Quantities.Declarations;

/// <summary>What one parameter of a callable function is: symbol, unit, meaning, hard limits (refused beyond) and the usual range (a caution beyond).</summary>
/// <remarks>All bounds are in <paramref name="unit"/>. NaN means none. A parameter of the type <see cref="Quantity"/> gets its dimension from the unit.</remarks>
/// <param name="symbol">The trade's symbol, such as <c>m</c>.</param>
/// <param name="unit">The unit its bounds and help are in, such as <c>kg</c>; empty for a pure number or text.</param>
/// <param name="meaning">What it is, with its sign convention where it has one.</param>
[AttributeUsage(AttributeTargets.Parameter)]
public sealed class ParameterAttribute(string symbol, string unit, string meaning) : Attribute
{
    /// <summary>The trade's symbol.</summary>
    public string Symbol { get; } = symbol;

    /// <summary>The unit of the bounds and of the help.</summary>
    public string Unit { get; } = unit;

    /// <summary>What it is.</summary>
    public string Meaning { get; } = meaning;

    /// <summary>Refused unless greater than this.</summary>
    public double Above { get; init; } = double.NaN;

    /// <summary>Refused if less than this.</summary>
    public double AtLeast { get; init; } = double.NaN;

    /// <summary>Refused unless less than this.</summary>
    public double Below { get; init; } = double.NaN;

    /// <summary>Refused if greater than this.</summary>
    public double AtMost { get; init; } = double.NaN;

    /// <summary>A caution if less than this.</summary>
    public double UsualFrom { get; init; } = double.NaN;

    /// <summary>A caution if greater than this.</summary>
    public double UsualTo { get; init; } = double.NaN;
}
