using System.Buffers;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>A cell read from a line, and where its name stands.</summary>
/// <param name="Cell">The cell, in fault perhaps; null when the line does not begin with an address.</param>
/// <param name="Fault">What is wrong with a line that has no address, or null.</param>
/// <param name="NamePlace">Where the name stands; without meaning for a cell without one.</param>
internal readonly record struct CellReading(Cell? Cell, Fault? Fault, Place NamePlace);

/// <summary>Reads a line that holds a cell.</summary>
internal static class CellLine
{
    private static readonly SearchValues<char> ControlCharacters =
        SearchValues.Create([.. Enumerable.Range(0, 0xA0).Select(code => (char)code).Where(c => char.IsControl(c) && c != '\t'), '\u2028', '\u2029']);

    /// <summary>Reads the line. With an address the result is a cell, whatever else is wrong.</summary>
    public static CellReading Read(LineText line)
    {
        if (ConflictText.IsCell(line.Text)) return ConflictText.Read(line);
        int start = line.SkipBlanks(0, line.Text.Length), end = AddressEnd(line.Text, start);
        if (!CellAddress.TryParse(line.Span(start, end), out CellAddress address)) return new CellReading(null, NoAddress(line, start, end), default);
        return ReadAfter(line, end, address, line.At(start, end));
    }

    /// <summary>Reads what follows the address: the whole of an entry, the rest of a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="start">Index behind the address.</param>
    /// <param name="address">The address.</param>
    /// <param name="place">Where it stands.</param>
    public static CellReading ReadAfter(LineText line, int start, CellAddress address, Place place)
    {
        CellHead head = default;
        string? remark = null;
        Fault? fault = LineFault(line);
        LineScan scan = LineScan.Of(line.Text, start);
        if (fault is null && scan.OpenQuote >= 0) fault = FormatFaults.OpenQuote(line.At(scan.OpenQuote, scan.OpenQuote + 1));
        CellContent? content = null;
        if (fault is null)
        {
            if (scan.Remark < line.Text.Length) remark = RemarkOf(line, scan.Remark);
            bool note = scan.Quote >= 0 && (scan.Sign < 0 || scan.Quote < scan.Sign);
            int sign = note ? scan.Quote : scan.Sign;
            int headEnd = line.TrimEnd(start, sign < 0 ? scan.Remark : sign);
            head = CellHead.Read(line, start, headEnd, out fault);
            if (fault is null && sign < 0) fault = FormatFaults.NoContent(line.At(headEnd, headEnd));
            if (fault is null) content = ReadContent(line, sign, line.TrimEnd(sign, scan.Remark), note, head, out fault);
        }
        content ??= new BrokenContent(line.Text, fault!);
        return new CellReading(
            new Cell { Address = address, DeclaredType = head.Type, Name = head.Name, Format = head.Format, Content = content, Remark = remark, Place = place },
            null, head.NamePlace);
    }

    /// <summary>Index behind the address: the first character that is no letter or digit.</summary>
    public static int AddressEnd(string text, int start)
    {
        while (start < text.Length && char.IsAsciiLetterOrDigit(text[start])) start++;
        return start;
    }

    /// <summary>What is wrong with the line whatever it says: it is too long, or holds a control character; null where neither is so.</summary>
    public static Fault? LineFault(LineText line)
    {
        if (line.Text.Length > FormatBudget.LineLength) return FormatFaults.TooLongLine(line.At(0, 0));
        int at = line.Text.AsSpan().IndexOfAny(ControlCharacters);
        return at < 0 ? null : FormatFaults.ControlCharacter(line.At(at, at + 1), line.Text[at]);
    }

    private static string RemarkOf(LineText line, int strokes)
    {
        int end = line.TrimEnd(strokes + 2, line.Text.Length);
        return line.Piece(line.SkipBlanks(strokes + 2, end), end);
    }

    private static CellContent? ReadContent(LineText line, int sign, int end, bool note, CellHead head, out Fault? fault)
    {
        if (note) return ReadNote(line, sign, end, out fault);
        char after = sign + 1 < end ? line.Text[sign + 1] : ' ';
        if (after == '>') return ReadResult(line, sign + 2, end, out fault);
        if (after != '=') return GivenReader.Read(line, line.SkipBlanks(sign + 1, end), end, head.Format?.Unit, out fault);
        fault = FormatFaults.EqualSigns(line.At(sign, sign + 2));
        return null;
    }

    private static NoteContent? ReadNote(LineText line, int quote, int end, out Fault? fault)
    {
        int close = LineScan.CloseOf(line.Text, quote);
        int rest = line.SkipBlanks(close + 1, end);
        fault = rest < end ? FormatFaults.AfterText(line.At(rest, end)) : null;
        string? text = fault is null ? QuotedText.Read(line, quote, close, out fault) : null;
        return text is null ? null : new NoteContent(text);
    }

    private static ResultContent? ReadResult(LineText line, int start, int end, out Fault? fault)
    {
        start = line.SkipBlanks(start, end);
        int gives = LineScan.Gives(line.Text, start, end);
        int expressionEnd = gives < 0 ? end : line.TrimEnd(start, gives);
        int kept = gives < 0 ? end : line.SkipBlanks(gives + 1 + "gives".Length, end);
        // the word means the same without a blank before it, or the line would read otherwise once it is written anew
        bool nothing = start >= expressionEnd || line.Span(start, line.WordEnd(start, end)) is "gives";
        fault = nothing ? FormatFaults.EmptyExpression(line.At(start, start))
            : gives >= 0 && kept == end ? FormatFaults.EmptyKept(line.At(gives + 1, end)) : null;
        if (fault is not null) return null;
        return new ResultContent(line.Piece(start, expressionEnd), start + 1) { Kept = gives < 0 ? null : line.Piece(kept, end) };
    }

    private static Fault NoAddress(LineText line, int start, int end)
    {
        if (LineFault(line) is { } whole) return whole;
        int wordEnd = line.WordEnd(start, line.Text.Length);
        string word = NameRules.Harmless(line.Piece(start, wordEnd));
        bool shaped = wordEnd == end && char.IsAsciiLetter(line.Text[start]) && char.IsAsciiDigit(line.Text[end - 1]);
        if (!shaped) return FormatFaults.NoAddress(line.At(start, wordEnd), word);
        bool small = CellAddress.TryParse(word.ToUpperInvariant(), out CellAddress meant);
        return FormatFaults.BadAddress(line.At(start, end), word, small ? $"Write {meant}." : "Columns go from A to ZZZ, rows from 1 to 99999 without leading zeros.");
    }
}
