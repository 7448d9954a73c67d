using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Gathers the lines of one sheet.</summary>
internal sealed class SheetBuilder(string name, string? title, int firstLine, FileLine sheetLine)
{
    private readonly List<FileLine> opening = [sheetLine];
    private readonly List<FileLine> pending = [];
    private readonly Dictionary<CellAddress, Cell> cells = [];
    private readonly List<CellAddress> order = [];
    private readonly Dictionary<string, (CellAddress Address, Place Place)> names = new(StringComparer.Ordinal);
    private readonly HashSet<string> doubledNames = new(StringComparer.Ordinal);
    private readonly HashSet<CellAddress> doubledAddresses = [];
    private readonly List<(SheetColumn Column, string Line)> columns = [];
    private readonly ImmutableArray<WhatIfBlock>.Builder whatIfs = ImmutableArray.CreateBuilder<WhatIfBlock>();
    private readonly ImmutableArray<ReservedLine>.Builder reserved = ImmutableArray.CreateBuilder<ReservedLine>();
    private readonly ImmutableDictionary<int, int>.Builder widths = ImmutableDictionary.CreateBuilder<int, int>();

    public string Name => name;

    /// <summary>The line the sheet begins in.</summary>
    public int FirstLine => firstLine;

    /// <summary>How many cells so far.</summary>
    public int Count => cells.Count;

    /// <summary>Keeps a line without a cell.</summary>
    public void Keep(FileLine line) => pending.Add(line);

    /// <summary>Reads a widths line, which stands before the first cell.</summary>
    public Fault? ReadWidths(FileLine file, LineText line, int start)
    {
        pending.Add(file);
        Fault? fault = cells.Count > 0 ? FormatFaults.WidthsPlace(line.At(0, start)) : SheetLine.ReadWidths(line, start, widths);
        if (fault is not null) return fault;
        opening.AddRange(pending);
        pending.Clear();
        return null;
    }

    /// <summary>Reads a column line.</summary>
    public Fault? ReadColumn(FileLine file, LineText line, int start)
    {
        pending.Add(file);
        if (ColumnLine.Read(line, start, out Fault? fault) is not { } column) return fault;
        SheetColumn? same = columns.Find(other => other.Column.Column == column.Column || other.Column.Name == column.Name).Column;
        if (same is not null) return FormatFaults.ColumnTwice(column.Place, same.Column == column.Column ? CellAddress.ColumnName(same.Column) : same.Name, same.Place.Line);
        columns.Add((column, file.Text));
        return null;
    }

    /// <summary>Takes a finished block.</summary>
    public void Add(BlockReader block)
    {
        if (block.WhatIf is { } whatIf) whatIfs.Add(whatIf);
        if (block.Reserved is { } line) reserved.Add(line);
    }

    /// <summary>Adds a cell.</summary>
    /// <returns>The fault of a line whose address is taken, which is then no cell; else null.</returns>
    public Fault? Add(Cell cell, Place namePlace, FileLine line)
    {
        if (cells.TryGetValue(cell.Address, out Cell? first))
        {
            doubledAddresses.Add(cell.Address);
            Break(first, NameFaults.DoubledAddress(first.Place, cell.Address.ToString(), cell.Place.Line));
            pending.Add(line);
            return NameFaults.DoubledAddress(cell.Place, cell.Address.ToString(), first.Place.Line);
        }
        if (cell.Name is not null) cell = CheckName(cell, namePlace, line.Text);
        cells.Add(cell.Address, CellSource.Attach(cell, line, pending.Count == 0 ? [] : [.. pending]));
        order.Add(cell.Address);
        pending.Clear();
        return null;
    }

    /// <summary>The sheet.</summary>
    /// <param name="broken">Takes the column lines that share their name with a cell.</param>
    public Sheet Build(ImmutableArray<BrokenLine>.Builder broken)
    {
        columns.RemoveAll(column => ClashesWithCell(column.Column, column.Line, broken));
        var built = CellMap.Over(cells);
        var index = new NameIndex(built, names.ToImmutableDictionary(pair => pair.Key, pair => pair.Value.Address, StringComparer.Ordinal), [.. doubledNames]);
        Sheet sheet = new()
        {
            Name = name, Title = title, Widths = widths.ToImmutable(), Cells = built, Order = [.. order],
            WhatIfs = whatIfs.ToImmutable(), Columns = [.. columns.Select(column => column.Column)], Reserved = reserved.ToImmutable(), Index = index,
        };
        return sheet with { Source = new(new SheetSource([.. opening], [.. pending], SheetHeading.Of(sheet), [.. doubledAddresses])) };
    }

    /// <summary>A cell and a column of one name are both in fault.</summary>
    private bool ClashesWithCell(SheetColumn column, string line, ImmutableArray<BrokenLine>.Builder broken)
    {
        if (!names.TryGetValue(column.Name, out (CellAddress Address, Place Place) bearer)) return false;
        doubledNames.Add(column.Name);
        Break(cells[bearer.Address], NameFaults.DoubledName(bearer.Place, column.Name, $"column {CellAddress.ColumnName(column.Column)}", column.Place.Line));
        broken.Add(new BrokenLine(line, NameFaults.DoubledName(column.Place, column.Name, bearer.Address.ToString(), bearer.Place.Line)));
        return true;
    }

    private Cell CheckName(Cell cell, Place namePlace, string line)
    {
        if (names.TryAdd(cell.Name!, (cell.Address, namePlace))) return cell;
        (CellAddress firstAddress, Place firstPlace) = names[cell.Name!];
        doubledNames.Add(cell.Name!);
        Cell first = cells[firstAddress];
        Break(first, NameFaults.DoubledName(firstPlace, cell.Name!, cell.Address.ToString(), cell.Place.Line));
        return Broken(cell, line, NameFaults.DoubledName(namePlace, cell.Name!, firstAddress.ToString(), first.Place.Line));
    }

    /// <summary>The cell in fault; a fault of its own goes before.</summary>
    private static Cell Broken(Cell cell, string line, Fault fault) => cell.Content is BrokenContent ? cell : cell with { Content = new BrokenContent(line, fault) };

    private void Break(Cell cell, Fault fault)
    {
        FileLine line = cell.Source.Value!.Line;
        cells[cell.Address] = CellSource.Attach(Broken(cell, line.Text, fault), line, cell.Source.Value.Leading);
    }
}
