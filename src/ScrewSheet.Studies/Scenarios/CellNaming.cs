using ScrewSheet.Studies.Faults;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>Finds the cell a name in a study means: on the study's own sheet, on the sheet written before it, or anywhere it is the only one.</summary>
internal static class CellNaming
{
    /// <summary>The cell, or null with a fault.</summary>
    public static CellId? Find(Workbook workbook, PlacedText name, string? ownSheet, out Fault? fault)
    {
        int dot = name.Text.IndexOf('.', StringComparison.Ordinal);
        string bare = name.Text[(dot + 1)..];
        Sheet[] sheets = [.. workbook.Sheets.Where(sheet => dot < 0 || sheet.Name == name.Text[..dot])];
        CellId[] found = [.. sheets.SelectMany(sheet => On(sheet, bare))];
        CellId[] own = dot < 0 ? [.. found.Where(id => id.Sheet == ownSheet)] : [];
        if (own.Length == 1) found = own;
        fault = found.Length switch
        {
            1 => null,
            0 => StudyFaults.NoSuchCell(name.Text, PlaceOf(name)),
            _ => StudyFaults.Ambiguous(name.Text, string.Join(" or ", found), PlaceOf(name)),
        };
        return fault is null ? found[0] : null;
    }

    /// <summary>How a study calls a cell: by its name where it has one, with its sheet where another sheet has that name too.</summary>
    public static string Label(Workbook workbook, CellId id)
    {
        string own = workbook.Find(id.Sheet)?.Cells.GetValueOrDefault(id.Address)?.Name ?? id.Address.ToString();
        return workbook.Sheets.Length == 1 || workbook.Sheets.Count(sheet => On(sheet, own).Any()) == 1 ? own : $"{id.Sheet}.{own}";
    }

    /// <summary>Where a name stands, or null where it stands in no file.</summary>
    public static Place? PlaceOf(PlacedText text) => text.Place.Line > 0 ? text.Place : null;

    private static IEnumerable<CellId> On(Sheet sheet, string name)
    {
        if (CellAddress.TryParse(name, out CellAddress address) && sheet.Cells.ContainsKey(address)) return [new CellId(sheet.Name, address)];
        return sheet.Names.TryGetValue(name, out CellAddress named) ? [new CellId(sheet.Name, named)] : [];
    }
}
