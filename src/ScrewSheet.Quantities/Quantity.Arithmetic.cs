namespace ScrewSheet.Quantities;

public readonly partial record struct Quantity
{
    /// <summary>The product.</summary>
    /// <exception cref="OverflowException">It is beyond what a number can hold.</exception>
    public static Quantity operator *(Quantity left, Quantity right) => Held(left.Si * right.Si, left.Dimension * right.Dimension);

    /// <summary>The multiple.</summary>
    public static Quantity operator *(Quantity left, double right) => Held(left.Si * right, left.Dimension);

    /// <summary>The multiple.</summary>
    public static Quantity operator *(double left, Quantity right) => Held(left * right.Si, right.Dimension);

    /// <summary>The quotient.</summary>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    /// <exception cref="OverflowException">It is beyond what a number can hold.</exception>
    public static Quantity operator /(Quantity left, Quantity right) => Held(left.Si / NotZero(right.Si), left.Dimension / right.Dimension);

    /// <summary>The part.</summary>
    public static Quantity operator /(Quantity left, double right) => Held(left.Si / NotZero(right), left.Dimension);

    /// <summary>The reciprocal times a number.</summary>
    public static Quantity operator /(double left, Quantity right) => Held(left / NotZero(right.Si), right.Dimension.Inverse());

    /// <summary>The sum.</summary>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static Quantity operator +(Quantity left, Quantity right) => Held(left.Si + right.Si, Shared(left, right));

    /// <summary>The difference.</summary>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static Quantity operator -(Quantity left, Quantity right) => Held(left.Si - right.Si, Shared(left, right));

    /// <summary>The opposite.</summary>
    public static Quantity operator -(Quantity value) => new(-value.Si, value.Dimension);

    /// <summary>True when strictly less.</summary>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static bool operator <(Quantity left, Quantity right) => Shared(left, right) == left.Dimension && left.Si < right.Si;

    /// <summary>True when strictly greater.</summary>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static bool operator >(Quantity left, Quantity right) => right < left;

    /// <summary>True when less, or equal within <see cref="SiOrder.Slack"/>.</summary>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static bool operator <=(Quantity left, Quantity right) => Shared(left, right) == left.Dimension && SiOrder.AtMost(left.Si, right.Si);

    /// <summary>True when greater, or equal within <see cref="SiOrder.Slack"/>.</summary>
    /// <exception cref="InvalidOperationException">The dimensions differ.</exception>
    public static bool operator >=(Quantity left, Quantity right) => right <= left;

    private static Dimension Shared(Quantity left, Quantity right) => left.Dimension == right.Dimension
        ? left.Dimension
        : throw new InvalidOperationException($"{Name(left.Dimension)} and {Name(right.Dimension)} cannot be added or compared.");

    private static string Name(Dimension dimension) => QuantityKinds.DefaultOf(dimension)?.Phrase ?? (dimension.IsNone ? "a number" : $"a value in {dimension}");

    private static double NotZero(double divisor) => divisor != 0 ? divisor : throw new DivideByZeroException("The divisor is zero.");

    private static Quantity Held(double si, Dimension dimension) =>
        double.IsFinite(si) ? new Quantity(si, dimension) : throw new OverflowException("The value is beyond what a number can hold.");
}
