using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>What words mean in a cell of a sheet.</summary>
internal sealed class SheetScope(string sheet, FunctionLibrary library, IReadOnlyDictionary<string, OwnFunction> own, NameIndex names) : INameScope
{
    public string Sheet => sheet;

    public FunctionLibrary Library => library;

    public IReadOnlyDictionary<string, OwnFunction> OwnFunctions => own;

    public IReadOnlyList<BoundParameter> Parameters => [];

    public bool IsSheet(string name) => names.IsSheet(name);

    public CellId? Find(string onSheet, string name) => names.Find(onSheet, name);

    public IEnumerable<string> SheetsWith(string name) => names.SheetsWith(name);

    public IEnumerable<string> Known() => names.On(sheet);
}

/// <summary>What words mean in the body of an author's function.</summary>
internal sealed class FunctionScope(FunctionLibrary library, IReadOnlyDictionary<string, OwnFunction> own, IReadOnlyList<BoundParameter> parameters) : INameScope
{
    public string? Sheet => null;

    public FunctionLibrary Library => library;

    public IReadOnlyDictionary<string, OwnFunction> OwnFunctions => own;

    public IReadOnlyList<BoundParameter> Parameters => parameters;

    public bool IsSheet(string name) => false;

    public CellId? Find(string onSheet, string name) => null;

    public IEnumerable<string> SheetsWith(string name) => [];

    public IEnumerable<string> Known() => parameters.Select(parameter => parameter.Name);
}

/// <summary>The names of a workbook's cells, sheet by sheet. A name that stands twice means the first cell in row order, whichever came first.</summary>
internal sealed class NameIndex
{
    private readonly Dictionary<string, Dictionary<string, CellAddress>> sheets = [];
    private readonly Dictionary<(string Sheet, string Name), SortedSet<CellAddress>> doubled = [];

    public bool IsSheet(string name) => sheets.ContainsKey(name);

    public IEnumerable<string> Sheets => sheets.Keys;

    public void AddSheet(string name) => sheets.TryAdd(name, []);

    public void RemoveSheet(string name) => sheets.Remove(name);

    public CellId? Find(string sheet, string name) =>
        sheets.TryGetValue(sheet, out var names) && names.TryGetValue(name, out CellAddress address) ? new CellId(sheet, address) : null;

    public IEnumerable<string> SheetsWith(string name) => sheets.Where(sheet => sheet.Value.ContainsKey(name)).Select(sheet => sheet.Key);

    public IEnumerable<string> On(string sheet) => sheets.TryGetValue(sheet, out var names) ? names.Keys : [];

    /// <summary>Adds a name; the answer is the cell that had it alone until now, or null.</summary>
    public CellId? Add(CellId id, string name)
    {
        if (sheets[id.Sheet].TryAdd(name, id.Address)) return null;
        CellAddress bearer = sheets[id.Sheet][name];
        if (bearer == id.Address) return null;
        if (!doubled.TryGetValue((id.Sheet, name), out SortedSet<CellAddress>? all)) doubled.Add((id.Sheet, name), all = [bearer]);
        all.Add(id.Address);
        sheets[id.Sheet][name] = all.Min;
        return new CellId(id.Sheet, bearer);
    }

    public void Remove(CellId id, string name)
    {
        if (!doubled.TryGetValue((id.Sheet, name), out SortedSet<CellAddress>? all))
        {
            if (Find(id.Sheet, name) == id) sheets[id.Sheet].Remove(name);
            return;
        }
        all.Remove(id.Address);
        sheets[id.Sheet][name] = all.Min;
        if (all.Count == 1) doubled.Remove((id.Sheet, name));
    }
}
