using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics;

/// <summary>Choosing between values, bounding and rounding them: over numbers and quantities of every kind alike.</summary>
public static class Comparison
{
    /// <summary>The greater of two values of the same kind.</summary>
    /// <typeparam name="T">A number or a quantity of any kind.</typeparam>
    /// <exception cref="DomainException">The two have different dimensions, or one is not finite.</exception>
    [Callable("Everyday", "Which of two values is the greater?", NotFor = "The greatest of a series.")]
    [Formula("Max(first, second)")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Max(8 kN, 10 kN)", "10 kN")]
    public static T Max<T>(
        [Parameter("a", "", "one value")] T first,
        [Parameter("b", "", "another of the same kind")] T second) where T : struct
    {
        SiOf<T>.RequireSameDimension(first, second, nameof(second));
        return SiOf<T>.Read(first, nameof(first)) >= SiOf<T>.Read(second, nameof(second)) ? first : second;
    }

    /// <summary>The smaller of two values of the same kind.</summary>
    /// <typeparam name="T">A number or a quantity of any kind.</typeparam>
    /// <exception cref="DomainException">The two have different dimensions, or one is not finite.</exception>
    [Callable("Everyday", "Which of two values is the smaller?", NotFor = "The smallest of a series.")]
    [Formula("Min(first, second)")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Min(8 kN, 10 kN)", "8 kN")]
    public static T Min<T>(
        [Parameter("a", "", "one value")] T first,
        [Parameter("b", "", "another of the same kind")] T second) where T : struct
    {
        SiOf<T>.RequireSameDimension(first, second, nameof(second));
        return SiOf<T>.Read(first, nameof(first)) <= SiOf<T>.Read(second, nameof(second)) ? first : second;
    }

    /// <summary>The value without its sign.</summary>
    /// <typeparam name="T">A number or a quantity of any kind but a temperature.</typeparam>
    /// <exception cref="DomainException">The value is a temperature, or not finite.</exception>
    [Callable("Everyday", "How large is a value, whatever its sign?", NotFor = "Temperatures: their zero depends on the scale.")]
    [Formula("Abs(value)")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Abs(-8 kN)", "8 kN")]
    public static T Abs<T>([Parameter("x", "", "the value")] T value) where T : struct
    {
        SiOf<T>.RequireNoScale(nameof(Abs), nameof(value));
        double si = SiOf<T>.Read(value, nameof(value));
        return si >= 0 ? value : SiOf<T>.Make(-si, value);
    }

    /// <summary>The value, or the nearer bound where it lies outside.</summary>
    /// <typeparam name="T">A number or a quantity of any kind.</typeparam>
    /// <exception cref="DomainException">The bounds are in the wrong order, or dimensions differ, or a value is not finite.</exception>
    [Callable("Everyday", "What is a value once it is kept between two bounds?")]
    [Formula("Min(Max(value, lowest), highest)")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Clamp(12 kN, 2 kN, 10 kN)", "10 kN")]
    public static T Clamp<T>(
        [Parameter("x", "", "the value")] T value,
        [Parameter("x_min", "", "the lower bound")] T lowest,
        [Parameter("x_max", "", "the upper bound, not below the lower one")] T highest) where T : struct
    {
        SiOf<T>.RequireSameDimension(value, lowest, nameof(lowest));
        SiOf<T>.RequireSameDimension(value, highest, nameof(highest));
        double si = SiOf<T>.Read(value, nameof(value)), low = SiOf<T>.Read(lowest, nameof(lowest)), high = SiOf<T>.Read(highest, nameof(highest));
        if (low > high) throw new DomainException("lowest must not be greater than highest.", nameof(lowest));
        return si < low ? lowest : si > high ? highest : value;
    }

    /// <summary>The nearest whole multiple of a step; a tie goes to the even multiple.</summary>
    /// <typeparam name="T">A number or a quantity of any kind but a temperature.</typeparam>
    /// <exception cref="DomainException">The step is not positive, dimensions differ, or the value is a temperature.</exception>
    [Callable("Everyday", "What is a value rounded to a multiple of a step?", NotFor = "Showing fewer digits: give the cell a format, which keeps the full value.")]
    [NoFormula("nearest whole multiple of the step, a tie to the even one")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Round(8.47 kN, 0.1 kN)", "8.5 kN")]
    public static T Round<T>(
        [Parameter("x", "", "the value")] T value,
        [Parameter("s", "", "the step, positive and of the same kind")] T step) where T : struct
    {
        SiOf<T>.RequireNoScale(nameof(Round), nameof(value));
        SiOf<T>.RequireSameDimension(value, step, nameof(step));
        double size = Require.Above(SiOf<T>.Read(step, nameof(step)), 0, "", nameof(step));
        double si = SiOf<T>.Read(value, nameof(value));
        // A step such as 1/1000 has no exact double, its reciprocal has: 437 / 1000 is the nearest double to 0.437, 437 * 0.001 is not.
        double parts = Math.Round(1 / size);
        bool wholeParts = size < 1 && Math.Abs((parts * size) - 1) < 1e-12;
        return SiOf<T>.Make(wholeParts ? Math.Round(si * parts) / parts : Math.Round(si / size) * size, value);
    }

    /// <summary>True when two values differ by no more than a tolerance (and 1e-12 of the greater, for rounding).</summary>
    /// <typeparam name="T">A number or a quantity of any kind. For temperatures the tolerance is a difference written in K.</typeparam>
    /// <exception cref="DomainException">The tolerance is negative, dimensions differ, or a temperature tolerance was written on a scale with another zero.</exception>
    [Callable("Everyday", "Are two values equal within a tolerance?")]
    [Formula("Abs(first - second) <= tolerance + 1e-12*Max(Abs(first), Abs(second))")]
    [Source("Arithmetic", Standing.Derived)]
    [Example("Near(9.81 m/s², 9.80665 m/s², 0.01 m/s²)", "true")]
    public static bool Near<T>(
        [Parameter("a", "", "one value")] T first,
        [Parameter("b", "", "another of the same kind")] T second,
        [Parameter("tol", "", "how far apart they may be, 0 or more and of the same kind; for temperatures in K", AtLeast = 0)] T tolerance) where T : struct
    {
        SiOf<T>.RequireSameDimension(first, second, nameof(second));
        SiOf<T>.RequireSameDimension(first, tolerance, nameof(tolerance));
        double a = SiOf<T>.Read(first, nameof(first)), b = SiOf<T>.Read(second, nameof(second));
        double allowed = Require.AtLeast(SiOf<T>.Read(tolerance, nameof(tolerance)), 0, "", nameof(tolerance));
        if (typeof(T) == typeof(UnitsNet.Temperature) && allowed > 200)
            throw new DomainException("tolerance is a difference of temperatures: write it in K, not in °C.", nameof(tolerance));
        return Math.Abs(a - b) <= allowed + (1e-12 * Math.Max(Math.Abs(a), Math.Abs(b)));
    }
}
