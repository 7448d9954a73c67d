using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Quantities;

public readonly partial record struct Quantity
{
    /// <summary>This raised to <paramref name="numerator"/> / <paramref name="denominator"/>.</summary>
    /// <exception cref="DomainException">An even root of a negative value, zero to a negative power, or a dimension that is no whole number of twelfths.</exception>
    public Quantity Pow(int numerator, int denominator = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(denominator, 1);
        int common = Math.Max(1, Common(Math.Abs((long)numerator), denominator));
        (numerator, denominator) = (numerator / common, denominator / common);
        if (Si < 0 && denominator % 2 == 0) throw new DomainException("An even root of a negative value does not exist.");
        if (Si == 0 && numerator < 0) throw new DomainException("Zero has no negative power.");
        Dimension raised = Dimension.Power(numerator, denominator) ?? throw new DomainException($"The power {numerator}/{denominator} of a value in {Dimension} has no unit.");
        return Held(Raise(numerator, denominator), raised);
    }

    /// <summary>The square root: of an area a length.</summary>
    /// <exception cref="DomainException">The value is negative.</exception>
    public Quantity Sqrt() => Pow(1, 2);

    /// <summary>The root of that degree, 1 or more; odd roots of negative values exist.</summary>
    /// <exception cref="DomainException">An even root of a negative value, or a dimension that is no whole number of twelfths.</exception>
    public Quantity Root(int degree) => Pow(1, degree);

    private double Raise(int numerator, int denominator) => denominator switch
    {
        1 => numerator == 2 ? Si * Si : Math.Pow(Si, numerator),
        2 => numerator == 1 ? Math.Sqrt(Si) : Math.Pow(Si, numerator / 2.0),
        3 when numerator == 1 => Math.Cbrt(Si),
        _ => (Si < 0 && numerator % 2 != 0 ? -1 : 1) * Math.Pow(Math.Abs(Si), (double)numerator / denominator),
    };

    private static int Common(long a, long b) => b == 0 ? (int)Math.Min(a, int.MaxValue) : Common(b, a % b);
}
