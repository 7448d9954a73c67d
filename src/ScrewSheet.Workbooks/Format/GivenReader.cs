using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads a given: its value, then in this order ± and a tolerance, within and limits, source and a text.</summary>
internal static class GivenReader
{
    /// <summary>Reads the piece, without blanks around it.</summary>
    /// <returns>The given, or null with a fault.</returns>
    public static GivenContent? Read(LineText line, int start, int end, Unit? shownIn, out Fault? fault)
    {
        int source = LineScan.Word(line.Text, start, end, "source"), sourceEnd = end;
        end = source < 0 ? end : source;
        int within = LineScan.Word(line.Text, start, end, "within"), withinEnd = end;
        end = within < 0 ? end : within;
        int plusMinus = LineScan.PlusMinus(line.Text, start, end), plusMinusEnd = end;
        end = line.TrimEnd(start, plusMinus < 0 ? end : plusMinus);
        GivenContent? given = Value(line, start, end, out fault);
        Place place = line.At(start, end);
        if (given is not null && plusMinus >= 0) given = AddTolerance(line, given, plusMinus, plusMinusEnd, shownIn, out fault);
        if (given is not null && within >= 0) given = AddLimits(line, given, within + "within".Length, withinEnd, place, out fault);
        if (given is not null && source >= 0) given = AddSource(line, given, source + "source".Length, sourceEnd, out fault);
        return given;
    }

    private static GivenContent? Value(LineText line, int start, int end, out Fault? fault)
    {
        if (start >= end)
        {
            fault = FormatFaults.EmptyGiven(line.At(start, start));
            return null;
        }
        LiteralReading reading = LiteralReader.Read(line, start, end);
        fault = reading.Fault;
        return fault is null ? new GivenContent(line.Piece(start, end), start + 1) { Literal = reading.Literal } : null;
    }

    private static GivenContent? AddTolerance(LineText line, GivenContent given, int sign, int end, Unit? shownIn, out Fault? fault)
    {
        int start = line.SkipBlanks(sign + (line.Text[sign] == '±' ? 1 : 2), end);
        Tolerance? tolerance = ToleranceReader.Read(line, start, Math.Max(start, line.TrimEnd(start, end)), given.Literal, shownIn, out fault);
        return tolerance is null ? null : given with { Tolerance = tolerance };
    }

    private static GivenContent? AddLimits(LineText line, GivenContent given, int start, int end, Place place, out Fault? fault)
    {
        start = line.SkipBlanks(start, end);
        Limits? limits = LimitsReader.Read(line, start, line.TrimEnd(start, end), given.Literal, place, out fault);
        return limits is null ? null : given with { Within = limits };
    }

    private static GivenContent? AddSource(LineText line, GivenContent given, int start, int end, out Fault? fault)
    {
        start = line.SkipBlanks(start, end);
        end = line.TrimEnd(start, end);
        bool quoted = start < end && line.Text[start] == '"' && LineScan.CloseOf(line.Text, start) == end - 1;
        fault = quoted ? null : GivenFaults.Source(line.At(start, end));
        string? source = quoted ? QuotedText.Read(line, start, end - 1, out fault) : null;
        return source is null ? null : given with { Source = source };
    }
}
