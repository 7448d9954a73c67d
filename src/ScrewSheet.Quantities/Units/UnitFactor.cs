using System.Globalization;
using System.Text;

namespace ScrewSheet.Quantities.Units;

/// <summary>One factor of a unit text: a symbol of one piece, its exponent in twelfths (above zero), and whether it stands below the stroke.</summary>
internal readonly record struct UnitFactor(Atom Atom, int Twelfths, bool Below)
{
    /// <summary>The symbol with its exponent as it is written.</summary>
    public override string ToString() => Atom.Symbol + UnitExponent.Write(Twelfths);
}

/// <summary>Exponents in unit texts: <c>²</c>, <c>2</c>, <c>^2</c>, <c>^0.5</c>; broken ones to four decimals stand for the nearest twelfth.</summary>
internal static class UnitExponent
{
    private const string Superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>Largest exponent a unit text may carry, in twelfths.</summary>
    public const int Limit = 12 * Dimension.Parts;

    /// <summary>Canonical: nothing for one, <c>² ³ ⁴</c>, else a caret.</summary>
    public static string Write(int twelfths) => twelfths switch
    {
        Dimension.Parts => "",
        2 * Dimension.Parts => "²",
        3 * Dimension.Parts => "³",
        4 * Dimension.Parts => "⁴",
        _ => "^" + ((double)twelfths / Dimension.Parts).ToString("0.####", CultureInfo.InvariantCulture),
    };

    public static bool IsSuperscript(char c) => Superscripts.Contains(c, StringComparison.Ordinal);

    /// <summary>The twelfths of an exponent without its caret, or null where it is none.</summary>
    public static int? Read(ReadOnlySpan<char> text)
    {
        StringBuilder plain = new(text.Length);
        foreach (char c in text) plain.Append(IsSuperscript(c) ? (char)('0' + Superscripts.IndexOf(c, StringComparison.Ordinal)) : c);
        if (!decimal.TryParse(plain.ToString(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal written)) return null;
        if (written <= 0 || written > (decimal)Limit / Dimension.Parts) return null; // multiplied, a long numeral would overflow
        int twelfths = (int)decimal.Round(written * Dimension.Parts);
        decimal exact = (decimal)twelfths / Dimension.Parts;
        bool meant = decimal.Round(exact, 10) == written || (decimal.Round(written, 4) == decimal.Round(exact, 4) && written.Scale >= 4);
        return twelfths > 0 && meant ? twelfths : null;
    }
}
