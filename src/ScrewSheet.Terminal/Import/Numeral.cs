using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Terminal.Import;

/// <summary>Numbers as other programs write them.</summary>
internal static class Numeral
{
    /// <summary>The sign that stands before the decimals of a text that looks like one number, or null where it has no decimals or is none.</summary>
    public static char? DecimalSign(string field)
    {
        int at = field.AsSpan().IndexOfAny('.', ',');
        return at >= 0 && Read(field, field[at]) is not null ? field[at] : null;
    }

    /// <summary>The number as a workbook writes it, with all its digits; null where the field is no number. Digits in groups are none: nobody knows which sign means what.</summary>
    /// <param name="field">Without blanks around it.</param>
    /// <param name="sign">The decimal sign.</param>
    public static string? Read(string field, char sign)
    {
        ReadOnlySpan<char> text = field;
        bool negative = text.Length > 0 && text[0] is '-' or '−';
        if (text.Length > 0 && text[0] is '-' or '−' or '+') text = text[1..];
        int whole = Digits(text), decimals = 0, at = whole;
        if (at < text.Length && text[at] == sign)
        {
            decimals = Digits(text[(at + 1)..]);
            at += 1 + decimals;
        }
        if (whole + decimals == 0) return null;
        string power = Power(text[at..]);
        if (at + power.Length != text.Length) return null;
        ReadOnlySpan<char> digits = text[..whole].TrimStart('0');
        string numeral = $"{(negative ? "-" : "")}{(digits.IsEmpty ? "0" : digits)}{(decimals > 0 ? "." : "")}{text.Slice(Math.Min(whole + 1, text.Length), decimals)}{power}";
        return NumberText.TryParse(numeral, out _, out _) ? numeral : null;
    }

    /// <summary>True where what a numeral says in that unit is more than a number can hold in SI.</summary>
    public static bool IsBeyond(string numeral, Unit unit) => NumberText.TryParse(numeral, out double value, out _) && !double.IsFinite(unit.ToSi(value));

    /// <summary>True for <c>007</c>, which numbers a specimen and measures nothing.</summary>
    public static bool HasLeadingZero(string field) => field.Length > 1 && field[0] == '0' && char.IsAsciiDigit(field[1]);

    private static string Power(ReadOnlySpan<char> text)
    {
        if (text.Length < 2 || text[0] is not ('e' or 'E')) return "";
        int from = text[1] is '+' or '-' ? 2 : 1, digits = Digits(text[from..]);
        return digits == 0 ? "" : text[..(from + digits)].ToString();
    }

    private static int Digits(ReadOnlySpan<char> text)
    {
        int end = 0;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        return end;
    }
}
