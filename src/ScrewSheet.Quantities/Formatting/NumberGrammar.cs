using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities.Formatting;

/// <summary>What a number looks like, and what to write where one does not.</summary>
internal static class NumberGrammar
{
    /// <summary>Digits without a leading zero, decimals, an exponent: the length of the longest such start.</summary>
    public static int Scan(ReadOnlySpan<char> text)
    {
        int end = Digits(text, 0);
        if (end == 0 || (end > 1 && text[0] == '0')) return 0;
        if (end < text.Length && text[end] == '.' && Digits(text, end + 1) > end + 1) end = Digits(text, end + 1);
        if (end >= text.Length || text[end] is not ('e' or 'E')) return end;
        int power = end + 1 < text.Length && text[end + 1] is '+' or '-' ? end + 2 : end + 1;
        int last = Digits(text, power);
        return last > power ? last : end;
    }

    /// <summary>Why a text is no number.</summary>
    public static string Problem(string text, string unsigned)
    {
        string sign = text[..^unsigned.Length].Contains('-', StringComparison.Ordinal) || text.StartsWith('−') ? "-" : "";
        if (unsigned.Length == 0) return text.Length == 0 ? "The number is missing." : $"\"{text}\" has a sign and no number.";
        if (text.Length - unsigned.Length > 1) return $"\"{text}\" has two signs; write one.";
        if (unsigned.StartsWith("0x", StringComparison.OrdinalIgnoreCase) || unsigned.StartsWith("0b", StringComparison.OrdinalIgnoreCase)) return $"\"{text}\" is not a decimal number; numbers are decimal.";
        return Commas(text, sign, unsigned) ?? Zeros(text, sign, unsigned) ?? Trailing(text, sign, unsigned) ?? $"\"{text}\" is not a number.";
    }

    /// <summary>Why a well-formed number cannot be held, or null.</summary>
    public static string? RangeProblem(string text, string unsigned, double value)
    {
        if (double.IsInfinity(value)) return $"\"{text}\" is larger than a number can be.";
        bool written = unsigned.TakeWhile(c => c is not ('e' or 'E')).Any(c => c is >= '1' and <= '9');
        return value == 0 && written ? $"\"{text}\" is smaller than a number can be; write 0." : null;
    }

    private static string? Commas(string text, string sign, string unsigned)
    {
        string[] groups = unsigned.Split(',');
        string joined = string.Concat(groups);
        if (groups.Length == 1 || groups.Any(part => part.Length == 0)) return null;
        bool whole = IsNumber(joined), pointed = groups.Length == 2 && IsNumber($"{groups[0]}.{groups[1]}");
        bool grouped = groups.Skip(1).All(part => part.Split('.')[0].Length == 3);
        if (whole && pointed && grouped) return $"\"{text}\" can be read in two ways; write {sign}{groups[0]}.{groups[1]} or {sign}{joined}.";
        if (pointed) return $"\"{text}\": the decimal sign is a point; write {sign}{groups[0]}.{groups[1]}.";
        return whole ? $"\"{text}\": digits are not grouped; write {sign}{joined}." : null;
    }

    private static string? Zeros(string text, string sign, string unsigned)
    {
        string bare = new([.. unsigned.Where(c => c is not ('_' or '\'' or '\u00A0' or '\u202F'))]);
        if (bare != unsigned && IsNumber(bare)) return $"\"{text}\": digits are not grouped; write {sign}{bare}.";
        string stripped = unsigned.TrimStart('0');
        if (stripped.Length == 0 || !char.IsAsciiDigit(stripped[0])) stripped = "0" + stripped;
        if (stripped.EndsWith('.')) stripped = stripped[..^1];
        if (stripped == unsigned || !IsNumber(stripped)) return null;
        string why = unsigned[0] == '.' ? "a digit stands before the point" : unsigned[^1] == '.' ? "digits stand behind the point" : "a number has no leading zeros";
        return $"\"{text}\": {why}; write {sign}{stripped}.";
    }

    private static string? Trailing(string text, string sign, string unsigned)
    {
        int end = Scan(unsigned);
        if (end == 0) return null;
        string rest = unsigned[end..], number = sign + unsigned[..end];
        if (UnitText.TryParse(rest, out Unit? unit, out _)) return $"\"{text}\": a blank stands between number and unit; write {number} {unit}.";
        return rest.All(char.IsAsciiLetter) ? $"\"{text}\": a number has no suffix; write {number}." : null;
    }

    private static bool IsNumber(string text) => text.Length > 0 && Scan(text) == text.Length;

    private static int Digits(ReadOnlySpan<char> text, int at)
    {
        while (at < text.Length && char.IsAsciiDigit(text[at])) at++;
        return at;
    }
}
