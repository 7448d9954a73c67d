using System.Text.RegularExpressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Exports.Xlsx.Naming;

/// <summary>
/// The names of cells as defined names of ECMA-376 (Part 1, 18.2.5): one for the whole file, whatever the case of its letters, and none that could be read as a cell address in
/// either notation, as a truth or as a function. A name that stays alone is as the author wrote it.
/// </summary>
internal sealed partial class DefinedNames
{
    private readonly Dictionary<CellId, string> names = [];
    private readonly HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);

    private DefinedNames() { }

    /// <summary>The cells that have one, in the order of the file.</summary>
    public IReadOnlyDictionary<CellId, string> All => names;

    /// <summary>For the named cells of a workbook.</summary>
    public static DefinedNames Of(Workbook workbook)
    {
        DefinedNames defined = new();
        (CellId Id, string Name)[] cells = [.. workbook.Sheets.SelectMany(sheet => sheet.CellsInOrder.Where(cell => cell.Name is not null).Select(cell => (new CellId(sheet.Name, cell.Address), cell.Name!)))];
        HashSet<string> doubled = new(cells.GroupBy(cell => cell.Name, StringComparer.OrdinalIgnoreCase).Where(group => group.Count() > 1).Select(group => group.Key), StringComparer.OrdinalIgnoreCase);
        foreach ((CellId id, string name) in cells.OrderBy(cell => doubled.Contains(cell.Name))) defined.Add(id, doubled.Contains(name) ? $"{id.Sheet}_{name}" : name);
        return defined;
    }

    /// <summary>The defined name of a cell, or null.</summary>
    public string? Of(CellId cell) => names.GetValueOrDefault(cell);

    /// <summary>A name as a defined name may be, not yet made the only one.</summary>
    public static string Allowed(string name)
    {
        string kept = name.Length > 240 ? name[..240] : name;
        bool clashes = AddressLike().IsMatch(kept) || RowColumnLike().IsMatch(kept) || StandardFunctions.Contains(kept);
        return clashes ? kept + "_" : kept;
    }

    private void Add(CellId id, string name)
    {
        string allowed = Allowed(name), only = allowed;
        for (int again = 2; !taken.Add(only); again++) only = $"{allowed}_{again}";
        names.Add(id, only);
    }

    [GeneratedRegex("^[A-Z]{1,3}[0-9]+$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex AddressLike();

    [GeneratedRegex("^(R[0-9]*(C[0-9]*)?|C[0-9]*)$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex RowColumnLike();
}
