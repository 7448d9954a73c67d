using System.Diagnostics.CodeAnalysis;
using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Quantities.Formatting;

/// <summary>What stands between the brackets of a cell: <c>kN, 1 decimal</c>, <c>%</c>, or for a pure number <c>2 decimals</c> alone.</summary>
public static class DisplayFormatText
{
    /// <summary>Reads the inside of the brackets; blanks around its parts do not matter.</summary>
    /// <param name="text">The text between the brackets.</param>
    /// <param name="format">The format.</param>
    /// <param name="problem">Otherwise a sentence with what to write instead.</param>
    public static bool TryParse(string text, [NotNullWhen(true)] out DisplayFormat? format, [NotNullWhen(false)] out string? problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        format = null;
        string[] parts = [.. text.Split(',').Select(part => part.Trim(' '))];
        Unit? unit = null;
        Digits? digits = null;
        problem = parts.Length > 2 ? "A format is a unit, then a comma and its digits, as in kN, 1 decimal." : null;
        if (problem is not null) return false;
        if (parts.Length == 1 && IsDigits(parts[0])) parts = ["", parts[0]];
        if (parts.Length == 1 || parts[0].Length > 0) UnitText.TryParse(parts[0], out unit, out problem);
        if (problem is null && parts.Length == 2) DigitsText.TryParse(parts[1], out digits, out problem);
        if (problem is not null) return false;
        format = new DisplayFormat(unit, digits);
        return true;
    }

    /// <summary>The canonical text.</summary>
    /// <exception cref="ArgumentException">The format says neither unit nor digits.</exception>
    public static string Write(DisplayFormat format)
    {
        ArgumentNullException.ThrowIfNull(format);
        if (format.Unit is null && format.Digits is null) throw new ArgumentException("A format says a unit, digits or both.", nameof(format));
        if (format.Digits is null) return format.Unit!.Symbol;
        string digits = DigitsText.Write(format.Digits);
        return format.Unit is null ? digits : $"{format.Unit.Symbol}, {digits}";
    }

    /// <summary>A count and a word; <c>1/s</c> has no blank.</summary>
    private static bool IsDigits(string part) => part.Length > 0 && char.IsAsciiDigit(part[0]) && part.Contains(' ', StringComparison.Ordinal);
}
