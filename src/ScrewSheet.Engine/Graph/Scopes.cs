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

    public SheetColumn? FindColumn(string onSheet, string name) => names.FindColumn(onSheet, name);

    public IEnumerable<string> SheetsWith(string name) => names.SheetsWith(name);

    public IEnumerable<string> Known() => names.On(sheet);

    public IEnumerable<string> KnownOn(string onSheet) => names.On(onSheet);
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

    public SheetColumn? FindColumn(string onSheet, string name) => null;

    public IEnumerable<string> SheetsWith(string name) => [];

    public IEnumerable<string> Known() => parameters.Select(parameter => parameter.Name);

    public IEnumerable<string> KnownOn(string onSheet) => [];
}

/// <summary>The names of a workbook's cells and columns, sheet by sheet. A name that stands twice means the first cell in row order; both are in fault.</summary>
internal sealed class NameIndex
{
    private readonly Dictionary<string, Dictionary<string, SortedSet<CellAddress>>> sheets = [];
    private readonly Dictionary<(string Sheet, string Name), SheetColumn> columns = [];
    private readonly Dictionary<string, string[]> columnNames = [];

    public IEnumerable<string> Sheets => sheets.Keys;

    public bool IsSheet(string name) => sheets.ContainsKey(name);

    public void AddSheet(Sheet sheet)
    {
        if (!sheets.TryAdd(sheet.Name, [])) return;
        foreach (SheetColumn column in sheet.Columns) columns.Add((sheet.Name, column.Name), column);
        columnNames.Add(sheet.Name, [.. sheet.Columns.Select(column => column.Name)]);
    }

    public SheetColumn? FindColumn(string sheet, string name) => columns.GetValueOrDefault((sheet, name));

    public CellId? Find(string sheet, string name) => All(sheet, name) is { Count: > 0 } cells ? new CellId(sheet, cells.Min) : null;

    /// <summary>Every cell of that name.</summary>
    public IReadOnlyCollection<CellId> Having(string sheet, string name) => [.. (All(sheet, name) ?? []).Select(address => new CellId(sheet, address))];

    public IEnumerable<string> SheetsWith(string name) => sheets.Where(sheet => sheet.Value.ContainsKey(name) || columns.ContainsKey((sheet.Key, name))).Select(sheet => sheet.Key);

    public IEnumerable<string> On(string sheet) =>
        (sheets.TryGetValue(sheet, out var names) ? (IEnumerable<string>)names.Keys : []).Concat(columnNames.GetValueOrDefault(sheet) ?? []);

    public void Add(CellId id, string name)
    {
        if (!sheets[id.Sheet].TryGetValue(name, out SortedSet<CellAddress>? cells)) sheets[id.Sheet].Add(name, cells = []);
        cells.Add(id.Address);
    }

    public void Remove(CellId id, string name)
    {
        if (All(id.Sheet, name) is not { } cells) return;
        cells.Remove(id.Address);
        if (cells.Count == 0) sheets[id.Sheet].Remove(name);
    }

    private SortedSet<CellAddress>? All(string sheet, string name) => sheets.TryGetValue(sheet, out var names) ? names.GetValueOrDefault(name) : null;
}
