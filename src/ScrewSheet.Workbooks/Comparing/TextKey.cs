namespace ScrewSheet.Workbooks.Comparing;

/// <summary>A number made from texts, the same for the same texts in the same order (FNV-1a over UTF-16 units).</summary>
internal struct TextKey
{
    private const ulong Start = 14695981039346656037, Prime = 1099511628211;

    private ulong sum;

    public TextKey() => sum = Start;

    /// <summary>The number.</summary>
    public readonly ulong Value => sum;

    /// <summary>Adds a number.</summary>
    public void Add(int number) => sum = unchecked((sum ^ (uint)number) * Prime);

    /// <summary>Adds a text, or that there is none.</summary>
    public void Add(string? text)
    {
        foreach (char c in text ?? "\0") Add(c);
        Add(-1);
    }

    /// <summary>Adds an expression as if every address in it were the same.</summary>
    public void AddWithoutAddresses(string expression)
    {
        for (int i = 0; i < expression.Length;)
        {
            int end = AddressEnd(expression, i);
            Add(end > i ? '@' : expression[i]);
            i = Math.Max(end, i + 1);
        }
        Add(-1);
    }

    /// <summary>True where an address may stand in the text.</summary>
    public static bool HasAddress(string expression)
    {
        for (int i = 0; i < expression.Length; i++)
        {
            if (AddressEnd(expression, i) > i) return true;
        }
        return false;
    }

    /// <summary>Index behind the address that begins here, or the same index where none does.</summary>
    private static int AddressEnd(string text, int start)
    {
        if (!char.IsAsciiLetterUpper(text[start]) || (start > 0 && IsOfWord(text[start - 1]))) return start;
        int letters = start;
        while (letters < text.Length && char.IsAsciiLetterUpper(text[letters])) letters++;
        int end = letters;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        bool whole = end > letters && letters - start <= 3 && (end == text.Length || !IsOfWord(text[end]));
        return whole ? end : start;
    }

    private static bool IsOfWord(char c) => char.IsLetterOrDigit(c) || c == '_';
}
