using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Fuzzing.Edits;

/// <content>Rows and columns inserted, removed and moved: lists of things, done to them what is done to the sheet, and then looked for.</content>
internal sealed partial class SlowBook
{
    /// <summary>More than a walk can reach.</summary>
    private const int Far = 400;

    /// <summary>Rows, or columns, inserted before one.</summary>
    public void Insert(string sheet, bool rows, int at, int count)
    {
        List<int> lines = All();
        lines.InsertRange(at - 1, Enumerable.Repeat(0, count));
        Lines(sheet, rows, lines, (first, last) => (first, last));
    }

    /// <summary>Rows, or columns, removed.</summary>
    public void Remove(string sheet, bool rows, int first, int last)
    {
        List<int> lines = All();
        lines.RemoveRange(first - 1, last - first + 1);
        // a run is what is left of it
        Lines(sheet, rows, lines, (from, to) =>
        {
            List<int> left = [.. Enumerable.Range(from, to - from + 1).Where(lines.Contains)];
            return left.Count == 0 ? null : (left[0], left[^1]);
        });
    }

    /// <summary>Rows, or columns, moved past others.</summary>
    public void Move(string sheet, bool rows, int first, int last, int by)
    {
        if (by == 0 || first + by < 1) return; // nowhere, or out of the sheet
        List<int> lines = All(), moved = lines.GetRange(first - 1, last - first + 1);
        lines.RemoveRange(first - 1, moved.Count);
        lines.InsertRange(first - 1 + by, moved);
        // a run goes along where all of it moves; else it is what stays, from end to end
        Lines(sheet, rows, lines, (from, to) =>
        {
            List<int> own = [.. Enumerable.Range(from, to - from + 1)], staying = [.. own.Except(moved)];
            return staying.Count == 0 ? (own[0], own[^1]) : (staying[0], staying[^1]);
        });
    }

    private static List<int> All() => [.. Enumerable.Range(1, Far)];

    /// <summary>Everything goes where its line went.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="rows">Rows, or columns.</param>
    /// <param name="lines">The lines as they come to stand, each by its old number.</param>
    /// <param name="ends">Which of its lines a run begins and ends with afterwards; null where none is left.</param>
    private void Lines(string sheet, bool rows, List<int> lines, Func<int, int, (int First, int Last)?> ends)
    {
        int? To(int line) => lines.IndexOf(line) is >= 0 and var at ? at + 1 : null;
        CellAddress With(CellAddress address, int line) => rows ? address with { Row = line } : address with { Column = line };
        int Of(CellAddress address) => rows ? address.Row : address.Column;
        CellId? Cell(CellId id) => id.Sheet != sheet ? id : To(Of(id.Address)) is { } line ? id with { Address = With(id.Address, line) } : null;
        (CellId, CellId)? Run(CellId first, CellId last) => first.Sheet != sheet ? (first, last)
            : Straight(first, last) is not null && ends(Of(first.Address), Of(last.Address)) is { } kept ? (first with { Address = With(first.Address, To(kept.First)!.Value) }, last with { Address = With(last.Address, To(kept.Last)!.Value) }) : null;
        Relocate(Cell, Run);
        if (!rows) Columns = Columns.Where(column => column.Key.Sheet != sheet || To(column.Value) is not null).ToDictionary(column => column.Key, column => column.Key.Sheet == sheet ? To(column.Value)!.Value : column.Value);
    }

    /// <summary>Every cell goes where it is told, and what refers to it follows; what refers to a cell that is gone refers to nothing.</summary>
    /// <param name="move">Where a place goes; null where it is gone.</param>
    /// <param name="run">Where a run goes; null where nothing is left of it.</param>
    private void Relocate(Func<CellId, CellId?> move, Func<CellId, CellId, (CellId First, CellId Last)?> run)
    {
        Dictionary<CellId, SlowCell> moved = [];
        foreach ((CellId id, SlowCell cell) in Cells)
        {
            if (move(id) is not { } to) continue;
            moved.Add(to, cell.Kind != SlowKind.Result ? cell : cell with { Text = SlowText.Rewrite(cell.Text, Sheets, (all, i) => Follow(all, i, id.Sheet, to.Sheet, move, run)) });
        }
        MoveTables(move);
        Cells = moved;
    }

    private string? Follow(List<SlowReference> all, int i, string from, string to, Func<CellId, CellId?> move, Func<CellId, CellId, (CellId First, CellId Last)?> run)
    {
        SlowReference reference = all[i];
        if (Target(reference, from) is not { } target)
            return from != to && reference.Sheet is null && Columns.ContainsKey((from, reference.Name)) ? $"{from}.{reference.Name}" : null;
        string Said(CellId there, string word) => reference.Sheet is null && there.Sheet == to ? word : $"{there.Sheet}.{word}";
        if (reference.Address is not { } address) return move(target) is { } named ? Said(named, reference.Name) : null;
        SlowReference? other = reference.Corner == 1 ? all[i + 1] : reference.Corner == 2 ? all[i - 1] : null;
        CellId? there;
        if (other is { Address: not null })
        {
            CellId opposite = Target(other.Value, from)!.Value;
            (CellId First, CellId Last)? ends = opposite.Sheet != target.Sheet ? null : reference.Corner == 1 ? run(target, opposite) : run(opposite, target);
            there = opposite.Sheet != target.Sheet ? Alone(move(target), move(opposite), reference.Corner) : reference.Corner == 1 ? ends?.First : ends?.Last;
        }
        else there = move(target);
        return there is { } found ? Said(found, found.Address.ToString()) : reference.Prefix + Lost(address);
    }

    /// <summary>Where a corner goes whose other one is on another sheet: by itself, unless both come to one sheet the wrong way round.</summary>
    private static CellId? Alone(CellId? own, CellId? other, int corner) =>
        own is { } one && other is { } far && one.Sheet == far.Sheet && (corner == 1 ? Straight(one, far) : Straight(far, one)) is null ? null : own;
}
