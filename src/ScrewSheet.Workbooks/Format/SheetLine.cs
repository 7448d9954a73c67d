using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads and writes <c>sheet Fall "What the fall leaves"</c> and <c>widths A 34, B 16</c>.</summary>
internal static class SheetLine
{
    /// <summary>The widest column, in characters.</summary>
    private const int LargestWidth = 500;

    /// <summary>Reads what follows the word <c>sheet</c>: a name and perhaps a title; null with a fault.</summary>
    public static (string Name, string? Title, Place Place)? ReadSheet(LineText line, int start, out Fault? fault)
    {
        LineScan scan = LineScan.Of(line.Text, start);
        int end = line.TrimEnd(start, scan.Remark), name = line.SkipBlanks(start, end), nameEnd = line.WordEnd(name, end);
        fault = CellLine.LineFault(line) ?? (name >= nameEnd ? FormatFaults.SheetLine(line.At(start, start)) : NameRules.Capital(line, name, nameEnd, "sheet"));
        if (fault is not null) return null;
        string? title = ReadTitle(line, line.SkipBlanks(nameEnd, end), end, out bool readable, out fault);
        if (!readable) fault ??= FormatFaults.SheetLine(line.At(nameEnd, end));
        return readable ? (line.Piece(name, nameEnd), title, line.At(name, nameEnd)) : null;
    }

    /// <summary>Reads an optional title in quotes that ends the piece.</summary>
    public static string? ReadTitle(LineText line, int start, int end, out bool readable, out Fault? fault)
    {
        fault = null;
        readable = start >= end;
        if (readable || line.Text[start] != '"' || LineScan.CloseOf(line.Text, start) != end - 1) return null;
        string? title = QuotedText.Read(line, start, end - 1, out fault);
        readable = title is not null;
        return title;
    }

    /// <summary>Reads what follows the word <c>widths</c> into the builder.</summary>
    /// <returns>The fault, or null.</returns>
    public static Fault? ReadWidths(LineText line, int start, ImmutableDictionary<int, int>.Builder widths)
    {
        if (CellLine.LineFault(line) is { } whole) return whole;
        int end = line.TrimEnd(start, LineScan.Of(line.Text, start).Remark);
        List<(int Column, int Width)> read = [];
        foreach (Range range in Ranges(line.Span(start, end)))
        {
            ReadOnlySpan<char> item = line.Span(start, end)[range].Trim();
            int blank = item.IndexOfAny(' ', '\t');
            bool good = blank > 0 && CellAddress.TryParse($"{item[..blank]}1", out CellAddress column) && column.Row == 1
                && int.TryParse(item[blank..].Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int width) && width is >= 1 and <= LargestWidth
                && Add(read, column.Column, width);
            if (!good) return FormatFaults.WidthsLine(line.At(start, end));
        }
        foreach ((int column, int width) in read) widths[column] = width;
        return null;
    }

    /// <summary>The canonical sheet line.</summary>
    public static string WriteSheet(SheetHeading heading) => heading.Title is null ? $"sheet {heading.Name}" : $"sheet {heading.Name} {QuotedText.Write(heading.Title)}";

    /// <summary>The canonical widths line, or null where no width is set.</summary>
    public static string? WriteWidths(SheetHeading heading) => heading.Widths.IsEmpty ? null
        : "widths " + string.Join(", ", heading.Widths.OrderBy(pair => pair.Key).Select(pair => $"{CellAddress.ColumnName(pair.Key)} {pair.Value.ToString(CultureInfo.InvariantCulture)}"));

    private static bool Add(List<(int, int)> read, int column, int width)
    {
        read.Add((column, width));
        return true;
    }

    private static List<Range> Ranges(ReadOnlySpan<char> items)
    {
        List<Range> ranges = [];
        foreach (Range range in items.Split(',')) ranges.Add(range);
        return ranges;
    }
}
