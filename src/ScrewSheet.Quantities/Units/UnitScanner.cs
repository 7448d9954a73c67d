using System.Collections.Frozen;

namespace ScrewSheet.Quantities.Units;

/// <summary>Finds where a unit text that follows a number ends.</summary>
internal static class UnitScanner
{
    /// <summary>Words that may follow a number and are no unit.</summary>
    private static readonly FrozenSet<string> Words = FrozenSet.Create(
        StringComparer.Ordinal,
        "when", "switch", "is", "as", "and", "or", "with", "within", "to", "step", "over", "log", "by", "rectangular", "triangular", "k", "dof", "gives", "source");

    public static int Length(ReadOnlySpan<char> text)
    {
        int at = text.StartsWith("1/") && IsLetter(text, 2) ? 1 : Piece(text, 0);
        if (at == 0 || Words.Contains(LeadingWord(text))) return 0;
        while (at < text.Length)
        {
            char c = text[at];
            bool dot = c is '.' or '·' or '⋅' or '∙' or '•', stroke = c == '/';
            if (stroke && Bracketed(text[(at + 1)..]) is > 0 and int inside) return at + 1 + inside;
            if ((!dot && !stroke) || !IsLetter(text, at + 1)) break;
            at = Piece(text, at + 1);
        }
        return at;
    }

    /// <summary>The end of a symbol with its exponent that begins at <paramref name="at"/>; the same place where none begins.</summary>
    private static int Piece(ReadOnlySpan<char> text, int at)
    {
        if (!IsLetter(text, at)) return at;
        int end = at + 1;
        if (text[at] == '%') return end;
        while (IsLetter(text, end) || (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == '_' || IsRaised(text[end])))) end++;
        return Caret(text, end);
    }

    private static int Caret(ReadOnlySpan<char> text, int at)
    {
        if (at + 1 >= text.Length || text[at] != '^' || !char.IsAsciiDigit(text[at + 1])) return at;
        int end = at + 1;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || (text[end] == '.' && end + 1 < text.Length && char.IsAsciiDigit(text[end + 1])))) end++;
        return end;
    }

    /// <summary>The length of <c>(m·s)</c>, taken only with a raised dot inside, which no expression has; else 0.</summary>
    private static int Bracketed(ReadOnlySpan<char> text)
    {
        int close = text.IndexOf(')');
        if (close < 2 || text[0] != '(') return 0;
        ReadOnlySpan<char> inside = text[1..close];
        bool dotted = inside.ContainsAny("·⋅∙•");
        return dotted && !inside.Contains('/') && Length(inside) == inside.Length ? close + 1 : 0;
    }

    private static string LeadingWord(ReadOnlySpan<char> text)
    {
        int end = 0;
        while (end < text.Length && char.IsAsciiLetter(text[end])) end++;
        return text[..end].ToString();
    }

    private static bool IsLetter(ReadOnlySpan<char> text, int at) =>
        at < text.Length && (char.IsLetter(text[at]) || text[at] is '°' or '%' or '˚' or '℃');

    private static bool IsRaised(char c) => UnitExponent.IsSuperscript(c) || c == '⁻';
}
