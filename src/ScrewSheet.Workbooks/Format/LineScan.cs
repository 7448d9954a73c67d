namespace ScrewSheet.Workbooks.Format;

/// <summary>Where the parts of a line begin, found in one pass that knows quotes and brackets.</summary>
internal readonly ref struct LineScan
{
    private LineScan(int sign, int quote, int openQuote, int remark, int openBracket)
    {
        OpenBracket = openBracket;
        Sign = sign;
        Quote = quote;
        OpenQuote = openQuote;
        Remark = remark;
    }

    /// <summary>Index of the first <c>=</c> outside quotes and brackets, or -1.</summary>
    public int Sign { get; }

    /// <summary>Index of the first quote outside brackets, or -1.</summary>
    public int Quote { get; }

    /// <summary>Index of a quote that is not closed, or -1.</summary>
    public int OpenQuote { get; }

    /// <summary>Index of the first <c>//</c> outside quotes, or the end of the line.</summary>
    public int Remark { get; }

    /// <summary>Index of a bracket that is not closed and has a <c>=</c> behind it, so that the sign cannot be seen; or -1.</summary>
    public int OpenBracket { get; }

    /// <summary>Scans from <paramref name="start"/> on.</summary>
    public static LineScan Of(string text, int start)
    {
        int sign = -1, quote = -1, depth = 0, bracket = -1, i = start;
        bool hidden = false;
        for (; i < text.Length; i++)
        {
            switch (text[i])
            {
                case '"':
                    if (depth == 0 && quote < 0) quote = i;
                    int close = CloseOf(text, i);
                    if (close < 0) return new LineScan(sign, quote, i, text.Length, hidden || (depth > 0 && text.IndexOf('=', i) >= 0) ? bracket : -1);
                    i = close;
                    break;
                case '/' when i + 1 < text.Length && text[i + 1] == '/': return new LineScan(sign, quote, -1, i, hidden ? bracket : -1);
                case '(' or '[' or '{':
                    if (depth++ == 0) bracket = i;
                    break;
                case ')' or ']' or '}':
                    depth = Math.Max(0, depth - 1);
                    hidden &= depth > 0;
                    break;
                case '=':
                    if (depth > 0) hidden = true;
                    else if (sign < 0) sign = i;
                    break;
            }
        }
        return new LineScan(sign, quote, -1, i, hidden ? bracket : -1);
    }

    /// <summary>Index of the quote that closes the one at <paramref name="open"/>, or -1.</summary>
    public static int CloseOf(string text, int open)
    {
        for (int i = open + 1; i < text.Length; i++)
        {
            if (text[i] == '\\') i++;
            else if (text[i] == '"') return i;
        }
        return -1;
    }

    /// <summary>Index of the blank before the last <c>gives</c> outside quotes and brackets, or -1; where brackets do not pair, the last outside quotes.</summary>
    public static int Gives(string text, int start, int end)
    {
        if (text.AsSpan(start, end - start).IndexOf("gives", StringComparison.Ordinal) < 0) return -1;
        int outside = -1, anywhere = -1, depth = 0;
        for (int i = start; i < end; i++)
        {
            if (text[i] == '"') i = Math.Max(i, CloseOf(text, i));
            else if (text[i] is '(' or '[' or '{') depth++;
            else if (text[i] is ')' or ']' or '}') depth = Math.Max(0, depth - 1);
            else if (IsWord(text, i, end, "gives"))
            {
                anywhere = i - 1;
                if (depth == 0) outside = i - 1;
            }
        }
        return depth == 0 ? outside : Math.Max(outside, anywhere);
    }

    /// <summary>Index of the first such word with blanks around it outside quotes and brackets, or -1.</summary>
    public static int Word(string text, int start, int end, string word)
    {
        int depth = 0;
        for (int i = start; i < end; i++)
        {
            if (text[i] == '"') i = Math.Max(i, CloseOf(text, i));
            else if (text[i] is '(' or '[' or '{') depth++;
            else if (text[i] is ')' or ']' or '}') depth--;
            else if (depth <= 0 && IsWord(text, i, end, word)) return i;
        }
        return -1;
    }

    /// <summary>Index of the first <c>±</c> or <c>+-</c> outside quotes, or -1.</summary>
    public static int PlusMinus(string text, int start, int end)
    {
        for (int i = start; i < end; i++)
        {
            if (text[i] == '"') i = Math.Max(i, CloseOf(text, i));
            else if (text[i] == '±' || (text[i] == '+' && i + 1 < end && text[i + 1] == '-')) return i;
        }
        return -1;
    }

    private static bool IsWord(string text, int at, int end, string word) =>
        at > 0 && Blank.Is(text[at - 1]) && text.AsSpan(at, end - at).StartsWith(word, StringComparison.Ordinal)
        && (at + word.Length == end || Blank.Is(text[at + word.Length]));
}
