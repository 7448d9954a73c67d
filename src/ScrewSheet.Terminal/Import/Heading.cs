using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Terminal.Import;

/// <summary>The heading of a column, taken apart.</summary>
/// <param name="Text">As it stands in the file.</param>
/// <param name="Words">Without the unit.</param>
/// <param name="Unit">The unit of the column, or null.</param>
/// <param name="IsNumber">True where the heading says that the column holds pure numbers: <c>Ratio [1]</c>.</param>
/// <param name="Problem">Why what stands in square brackets is no unit, or null.</param>
internal sealed record Heading(string Text, string Words, Unit? Unit, bool IsNumber, string? Problem)
{
    /// <summary>Reads <c>Force [kN]</c>, <c>Force (kN)</c>, <c>Force / kN</c>, <c>Force in kN</c>; square brackets always hold a unit, the others where it is one.</summary>
    public static Heading Of(string text)
    {
        if (Split(text, '[', ']') is var (words, inside)) return Measured(text, words, inside, certain: true);
        if (Split(text, '(', ')') is var (before, within)) return Measured(text, before, within, certain: false);
        foreach (string sign in (string[])[" / ", " in "])
        {
            int at = text.LastIndexOf(sign, StringComparison.Ordinal);
            if (at > 0) return Measured(text, text[..at], text[(at + sign.Length)..], certain: false);
        }
        return new Heading(text, text, null, false, null);
    }

    private static Heading Measured(string text, string words, string inside, bool certain)
    {
        string unit = inside.Trim(' ', '\u00A0');
        if (unit is "" or "1" or "-" or "–") return new Heading(text, words, null, true, null);
        if (UnitText.TryParse(unit, out Unit? read, out string? problem)) return new Heading(text, words, read, true, null);
        return new Heading(text, text, null, false, certain ? problem : null);
    }

    private static (string Words, string Inside)? Split(string text, char open, char close)
    {
        int at = text.LastIndexOf(open);
        return at >= 0 && text[^1] == close ? (text[..at].Trim(), text[(at + 1)..^1]) : null;
    }
}
