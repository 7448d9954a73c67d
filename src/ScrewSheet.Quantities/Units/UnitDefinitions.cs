using System.Numerics;
using static ScrewSheet.Quantities.Dimension;

namespace ScrewSheet.Quantities.Units;

/// <summary>A unit with a symbol of one piece: what factors are made of.</summary>
/// <param name="Symbol">Its symbol.</param>
/// <param name="Dimension">The powers of the base quantities.</param>
/// <param name="Factor">The way to coherent SI.</param>
/// <param name="Kind">The kind of a literal in it, or null.</param>
/// <param name="Offset">Added after scaling.</param>
/// <param name="Alone">True where it may not be a factor of another unit.</param>
internal sealed record Atom(string Symbol, Dimension Dimension, ExactFactor Factor, QuantityKind? Kind, double Offset = 0, bool Alone = false);

/// <summary>
/// The definitions every factor is built from: the SI (BIPM, The International System of Units, 9th edition, 2019),
/// and for the others the inch 0.0254 m, the pound 0.45359237 kg and the standard acceleration 9.80665 m/s²,
/// exact by definition (Thompson and Taylor, NIST Special Publication 811, 2008, Appendix B).
/// </summary>
internal static class UnitDefinitions
{
    private static readonly ExactFactor Pound = Ratio(45359237, 100_000_000), Inch = Ratio(254, 10_000), StandardGravity = Ratio(980_665, 100_000);
    private static readonly ExactFactor PoundForce = Pound * StandardGravity, PoundPerSquareInch = PoundForce * Inch.Power(-2 * Parts), Thousand = Ratio(1000, 1);
    private static readonly Dimension Force = Of(1, 1, -2), Length = Of(1), Pressure = Of(-1, 1, -2), Energy = Of(2, 1, -2), Mass = Of(0, 1), Time = Of(0, 0, 1);

    /// <summary>Symbols of one piece.</summary>
    public static IReadOnlyList<Atom> Atoms { get; } =
    [
        Plain("N", Force, 1), Plain("kN", Force, 1000), Plain("daN", Force, 10), Plain("MN", Force, 1_000_000),
        Make("kgf", Force, StandardGravity), Make("lbf", Force, PoundForce), Make("kip", Force, PoundForce * Thousand),
        Plain("mm", Length, 1, 1000), Plain("cm", Length, 1, 100), Plain("m", Length, 1), Make("in", Length, Inch), Make("ft", Length, Inch * Ratio(12, 1)),
        Plain("Pa", Pressure, 1), Plain("kPa", Pressure, 1000), Plain("MPa", Pressure, 1_000_000), Plain("GPa", Pressure, 1_000_000_000),
        Make("psi", Pressure, PoundPerSquareInch), Make("ksi", Pressure, PoundPerSquareInch * Thousand),
        Plain("kg", Mass, 1), Plain("g", Mass, 1, 1000), Plain("t", Mass, 1000), Make("lb", Mass, Pound),
        Make("gn", Of(1, 0, -2), StandardGravity),
        Plain("s", Time, 1), Plain("ms", Time, 1, 1000), Plain("min", Time, 60), Plain("h", Time, 3600),
        new("J", Energy, ExactFactor.One, QuantityKinds.Energy), new("kJ", Energy, Thousand, QuantityKinds.Energy),
        Plain("W", Of(2, 1, -3), 1),
        new("°", None, Ratio(1, 180) with { Rest = Math.PI }, QuantityKinds.Angle), new("rad", None, ExactFactor.One, QuantityKinds.Angle),
        new("°C", Of(temperature: 1), ExactFactor.One, QuantityKinds.Temperature, Offset: 273.15, Alone: true),
        Plain("K", Of(temperature: 1), 1),
        new("%", None, Ratio(1, 100), null, Alone: true),
    ];

    /// <summary>Symbols of several pieces that belong to the table, in its order; <c>km/h</c> apart, since km is not in it.</summary>
    public static IReadOnlyList<string> Composed { get; } =
    [
        "mm²", "cm²", "m²", "in²", "mm³", "cm³", "m³", "mm⁴", "cm⁴", "m⁴", "N/mm²", "kN/m²",
        "N·m", "kN·m", "N·mm", "ft·lbf", "in·lbf", "N·m²", "kPa·m^0.5", "MPa·m^0.5",
        "kg/m³", "g/cm³", "lb/ft³", "lb/in³", "N/m", "kN/m", "N/mm", "lbf/in", "N/m³", "m/s", "ft/s", "m/s²", "1/s", "rad/s",
    ];

    /// <summary>Kilometres an hour: 1000 m in 3600 s.</summary>
    public static Unit KilometresPerHour { get; } = new("km/h", Of(1, 0, -1), QuantityKinds.DefaultOf(Of(1, 0, -1)), 5, 18);

    private static ExactFactor Ratio(BigInteger above, BigInteger below) => new ExactFactor(above, below) * ExactFactor.One;

    private static Atom Plain(string symbol, Dimension dimension, long multiplier, long divisor = 1) => Make(symbol, dimension, Ratio(multiplier, divisor));

    private static Atom Make(string symbol, Dimension dimension, ExactFactor factor) => new(symbol, dimension, factor, QuantityKinds.DefaultOf(dimension));
}
