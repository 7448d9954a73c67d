using System.Collections.Immutable;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Editing;

/// <summary>Says where an address goes; null where it is gone. The corner is 1 or 2 for an end of a run, which may shrink to what is left; else 0.</summary>
/// <param name="from">The address now.</param>
/// <param name="corner">1 for the first, 2 for the last corner of a run; else 0.</param>
public delegate CellId? Relocate(CellId from, int corner);

/// <summary>Says where a run goes; null where each of its corners goes by itself.</summary>
/// <param name="first">Its first corner now.</param>
/// <param name="last">Its last corner now.</param>
public delegate (CellId First, CellId Last)? RelocateRun(CellId first, CellId last);

/// <summary>
/// Moves cells and corrects every reference to them, in all sheets. The lines of the file keep their order, blanks and remarks.
/// A reference by address to a cell that is gone becomes a name that no cell has, so that its reader is in fault instead of reading a stranger.
/// </summary>
public static class Relocation
{
    /// <summary>What stands in place of the address of a cell that is gone, such as <c>lost_B5</c>.</summary>
    public static string LostName(CellAddress address) => $"lost_{address}";

    /// <summary>The workbook with every cell where <paramref name="move"/> says. Places that cells move to must be free, or be left by their own cells.</summary>
    /// <param name="workbook">The workbook.</param>
    /// <param name="move">Where each address goes.</param>
    /// <param name="runs">Where each run goes, where that does not follow from its corners.</param>
    /// <exception cref="ArgumentException">Two cells would have one address.</exception>
    public static Workbook Apply(Workbook workbook, Relocate move, RelocateRun? runs = null)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        ArgumentNullException.ThrowIfNull(move);
        Workbook left = WithoutGone(workbook, move);
        List<Away> away = [];
        Workbook lines = left with { Sheets = [.. left.Sheets.Select(sheet => Moved(workbook, sheet, move, runs, away))], Source = Head(left, line => TableReferences.Follow(line, workbook, null, move)) };
        Workbook read = Reread(lines);
        foreach (Away cell in away) read = cell.Arrive(read);
        return read;
    }

    private static Workbook Reread(Workbook workbook) => WorkbookText.Read(WorkbookText.Write(workbook)) is WorkbookRead read
        ? read.Workbook
        : throw new ArgumentException("The workbook cannot be read again.", nameof(workbook));

    private static Workbook WithoutGone(Workbook workbook, Relocate move)
    {
        Workbook left = workbook;
        foreach (Sheet sheet in workbook.Sheets)
        {
            foreach (CellAddress address in sheet.Order)
            {
                if (move(new CellId(sheet.Name, address), 0) is null) left = left.WithoutCell(sheet.Name, address);
            }
        }
        return left;
    }

    /// <summary>The sheet with the lines its cells will have, still under their old addresses: only to be written and read again.</summary>
    private static Sheet Moved(Workbook workbook, Sheet sheet, Relocate move, RelocateRun? runs, List<Away> away)
    {
        List<Cell> cells = [];
        var order = sheet.Order;
        List<FileLine> staying = [];
        foreach (Cell cell in sheet.CellsInOrder)
        {
            CellId from = new(sheet.Name, cell.Address), to = move(from, 0)!.Value;
            CellSource? source = cell.Source.Value;
            string old = source?.Says(cell) == true ? source.Line.Text : CellTextWriter.Line(cell), line = Line(workbook, old, from, to, move, runs);
            ImmutableArray<FileLine> leading = source is null ? [] : [.. source.Leading.SelectMany(each => Other(each, workbook, sheet, move))];
            if (to.Sheet == sheet.Name)
            {
                cells.Add(CellSource.Attach(cell, new FileLine(line, source?.Line.End ?? LineEnd.Lf), [.. staying, .. leading]));
                staying.Clear();
                continue;
            }
            int own = SheetEditing.RemarksFrom(leading);
            away.Add(new Away(to.Sheet, line, leading[own..]));
            staying.AddRange(leading[..own]);
            order = order.Remove(cell.Address);
        }
        SheetSource? lines = sheet.Source.Value;
        Sheet moved = sheet with { Cells = CellMap.Of(cells), Order = order };
        return lines is null ? moved
            : moved with { Source = new(lines with { Opening = [.. lines.Opening.SelectMany(each => Other(each, workbook, sheet, move))], Trailing = [.. staying, .. lines.Trailing.SelectMany(each => Other(each, workbook, sheet, move))] }) };
    }

    /// <summary>A cell on its way to another sheet, with the remarks that travel with it; the other lines above it stay and go to the next cell.</summary>
    private sealed record Away(string Sheet, string Line, ImmutableArray<FileLine> Remarks)
    {
        public Workbook Arrive(Workbook workbook)
        {
            Cell cell = CellLine.Read(new LineText(Line, 0)).Cell! with { Place = default };
            Workbook with = workbook.WithCell(Sheet, cell);
            if (Remarks.IsEmpty || with.Find(Sheet) is not { } sheet || sheet.Cells.GetValueOrDefault(cell.Address) is not { Source.Value: { } source } placed) return with;
            Cell remarked = placed with { Source = new(source.With([.. source.Leading, .. Remarks])) };
            return with with { Sheets = with.Sheets.SetItem(with.Sheets.IndexOf(sheet), SheetEditing.Set(sheet, placed, remarked)) };
        }
    }

    /// <summary>The cell's line at its new place.</summary>
    private static string Line(Workbook workbook, string line, CellId from, CellId to, Relocate move, RelocateRun? runs)
    {
        Cell cell = CellLine.Read(new LineText(line, 0)).Cell!;
        string text = ConflictText.IsCell(line) ? ConflictText.Rewrite(line, expression => ReferenceShift.Follow(expression, workbook, from.Sheet, to.Sheet, move, runs)) : line;
        if (cell.Content is ResultContent result)
        {
            string expression = ReferenceShift.Follow(result.Expression, workbook, from.Sheet, to.Sheet, move, runs);
            if (expression != result.Expression) text = string.Concat(text.AsSpan(0, result.ExpressionColumn - 1), expression, text.AsSpan(result.ExpressionColumn - 1 + result.Expression.Length));
        }
        int start = line.Length - line.TrimStart(' ', '\t').Length, end = CellLine.AddressEnd(line, start);
        return from.Address == to.Address ? text : string.Concat(text.AsSpan(0, start), to.Address.ToString(), text.AsSpan(end));
    }

    /// <summary>A line without a cell as it reads afterwards; none for a column line whose column is gone.</summary>
    private static IEnumerable<FileLine> Other(FileLine line, Workbook workbook, Sheet sheet, Relocate move)
    {
        if (!ColumnMoves.IsColumn(line.Text)) return [line with { Text = TableReferences.Follow(line.Text, workbook, sheet.Name, move) }];
        return ColumnMoves.Rewrite(line.Text, sheet, move) is { } text ? [line with { Text = text }] : [];
    }

    /// <summary>The lines of the head, each rewritten.</summary>
    internal static Unseen<WorkbookSource> Head(Workbook workbook, Func<string, string> rewrite) =>
        workbook.Source.Value is not { } source ? default : new(source with { HeadLines = [.. source.HeadLines.Select(line => line with { Line = line.Line with { Text = rewrite(line.Line.Text) } })] });
}
