using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Pages;

/// <summary>Cells as one entry of a what-if table reads them: the varied givens are heads of the table, results that depend on them are worked out again, everything else is read where it stands.</summary>
internal sealed class TableCells(Book book, IReadOnlyCollection<CellId> varied, string of) : ICells
{
    private readonly Dictionary<CellId, FormulaText> heads = [], made = [];
    private readonly Dictionary<CellId, string> none = [];
    private readonly Dictionary<CellId, bool> depends = [];
    private readonly List<CellId> order = [];

    /// <summary>True where the cell changes with what is varied; what it needs is then known.</summary>
    public bool Depends(CellId cell)
    {
        Walk(cell);
        return depends[cell];
    }

    /// <summary>Begins an entry: what each varied given is, in coherent SI.</summary>
    public void Begin(IEnumerable<(CellId Given, FormulaText Si)> values)
    {
        heads.Clear();
        made.Clear();
        foreach ((CellId given, FormulaText si) in values) heads[given] = si;
    }

    /// <summary>The shown cell in this entry, in coherent SI.</summary>
    /// <exception cref="NoForm">It has no formula.</exception>
    public FormulaText Shown(CellId cell)
    {
        foreach (CellId needed in order)
            if (!made.ContainsKey(needed) && !none.ContainsKey(needed)) Make(needed, isShown: needed == cell);
        return Read(cell, book.Calculation.Cells[cell].Value?.Type ?? CellType.Number);
    }

    /// <inheritdoc/>
    public FormulaText Read(CellId cell, CellType type)
    {
        if (heads.TryGetValue(cell, out FormulaText head)) return head;
        if (made.TryGetValue(cell, out FormulaText known)) return known;
        if (none.TryGetValue(cell, out string? why)) throw new NoForm(why);
        return book.Cells.Read(cell, type);
    }

    /// <inheritdoc/>
    public bool CanFail(CellId cell) => !varied.Contains(cell) && book.Cells.CanFail(cell);

    /// <inheritdoc/>
    public CellResult? Record(CellId cell) => varied.Contains(cell) ? null : book.Cells.Record(cell);

    /// <inheritdoc/>
    public FormulaText Sum(CellReference run) => book.Cells.Sum(Unvaried(run));

    /// <inheritdoc/>
    public FormulaText Count(CellReference run) => book.Cells.Count(Unvaried(run));

    private CellReference Unvaried(CellReference run) => run.In(book.Calculation.Workbook).Any(Depends) ? throw new NoForm("a series holds what is varied") : run;

    private void Make(CellId cell, bool isShown)
    {
        CellResult result = book.Calculation.Cells[cell];
        if (result.Bound is not { } tree || result.Value is RecordValue or SeriesValue or TextSeriesValue) return;
        try
        {
            FormulaText si = book.Writer.Write(tree, Scope.Of(result) with { Cell = of }, this);
            made[cell] = isShown || si.IsShort ? si : book.Workings.Put(si, of, result.Cell.Name ?? cell.ToString());
        }
        catch (NoForm reason)
        {
            none[cell] = reason.Message;
        }
    }

    /// <summary>Finds what a cell needs, each after all it reads, without recursion: a chain may be as long as a sheet.</summary>
    private void Walk(CellId start)
    {
        Stack<(CellId Id, bool Entered)> open = new([(start, false)]);
        while (open.TryPop(out (CellId Id, bool Entered) top))
        {
            if (depends.ContainsKey(top.Id)) continue;
            CellResult? result = book.Calculation.Cells.GetValueOrDefault(top.Id);
            bool isRead = result is { Cell.Content: ResultContent } && !varied.Contains(top.Id);
            CellId[] reads = isRead ? [.. result!.References.SelectMany(reference => reference.In(book.Calculation.Workbook))] : [];
            if (isRead && !top.Entered)
            {
                open.Push((top.Id, true));
                foreach (CellId read in reads) open.Push((read, false));
                continue;
            }
            depends[top.Id] = varied.Contains(top.Id) || reads.Any(read => depends.GetValueOrDefault(read));
            if (isRead && depends[top.Id]) order.Add(top.Id);
        }
    }
}
