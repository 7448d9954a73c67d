using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads what a workbook says about studies: the lines of a what-if table and of correlated givens, or the same text from a command line.</summary>
public static class StudyText
{
    /// <summary>Reads what follows <c>vary</c>: <c>exposed: 0 mm to 60 mm step 10 mm</c>.</summary>
    /// <param name="text">The text and where it stands.</param>
    /// <param name="fault">What is wrong, with its place, or null.</param>
    /// <returns>The given and its values, or null with a fault.</returns>
    public static VarySpec? ReadVary(PlacedText text, out Fault? fault)
    {
        (LineText line, int start, int end) = Open(text);
        int colon = line.Span(start, end).IndexOf(':') + start;
        PlacedText? name = colon < start ? null : Name(line, start, colon);
        int values = line.SkipBlanks(colon + 1, end);
        fault = name is null || values >= end ? StudyTextFaults.VaryLine(line.At(start, end)) : null;
        if (fault is not null) return null;
        int to = LineScan.Word(line.Text, values, end, "to");
        VaryValues? read = to < 0 ? List(line, values, end, out fault) : Range(line, values, to, end, out fault);
        return read is null ? null : new VarySpec(name!, read, line.At(values, end));
    }

    /// <summary>Reads what follows <c>show</c>: names or addresses with commas between.</summary>
    /// <param name="text">The text and where it stands.</param>
    /// <param name="fault">What is wrong, with its place, or null.</param>
    /// <returns>The names; empty with a fault.</returns>
    public static ImmutableArray<PlacedText> ReadShow(PlacedText text, out Fault? fault)
    {
        (LineText line, int start, int end) = Open(text);
        var names = ImmutableArray.CreateBuilder<PlacedText>();
        fault = null;
        foreach ((int from, int to) in Items(line.Text, start, end))
        {
            if (Name(line, line.SkipBlanks(from, to), line.TrimEnd(from, to)) is { } name) names.Add(name);
            else fault ??= StudyTextFaults.ShowLine(line.At(start, end));
            if (names.Count > FormatBudget.Shown) fault ??= StudyTextFaults.ShowTooMany(line.At(start, end));
            if (fault is not null) return [];
        }
        return names.ToImmutable();
    }

    /// <summary>Reads a <c>correlate</c> line: <c>correlate peak, exposed 0.86</c>.</summary>
    /// <param name="text">The whole line and where it stands.</param>
    /// <param name="fault">What is wrong, with its place, or null.</param>
    /// <returns>What it says, or null with a fault.</returns>
    public static Correlation? ReadCorrelation(PlacedText text, out Fault? fault)
    {
        (LineText line, int start, int end) = Open(text);
        end = line.TrimEnd(start, Math.Min(end, LineScan.Of(line.Text, start).Remark));
        int first = line.SkipBlanks(line.WordEnd(start, end), end), comma = line.Span(first, end).IndexOf(',') + first;
        int second = comma < first ? end : line.SkipBlanks(comma + 1, end), secondEnd = line.WordEnd(second, end), number = line.SkipBlanks(secondEnd, end);
        PlacedText? one = comma < first ? null : Name(line, first, line.TrimEnd(first, comma)), other = Name(line, second, secondEnd);
        bool read = NumberText.TryParse(line.Piece(number, end), out double coefficient, out _) && coefficient is >= -1 and <= 1;
        fault = one is null || other is null || !read ? StudyTextFaults.CorrelateLine(line.At(start, end)) : null;
        return fault is null ? new Correlation(one!, other!, coefficient, line.At(number, end)) : null;
    }

    /// <summary>Reads a value written by itself, such as <c>500 N·m</c>.</summary>
    /// <param name="text">The text and where it stands.</param>
    /// <param name="fault">What is wrong with it, or null.</param>
    /// <returns>The literal; null with a fault, and null without one for a constant expression.</returns>
    public static Literal? ReadValue(PlacedText text, out Fault? fault)
    {
        (LineText line, int start, int end) = Open(text);
        LiteralReading reading = LiteralReader.Read(line, start, end);
        fault = reading.Fault;
        return reading.Literal;
    }

