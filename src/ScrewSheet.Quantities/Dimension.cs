namespace ScrewSheet.Quantities;

/// <summary>
/// The powers of the seven SI base quantities behind a value, each exponent counted in twelfths,
/// so that a square root of an area and a cube root of a force are exact.
/// </summary>
/// <remarks><c>default</c> is a pure number. Exponents beyond ±2,730 throw <see cref="OverflowException"/>.</remarks>
public readonly record struct Dimension
{
    /// <summary>How many parts one whole exponent is divided into.</summary>
    public const int Parts = 12;

    private readonly short length, mass, time, current, temperature, amount, luminosity;

    private Dimension(int length, int mass, int time, int current, int temperature, int amount, int luminosity)
    {
        this.length = checked((short)length);
        this.mass = checked((short)mass);
        this.time = checked((short)time);
        this.current = checked((short)current);
        this.temperature = checked((short)temperature);
        this.amount = checked((short)amount);
        this.luminosity = checked((short)luminosity);
    }

    /// <summary>A pure number.</summary>
    public static Dimension None => default;

    /// <summary>True for a pure number.</summary>
    public bool IsNone => this == default;

    /// <summary>From whole exponents of metre, kilogram, second, ampere, kelvin, mole and candela.</summary>
    public static Dimension Of(int length = 0, int mass = 0, int time = 0, int current = 0, int temperature = 0, int amount = 0, int luminosity = 0) =>
        new(length * Parts, mass * Parts, time * Parts, current * Parts, temperature * Parts, amount * Parts, luminosity * Parts);

    /// <summary>The exponents in twelfths, in the order metre, kilogram, second, ampere, kelvin, mole, candela.</summary>
    public IReadOnlyList<int> Twelfths => [length, mass, time, current, temperature, amount, luminosity];

    /// <summary>The dimension of a product.</summary>
    public static Dimension operator *(Dimension a, Dimension b) =>
        new(a.length + b.length, a.mass + b.mass, a.time + b.time, a.current + b.current, a.temperature + b.temperature, a.amount + b.amount, a.luminosity + b.luminosity);

    /// <summary>The dimension of a quotient.</summary>
    public static Dimension operator /(Dimension a, Dimension b) => a * b.Inverse();

    /// <summary>The dimension of one over this.</summary>
    public Dimension Inverse() => new(-length, -mass, -time, -current, -temperature, -amount, -luminosity);

    /// <summary>This raised to <paramref name="numerator"/> / <paramref name="denominator"/>, or null where that is no whole number of twelfths.</summary>
    public Dimension? Power(int numerator, int denominator = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(denominator, 1);
        Span<int> raised = [length, mass, time, current, temperature, amount, luminosity];
        for (int i = 0; i < raised.Length; i++)
        {
            long scaled = (long)raised[i] * numerator;
            if (scaled % denominator != 0 || Math.Abs(scaled / denominator) > short.MaxValue) return null;
            raised[i] = (int)(scaled / denominator);
        }
        return new Dimension(raised[0], raised[1], raised[2], raised[3], raised[4], raised[5], raised[6]);
    }

    /// <summary>The coherent SI symbol, such as <c>kg·m²/s²</c>; empty for a pure number.</summary>
    public override string ToString() => DimensionText.Coherent(this);
}
