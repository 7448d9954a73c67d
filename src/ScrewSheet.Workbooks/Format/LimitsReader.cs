using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads what follows within: <c>0 mm to 120 mm</c>.</summary>
internal static class LimitsReader
{
    /// <summary>Values that round to the same numeral may stand outside by as much; the same allowance as comparisons have.</summary>
    private const double Allowance = 1e-12;

    /// <summary>Reads the piece, without blanks around it; <paramref name="value"/> is null for a constant expression, which the engine compares.</summary>
    public static Limits? Read(LineText line, int start, int end, Literal? value, Place valuePlace, out Fault? fault)
    {
        int to = LineScan.Word(line.Text, start, end, "to");
        NumberLiteral? from = null, upper = null;
        fault = to < 0 ? GivenFaults.Within(line.At(start, end)) : null;
        if (fault is null) from = End(line, start, line.TrimEnd(start, to), out fault);
        if (fault is null) upper = End(line, line.SkipBlanks(to + 2, end), end, out fault);
        if (from is null || upper is null) return null;
        fault = Compare(line.At(start, end), from, upper, value, valuePlace, line);
        return fault is null ? new Limits(from.Si, upper.Si, line.Piece(start, end)) { Unit = from.Unit } : null;
    }

    private static NumberLiteral? End(LineText line, int start, int end, out Fault? fault)
    {
        LiteralReading reading = LiteralReader.Read(line, start, end);
        var number = reading.Literal as NumberLiteral;
        fault = reading.Fault ?? (number is null ? GivenFaults.Within(line.At(start, end)) : null);
        return fault is null ? number : null;
    }

    private static Fault? Compare(Place place, NumberLiteral from, NumberLiteral to, Literal? value, Place valuePlace, LineText line)
    {
        if (value is not (null or NumberLiteral)) return GivenFaults.NoNumber(place, "limits");
        var given = value as NumberLiteral;
        string phrase = UnitReader.Phrase(given is null ? from.Unit : given.Unit);
        foreach (NumberLiteral limit in new[] { from, to })
        {
            if (!UnitReader.AreAlike(limit.Unit, given is null ? from.Unit : given.Unit)) return GivenFaults.WithinKind(place, UnitReader.Phrase(limit.Unit), phrase);
        }
        if (!(from.Si < to.Si)) return GivenFaults.WithinOrder(place, Write(from), Write(to));
        if (given is null) return null;
        double slack = Allowance * Math.Max(Math.Abs(from.Si), Math.Abs(to.Si));
        bool inside = given.Si >= from.Si - slack && given.Si <= to.Si + slack;
        return inside ? null : GivenFaults.Outside(valuePlace, Write(given), $"{Write(from)} to {Write(to)}");
    }

    private static string Write(NumberLiteral number) => CellTextWriter.Number(number);
}
