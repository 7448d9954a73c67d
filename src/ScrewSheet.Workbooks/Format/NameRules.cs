using System.Globalization;
using System.Text;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>What may be a name: precomposed Latin or Greek letters of one script, digits and <c>_</c>.</summary>
internal static class NameRules
{
    private const string Replaced =
        "\u1F71\u1F73\u1F75\u1F77\u1F79\u1F7B\u1F7D\u1FBB\u1FBE\u1FC9\u1FCB\u1FD3\u1FDB\u1FE3\u1FEB\u1FF9\u1FFB\u2126\u212A\u212B";

    /// <summary>The fault of a cell's or parameter's name, or null: a small or Greek letter first, no word of the language, no shape of an address.</summary>
    public static Fault? Cell(LineText line, int start, int end)
    {
        string name = line.Piece(start, end);
        Place place = line.At(start, end);
        if (Common(place, name) is { } fault) return fault;
        if (AddressLike(name) is { } instead) return NameFaults.LikeAddress(place, name, instead);
        return char.IsUpper(name[0]) && !IsGreek(name[0]) ? NameFaults.CellCapital(place, name, SmallFirst(name)) : null;
    }

    /// <summary>The fault of the name of a sheet, function or type, or null: a capital first.</summary>
    public static Fault? Capital(LineText line, int start, int end, string what)
    {
        string name = line.Piece(start, end);
        Place place = line.At(start, end);
        if (Common(place, name) is { } fault) return fault;
        if (AddressLike(name) is { } instead) return NameFaults.LikeAddress(place, name, instead);
        return char.IsUpper(name[0]) ? null : NameFaults.NeedsCapital(place, what, name, char.ToUpperInvariant(name[0]) + name[1..]);
    }

    /// <summary>True for a Greek letter.</summary>
    public static bool IsGreek(char c) => c is (>= '\u0370' and <= '\u03FF') or (>= '\u1F00' and <= '\u1FFF');

    private static Fault? Common(Place place, string name)
    {
        if (name.Length > FormatBudget.NameLength) return NameFaults.TooLong(place, Harmless(name));
        if (Ascii.IsValid(name)) return IsPlain(name) ? Word(place, name) : NameFaults.BadCharacter(place, Harmless(name));
        if (name.Contains('\u00B5')) return NameFaults.MicroSign(place, Harmless(name), Harmless(name.Replace('\u00B5', 'μ')));
        if (!IsWellFormed(name)) return NameFaults.BadCharacter(place, Harmless(name));
        if (name.Any(IsComposed)) return NameFaults.NotPrecomposed(place, Harmless(name));
        if (!IsLetter(name[0]) || name.Any(c => !IsLetter(c) && c is not (>= '0' and <= '9' or '_'))) return NameFaults.BadCharacter(place, Harmless(name));
        return name.Any(IsGreek) && name.Any(c => IsLetter(c) && !IsGreek(c)) ? NameFaults.MixedScripts(place, name) : null;
    }

    /// <summary>Combining marks, and the characters that form NFC replaces by another one. Told by hand, since the program runs without the tables of Unicode normalization.</summary>
    private static bool IsComposed(char c) => char.GetUnicodeCategory(c) == UnicodeCategory.NonSpacingMark || Replaced.Contains(c);

    private static bool IsPlain(string name)
    {
        if (!char.IsAsciiLetter(name[0])) return false;
        foreach (char c in name)
        {
            if (!char.IsAsciiLetterOrDigit(c) && c != '_') return false;
        }
        return true;
    }

    private static Fault? Word(Place place, string name) => Keywords.Has(name) ? NameFaults.Reserved(place, name) : null;

    private static string? AddressLike(string name)
    {
        int digit = name.AsSpan().IndexOfAnyInRange('0', '9');
        if (digit is not (1 or 2 or 3) || name.Length > 8) return null;
        return CellAddress.TryParse(name.ToUpperInvariant(), out _) ? $"{name[..digit]}_{name[digit..]}" : null;
    }

    /// <summary>Small as far as the capitals run together: <c>Torque</c> torque, <c>FMax</c> fMax, <c>USA</c> usa.</summary>
    internal static string SmallFirst(string name)
    {
        int capitals = 0;
        while (capitals < name.Length && char.IsUpper(name[capitals])) capitals++;
        int small = capitals > 1 && capitals < name.Length && char.IsLower(name[capitals]) ? capitals - 1 : capitals;
        return name[..small].ToLowerInvariant() + name[small..];
    }

    internal static bool IsLetter(char c)
    {
        bool cased = char.GetUnicodeCategory(c) is UnicodeCategory.UppercaseLetter or UnicodeCategory.LowercaseLetter;
        return cased && (char.IsAsciiLetter(c) || c is (>= '\u00C0' and <= '\u024F') or (>= '\u1E00' and <= '\u1EFF') || IsGreek(c));
    }

    private static bool IsWellFormed(string name)
    {
        for (int i = 0; i < name.Length; i++)
        {
            if (!char.IsSurrogate(name[i])) continue;
            if (!char.IsHighSurrogate(name[i]) || i + 1 == name.Length || !char.IsLowSurrogate(name[++i])) return false;
        }
        return true;
    }

    /// <summary>Short enough for a sentence and without characters that steer a terminal.</summary>
    internal static string Harmless(string word)
    {
        string cut = word.Length > 40 ? word[..(char.IsHighSurrogate(word[39]) ? 39 : 40)] + "…" : word;
        return Results.VisibleText.Of(cut);
    }
}
