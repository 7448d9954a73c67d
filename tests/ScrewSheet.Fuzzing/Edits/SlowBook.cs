using System.Globalization;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Fuzzing.Edits;

/// <summary>What a cell of the slow model holds.</summary>
internal enum SlowKind
{
    /// <summary>Words.</summary>
    Note,

    /// <summary>An input.</summary>
    Given,

    /// <summary>An expression.</summary>
    Result,

    /// <summary>A line that is no cell; its text is what follows the address.</summary>
    Broken,
}

/// <summary>A cell of the slow model.</summary>
internal sealed record SlowCell(SlowKind Kind, string Text, string? Name = null, bool IsFormatted = false);

/// <summary>
/// A workbook as anybody would write it down in a minute: cells by place, expressions as text, and rows and columns as lists of things that keep who they are.
/// What an edit does is said here a second time and as plainly as can be; no code of the program takes part.
/// </summary>
internal sealed partial class SlowBook
{
    private SlowBook(List<string> sheets, Dictionary<CellId, SlowCell> cells, Dictionary<(string Sheet, string Name), int> columns) => (Sheets, Cells, Columns) = (sheets, cells, columns);

    /// <summary>The names of the sheets, in order.</summary>
    public List<string> Sheets { get; }

    /// <summary>The cells.</summary>
    public Dictionary<CellId, SlowCell> Cells { get; private set; }

    /// <summary>The columns that are series by name.</summary>
    public Dictionary<(string Sheet, string Name), int> Columns { get; private set; }

    /// <summary>What a workbook holds.</summary>
    public static SlowBook Of(Workbook workbook) => new SlowBook(
        [.. workbook.Sheets.Select(sheet => sheet.Name)],
        workbook.Sheets.SelectMany(sheet => sheet.CellsInOrder.Select(cell => (new CellId(sheet.Name, cell.Address), Of(cell)))).ToDictionary(pair => pair.Item1, pair => pair.Item2),
        workbook.Sheets.SelectMany(sheet => sheet.Columns.Select(column => ((sheet.Name, column.Name), column.Column))).ToDictionary(pair => pair.Item1, pair => pair.Column)) { Tables = TablesOf(workbook) };

    /// <summary>A cell of a workbook as the model has it.</summary>
    public static SlowCell Of(Cell cell) => cell.Content switch
    {
        NoteContent note => new(SlowKind.Note, note.Text, cell.Name),
        GivenContent given => new(SlowKind.Given, given.Text, cell.Name, cell.Format is not null),
        ResultContent result => new(SlowKind.Result, result.Expression, cell.Name, cell.Format is not null),
        BrokenContent broken => new(SlowKind.Broken, broken.Text.TrimStart()[cell.Address.ToString().Length..]),
        _ => throw new InvalidOperationException("An unknown content."),
    };

    /// <summary>A copy that goes its own way.</summary>
    public SlowBook Copy() => new([.. Sheets], new(Cells), new(Columns)) { Tables = Tables };

    /// <summary>The cell of that name on a sheet, or null.</summary>
    public CellId? Named(string sheet, string name)
    {
        foreach ((CellId id, SlowCell cell) in Cells)
            if (id.Sheet == sheet && cell.Name == name) return id;
        return null;
    }

    /// <summary>True where a cell may not have that name.</summary>
    public bool IsTaken(CellId at, string name) => Columns.ContainsKey((at.Sheet, name)) || (Named(at.Sheet, name) is { } other && other != at);

    /// <summary>What a reference that stands on a sheet leads to, or null.</summary>
    public CellId? Target(SlowReference reference, string from) =>
        reference.Address is { } address ? (Sheets.Contains(reference.Sheet ?? from) ? new CellId(reference.Sheet ?? from, address) : null) : Named(reference.Sheet ?? from, reference.Name);

    /// <summary>Every cell of one sheet in a rectangle, row by row.</summary>
    public IEnumerable<CellId> In(string sheet, CellBlock block) => Cells.Keys.Where(id => id.Sheet == sheet && block.Contains(id.Address)).OrderBy(id => id.Address);

    /// <summary>Where it differs from a workbook, or null.</summary>
    public string? Difference(Workbook workbook)
    {
        SlowBook other = Of(workbook);
        if (!Sheets.SequenceEqual(other.Sheets)) return $"the sheets are {string.Join(", ", other.Sheets)}, not {string.Join(", ", Sheets)}";
        foreach ((CellId id, SlowCell cell) in Cells)
            if (other.Cells.GetValueOrDefault(id) is not { } there || there with { IsFormatted = cell.IsFormatted } != cell) return $"{id} is {other.Cells.GetValueOrDefault(id)}, not {cell}";
        foreach (CellId id in other.Cells.Keys)
            if (!Cells.ContainsKey(id)) return $"{id} is {other.Cells[id]}, and should be empty";
        foreach (((string Sheet, string Name) key, int column) in Columns)
            if (!other.Columns.TryGetValue(key, out int there) || there != column) return $"the column {key.Sheet}.{key.Name} is {there}, not {column}";
        if (!Tables.SequenceEqual(other.Tables)) return $"the tables are {string.Join("; ", other.Tables)}, not {string.Join("; ", Tables)}";
        return other.Columns.Count == Columns.Count ? null : "there is a column too many";
    }

    /// <summary>A run that has lost one corner, has its corners on two sheets, or the last before the first, is in fault until it is typed anew; where its corners go is of no interest, and is taken over.</summary>
    public void TakeHalfRuns(Workbook workbook)
    {
        foreach ((CellId id, SlowCell cell) in Cells.ToList())
        {
            if (cell.Kind != SlowKind.Result || !cell.Text.Contains("Series(", StringComparison.Ordinal) || workbook.Find(id.Sheet)?.Cells.GetValueOrDefault(id.Address)?.Content is not ResultContent { Expression: var actual } || actual == cell.Text) continue;
            bool half = IsHalfRun(id, cell.Text), other = IsHalfRun(id, actual);
            if ((half || other) && (half || IsLost(cell.Text)) && (other || IsLost(actual))) Cells[id] = cell with { Text = actual };
        }
    }

    private static bool IsLost(string text) => text.Contains("lost_", StringComparison.Ordinal);

    /// <summary>True where a run has lost a corner, has its corners on two sheets, or the last before the first.</summary>
    private bool IsHalfRun(CellId id, string text)
    {
        List<SlowReference> all = SlowText.References(text, Sheets);
        return Enumerable.Range(0, all.Count).Any(i => all[i].Corner == 1 && i + 1 < all.Count && IsHalf(all[i], all[i + 1], id.Sheet));
    }

    private static bool IsHalf(SlowReference first, SlowReference last, string from)
    {
        if ((first.Sheet ?? from) != (last.Sheet ?? from)) return true;
        return first.Address is { } one && last.Address is { } other ? other.Row < one.Row || other.Column < one.Column : first.Address is null != last.Address is null;
    }

    /// <summary>The address as a name that no cell has.</summary>
    private static string Lost(CellAddress address) => string.Create(CultureInfo.InvariantCulture, $"lost_{address}");
}
