namespace ScrewSheet.Workbooks.Format;

/// <summary>Tells words that are meant as numbers from words that are not.</summary>
internal static class Numeral
{
    /// <summary>True when the text begins with a digit, with a sign, or with a point before a digit.</summary>
    public static bool Begins(ReadOnlySpan<char> text) => text is [>= '0' and <= '9', ..] or ['+' or '-' or '−' or '±', ..] or ['.', >= '0' and <= '9', ..];

    /// <summary>True for a word that can only be a number, however badly written: digits with letters, commas, points and unit signs, no operator and no member access as in <c>10.kN</c>.</summary>
    public static bool IsMeant(ReadOnlySpan<char> word)
    {
        if (!Begins(word) || !word.ContainsAnyInRange('0', '9')) return false;
        for (int i = 1; i < word.Length; i++)
        {
            if (char.IsLetter(word[i]) && word[i - 1] == '.') return false;
            if (!char.IsLetterOrDigit(word[i]) && word[i] is not (',' or '.' or '_' or '\'' or '°' or '%' or '²' or '³' or '·')) return false;
        }
        return true;
    }
}
