using System.Globalization;

namespace ScrewSheet.Quantities.Formatting;

/// <summary>Numbers as text, in the invariant culture: minus is <c>-</c>, the decimal sign a point, nothing is grouped.</summary>
public static class NumberText
{
    /// <summary>What a cell shows that does not say: four significant digits, whole digits never cut, zeros at the end left off.</summary>
    public const int DefaultDigits = 4;

    /// <summary>From this power of ten on, and below <see cref="SmallestPlain"/>, numbers are written with an exponent.</summary>
    private const int LargestPlain = DecimalNumeral.Precision, SmallestPlain = -5;

    /// <summary>The shortest text that reads back as the same number; for saving a given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static string Exact(double value)
    {
        DecimalNumeral numeral = DecimalNumeral.Of(value);
        string text = IsPlain(numeral) ? numeral.Plain(0) : numeral.Scientific(1);
        bool same = double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture) == value;
        return same ? text : value.ToString("R", CultureInfo.InvariantCulture).Replace("E+", "e", StringComparison.Ordinal).Replace("E", "e", StringComparison.Ordinal);
    }

    /// <summary>
    /// The number rounded once, from its 15-digit numeral. Zeros at the end are kept: <c>425.0</c> with one decimal. A rounded zero has no sign.
    /// </summary>
    /// <param name="value">A finite number.</param>
    /// <param name="digits">How many, or null for the default.</param>
    /// <exception cref="ArgumentOutOfRangeException">The value is not finite.</exception>
    public static string Format(double value, Digits? digits)
    {
        DecimalNumeral numeral = DecimalNumeral.Of(value);
        if (digits is null) return FormatDefault(numeral, DefaultDigits);
        if (digits.Significant) return FormatSignificant(numeral.Keep(digits.Count, digits.Rounding), digits.Count);
        if (numeral.Exponent >= LargestPlain) return numeral.Scientific(1);
        return numeral.Keep(numeral.Exponent + 1 + digits.Count, digits.Rounding).Plain(digits.Count);
    }

    /// <summary>Reads a whole text as a number: an optional sign (<c>-</c> or <c>−</c>), digits, decimals, exponent.</summary>
    /// <param name="text">The text, without blanks around it.</param>
    /// <param name="value">The number; always finite.</param>
    /// <param name="problem">Otherwise a sentence with what to write instead.</param>
    public static bool TryParse(string text, out double value, out string? problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        string plain = text.Replace('−', '-');
        string unsigned = plain.TrimStart('-', '+');
        value = 0;
        problem = plain.Length - unsigned.Length > 1 || NumberGrammar.Scan(unsigned) != unsigned.Length || unsigned.Length == 0 ? NumberGrammar.Problem(text, unsigned) : null;
        if (problem is not null) return false;
        value = double.Parse(plain, NumberStyles.Float, CultureInfo.InvariantCulture);
        problem = NumberGrammar.RangeProblem(text, unsigned, value);
        if (problem is not null) value = 0;
        return problem is null;
    }

    /// <summary>How many characters from the start are an unsigned number; 0 where none is. Takes an exponent only with its digits.</summary>
    public static int Scan(ReadOnlySpan<char> text) => NumberGrammar.Scan(text);

    private static bool IsPlain(DecimalNumeral numeral) => numeral.Exponent is < LargestPlain and >= SmallestPlain;

    private static string FormatDefault(DecimalNumeral numeral, int figures)
    {
        DecimalNumeral kept = numeral.Keep(IsPlain(numeral) ? Math.Max(figures, numeral.Exponent + 1) : figures, Rounding.HalfEven);
        return IsPlain(kept) ? kept.Plain(0) : kept.Scientific(1);
    }

    private static string FormatSignificant(DecimalNumeral kept, int count)
    {
        if (kept.Figures.Length == 0) return "0";
        return IsPlain(kept) ? kept.Plain(Math.Max(0, count - 1 - kept.Exponent)) : kept.Scientific(count);
    }
}
