namespace ScrewSheet.Quantities;

/// <summary>
/// A value with any dimension at all, in coherent SI: what a product, quotient, power or root becomes
/// when UnitsNet has no type for it.
/// </summary>
/// <remarks>Holds no unit. <c>default</c> is the pure number 0.</remarks>
public readonly partial record struct Quantity
{
    private Quantity(double si, Dimension dimension)
    {
        Si = si;
        Dimension = dimension;
    }

    /// <summary>The value in coherent SI.</summary>
    public double Si { get; }

    /// <summary>The powers of the base quantities.</summary>
    public Dimension Dimension { get; }

    /// <summary>From a value in coherent SI.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static Quantity FromSi(double si, Dimension dimension) =>
        double.IsFinite(si) ? new Quantity(si, dimension) : throw new ArgumentOutOfRangeException(nameof(si), si, "A quantity is finite.");
}
