using System.Collections.Immutable;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Fuzzing.Edits;

/// <summary>A what-if table of the slow model: where it stands, and the cells its lines name, in order.</summary>
internal sealed record SlowTable(string Sheet, CellAddress Anchor, string Names);

/// <content>What-if tables, whose lines name cells and follow them.</content>
internal sealed partial class SlowBook
{
    /// <summary>The tables, sheet by sheet.</summary>
    public List<SlowTable> Tables { get; private set; } = [];

    /// <summary>The tables of a workbook.</summary>
    private static List<SlowTable> TablesOf(Workbook workbook) => [.. workbook.Sheets.SelectMany(sheet => sheet.WhatIfs.Select(table => new SlowTable(sheet.Name, table.Anchor,
        string.Join(' ', table.Vary.Select(vary => StudyText.ReadVary(vary, out _)!.Name.Text).Concat(table.Show.SelectMany(show => StudyText.ReadShow(show, out _)).Select(name => name.Text))))))];

    private void RewriteTables(Func<SlowTable, string?, string, string> write) => Tables = [.. Tables.Select(table => table with
    {
        Names = string.Join(' ', table.Names.Split(' ').Select(said => said.Split('.') is [var sheet, var name] ? write(table, sheet, name) : write(table, null, said))),
    })];

    /// <summary>The cell a table means: one of its own sheet, else the only one there is; for an address where no cell is, the place on its own sheet.</summary>
    private CellId? Meant(string own, string? sheet, string name)
    {
        bool isAddress = CellAddress.TryParse(name, out CellAddress address);
        CellId[] found = [.. Cells.Where(pair => (sheet is null || pair.Key.Sheet == sheet) && (isAddress ? pair.Key.Address == address : pair.Value.Name == name)).Select(pair => pair.Key)];
        foreach (CellId id in found)
            if (sheet is null && id.Sheet == own) return id;
        if (found.Length == 1) return found[0];
        return found.Length == 0 && isAddress && (sheet is null || Sheets.Contains(sheet)) ? new CellId(sheet ?? own, address) : null;
    }

    private void MoveTables(Func<CellId, CellId?> move)
    {
        RewriteTables((table, sheet, name) =>
        {
            string said = sheet is null ? name : $"{sheet}.{name}";
            bool isAddress = CellAddress.TryParse(name, out CellAddress address);
            if (Meant(table.Sheet, sheet, name) is not { } meant || move(meant) == meant) return said;
            if (move(meant) is not { } to) return isAddress ? (sheet is null ? "" : sheet + ".") + Lost(address) : said;
            string there = isAddress ? to.Address.ToString() : name;
            if (sheet is null && to.Sheet == table.Sheet) return there;
            return !isAddress && sheet is null && to.Sheet == meant.Sheet ? said : $"{to.Sheet}.{there}";
        });
        Tables = [.. Tables.Select(table => move(new CellId(table.Sheet, table.Anchor)) is { } to && to.Sheet == table.Sheet ? table with { Anchor = to.Address } : table)];
    }
}
