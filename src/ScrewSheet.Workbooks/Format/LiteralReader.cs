using ScrewSheet.Quantities.Formatting;
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
        int wordEnd = line.WordEnd(start, end);
        if (!Numeral.Begins(text)) return default;
        if (NumberText.TryParse(line.Piece(start, wordEnd), out double value, out string? problem)) return WithUnit(line, start, wordEnd, end, value);
        return Numeral.IsMeant(line.Span(start, wordEnd)) ? GivenFaults.Number(line.At(start, wordEnd), problem!) : Fraction(line, start, wordEnd, end);
    }

    private static LiteralReading ReadText(LineText line, int start, int end)
    {
        if (LineScan.CloseOf(line.Text, start) != end - 1) return default;
        string? text = QuotedText.Read(line, start, end - 1, out Fault? fault);
        return text is null ? new LiteralReading(null, fault) : new TextLiteral(text);
    }

    private static LiteralReading WithUnit(LineText line, int start, int numeralEnd, int end, double value)
    {
        int unitStart = line.SkipBlanks(numeralEnd, end);
        if (unitStart == end) return new NumberLiteral(value, null);
        if (!UnitReader.TryRead(line, unitStart, end, out Unit? unit, out Fault? fault)) return new LiteralReading(null, fault);
        return double.IsFinite(unit.ToSi(value)) ? new NumberLiteral(value, unit) : GivenFaults.TooLarge(line.At(start, end));
    }

    /// <summary><c>1/2 in</c> is refused, since it reads as one over two inches; anything else with a stroke is an expression.</summary>
    private static LiteralReading Fraction(LineText line, int start, int wordEnd, int end)
    {
        string[] parts = line.Piece(start, wordEnd).Split('/');
        int unitStart = line.SkipBlanks(wordEnd, end);
        if (parts.Length != 2 || unitStart == end || !NumberText.TryParse(parts[0], out double above, out _) || !NumberText.TryParse(parts[1], out double below, out _)) return default;
        double value = above / below;
        if (!double.IsFinite(value) || !UnitReader.TryRead(line, unitStart, end, out Unit? unit, out _)) return default;
        NumberText.TryParse(NumberText.Format(value, new Digits(6, Significant: true)), out double rounded, out _);
        return GivenFaults.Fraction(line.At(start, end), $"{NumberText.Exact(rounded)} {unit}");
    }
}
