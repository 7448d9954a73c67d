using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Format;

/// <summary>What stands between a cell's address and its content.</summary>
/// <param name="Type">The declared type, or null.</param>
/// <param name="Name">The name, or null.</param>
/// <param name="NamePlace">Where the name stands.</param>
/// <param name="Format">What stands in square brackets, or null.</param>
internal readonly record struct CellHead(string? Type, string? Name, Place NamePlace, DisplayFormat? Format)
{
    private static readonly string[] SmallTypes = ["bool", "double", "int", "string", "number"];

    /// <summary>Reads the piece; on a fault, what was read before it stays.</summary>
    public static CellHead Read(LineText line, int start, int end, out Fault? fault)
    {
        start = line.SkipBlanks(start, end);
        int bracket = line.Span(start, Math.Max(start, end)).IndexOf('[');
        int wordsEnd = bracket < 0 ? end : start + bracket;
        CellHead head = Words(line, start, line.TrimEnd(start, wordsEnd), out fault);
        return fault is null && bracket >= 0 ? head.WithFormat(line, wordsEnd, end, out fault) : head;
    }

    private static CellHead Words(LineText line, int start, int end, out Fault? fault)
    {
        fault = null;
        if (start >= end) return default;
        int firstEnd = line.WordEnd(start, end), second = line.SkipBlanks(firstEnd, end);
        if (second == end) return Named(line, null, start, end, out fault);
        if (line.WordEnd(second, end) < end)
        {
            fault = FormatFaults.TooManyWords(line.At(start, end));
            return default;
        }
        fault = TypeFault(line, start, firstEnd);
        return fault is null ? Named(line, line.Piece(start, firstEnd), second, end, out fault) : default;
    }

    private static CellHead Named(LineText line, string? type, int start, int end, out Fault? fault)
    {
        fault = NameRules.Cell(line, start, end);
        return fault is null ? new CellHead(type, line.Piece(start, end), line.At(start, end), null) : new CellHead(type, null, default, null);
    }

    /// <summary>The fault of a type's name, or null; whether there is such a type, the engine knows.</summary>
    internal static Fault? TypeFault(LineText line, int start, int end)
    {
        if (end - start > FormatBudget.NameLength) return NameFaults.TooLong(line.At(start, end), NameRules.Harmless(line.Piece(start, end)));
        ReadOnlySpan<char> type = line.Span(start, end);
        foreach (string small in SmallTypes)
        {
            if (type.SequenceEqual(small)) return null;
        }
        int argument = type.IndexOf('<');
        if (argument <= 0 || type[^1] != '>') return NameRules.Capital(line, start, end, "type");
        return NameRules.Capital(line, start, start + argument, "type") ?? (argument + 2 < type.Length ? TypeFault(line, start + argument + 1, end - 1) : NameFaults.BadCharacter(line.At(start, end), type.ToString()));
    }

    private CellHead WithFormat(LineText line, int bracket, int end, out Fault? fault)
    {
        int close = line.Text.IndexOf(']', bracket, end - bracket);
        fault = close < 0 ? FormatFaults.OpenBracket(line.At(bracket, bracket + 1))
            : line.SkipBlanks(close + 1, end) is var rest && rest < end ? FormatFaults.AfterBracket(line.At(rest, end)) : null;
        if (fault is not null) return this;
        if (KnownFormats.TryRead(line.Span(bracket + 1, close).Trim(), out DisplayFormat? format, out string? problem)) return this with { Format = format };
        fault = FormatFaults.Format(line.At(bracket + 1, close), problem);
        return this;
    }
}
