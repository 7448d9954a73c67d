using System.Globalization;
using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Workbooks.Lexing;

/// <summary>Numbers and unit literals.</summary>
public sealed partial class Lexer
{
    private void ReadNumber()
    {
        int start = at, end = Digits(at);
        if (end + 1 < text.Length && text[end] == '.' && char.IsAsciiDigit(text[end + 1])) end = Digits(end + 1);
        if (Exponent(end) is { } exponentEnd) end = exponentEnd;
        string written = text[start..end];
        if (Refused(written, end)) return;
        double value = double.Parse(written, CultureInfo.InvariantCulture);
        if (!double.IsFinite(value)) Refuse(LexingFaults.TooLarge(written, Here(written.Length)));
        else if (!ReadSuffix(value, end) && !ReadUnit(value, end)) Add(new Token(TokenKind.Number, start, end - start, written) { Value = value });
    }

    private int Digits(int from)
    {
        while (from < text.Length && char.IsAsciiDigit(text[from])) from++;
        return from;
    }

    private int? Exponent(int from)
    {
        if (from >= text.Length || text[from] is not ('e' or 'E')) return null;
        int digits = from + 1 < text.Length && text[from + 1] is '+' or '-' ? from + 2 : from + 1;
        return digits < text.Length && char.IsAsciiDigit(text[digits]) ? Digits(digits) : null;
    }

    private bool Refused(string written, int end)
    {
        if (written.Length > 1 && written[0] == '0' && char.IsAsciiDigit(written[1]))
        {
            string better = written.TrimStart('0');
            Refuse(LexingFaults.LeadingZero(written, better.Length == 0 || !char.IsAsciiDigit(better[0]) ? "0" + better : better, Here(written.Length)));
            return true;
        }
        if (end >= text.Length || !(char.IsLetter(text[end]) || text[end] is '_' or '°' or '%')) return false;
        int unitLength = UnitText.Scan(text.AsSpan(end));
        string rest = text.Substring(end, unitLength);
        if (unitLength > 0 && UnitText.TryParse(rest, out _, out _)) Refuse(LexingFaults.UnitTouches(written, rest, Here(written.Length + rest.Length)));
        else Refuse(LexingFaults.NumberTail(written + text[end], Here(written.Length + 1)));
        return true;
    }

    /// <summary><c>40.mm</c>: a point, then a suffix that C# could have.</summary>
    private bool ReadSuffix(double value, int end)
    {
        if (end + 1 >= text.Length || text[end] != '.' || !char.IsLetter(text[end + 1])) return false;
        int last = end + 1;
        while (last < text.Length && (char.IsLetterOrDigit(text[last]) || text[last] == '_')) last++;
        string identifier = text[(end + 1)..last];
        if (Suffixes.TryFind(identifier, out Unit? unit)) AddLiteral(value, unit!, last);
        else Refuse(LexingFaults.Unit($".{identifier} is no unit.", new(0, end + 2, identifier.Length)));
        return true;
    }

    /// <summary>A number, blanks, a unit. A word of the language after a number is left alone.</summary>
    private bool ReadUnit(double value, int end)
    {
        int begin = end;
        while (begin < text.Length && text[begin] == ' ') begin++;
        if (begin == end || begin >= text.Length) return false;
        int length = UnitText.Scan(text.AsSpan(begin));
        if (length == 0 || WordsAfterNumbers.Contains(text.Substring(begin, length))) return false;
        string unitText = text.Substring(begin, length);
        if (!UnitText.TryParse(unitText, out Unit? unit, out string? problem))
        {
            Refuse(LexingFaults.Unit(problem!, new(0, begin + 1, length)));
            return true;
        }
        AddLiteral(value, unit!, begin + length);
        return true;
    }

    private void AddLiteral(double value, Unit unit, int end)
    {
        if (unit.Offset != 0 && TakeSign()) value = -value;
        double si = unit.ToSi(value);
        if (!double.IsFinite(si)) Refuse(LexingFaults.TooLarge(text[at..end], Here(end - at)));
        else if (unit.Dimension.IsNone && unit.Kind is null) Add(new Token(TokenKind.Number, at, end - at, text[at..end]) { Value = si });
        else Add(new Token(TokenKind.UnitLiteral, at, end - at, text[at..end]) { Value = value, Unit = unit });
    }

    /// <summary>A sign directly before a reading on a scale with a zero belongs to it: −18 °C is a temperature, not minus one.</summary>
    private bool TakeSign()
    {
        if (tokens.Count == 0 || !tokens[^1].Is("-") || tokens[^1].End != at) return false;
        bool binary = tokens.Count > 1 && (tokens[^2].Kind != TokenKind.Sign || tokens[^2].Text is ")" or "]" or "}");
        if (binary) return false;
        at = tokens[^1].Start;
        tokens.RemoveAt(tokens.Count - 1);
        return true;
    }
}
