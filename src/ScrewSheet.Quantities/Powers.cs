using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Quantities;

/// <summary>Powers and roots of numbers and quantities; any named quantity fits where a <see cref="Quantity"/> is wanted, and the answer fits where its dimension has a name.</summary>
public static class Powers
{
    /// <summary>The square root of a number.</summary>
    /// <exception cref="DomainException">The number is negative.</exception>
    public static double Sqrt(double value) => value >= 0 ? Math.Sqrt(value) : throw new DomainException("The square root of a negative number does not exist.", nameof(value));

    /// <summary>The square root of a quantity: of an area a length.</summary>
    /// <exception cref="DomainException">The value is negative.</exception>
    public static Quantity Sqrt(Quantity value) => value.Sqrt();

    /// <summary>The cube root of a number; negative ones have one.</summary>
    public static double Cbrt(double value) => Math.Cbrt(value);

    /// <summary>The cube root of a quantity: of a volume a length.</summary>
    public static Quantity Cbrt(Quantity value) => value.Root(3);

    /// <summary>The root of that degree, 1 or more, of a number.</summary>
    /// <exception cref="DomainException">An even root of a negative number, or a degree below 1.</exception>
    public static double Root(double value, int degree) => Root(Quantity.FromSi(value, Dimension.None), degree).Si;

    /// <summary>The root of that degree, 1 or more, of a quantity.</summary>
    /// <exception cref="DomainException">An even root of a negative value, a degree below 1, or no unit for the answer.</exception>
    public static Quantity Root(Quantity value, int degree) =>
        degree >= 1 ? value.Root(degree) : throw new DomainException("The degree of a root is 1 or more.", nameof(degree));

    /// <summary>A number raised to a number.</summary>
    /// <exception cref="DomainException">A broken power of a negative number, a negative power of zero, or an answer too large.</exception>
    public static double Pow(double value, double exponent)
    {
        if (value == 0 && exponent < 0) throw new DomainException("Zero has no negative power.", nameof(exponent));
        double raised = Math.Pow(value, exponent);
        if (double.IsNaN(raised)) throw new DomainException("A broken power of a negative number does not exist.", nameof(exponent));
        return double.IsFinite(raised) ? raised : throw new DomainException("The power is beyond what a number can hold.", nameof(exponent));
    }

    /// <summary>A quantity raised to a power that is a whole number of twelfths: 4, 0.5, 2.0 / 3.</summary>
    /// <exception cref="DomainException">Another power of anything but a pure number, an even root of a negative value, a negative power of zero.</exception>
    public static Quantity Pow(Quantity value, double exponent)
    {
        if (value.Dimension.IsNone) return Quantity.FromSi(Pow(value.Si, exponent), Dimension.None);
        double twelfths = exponent * Dimension.Parts, whole = Math.Round(twelfths);
        bool exact = Math.Abs(twelfths - whole) <= 1e-12 * Math.Max(1, Math.Abs(twelfths)) && Math.Abs(whole) <= short.MaxValue;
        return exact ? value.Pow((int)whole, Dimension.Parts) : throw new DomainException("A power of a quantity is a ratio of whole numbers such as 0.5 or 2/3.", nameof(exponent));
    }
}
