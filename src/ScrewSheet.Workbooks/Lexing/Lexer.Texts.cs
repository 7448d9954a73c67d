using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Workbooks.Lexing;

/// <summary>Texts and composed texts.</summary>
public sealed partial class Lexer
{
    private void ReadText()
    {
        if (inHole)
        {
            Refuse(LexingFaults.NestedText(Here()));
            return;
        }
        int start = at;
        if (text.AsSpan(at).StartsWith("\"\"\"", StringComparison.Ordinal))
        {
            Refuse(LexingFaults.TextForm(Here(3)));
            return;
        }
        at++;
        string? words = Words(start, stopAtBraces: false);
        if (words is null) return;
        int end = at + 1;
        at = start;
        Add(TokenKind.Text, end - start, words);
    }

    private void ReadComposed()
    {
        int start = at;
        if (inHole) Refuse(LexingFaults.NestedText(Here()));
        else if (at + 1 >= text.Length || text[at + 1] != '"' || text.AsSpan(at + 1).StartsWith("\"\"\"", StringComparison.Ordinal)) Refuse(LexingFaults.TextForm(Here()));
        else if (Pieces(start) is { } pieces)
        {
            int end = at + 1;
            at = start;
            Add(new Token(TokenKind.ComposedText, start, end - start, text[start..end]) { Pieces = pieces });
        }
    }

    private ImmutableArray<ComposedPiece>? Pieces(int start)
    {
        at += 2;
        var pieces = ImmutableArray.CreateBuilder<ComposedPiece>();
        while (Words(start, stopAtBraces: true) is { } words)
        {
            if (words.Length > 0) pieces.Add(new ComposedPiece(words, [], null));
            if (text[at] == '"') return pieces.ToImmutable();
            if (Hole() is not { } hole) return null;
            pieces.Add(hole);
        }
        return null;
    }

    private ComposedPiece? Hole()
    {
        int open = at;
        Lexer inner = new(text, at + 1, true, count);
        inner.Run();
        fault ??= inner.fault;
        at = inner.at;
        if (fault is null && (at >= text.Length || text[at] is not ('}' or ':'))) Refuse(LexingFaults.OpenHole(new(0, open + 1, 1)));
        if (fault is null && inner.tokens.Count == 0) Refuse(LexingFaults.EmptyHole(new(0, open + 1, 1)));
        if (fault is not null) return null;
        DisplayFormat? format = null;
        if (text[at] == ':')
        {
            int close = text.IndexOf('}', at);
            if (close < 0) Refuse(LexingFaults.OpenHole(new(0, open + 1, 1)));
            else if (!DisplayFormatText.TryParse(text[(at + 1)..close].Trim(), out format, out string? problem)) Refuse(LexingFaults.HoleFormat(problem!, new(0, at + 2, close - at - 1)));
            else at = close;
            if (fault is not null) return null;
        }
        at++;
        return new ComposedPiece("", inner.tokens.ToImmutable(), format);
    }

    /// <summary>Reads up to the closing quote, or up to a hole; stands on it afterwards. Null after a fault.</summary>
    private string? Words(int start, bool stopAtBraces)
    {
        StringBuilder words = new();
        for (; at < text.Length; at++)
        {
            char c = text[at];
            if (c == '"') return words.ToString();
            if (stopAtBraces && c is '{' or '}')
            {
                if (at + 1 < text.Length && text[at + 1] == c) at++;
                else if (c == '{') return words.ToString();
                else return Fail(LexingFaults.LoneBrace(Here()));
            }
            if (c != '\\') words.Append(c);
            else if (Escape() is { } escaped) words.Append(escaped);
            else return null;
        }
        return Fail(LexingFaults.OpenText(new(0, start + 1, 1)));
    }

    private char? Escape()
    {
        char after = at + 1 < text.Length ? text[at + 1] : '\0';
        if (after == 'u' && at + 6 <= text.Length && ushort.TryParse(text.AsSpan(at + 2, 4), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out ushort code))
        {
            at += 5;
            return (char)code;
        }
        char? plain = after switch { '\\' => '\\', '"' => '"', 'n' => '\n', 't' => '\t', _ => null };
        if (plain is null) Refuse(LexingFaults.Escape(after == '\0' ? "\\" : "\\" + after, Here(2)));
        else at++;
        return plain;
    }

    private string? Fail(Diagnostics.Fault reason)
    {
        Refuse(reason);
        return null;
    }
}
