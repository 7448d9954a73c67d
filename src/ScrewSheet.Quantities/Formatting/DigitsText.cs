using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace ScrewSheet.Quantities.Formatting;

/// <summary>Digits as a file says them: <c>3 digits</c>, <c>1 decimal</c>, then optionally <c>down</c> or <c>up</c>.</summary>
public static class DigitsText
{
    private const string Remedy = "write 3 digits, 1 decimal or 2 decimals, then down or up if wanted.";

    /// <summary>Reads such a text; singular and plural are read alike.</summary>
    /// <param name="text">The text, without blanks around it.</param>
    /// <param name="digits">The digits.</param>
    /// <param name="problem">Otherwise a sentence with what to write instead.</param>
    public static bool TryParse(string text, [NotNullWhen(true)] out Digits? digits, [NotNullWhen(false)] out string? problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        digits = null;
        problem = $"\"{text}\" does not say how many digits; {Remedy}";
        string[] words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length is not (2 or 3) || !int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out int count)) return false;
        if (Significant(words[1]) is not { } significant || Direction(words.ElementAtOrDefault(2)) is not { } rounding) return false;
        problem = RangeProblem(count, significant);
        if (problem is not null) return false;
        digits = new Digits(count, significant, rounding);
        return true;
    }

    /// <summary>The canonical text.</summary>
    public static string Write(Digits digits)
    {
        ArgumentNullException.ThrowIfNull(digits);
        string word = (digits.Significant ? "digit" : "decimal") + (digits.Count == 1 ? "" : "s");
        string direction = digits.Rounding switch { Rounding.Down => " down", Rounding.Up => " up", _ => "" };
        return digits.Count.ToString(CultureInfo.InvariantCulture) + " " + word + direction;
    }

    /// <summary>One digit more than that, 15 at most; for a figure that would contradict a check beside it.</summary>
    /// <param name="digits">The digits, or null for the default.</param>
    public static Digits OneMore(Digits? digits) =>
        digits is null ? new Digits(NumberText.DefaultDigits + 1, true) : digits with { Count = Math.Min(digits.Count + 1, DecimalNumeral.Precision) };

    private static bool? Significant(string word) => word switch
    {
        "digit" or "digits" => true,
        "decimal" or "decimals" => false,
        _ => null,
    };

    private static Rounding? Direction(string? word) => word switch
    {
        null => Rounding.HalfEven,
        "down" => Rounding.Down,
        "up" => Rounding.Up,
        _ => null,
    };

    private static string? RangeProblem(int count, bool significant)
    {
        if (significant && count is < 1 or > DecimalNumeral.Precision) return $"A number shows 1 to {DecimalNumeral.Precision} digits, not {count}.";
        return !significant && count > DecimalNumeral.Precision ? $"A number shows 0 to {DecimalNumeral.Precision} decimals, not {count}." : null;
    }
}
