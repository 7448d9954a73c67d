using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Writes kept results into the lines of a sheet.</summary>
internal static class KeptEditing
{
    /// <summary>The sheet with these texts after <c>gives</c>, all taken away when <paramref name="omitted"/>; the same sheet when all stood there already.</summary>
    public static Sheet With(Sheet sheet, IReadOnlyDictionary<CellId, string?> kept, bool omitted, LineEnd newLine)
    {
        List<Cell> cells = [];
        foreach (Cell cell in sheet.CellsInOrder)
        {
            if (cell.Content is not ResultContent result) continue;
            string? text = omitted ? null : kept.TryGetValue(new CellId(sheet.Name, cell.Address), out string? given) ? given : result.Kept;
            if (text == result.Kept) continue;
            cells.Add(With(cell, result, text, newLine));
        }
        if (cells.Count == 0) return sheet;
        CellMap changed = sheet.Cells.With(cells);
        return sheet with { Cells = changed, Index = sheet.Index with { Cells = changed } };
    }

    private static Cell With(Cell cell, ResultContent result, string? kept, LineEnd newLine)
    {
        CellSource? source = cell.Source.Value;
        bool says = source?.Says(cell) == true;
        string line = says ? Splice(source!.Line.Text, cell.Place, kept) : CellTextWriter.Line(cell with { Content = result with { Kept = kept } });
        Cell read = SheetEditing.Reread(line, cell.Address, cell.Place);
        if ((read.Content as ResultContent)?.Kept != kept) throw new ArgumentException($"\"{kept}\" cannot be kept as a result.", nameof(kept));
        return CellSource.Attach(read, new FileLine(line, source?.Line.End ?? newLine), source?.Leading ?? []);
    }

    /// <summary>The line with another kept result, blanks and remark as they were.</summary>
    internal static string Splice(string line, Place place, string? kept)
    {
        LineText text = new(line, place.Line);
        LineScan scan = LineScan.Of(line, text.SkipBlanks(0, line.Length));
        int end = text.TrimEnd(0, scan.Remark), gives = LineScan.Gives(line, scan.Sign, end);
        string upTo = gives < 0 ? line[..end] : line[..text.TrimEnd(0, gives)];
        return $"{upTo}{(kept is null ? "" : $" gives {kept}")}{line[end..]}";
    }
}
