using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Changes single cells of a sheet and their lines.</summary>
internal static class SheetEditing
{
    /// <summary>With that cell; the same sheet when its text is what the cell there says already.</summary>
    public static Sheet With(Sheet sheet, Cell cell, LineEnd newLine)
    {
        Cell? old = sheet.Cells.GetValueOrDefault(cell.Address);
        if (ReferenceEquals(old, cell)) return sheet;
        string text = CellTextWriter.Line(cell);
        if (old is not null && CellTextWriter.Line(old) == text) return sheet;
        Cell read = Reread(text, cell.Address, old?.Place ?? default);
        if (old is null) return Insert(sheet, read, text, newLine);
        CellSource? source = old.Source.Value;
        FileLine line = new(text, source?.Line.End ?? newLine);
        return Set(sheet, old, CellSource.Attach(read, line, source?.Leading ?? []));
    }

    /// <summary>Without the cell there and the remarks and review marks directly above it; other lines above it go to the cell after it.</summary>
    public static Sheet Without(Sheet sheet, CellAddress address)
    {
        if (!sheet.Cells.TryGetValue(address, out Cell? old)) return sheet;
        int at = sheet.Order.IndexOf(address);
        ImmutableArray<FileLine> leading = old.Source.Value?.Leading ?? [];
        ImmutableArray<FileLine> staying = leading[..RemarksFrom(leading)];
        var cells = sheet.Cells.Without(address);
        Sheet changed = sheet with { Cells = cells, Order = sheet.Order.RemoveAt(at), Index = sheet.Index.After(cells, old.Name, null, address) };
        return staying.IsEmpty ? changed : GiveToNext(changed, at, staying);
    }

    /// <summary>The sheet with lines behind all its cells: its own, else those of the sheet it replaces where they say the same, else new ones.</summary>
    public static Sheet Adopt(Sheet? old, Sheet sheet, LineEnd newLine)
    {
        var cells = sheet.Cells;
        foreach (Cell cell in sheet.CellsInOrder)
        {
            if (cell.Source.Value?.Says(cell) != true) cells = cells.With(Adopt(old?.Cells.GetValueOrDefault(cell.Address), cell, newLine));
        }
        Sheet adopted = ReferenceEquals(cells, sheet.Cells) ? sheet : sheet with { Cells = cells };
        return adopted.Source.Value is null && old is not null ? adopted with { Source = old.Source } : adopted;
    }

    private static Cell Adopt(Cell? old, Cell cell, LineEnd newLine)
    {
        string text = CellTextWriter.Line(cell);
        if (old is not null && CellTextWriter.Line(old) == text) return old;
        CellSource? source = cell.Source.Value ?? old?.Source.Value;
        return CellSource.Attach(Reread(text, cell.Address, cell.Place), new FileLine(text, source?.Line.End ?? newLine), source?.Leading ?? []);
    }

    /// <summary>A cell as its text says, at the line it had.</summary>
    /// <exception cref="ArgumentException">The text is not that of a cell at that address.</exception>
    public static Cell Reread(string text, CellAddress address, Place place)
    {
        CellReading reading = CellLine.Read(new LineText(text, place.Line));
        if (reading.Cell is not { } cell || cell.Address != address) throw new ArgumentException($"\"{text}\" is no text of the cell {address}.", nameof(text));
        return place.Line == 0 ? cell with { Place = default } : cell;
    }

    /// <summary>Puts a changed cell where it was.</summary>
    public static Sheet Set(Sheet sheet, Cell old, Cell cell)
    {
        CellMap cells = sheet.Cells.With(cell);
        return sheet with { Cells = cells, Index = sheet.Index.After(cells, old.Name, cell.Name, cell.Address) };
    }

    private static Sheet Insert(Sheet sheet, Cell cell, string text, LineEnd newLine)
    {
        int at = Position(sheet.Order, cell.Address);
        FileLine line = new(text, newLine);
        ImmutableArray<FileLine> leading = [];
        if (at == 0 && sheet.Order.Count > 0) (sheet, leading) = TakeFromFirst(sheet);
        Cell placed = CellSource.Attach(cell, line, leading);
        var cells = sheet.Cells.With(placed);
        return sheet with { Cells = cells, Order = sheet.Order.Insert(at, cell.Address), Index = sheet.Index.After(cells, null, cell.Name, cell.Address) };
    }

    /// <summary>Behind the nearest address before it in row order; at the front where there is none.</summary>
    private static int Position(ImmutableList<CellAddress> order, CellAddress address)
    {
        int best = -1, i = 0;
        CellAddress nearest = default;
        foreach (CellAddress other in order)
        {
            if (other.CompareTo(address) < 0 && other.CompareTo(nearest) > 0) (best, nearest) = (i, other);
            i++;
        }
        return best + 1;
    }

    /// <summary>Lines above the first cell but the remarks directly above it go to the cell put before it.</summary>
    private static (Sheet Sheet, ImmutableArray<FileLine> Taken) TakeFromFirst(Sheet sheet)
    {
        Cell first = sheet.Cells[sheet.Order[0]];
        if (first.Source.Value is not { } source) return (sheet, []);
        int remarks = RemarksFrom(source.Leading);
        Cell changed = WithLeading(first, source.Leading[remarks..]);
        return (Set(sheet, first, changed), source.Leading[..remarks]);
    }

    private static Sheet GiveToNext(Sheet sheet, int at, ImmutableArray<FileLine> lines)
    {
        if (at < sheet.Order.Count && sheet.Cells[sheet.Order[at]] is { Source.Value: { } source } next)
            return Set(sheet, next, WithLeading(next, [.. lines, .. source.Leading]));
        return sheet.Source.Value is { } own ? sheet with { Source = new(own with { Trailing = [.. lines, .. own.Trailing] }) } : sheet;
    }

    private static Cell WithLeading(Cell cell, ImmutableArray<FileLine> leading) => cell with { Source = new(cell.Source.Value!.With(leading)) };

    /// <summary>Index of the first of the remarks and review marks that stand directly above the cell.</summary>
    internal static int RemarksFrom(ImmutableArray<FileLine> leading)
    {
        int from = leading.Length;
        while (from > 0 && leading[from - 1].IsOfNextCell) from--;
        return from;
    }
}
