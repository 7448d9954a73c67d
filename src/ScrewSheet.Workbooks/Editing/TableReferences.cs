using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Editing;

/// <summary>
/// What the lines of tables refer to: a cell of their own sheet, of the sheet written before it, or the only one there is, as a study finds it. It follows its cell.
/// </summary>
internal static class TableReferences
{
    /// <summary>A line of a sheet, or of the head, when cells go elsewhere.</summary>
    /// <param name="line">The line.</param>
    /// <param name="workbook">The workbook before.</param>
    /// <param name="own">The line's sheet; null for one of the head.</param>
    /// <param name="move">Where each place goes.</param>
    public static string Follow(string line, Workbook workbook, string? own, Relocate move) => TableLines.Rewrite(line, name => workbook.Find(name) is not null, word =>
    {
        bool isAddress = CellAddress.TryParse(word.Name, out CellAddress address);
        if (word.IsPlace) return own is not null && isAddress && move(new CellId(own, address), 0) is { } there && there.Sheet == own ? there.Address.ToString() : null;
        if (Target(word, workbook, own) is not { } target) return null;
        CellId? moved = move(target, 0);
        if (moved == target) return null;
        if (moved is not { } to) return isAddress ? Prefix(word.Sheet) + Relocation.LostName(address) : null;
        string name = isAddress ? to.Address.ToString() : word.Name;
        if (word.Sheet is null && to.Sheet == own) return name;
        return isAddress || word.Sheet is not null || to.Sheet != target.Sheet ? $"{to.Sheet}.{name}" : null;
    });

    /// <summary>A line when a cell gets another name.</summary>
    public static string Renamed(string line, Workbook workbook, string? own, CellId cell, string old, string name) =>
        TableLines.Rewrite(line, sheet => workbook.Find(sheet) is not null, word => word.Name == old && Target(word, workbook, own) == cell ? Prefix(word.Sheet) + name : null);

    /// <summary>A line when a sheet gets another name.</summary>
    public static string RenamedSheet(string line, string old, string name) => TableLines.Rewrite(line, sheet => sheet == old, word => word.Sheet == old ? $"{name}.{word.Name}" : null);

    /// <summary>The cell meant; a place of the line's own sheet where there is no cell; null where no cell has the name, or several have.</summary>
    private static CellId? Target(TableWord word, Workbook workbook, string? own)
    {
        bool isAddress = CellAddress.TryParse(word.Name, out CellAddress address);
        CellId[] found = [.. workbook.Sheets.Where(sheet => word.Sheet is null || sheet.Name == word.Sheet).SelectMany(sheet => On(sheet, word.Name))];
        if (word.Sheet is null && Array.Find(found, id => id.Sheet == own) is { Sheet: not null } near) return near;
        if (found.Length == 1) return found[0];
        return isAddress && found.Length == 0 && (word.Sheet ?? own) is { } sheet ? new CellId(sheet, address) : null;
    }

    private static IEnumerable<CellId> On(Sheet sheet, string name)
    {
        if (CellAddress.TryParse(name, out CellAddress address) && sheet.Cells.ContainsKey(address)) return [new CellId(sheet.Name, address)];
        return sheet.Names.TryGetValue(name, out CellAddress named) ? [new CellId(sheet.Name, named)] : [];
    }

    private static string Prefix(string? sheet) => sheet is null ? "" : sheet + ".";
}
