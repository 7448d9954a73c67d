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

    /// <summary>Without the cell there and the remarks directly above it; other lines above it go to the cell after it.</summary>
    public static Sheet Without(Sheet sheet, CellAddress address)
    {
        if (!sheet.Cells.TryGetValue(address, out Cell? old)) return sheet;
        int at = sheet.Order.IndexOf(address);
        ImmutableArray<FileLine> leading = old.Source.Value?.Leading ?? [];
        ImmutableArray<FileLine> staying = leading[..RemarksFrom(leading)];
        var cells = sheet.Cells.Remove(address);
        Sheet changed = sheet with { Cells = cells, Order = sheet.Order.RemoveAt(at), Index = sheet.Index.After(cells, old.Name, null, address) };
        return staying.IsEmpty ? changed : GiveToNext(changed, at, staying);
    }

    /// <summary>The new sheet with the old one's lines wherever it has none of its own.</summary>
    public static Sheet Adopt(Sheet old, Sheet sheet)
    {
        var cells = sheet.Cells.ToBuilder();
        foreach ((CellAddress address, Cell cell) in sheet.Cells)
        {
            if (cell.Source.Value is null && old.Cells.TryGetValue(address, out Cell? before)) cells[address] = cell with { Source = before.Source };
        }
        Sheet adopted = sheet with { Cells = cells.ToImmutable() };
        return sheet.Source.Value is null ? adopted with { Source = old.Source } : adopted;
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
        var cells = sheet.Cells.SetItem(cell.Address, cell);
        return sheet with { Cells = cells, Index = sheet.Index.After(cells, old.Name, cell.Name, cell.Address) };
    }

    private static Sheet Insert(Sheet sheet, Cell cell, string text, LineEnd newLine)
    {
        int at = Position(sheet.Order, cell.Address);
        FileLine line = new(text, newLine);
        ImmutableArray<FileLine> leading = [];
        if (at == 0 && sheet.Order.Count > 0) (sheet, leading) = TakeFromFirst(sheet);
        Cell placed = CellSource.Attach(cell, line, leading);
        var cells = sheet.Cells.Add(cell.Address, placed);
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

    /// <summary>Index of the first of the remarks that stand directly above the cell.</summary>
    private static int RemarksFrom(ImmutableArray<FileLine> leading)
    {
        int from = leading.Length;
        while (from > 0 && leading[from - 1].IsRemark) from--;
        return from;
    }
}
