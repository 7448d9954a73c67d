using System.Globalization;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics.Common;

/// <summary>Ways between values of any kind and coherent SI.</summary>
internal static class Values
{
    /// <summary>The value in coherent SI.</summary>
    /// <exception cref="DomainException">Not finite.</exception>
    public static double Si<T>(T value, string parameter) where T : struct => Require.Finite(value switch
    {
        double number => number,
        Quantity quantity => quantity.Si,
        _ => (QuantityKinds.ByType(typeof(T)) ?? throw Unknown<T>()).ToSi(value),
    }, parameter);

    /// <summary>The way back from coherent SI to values like <paramref name="like"/>.</summary>
    public static Func<double, T> Maker<T>(T like) where T : struct
    {
        if (typeof(T) == typeof(double)) return si => (T)(object)Answer(si);
        if (like is Quantity quantity) return si => (T)(object)Quantity.FromSi(Answer(si), quantity.Dimension);
        QuantityKind kind = QuantityKinds.ByType(typeof(T)) ?? throw Unknown<T>();
        return si => (T)(object)kind.FromSi(Answer(si));
    }

    /// <summary>A finite answer, or a sentence.</summary>
    public static double Answer(double si) =>
        double.IsFinite(si) ? si : throw new DomainException("The numbers are too large or too small to be worked with: the answer is not finite.");

    /// <summary>Refuses a limit whose dimension is not the sample's.</summary>
    public static double SiLike<T>(Series<T> sample, T value, string parameter) where T : struct =>
        value is Quantity quantity && quantity.Dimension != sample.Dimension
            ? throw new DomainException($"{parameter} must be of the same kind as the sample.", parameter)
            : Si(value, parameter);

    /// <summary>A whole number that fits an int and is at least <paramref name="least"/>.</summary>
    public static int Whole(double value, int least, string parameter)
    {
        Require.AtMost(Require.AtLeast(value, least, "", parameter), 1_000_000, "", parameter);
        return value == Math.Floor(value) ? (int)value : throw new DomainException($"{parameter} must be a whole number; it is {Text(value)}.", parameter);
    }

    /// <summary>A share strictly between 0 and 1, with the remedy for a percent figure.</summary>
    public static double Share(double value, string parameter)
    {
        if (value > 0 && value < 1) return value;
        string hint = value is >= 1 and <= 100 ? $" Write {Text(value / 100)} or {Text(value)} % for {Text(value)} per cent." : "";
        throw new DomainException($"{parameter} must lie between 0 and 1, both excluded; it is {Text(value)}.{hint}", parameter);
    }

    /// <summary>A short numeral for sentences.</summary>
    public static string Text(double value) => value.ToString("G6", CultureInfo.InvariantCulture);

    /// <summary>A share as a percent figure for sentences, rounded down so that it never claims too much.</summary>
    public static string Percent(double share) => (Math.Floor((share * 1000) + 1e-9) / 10).ToString("0.#", CultureInfo.InvariantCulture) + " %";

    private static ArgumentException Unknown<T>() => new($"{typeof(T).Name} is no kind of quantity here.");
}
