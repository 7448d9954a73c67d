using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Fuzzing.Edits;

/// <content>Cells typed, cleared, copied, filled, moved and sorted; cells and sheets renamed.</content>
internal sealed partial class SlowBook
{
    /// <summary>A cell typed.</summary>
    public void Set(CellId id, SlowCell cell) => Cells[id] = cell;

    /// <summary>A block cleared.</summary>
    public void Clear(string sheet, CellBlock block)
    {
        foreach (CellId id in In(sheet, block).ToList()) Cells.Remove(id);
    }

    /// <summary>A cell renamed, wherever it is named.</summary>
    public void Rename(CellId id, string name)
    {
        string? old = Cells[id].Name;
        if (old is not null) RewriteTables((table, sheet, word) => (sheet is null ? "" : sheet + ".") + (word == old && Meant(table.Sheet, sheet, word) == id ? name : word));
        Cells[id] = Cells[id] with { Name = name };
        if (old is null) return;
        foreach ((CellId reader, SlowCell cell) in Cells.ToList())
            if (cell.Kind == SlowKind.Result)
                Cells[reader] = cell with { Text = SlowText.Rewrite(cell.Text, Sheets, (all, i) => all[i].Name == old && (all[i].Sheet ?? reader.Sheet) == id.Sheet ? all[i].Prefix + name : null) };
    }

    /// <summary>A sheet renamed, wherever it is named.</summary>
    public void RenameSheet(string old, string name)
    {
        Cells = Cells.ToDictionary(pair => pair.Key.Sheet == old ? pair.Key with { Sheet = name } : pair.Key, pair => pair.Value.Kind != SlowKind.Result ? pair.Value
            : pair.Value with { Text = SlowText.Rewrite(pair.Value.Text, Sheets, (all, i) => all[i].Sheet == old ? $"{name}.{all[i].Name}" : null) });
        Columns = Columns.ToDictionary(pair => pair.Key.Sheet == old ? (name, pair.Key.Name) : pair.Key, pair => pair.Value);
        RewriteTables((_, sheet, word) => sheet is null ? word : $"{(sheet == old ? name : sheet)}.{word}");
        Tables = [.. Tables.Select(table => table.Sheet == old ? table with { Sheet = name } : table)];
        Sheets[Sheets.IndexOf(old)] = name;
    }

    /// <summary>A sheet added at the end.</summary>
    public void AddSheet(string name) => Sheets.Add(name);

    /// <summary>A sheet removed; what refers to it is left as it reads.</summary>
    public void RemoveSheet(string name)
    {
        Sheets.Remove(name);
        Cells = Cells.Where(pair => pair.Key.Sheet != name).ToDictionary();
        Columns = Columns.Where(pair => pair.Key.Sheet != name).ToDictionary();
        Tables = [.. Tables.Where(table => table.Sheet != name)];
    }

    /// <summary>The cells of a block copied, each so far away: addresses move along, names stay, the cell's own name stays behind.</summary>
    public void CopyBlock(string sheet, CellBlock block, string to, int columns, int rows)
    {
        var copies = In(sheet, block).Select(id => (To: new CellId(to, new CellAddress(id.Address.Column + columns, id.Address.Row + rows)), Cell: Cells[id])).ToList();
        foreach ((CellId at, SlowCell cell) in copies)
            if (at.Address.IsValid && cell.Kind != SlowKind.Broken) Cells[at] = Copied(cell, sheet, to, columns, rows);
    }

    /// <summary>The first row of a block copied into those beneath it, or its first column into those beside it.</summary>
    public void Fill(string sheet, CellBlock block, bool down)
    {
        Dictionary<CellId, SlowCell> before = new(Cells);
        foreach (CellAddress at in block.Addresses())
        {
            CellAddress from = down ? at with { Row = block.First.Row } : at with { Column = block.First.Column };
            if (from != at && before.TryGetValue(new CellId(sheet, from), out SlowCell? cell) && cell.Kind != SlowKind.Broken)
                Cells[new CellId(sheet, at)] = Copied(cell, sheet, sheet, at.Column - from.Column, at.Row - from.Row);
        }
    }

    private SlowCell Copied(SlowCell cell, string from, string to, int columns, int rows) => cell with
    {
        Name = null,
        Text = cell.Kind != SlowKind.Result ? cell.Text : SlowText.Rewrite(cell.Text, Sheets, (all, i) =>
        {
            if (all[i].Address is not { } address)
                return from != to && all[i].Sheet is null && (Named(from, all[i].Name) is not null || Columns.ContainsKey((from, all[i].Name))) && Named(to, all[i].Name) is null && !Columns.ContainsKey((to, all[i].Name)) ? $"{from}.{all[i].Name}" : null;
            CellAddress moved = new(address.Column + columns, address.Row + rows);
            return all[i].Prefix + (moved.IsValid ? moved.ToString() : Lost(address));
        }),
    };

    /// <summary>A block moved; a cell it comes to stand on is gone, and whoever named that by its address reads nothing.</summary>
    public void MoveBlock(string sheet, CellBlock block, string to, int columns, int rows)
    {
        bool Inside(CellId id) => id.Sheet == sheet && block.Contains(id.Address);
        CellId Along(CellId id) => new(to, new CellAddress(id.Address.Column + columns, id.Address.Row + rows));
        HashSet<CellId> covered = [.. block.Addresses().Select(address => Along(new CellId(sheet, address))).Where(id => Cells.ContainsKey(id) && !Inside(id))];
        CellId? Corner(CellId id) => Inside(id) ? Along(id) : id;
        CellId? Cell(CellId id) => covered.Contains(id) ? null : Corner(id);
        MoveColumns(Cell);
        Relocate(Cell, (first, last) => Straight(Corner(first)!.Value, Corner(last)!.Value));
    }

    /// <summary>The rows or columns of a block put in that order; runs stay where they are.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="block">The block.</param>
    /// <param name="columns">Columns, or rows.</param>
    /// <param name="order">The old numbers in their new order.</param>
    public void Sort(string sheet, CellBlock block, bool columns, List<int> order)
    {
        int first = columns ? block.First.Column : block.First.Row;
        CellId? Sorted(CellId id)
        {
            if (id.Sheet != sheet || !block.Contains(id.Address)) return id;
            int to = first + order.IndexOf(columns ? id.Address.Column : id.Address.Row);
            return id with { Address = columns ? id.Address with { Column = to } : id.Address with { Row = to } };
        }

        MoveColumns(Sorted);
        Relocate(Sorted, (from, to) => (from, to));
    }

    /// <summary>A column by name goes where its cells go together; where they part, or leave the sheet, or there are none, it stays.</summary>
    private void MoveColumns(Func<CellId, CellId?> move) => Columns = Columns.ToDictionary(column => column.Key, column =>
    {
        int[] to = [.. Cells.Keys.Where(id => id.Sheet == column.Key.Sheet && id.Address.Column == column.Value).Select(move).OfType<CellId>().Where(id => id.Sheet == column.Key.Sheet).Select(id => id.Address.Column).Distinct()];
        return to.Length == 1 ? to[0] : column.Value;
    });

    /// <summary>A run whose corners changed sides, or came to two sheets, is none.</summary>
    private static (CellId, CellId)? Straight(CellId first, CellId last) =>
        last.Address.Row < first.Address.Row || last.Address.Column < first.Address.Column ? null : (first, last);
}
