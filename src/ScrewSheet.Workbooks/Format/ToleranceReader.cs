using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads what follows ±: a number, its unit, and words on what it means.</summary>
internal static class ToleranceReader
{
    /// <summary>Reads the piece, without blanks around it.</summary>
    /// <param name="line">The line.</param>
    /// <param name="start">Index of its first character.</param>
    /// <param name="end">Index behind its last.</param>
    /// <param name="value">The given's value; null for a constant expression, whose unit the engine compares.</param>
    /// <param name="shownIn">The unit the given is shown in, or null.</param>
    /// <param name="fault">What is wrong, or null.</param>
    public static Tolerance? Read(LineText line, int start, int end, Literal? value, Unit? shownIn, out Fault? fault)
    {
        int numberEnd = QuantityEnd(line, start, end);
        LiteralReading reading = LiteralReader.Read(line, start, numberEnd);
        fault = reading.Fault;
        if (fault is null && reading.Literal is not NumberLiteral) fault = GivenFaults.Tolerance(line.At(start, end));
        if (fault is not null) return null;
        var number = (NumberLiteral)reading.Literal!;
        fault = Mismatch(line.At(start, numberEnd), number, value, shownIn);
        if (fault is not null) return null;
        return Words(line, numberEnd, end, Bare(line.Piece(start, end), number, value, shownIn), out fault);
    }

    private static Tolerance Bare(string text, NumberLiteral number, Literal? value, Unit? shownIn)
    {
        Unit? unit = number.Unit;
        double half = unit is null ? number.Value : number.Value * unit.Multiplier / unit.Divisor;
        return new Tolerance(half, IsPercent(unit) && !IsShownInPercent(value, shownIn), ToleranceShape.Normal, null, text) { Unit = unit };
    }

    private static Fault? Mismatch(Place place, NumberLiteral number, Literal? value, Unit? shownIn)
    {
        if (value is not (null or NumberLiteral)) return GivenFaults.NoNumber(place, "a tolerance");
        if (number.Value < 0) return GivenFaults.ToleranceBelowZero(place);
        if (value is not NumberLiteral given) return null;
        if (IsPercent(number.Unit) && !IsShownInPercent(value, shownIn)) return UnitReader.IsTemperature(given.Unit) ? GivenFaults.ToleranceOfTemperature(place) : null;
        if (UnitReader.AreAlike(number.Unit, given.Unit)) return null;
        return GivenFaults.ToleranceKind(place, UnitReader.Phrase(number.Unit), UnitReader.Phrase(given.Unit), given.Unit is { } unit ? $"a value in {unit}" : "a number without a unit");
    }

    private static Tolerance? Words(LineText line, int start, int end, Tolerance tolerance, out Fault? fault)
    {
        fault = null;
        for (int at = line.SkipBlanks(start, end); at < end; at = line.SkipBlanks(at, end))
        {
            int wordEnd = line.WordEnd(at, end);
            string word = line.Piece(at, wordEnd);
            if (Shape(word) is { } shape) tolerance = tolerance with { Shape = shape };
            else if (word == "dof")
            {
                at = line.SkipBlanks(wordEnd, end);
                wordEnd = line.WordEnd(at, end);
                if (Freedom(line.Piece(at, wordEnd)) is { } freedom) tolerance = tolerance with { DegreesOfFreedom = freedom };
                else fault = GivenFaults.Freedom(line.At(at, wordEnd));
            }
            else fault = GivenFaults.ToleranceWord(line.At(at, wordEnd), NameRules.Harmless(word));
            if (fault is not null) return null;
            at = wordEnd;
        }
        return tolerance;
    }

    private static ToleranceShape? Shape(string word) => word switch
    {
        "rectangular" => ToleranceShape.Rectangular,
        "triangular" => ToleranceShape.Triangular,
        "k=1" => ToleranceShape.Standard,
        _ => null,
    };

    private static double? Freedom(string word) => NumberText.TryParse(word, out double value, out _) && value >= 1 ? value : null;

    /// <summary>Behind the first word and, unless it is a word on what the number means, the second.</summary>
    private static int QuantityEnd(LineText line, int start, int end)
    {
        int numberEnd = line.WordEnd(start, end), unitStart = line.SkipBlanks(numberEnd, end), unitEnd = line.WordEnd(unitStart, end);
        string word = line.Piece(unitStart, unitEnd);
        bool meaning = word.Length == 0 || word == "dof" || word.Contains('=') || Shape(word) is not null;
        return meaning ? numberEnd : unitEnd;
    }

    private static bool IsPercent(Unit? unit) => unit?.Symbol == "%";

    private static bool IsShownInPercent(Literal? value, Unit? shownIn) => IsPercent((value as NumberLiteral)?.Unit) || IsPercent(shownIn);
}