    // blanks in front, so that columns count as in the file
    private static (LineText Line, int Start, int End) Open(PlacedText text)
    {
        ArgumentNullException.ThrowIfNull(text);
        int before = Math.Max(0, text.Place.Column - 1);
        LineText line = new(new string(' ', before) + text.Text, text.Place.Line);
        int start = line.SkipBlanks(before, line.Text.Length);
        return (line, start, line.TrimEnd(start, line.Text.Length));
    }

    private static PlacedText? Name(LineText line, int start, int end)
    {
        end = line.TrimEnd(start, end);
        string word = line.Piece(start, Math.Max(start, end));
        bool name = word.Length > 0 && !char.IsAsciiDigit(word[0]) && word.All(c => char.IsLetterOrDigit(c) || c is '_' or '.');
        return name ? new PlacedText(word, line.At(start, end)) : null;
    }

    private static VaryList? List(LineText line, int start, int end, out Fault? fault)
    {
        var values = ImmutableArray.CreateBuilder<VaryValue>();
        foreach ((int from, int to) in Items(line.Text, start, end))
        {
            int begin = line.SkipBlanks(from, to), stop = line.TrimEnd(begin, to);
            LiteralReading reading = LiteralReader.Read(line, begin, stop);
            fault = begin >= stop ? StudyTextFaults.VaryLine(line.At(start, end)) : reading.Fault;
            if (fault is not null) return null;
            values.Add(new VaryValue(line.Piece(begin, stop), reading.Literal, line.At(begin, stop)));
        }
        fault = null;
        return new VaryList(values.ToImmutable());
    }

    /// <summary>The pieces between commas outside quotes and brackets.</summary>
    private static IEnumerable<(int Start, int End)> Items(string text, int start, int end)
    {
        int depth = 0, from = start;
        for (int i = start; i < end; i++)
        {
            if (text[i] == '"') i = Math.Max(i, LineScan.CloseOf(text, i));
            else if (text[i] is '(' or '[' or '{') depth++;
            else if (text[i] is ')' or ']' or '}') depth--;
            else if (text[i] == ',' && depth <= 0)
            {
                yield return (from, i);
                from = i + 1;
            }
        }
        yield return (from, end);
    }

    private static VaryRange? Range(LineText line, int start, int to, int end, out Fault? fault)
    {
        int second = line.SkipBlanks(to + 2, end), step = LineScan.Word(line.Text, second, end, "step"), over = LineScan.Word(line.Text, second, end, "over"), log = LineScan.Word(line.Text, second, end, "log");
        int secondEnd = new[] { step, over, log }.Where(word => word >= 0).DefaultIfEmpty(end).Min();
        NumberLiteral? from = Number(line, start, to, out fault), upper = fault is null ? Number(line, second, secondEnd, out fault) : null;
        if (from is null || upper is null) return null;
        if (step >= 0 && over < 0 && log < 0) return Number(line, step + 4, end, out fault) is { } by ? new VaryRange(from, upper, by, 0, false) : null;
        bool readable = over >= 0 && step < 0 && (log < 0 || line.TrimEnd(log + 3, over) == log + 3);
        fault = readable ? null : StudyTextFaults.VaryRange(line.At(start, end));
        if (fault is null && Steps(line, over + 4, end) is { } steps) return new VaryRange(from, upper, null, steps, log >= 0);
        fault ??= StudyTextFaults.VarySteps(line.At(over, end));
        return null;
    }

    private static NumberLiteral? Number(LineText line, int start, int end, out Fault? fault)
    {
        start = line.SkipBlanks(start, end);
        end = line.TrimEnd(start, end);
        LiteralReading reading = LiteralReader.Read(line, start, end);
        fault = reading.Fault ?? (reading.Literal is NumberLiteral ? null : StudyTextFaults.VaryRange(line.At(start, end)));
        return reading.Literal as NumberLiteral;
    }

    /// <summary>The number between <c>over</c> and <c>steps</c>.</summary>
    private static long? Steps(LineText line, int start, int end)
    {
        start = line.SkipBlanks(start, end);
        int numberEnd = line.WordEnd(start, end);
        bool read = long.TryParse(line.Span(start, numberEnd), NumberStyles.None, CultureInfo.InvariantCulture, out long steps) && steps >= 1;
        return read && line.Piece(line.SkipBlanks(numberEnd, end), end) is "steps" or "step" && read ? steps : null;
    }
}
