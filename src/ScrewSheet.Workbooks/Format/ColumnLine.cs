using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads and writes <c>column B force [kN]</c>.</summary>
internal static class ColumnLine
{
    /// <summary>The word it begins with.</summary>
    public const string Word = "column";

    /// <summary>Reads what follows the word; null with a fault.</summary>
    public static SheetColumn? Read(LineText line, int start, out Fault? fault)
    {
        int end = line.TrimEnd(start, LineScan.Of(line.Text, start).Remark), letters = line.SkipBlanks(start, end), lettersEnd = line.WordEnd(letters, end);
        int name = line.SkipBlanks(lettersEnd, end), bracket = BracketFrom(line, name, end), nameEnd = line.TrimEnd(name, bracket);
        fault = CellLine.LineFault(line);
        if (fault is not null) return null;
        if (!TryColumn(line.Span(letters, lettersEnd), out int column) || nameEnd == name || line.WordEnd(name, nameEnd) < nameEnd) fault = FormatFaults.ColumnLine(line.At(letters, end));
        fault ??= NameRules.Cell(line, name, nameEnd);
        Unit? unit = null;
        if (fault is null && bracket < end) fault = ReadUnit(line, bracket, end, out unit);
        return fault is null ? new SheetColumn(column, line.Piece(name, nameEnd), unit, line.At(letters, lettersEnd)) : null;
    }

    /// <summary>The canonical line.</summary>
    public static string Write(SheetColumn column) =>
        $"{Word} {CellAddress.ColumnName(column.Column)} {column.Name}{(column.Unit is null ? "" : $" [{column.Unit.Symbol}]")}";

    /// <summary>Where letters and name stand in a line that begins with the word; false for another line.</summary>
    public static bool TryFind(string text, out Range letters, out Range name)
    {
        LineText line = new(text, 0);
        int start = line.SkipBlanks(0, text.Length), word = line.WordEnd(start, text.Length);
        (letters, name) = (default, default);
        if (line.Span(start, word) is not Word) return false;
        int end = line.TrimEnd(word, LineScan.Of(text, word).Remark), from = line.SkipBlanks(word, end), to = line.WordEnd(from, end), next = line.SkipBlanks(to, end);
        letters = from..to;
        name = next..line.TrimEnd(next, BracketFrom(line, next, end));
        return true;
    }

    /// <summary>The number of a column written in letters.</summary>
    public static bool TryColumn(ReadOnlySpan<char> letters, out int column)
    {
        column = 0;
        if (letters.Length is 0 or > 3 || !CellAddress.TryParse($"{letters}1", out CellAddress address) || address.Row != 1) return false;
        column = address.Column;
        return true;
    }

    private static int BracketFrom(LineText line, int start, int end)
    {
        int at = line.Span(start, Math.Max(start, end)).IndexOf('[');
        return at < 0 ? end : start + at;
    }

    private static Fault? ReadUnit(LineText line, int bracket, int end, out Unit? unit)
    {
        unit = null;
        int close = line.Text.IndexOf(']', bracket, end - bracket);
        if (close < 0) return FormatFaults.OpenBracket(line.At(bracket, bracket + 1));
        int rest = line.SkipBlanks(close + 1, end), from = line.SkipBlanks(bracket + 1, close), to = line.TrimEnd(from, close);
        if (rest < end) return FormatFaults.ColumnLine(line.At(rest, end));
        return UnitText.TryParse(line.Piece(from, to), out unit, out string? problem) ? null : FormatFaults.Format(line.At(from, to), problem);
    }
}
