using System.Globalization;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>What a piece of text is: a literal, a mistake, or neither, which is a constant expression for the engine.</summary>
/// <param name="Literal">The literal, or null.</param>
/// <param name="Fault">The mistake, or null.</param>
internal readonly record struct LiteralReading(Literal? Literal, Fault? Fault)
{
    public static implicit operator LiteralReading(Literal literal) => new(literal, null);

    public static implicit operator LiteralReading(Fault fault) => new(null, fault);
}

/// <summary>Reads numbers, unit literals, yes-or-no values and texts.</summary>
internal static class LiteralReader
{
    /// <summary>Reads the piece from <paramref name="start"/> to <paramref name="end"/>, without blanks around it.</summary>
    public static LiteralReading Read(LineText line, int start, int end)
    {
        ReadOnlySpan<char> text = line.Span(start, end);
        if (text is "true") return new TruthLiteral(true);
        if (text is "false") return new TruthLiteral(false);
        if (text is ['"', ..]) return ReadText(line, start, end);
        int length = Numeral.Length(text);
        return length == 0 ? default : AfterNumeral(line, start, start + length, end);
    }

    private static LiteralReading ReadText(LineText line, int start, int end)
    {
        if (LineScan.CloseOf(line.Text, start) != end - 1) return default;
        string? text = QuotedText.Read(line, start, end - 1, out Fault? fault);
        return text is null ? fault! : new TextLiteral(text);
    }

    private static LiteralReading AfterNumeral(LineText line, int start, int numeralEnd, int end)
    {
        if (numeralEnd == end || Blank.Is(line.Text[numeralEnd]))
        {
            if (Numeral.Corrected(line.Span(start, numeralEnd)) is { } corrected) return GivenFaults.Numeral(line.At(start, numeralEnd), line.Piece(start, numeralEnd), corrected);
            return WithUnit(line, start, numeralEnd, end);
        }
        return line.Text[numeralEnd] switch
        {
            ',' => Comma(line, start, numeralEnd, end),
            '/' => Fraction(line, start, numeralEnd, end),
            '_' => Underscore(line, start, end),
            _ => Glued(line, start, numeralEnd, end),
        };
    }

    private static LiteralReading WithUnit(LineText line, int start, int numeralEnd, int end)
    {
        double value = Numeral.Value(line.Span(start, numeralEnd));
        if (!double.IsFinite(value)) return GivenFaults.TooLarge(line.At(start, numeralEnd));
        int unitStart = line.SkipBlanks(numeralEnd, end);
        if (unitStart == end) return new NumberLiteral(value, null);
        if (!UnitReader.TryRead(line, unitStart, end, out Unit? unit, out Fault? fault)) return fault is null ? default : fault;
        return double.IsFinite(unit.ToSi(value)) ? new NumberLiteral(value, unit) : GivenFaults.TooLarge(line.At(start, numeralEnd));
    }

    private static LiteralReading Glued(LineText line, int start, int numeralEnd, int end)
    {
        int unitEnd = line.WordEnd(numeralEnd, end);
        if (unitEnd != end || UnitText.Scan(line.Span(numeralEnd, end)) != end - numeralEnd) return default;
        return GivenFaults.Glued(line.At(start, end), $"{line.Piece(start, numeralEnd)} {line.Piece(numeralEnd, end)}");
    }

    private static LiteralReading Comma(LineText line, int start, int comma, int end)
    {
        int more = comma;
        while (more < end && (char.IsAsciiDigit(line.Text[more]) || line.Text[more] is ',' or '.')) more++;
        if (more == comma + 1) return default;
        string whole = line.Piece(start, comma), rest = line.Piece(comma + 1, more), unit = line.Piece(more, end);
        bool thousands = rest.Length >= 3 && !rest.StartsWith('.') && rest.Split('.')[0].Split(',').All(group => group.Length == 3);
        string point = $"{whole}.{rest}{unit}", none = $"{whole}{rest.Replace(",", "", StringComparison.Ordinal)}{unit}";
        string instead = !thousands ? point : rest.Length == 3 ? $"{none} or {point}" : none;
        return GivenFaults.Comma(line.At(start, more), instead);
    }

    private static LiteralReading Fraction(LineText line, int start, int stroke, int end)
    {
        int below = line.SkipBlanks(stroke + 1, end);
        int belowEnd = below + Numeral.Length(line.Span(below, end));
        int unitStart = line.SkipBlanks(belowEnd, end);
        if (belowEnd == below || unitStart == belowEnd || unitStart == end) return default;
        double value = Numeral.Value(line.Span(start, stroke)) / Numeral.Value(line.Span(below, belowEnd));
        if (!double.IsFinite(value) || !UnitReader.TryRead(line, unitStart, end, out Unit? unit, out _)) return default;
        return GivenFaults.Fraction(line.At(start, end), $"{value.ToString("G6", CultureInfo.InvariantCulture)} {unit}");
    }

    private static LiteralReading Underscore(LineText line, int start, int end)
    {
        int wordEnd = line.WordEnd(start, end);
        string word = line.Piece(start, wordEnd);
        return word.All(c => char.IsAsciiDigit(c) || c is '_' or '.')
            ? GivenFaults.Numeral(line.At(start, wordEnd), word, word.Replace("_", "", StringComparison.Ordinal))
            : default;
    }
}
