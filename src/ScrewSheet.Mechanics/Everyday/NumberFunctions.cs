using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics;

/// <summary>Powers of e, logarithms and whole numbers.</summary>
public static class NumberFunctions
{
    /// <summary>e to a power.</summary>
    /// <exception cref="DomainException">The result is too large to hold.</exception>
    [Callable("Everyday", "What is e to a power?")]
    [Formula("Exp(exponent)")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Exp(1)", "2.718282")]
    public static double Exp([Parameter("x", "", "the exponent", AtMost = 709)] double exponent) =>
        Math.Exp(Require.AtMost(exponent, 709, "", nameof(exponent)));

    /// <summary>The natural logarithm.</summary>
    /// <exception cref="DomainException">The number is not positive.</exception>
    [Callable("Everyday", "What is the natural logarithm of a number?")]
    [Formula("Ln(number)")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Ln(10)", "2.302585")]
    public static double Ln([Parameter("x", "", "the number", Above = 0)] double number) => Math.Log(Require.Above(number, 0, "", nameof(number)));

    /// <summary>The logarithm to base 10.</summary>
    /// <exception cref="DomainException">The number is not positive.</exception>
    [Callable("Everyday", "What is the logarithm to base 10 of a number?")]
    [Formula("Log10(number)")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Log10(1000)", "3.00000")]
    public static double Log10([Parameter("x", "", "the number", Above = 0)] double number) => Math.Log10(Require.Above(number, 0, "", nameof(number)));

    /// <summary>The greatest whole number not above a number.</summary>
    [Callable("Everyday", "Which whole number lies at or below a number?")]
    [NoFormula("greatest whole number not above the number")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Floor(-2.5)", "-3")]
    public static double Floor([Parameter("x", "", "the number")] double number) => Math.Floor(Require.Finite(number, nameof(number)));

    /// <summary>The smallest whole number not below a number.</summary>
    [Callable("Everyday", "Which whole number lies at or above a number?")]
    [NoFormula("smallest whole number not below the number")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Ceiling(2.1)", "3")]
    public static double Ceiling([Parameter("x", "", "the number")] double number) => Math.Ceiling(Require.Finite(number, nameof(number)));

    /// <summary>What is left of a value after taking away as many whole divisors as fit; it has the value's sign.</summary>
    /// <typeparam name="T">A number or a quantity of any kind but a temperature.</typeparam>
    /// <exception cref="DomainException">The divisor is zero, dimensions differ, or the value is a temperature.</exception>
    [Callable("Everyday", "What is left over after dividing a value into whole parts?")]
    [NoFormula("remainder of the division rounded toward zero; it has the sign of the value")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Remainder(7, 3)", "1")]
    public static T Remainder<T>(
        [Parameter("a", "", "the value")] T value,
        [Parameter("b", "", "the divisor, not zero and of the same kind")] T divisor) where T : struct
    {
        SiOf<T>.RequireNoScale(nameof(Remainder), nameof(value));
        SiOf<T>.RequireSameDimension(value, divisor, nameof(divisor));
        double by = SiOf<T>.Read(divisor, nameof(divisor));
        if (by == 0) throw new DomainException("divisor must not be zero.", nameof(divisor));
        return SiOf<T>.Make(SiOf<T>.Read(value, nameof(value)) % by, value);
    }
}
