using System.Globalization;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>Values to begin with where a given is to be varied: its limits, else twice its tolerance to either side, else half of it to one and a half, in round steps.</summary>
internal static class SuggestedValues
{
    private const int Steps = 8;

    /// <summary>As a <c>vary</c> line says them, without the name.</summary>
    public static string Of(CellResult given)
    {
        var content = (GivenContent)given.Cell.Content;
        return content.Literal switch
        {
            NumberLiteral number => OfNumber(content, number),
            TruthLiteral => "true, false",
            _ => given.Value is OptionValue option ? string.Join(", ", Enum.GetNames(option.Value.GetType()).Select(name => $"{option.Value.GetType().Name}.{name}")) : content.Text,
        };
    }

    /// <summary>A value as a given is written.</summary>
    public static string Write(double value, Unit? unit) => unit is { Symbol.Length: > 0 } ? $"{NumberText.Exact(value)} {unit}" : NumberText.Exact(value);

    private static string OfNumber(GivenContent content, NumberLiteral number)
    {
        (double from, double to) = Range(content, number);
        double step = Round((to - from) / Steps);
        double low = Plain(Math.Ceiling((from / step) - 1e-9) * step), high = Plain(Math.Floor((to / step) + 1e-9) * step);
        if (content.Within is not null) (low, high) = (Plain(from), Plain(to));
        // a step of a temperature is a difference and has another unit, so there the steps are counted
        return number.Unit is { Offset: not 0 } ? $"{Write(low, number.Unit)} to {Write(high, number.Unit)} over {Steps} steps" : $"{Write(low, number.Unit)} to {Write(high, number.Unit)} step {Write(step, number.Unit)}";
    }

    private static (double From, double To) Range(GivenContent content, NumberLiteral number)
    {
        double InUnit(double si) => number.Unit?.FromSi(si) ?? si;
        if (content.Within is { } limits) return (InUnit(limits.FromSi), InUnit(limits.ToSi));
        double half = content.Tolerance is not { } tolerance ? 0 : tolerance.Relative ? Math.Abs(number.Value) * tolerance.HalfWidthSi : number.Unit is { } unit ? QuantityText.DifferenceInUnit(tolerance.HalfWidthSi, unit) : tolerance.HalfWidthSi;
        if (half > 0) return (number.Value - (2 * half), number.Value + (2 * half));
        return number.Value == 0 ? (0, 1) : (Math.Min(0.5 * number.Value, 1.5 * number.Value), Math.Max(0.5 * number.Value, 1.5 * number.Value));
    }

    /// <summary>The nearest of 1, 2, 5, 10 and so on.</summary>
    private static double Round(double step)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(step)));
        double first = (step / power) switch { < 1.5 => 1, < 3.5 => 2, < 7.5 => 5, _ => 10 };
        return Plain(first * power);
    }

    private static double Plain(double value) => double.Parse(value.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
