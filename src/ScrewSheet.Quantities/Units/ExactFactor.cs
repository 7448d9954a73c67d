using System.Numerics;

namespace ScrewSheet.Quantities.Units;

/// <summary>
/// A factor to coherent SI kept as a ratio of whole numbers, so that factors built from definitions carry no rounding,
/// times <paramref name="Rest"/> for what is no ratio (π, the root of a thousand).
/// </summary>
internal readonly record struct ExactFactor(BigInteger Numerator, BigInteger Denominator, double Rest = 1)
{
    public static ExactFactor One { get; } = new(1, 1);

    public static ExactFactor operator *(ExactFactor a, ExactFactor b) =>
        new ExactFactor(a.Numerator * b.Numerator, a.Denominator * b.Denominator, a.Rest * b.Rest).Reduced();

    /// <summary>This raised to a number of twelfths; a broken power of anything but one moves into <see cref="Rest"/>.</summary>
    public ExactFactor Power(int twelfths)
    {
        if (this == One) return One;
        double power = (double)twelfths / Dimension.Parts;
        if (twelfths % Dimension.Parts != 0) return new(1, 1, Math.Pow((double)Numerator / (double)Denominator * Rest, power));
        int whole = twelfths / Dimension.Parts;
        BigInteger up = BigInteger.Pow(Numerator, Math.Abs(whole)), down = BigInteger.Pow(Denominator, Math.Abs(whole));
        return whole >= 0 ? new(up, down, Math.Pow(Rest, power)) : new(down, up, Math.Pow(Rest, power));
    }

    /// <summary>Multiplier and divisor: both exact where doubles can hold them, else the nearest quotient over one.</summary>
    public (double Multiplier, double Divisor) Split()
    {
        double above = (double)Numerator, below = (double)Denominator;
        bool exact = double.IsFinite(above) && double.IsFinite(below) && new BigInteger(above) == Numerator && new BigInteger(below) == Denominator;
        return exact ? (above * Rest, below) : (above / below * Rest, 1);
    }

    private ExactFactor Reduced()
    {
        BigInteger common = BigInteger.GreatestCommonDivisor(Numerator, Denominator);
        return new(Numerator / common, Denominator / common, Rest);
    }
}
