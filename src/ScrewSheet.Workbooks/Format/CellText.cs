using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>What became of an entry. A closed family.</summary>
public abstract record EntryResult
{
    private protected EntryResult() { }
}

/// <summary>It reads as a cell.</summary>
/// <param name="Cell">The cell; its place is line 0, columns count in the entry from 1.</param>
public sealed record EntryRead(Cell Cell) : EntryResult;

/// <summary>It does not.</summary>
/// <param name="Fault">Why; its place counts in the entry, line 0.</param>
public sealed record EntryRefused(Fault Fault) : EntryResult;

/// <summary>The text of single cells: the line of a file, the entry of the grid.</summary>
public static class CellText
{
    /// <summary>The canonical line of a cell, such as <c>B3 exposed [mm] = 40 mm ± 10 mm</c>; of a cell in fault, its line as it stands.</summary>
    public static string Write(Cell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return CellTextWriter.Line(cell);
    }

    /// <summary>The same without the address: what an entry line shows for editing.</summary>
    public static string WriteEntry(Cell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return CellTextWriter.Entry(cell);
    }

    /// <summary>A text in quotes with escapes, as <c>gives</c> and notes show it.</summary>
    public static string Quote(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return QuotedText.Write(text);
    }

    /// <summary>Reads a cell's line without its file; the place counts from line 0.</summary>
    /// <param name="line">The line, beginning with an address.</param>
    /// <returns>The cell; a cell in fault is refused with its fault.</returns>
    public static EntryResult ReadLine(string line)
    {
        ArgumentNullException.ThrowIfNull(line);
        CellReading reading = CellLine.Read(new LineText(line, 0));
        return reading.Cell is null ? new EntryRefused(reading.Fault!) : Result(reading.Cell);
    }

    /// <summary>
    /// Reads what was typed into a cell: the text of its line without the address. What begins with a digit or a sign is a given and must read as one;
    /// other text without <c>=</c> or <c>=></c> is a note.
    /// </summary>
    /// <param name="entry">As typed; not blank.</param>
    /// <param name="at">The cell it is typed into.</param>
    public static EntryResult ReadEntry(string entry, CellAddress at)
    {
        ArgumentNullException.ThrowIfNull(entry);
        LineText line = new(entry, 0);
        int start = line.SkipBlanks(0, entry.Length), end = line.TrimEnd(start, entry.Length);
        if (CellLine.LineFault(line) is { } control) return new EntryRefused(control);
        if (Numeral.Begins(line.Span(start, end))) return ReadNumber(line, start, at);
        LineScan scan = LineScan.Of(entry, start);
        if (HiddenSign(line, start, scan) is { } open) return new EntryRefused(open);
        bool cell = scan.Sign >= 0 || (start < end && entry[start] == '"') || start == end;
        if (cell) return Result(CellLine.ReadAfter(line, start, at, default).Cell!);
        return NamedNote(line, start, at) ?? new EntryRead(new Cell { Address = at, Content = new NoteContent(line.Piece(start, end)) });
    }

    /// <summary>The fault of an entry whose sign stands behind a bracket or quote that is not closed: it was meant as a given or result, and must not pass for a note.</summary>
    private static Fault? HiddenSign(LineText line, int start, LineScan scan)
    {
        if (scan.Sign >= 0) return null;
        if (scan.OpenBracket >= 0) return FormatFaults.OpenEntry(line.At(scan.OpenBracket, scan.OpenBracket + 1), line.Text[scan.OpenBracket].ToString());
        bool quoted = scan.OpenQuote > start && line.Text.IndexOf('=', scan.OpenQuote) >= 0;
        return quoted ? FormatFaults.OpenQuote(line.At(scan.OpenQuote, scan.OpenQuote + 1)) : null;
    }

    private static EntryResult Result(Cell cell) => cell.Content is BrokenContent broken ? new EntryRefused(broken.Fault) : new EntryRead(cell);

    private static EntryResult ReadNumber(LineText line, int start, CellAddress at)
    {
        LineScan scan = LineScan.Of(line.Text, start);
        int end = line.TrimEnd(start, scan.Remark);
        GivenContent? given = GivenReader.Read(line, start, end, null, out Fault? fault);
        if (given?.Literal is not NumberLiteral) return new EntryRefused(fault ?? GivenFaults.Entry(line.At(start, end)));
        int remark = scan.Remark < line.Text.Length ? line.SkipBlanks(scan.Remark + 2, line.Text.Length) : -1;
        return new EntryRead(new Cell { Address = at, Content = given, Remark = remark < 0 ? null : line.Piece(remark, Math.Max(remark, line.TrimEnd(remark, line.Text.Length))) });
    }

    /// <summary>A name before a text in quotes, which is how a note with a name is shown for editing.</summary>
    private static EntryRead? NamedNote(LineText line, int start, CellAddress at) =>
        LineScan.Of(line.Text, start).Quote > start && CellLine.ReadAfter(line, start, at, default).Cell is { Content: NoteContent, DeclaredType: null } note ? new EntryRead(note) : null;
}
