using System.Globalization;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Numbers as they are written: a sign, digits, decimals, an exponent.</summary>
internal static class Numeral
{
    /// <summary>How many characters from the start are a number or would be one but for a zero or a digit; 0 where none begins.</summary>
    public static int Length(ReadOnlySpan<char> text)
    {
        int i = text is ['-' or '+' or '−', ..] ? 1 : 0;
        int digits = Digits(text, i);
        int decimals = 0, end = i + digits;
        if (end < text.Length && text[end] == '.')
        {
            decimals = Digits(text, end + 1);
            bool member = end + 1 < text.Length && char.IsLetter(text[end + 1]);
            if (!member) end += 1 + decimals;
        }
        if (digits + decimals == 0) return 0;
        if (end < text.Length && text[end] is 'e' or 'E') end += Exponent(text[(end + 1)..]);
        return end;
    }

    /// <summary>True when the text begins with a digit, or with a sign or point before one.</summary>
    public static bool Begins(ReadOnlySpan<char> text) => text is [>= '0' and <= '9', ..] or ['+' or '-' or '−' or '±', ..] or ['.', >= '0' and <= '9', ..];

    /// <summary>The number.</summary>
    public static double Value(ReadOnlySpan<char> numeral)
    {
        if (numeral[0] != '−') return double.Parse(numeral, NumberStyles.Float, CultureInfo.InvariantCulture);
        return -double.Parse(numeral[1..], NumberStyles.Float, CultureInfo.InvariantCulture);
    }

    /// <summary>What to write instead of a number with leading zeros or without digits before or after its point; null for a good one.</summary>
    public static string? Corrected(ReadOnlySpan<char> numeral)
    {
        int sign = numeral[0] is '-' or '+' or '−' ? 1 : 0;
        int digits = Digits(numeral, sign), point = sign + digits;
        bool zeros = digits > 1 && numeral[sign] == '0';
        bool pointed = point < numeral.Length && numeral[point] == '.';
        int decimals = pointed ? Digits(numeral, point + 1) : 0;
        if (!zeros && digits > 0 && (!pointed || decimals > 0)) return null;
        ReadOnlySpan<char> whole = numeral[sign..point].TrimStart('0');
        string decimalPart = decimals > 0 ? "." + numeral.Slice(point + 1, decimals).ToString() : "";
        ReadOnlySpan<char> exponent = numeral[(point + (pointed ? 1 + decimals : 0))..];
        return $"{numeral[..sign]}{(whole.IsEmpty ? "0" : whole)}{decimalPart}{exponent}";
    }

    private static int Digits(ReadOnlySpan<char> text, int start)
    {
        int end = start;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        return end - start;
    }

    private static int Exponent(ReadOnlySpan<char> after)
    {
        int sign = after is ['-' or '+', ..] ? 1 : 0;
        int digits = Digits(after, sign);
        return digits == 0 ? 0 : 1 + sign + digits;
    }
}
