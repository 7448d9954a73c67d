using System.Collections.Immutable;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Comparing;

/// <summary>A sheet in two versions.</summary>
/// <param name="Before">The earlier one.</param>
/// <param name="After">The later one.</param>
/// <param name="Rows">Which row became which.</param>
internal sealed record SheetPair(Sheet Before, Sheet After, RowMap Rows);

/// <summary>Which sheet and which cell of one version became which of another: by name, else by place, rows that were inserted or removed counted in.</summary>
internal sealed class WorkbookPairs
{
    private readonly Dictionary<CellId, CellId> forward = [], backward = [];
    private readonly Dictionary<string, SheetPair> byBefore;

    private WorkbookPairs(Workbook before, Workbook after, ImmutableArray<SheetPair> sheets)
    {
        (Before, After, Sheets) = (before, after, sheets);
        byBefore = sheets.ToDictionary(pair => pair.Before.Name, StringComparer.Ordinal);
    }

    /// <summary>The earlier version.</summary>
    public Workbook Before { get; }

    /// <summary>The later version.</summary>
    public Workbook After { get; }

    /// <summary>The sheets that are in both, in the order of the later version.</summary>
    public ImmutableArray<SheetPair> Sheets { get; }

    /// <summary>True where no cell that is in both has another place or name, so that an expression means the same where it reads the same.</summary>
    public bool IsPlain { get; private set; } = true;

    /// <summary>True where cells or sheets that are in both have other names.</summary>
    public bool HasRenamed { get; private set; }

    /// <summary>Pairs two versions.</summary>
    public static WorkbookPairs Of(Workbook before, Workbook after)
    {
        List<(Sheet Before, Sheet After)> sheets = [.. after.Sheets.Where(sheet => before.Find(sheet.Name) is not null).Select(sheet => (before.Find(sheet.Name)!, sheet))];
        foreach (Sheet late in after.Sheets.Where(sheet => before.Find(sheet.Name) is null))
        {
            if (before.Sheets.FirstOrDefault(early => after.Find(early.Name) is null && sheets.TrueForAll(pair => pair.Before != early) && AreAlike(early, late)) is { } renamed) sheets.Add((renamed, late));
        }
        WorkbookPairs pairs = new(before, after, [.. sheets.OrderBy(pair => after.Sheets.IndexOf(pair.After)).Select(pair => new SheetPair(pair.Before, pair.After, RowMap.Of(pair.Before, pair.After)))]);
        foreach (SheetPair sheet in pairs.Sheets) pairs.PairByName(sheet);
        foreach (SheetPair sheet in pairs.Sheets) pairs.PairByPlace(sheet);
        pairs.PairAcrossSheets();
        pairs.LookForMoves();
        return pairs;
    }

    /// <summary>The cell of the later version that a cell or an empty place of the earlier one became; null where it is gone.</summary>
    public CellId? Forward(CellId id)
    {
        if (forward.TryGetValue(id, out CellId cell)) return cell;
        if (!byBefore.TryGetValue(id.Sheet, out SheetPair? sheet) || sheet.Before.Cells.ContainsKey(id.Address)) return null;
        return sheet.Rows.Forward(id.Address.Row) is { } row ? new CellId(sheet.After.Name, id.Address with { Row = row }) : null;
    }

    /// <summary>The cell of the earlier version that this one was; null where it is new.</summary>
    public CellId? Backward(CellId id) => backward.TryGetValue(id, out CellId cell) ? cell : null;

    /// <summary>True where a cell stands where its row went.</summary>
    public bool IsInPlace(CellId before, CellId after) =>
        byBefore.TryGetValue(before.Sheet, out SheetPair? sheet) && sheet.After.Name == after.Sheet && before.Address.Column == after.Address.Column && sheet.Rows.Forward(before.Address.Row) == after.Address.Row;

    private void PairByName(SheetPair sheet)
    {
        foreach ((string name, CellAddress address) in sheet.Before.Names)
        {
            if (sheet.After.Names.TryGetValue(name, out CellAddress late)) Pair(new CellId(sheet.Before.Name, address), new CellId(sheet.After.Name, late));
        }
    }

    private void PairByPlace(SheetPair sheet)
    {
        foreach (CellAddress address in sheet.Before.Order)
        {
            CellId early = new(sheet.Before.Name, address);
            if (forward.ContainsKey(early) || sheet.Rows.Forward(address.Row) is not { } row) continue;
            CellId late = new(sheet.After.Name, address with { Row = row });
            if (sheet.After.Cells.ContainsKey(late.Address) && !backward.ContainsKey(late)) Pair(early, late);
        }
    }

    private void PairAcrossSheets()
    {
        ILookup<string, CellId> late = Unpaired(After, backward).ToLookup(found => found.Name, found => found.Id, StringComparer.Ordinal);
        foreach (var early in Unpaired(Before, forward).GroupBy(found => found.Name, StringComparer.Ordinal))
        {
            if (early.Count() == 1 && late[early.Key].Count() == 1) Pair(early.Single().Id, late[early.Key].Single());
        }
    }

    private static IEnumerable<(string Name, CellId Id)> Unpaired(Workbook workbook, Dictionary<CellId, CellId> paired) =>
        from sheet in workbook.Sheets
        from cell in sheet.CellsInOrder
        let id = new CellId(sheet.Name, cell.Address)
        where cell.Name is not null && !paired.ContainsKey(id)
        select (cell.Name, id);

    private void Pair(CellId before, CellId after)
    {
        forward.Add(before, after);
        backward.Add(after, before);
    }

    private void LookForMoves()
    {
        HasRenamed = Sheets.Any(sheet => sheet.Before.Name != sheet.After.Name) || forward.Any(pair => NameOf(Before, pair.Key) is { } name && name != NameOf(After, pair.Value));
        IsPlain = !HasRenamed && Sheets.All(sheet => sheet.Rows.IsIdentity) && forward.All(pair => pair.Key == pair.Value);
    }

    private static string? NameOf(Workbook workbook, CellId id) => workbook.Find(id.Sheet)!.Cells[id.Address].Name;

    /// <summary>Half of what stands on either sheet stands on the other.</summary>
    private static bool AreAlike(Sheet one, Sheet other)
    {
        HashSet<string> mine = [.. one.Cells.Values.Select(CellText.WriteEntry)];
        int shared = other.Cells.Values.Count(cell => mine.Contains(CellText.WriteEntry(cell)));
        return shared > 0 && shared * 2 >= Math.Max(one.Cells.Count, other.Cells.Count);
    }
}
