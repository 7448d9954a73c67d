using System.Globalization;
using System.Text;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>The cells a reference reads.</summary>
internal sealed class ReferencedCells(Calculation calculation)
{
    private readonly Dictionary<(string Sheet, int Column), CellId[]> columns = [];
    private readonly Dictionary<CellReference, CellId[]> runs = [];
    private readonly Dictionary<(CellReference, bool), string> hashes = [];

    /// <summary>One cell, or those of a run that hold a value, column by column.</summary>
    public IReadOnlyList<CellId> By(CellReference reference)
    {
        if (reference.Last is not { } last) return [reference.First];
        if (runs.TryGetValue(reference, out CellId[]? cells)) return cells;
        (CellAddress one, CellAddress other) = (reference.First.Address, last.Address);
        (int top, int bottom) = (Math.Min(one.Row, other.Row), Math.Max(one.Row, other.Row));
        IEnumerable<int> across = Enumerable.Range(Math.Min(one.Column, other.Column), Math.Abs(one.Column - other.Column) + 1);
        return runs[reference] = [.. across.SelectMany(column => Column(reference.First.Sheet, column)).Where(id => id.Address.Row >= top && id.Address.Row <= bottom)];
    }

    /// <summary>The contents of a run with where each value stands in it, counted from the first: columns are paired by rows.</summary>
    public string Hash(CellReference run, bool whole, Func<CellId, string> content)
    {
        if (hashes.TryGetValue((run, whole), out string? known)) return known;
        IReadOnlyList<CellId> cells = By(run);
        StringBuilder text = new("run");
        foreach (CellId id in cells)
        {
            int right = id.Address.Column - cells[0].Address.Column, down = id.Address.Row - cells[0].Address.Row;
            text.Append(CultureInfo.InvariantCulture, $" {right},{down}:{content(id)}");
        }
        return hashes[(run, whole)] = ReviewHash.Sha(text.ToString());
    }

    private CellId[] Column(string sheet, int column)
    {
        if (columns.TryGetValue((sheet, column), out CellId[]? known)) return known;
        foreach (IGrouping<int, Cell> group in (calculation.Workbook.Find(sheet)?.CellsInOrder ?? []).Where(cell => cell.Content is not NoteContent).GroupBy(cell => cell.Address.Column))
            columns[(sheet, group.Key)] = [.. group.OrderBy(cell => cell.Address.Row).Select(cell => new CellId(sheet, cell.Address))];
        columns.TryAdd((sheet, column), []);
        return columns[(sheet, column)];
    }
}
