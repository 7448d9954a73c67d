using System.Globalization;

namespace ScrewSheet.Quantities.Declarations;

/// <summary>A value that the function cannot take or an answer that does not exist, said in a sentence a workbook's author understands.</summary>
public sealed class DomainException : ArgumentException
{
    /// <summary>With the sentence and the parameter it speaks of.</summary>
    public DomainException(string sentence, string? parameter = null) : base(sentence) => Parameter = parameter;

    /// <summary>The parameter at fault, if one is.</summary>
    public string? Parameter { get; }
}

/// <summary>Checks at the door of library functions; each refusal names the parameter, the limit and the unit.</summary>
public static class Require
{
    /// <summary>Refuses what is not finite or not greater than <paramref name="limit"/>; value and limit in <paramref name="unit"/>.</summary>
    public static double Above(double value, double limit, string unit, string parameter) =>
        value > limit && double.IsFinite(value) ? value : throw Refuse(value, "greater than", limit, unit, parameter);

    /// <summary>Refuses what is not finite or less than <paramref name="limit"/>; value and limit in <paramref name="unit"/>.</summary>
    public static double AtLeast(double value, double limit, string unit, string parameter) =>
        value >= limit && double.IsFinite(value) ? value : throw Refuse(value, "at least", limit, unit, parameter);

    /// <summary>Refuses what is not finite or greater than <paramref name="limit"/>; value and limit in <paramref name="unit"/>.</summary>
    public static double AtMost(double value, double limit, string unit, string parameter) =>
        value <= limit && double.IsFinite(value) ? value : throw Refuse(value, "at most", limit, unit, parameter);

    /// <summary>Refuses what is not finite or not less than <paramref name="limit"/>; value and limit in <paramref name="unit"/>.</summary>
    public static double Below(double value, double limit, string unit, string parameter) =>
        value < limit && double.IsFinite(value) ? value : throw Refuse(value, "less than", limit, unit, parameter);

    /// <summary>Refuses NaN and infinity.</summary>
    public static double Finite(double value, string parameter) =>
        double.IsFinite(value) ? value : throw new DomainException($"{parameter} must be a finite number.", parameter);

    private static DomainException Refuse(double value, string relation, double limit, string unit, string parameter)
    {
        string blank = unit.Length == 0 ? "" : " ";
        string given = double.IsFinite(value) ? value.ToString("G6", CultureInfo.InvariantCulture) + blank + unit : "not a finite number";
        return new DomainException($"{parameter} must be {relation} {limit.ToString("G6", CultureInfo.InvariantCulture)}{blank}{unit}; it is {given}.", parameter);
    }
}
