using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>The runs that cells refer to, found by the cells inside them.</summary>
/// <remarks>
/// A sheet is cut into blocks of cells, and each run stands in the list of every block it touches, so that a cell looks at few runs however many there are;
/// a whole column by name stands in a list of its own. Invariant: a run is there while somebody reads it, and <see cref="Spanned"/> is the sum of the sizes of those that are no columns.
/// </remarks>
internal sealed class RunIndex
{
    /// <summary>The most cells all different runs of a workbook span together, columns by name left out.</summary>
    public const long MostSpanned = 5_000_000;

    private const int ColumnBits = 4, RowBits = 8;

    private readonly Dictionary<Reference.ToRun, ReadRun> known = [];
    private readonly Dictionary<(string Sheet, int Column, int Row), List<ReadRun>> blocks = [];
    private readonly Dictionary<(string Sheet, int Column), List<ReadRun>> columns = [];

    /// <summary>How many cells the different runs span together, columns by name left out.</summary>
    public long Spanned { get; private set; }

    /// <summary>How many more cells they would span with this one.</summary>
    public long Added(Reference.ToRun run) => run.Column is not null || known.ContainsKey(run) ? 0 : run.Size;

    /// <summary>Notes that a cell reads a run.</summary>
    public void Add(Reference.ToRun run, Node reader)
    {
        if (!known.TryGetValue(run, out ReadRun? read))
        {
            Spanned += Added(run);
            known.Add(run, read = new ReadRun(run));
            foreach (List<ReadRun> list in ListsOf(run)) list.Add(read);
        }
        read.Readers.Add(reader);
    }

    /// <summary>Forgets that a cell reads a run.</summary>
    public void Remove(Reference.ToRun run, Node reader)
    {
        if (!known.TryGetValue(run, out ReadRun? read) || !read.Readers.Remove(reader) || read.Readers.Count > 0) return;
        known.Remove(run);
        foreach (List<ReadRun> list in ListsOf(run)) list.Remove(read);
        Spanned -= Added(run);
    }

    /// <summary>True where that cell reads the run.</summary>
    public bool Has(Reference.ToRun run, Node reader) => known.TryGetValue(run, out ReadRun? read) && read.Readers.Contains(reader);

    /// <summary>Adds the runs a place is within to a list.</summary>
    public void CopyRuns(CellId cell, List<ReadRun> list)
    {
        if (known.Count == 0) return;
        if (columns.TryGetValue((cell.Sheet, cell.Address.Column), out List<ReadRun>? whole)) Copy(whole);
        if (blocks.TryGetValue((cell.Sheet, cell.Address.Column >> ColumnBits, cell.Address.Row >> RowBits), out List<ReadRun>? near)) Copy(near);

        void Copy(List<ReadRun> runs)
        {
            foreach (ReadRun read in runs)
                if (read.Run.Contains(cell)) list.Add(read);
        }
    }

    private IEnumerable<List<ReadRun>> ListsOf(Reference.ToRun run)
    {
        (CellAddress first, CellAddress last) = (run.First.Address, run.Last.Address);
        if (run.Column is not null)
        {
            yield return ListOf(columns, (run.First.Sheet, first.Column));
            yield break;
        }
        for (int column = Math.Min(first.Column, last.Column) >> ColumnBits; column <= Math.Max(first.Column, last.Column) >> ColumnBits; column++)
            for (int row = Math.Min(first.Row, last.Row) >> RowBits; row <= Math.Max(first.Row, last.Row) >> RowBits; row++)
                yield return ListOf(blocks, (run.First.Sheet, column, row));
    }

    private static List<ReadRun> ListOf<TKey>(Dictionary<TKey, List<ReadRun>> lists, TKey key) where TKey : notnull
    {
        if (!lists.TryGetValue(key, out List<ReadRun>? list)) lists.Add(key, list = []);
        return list;
    }
}

/// <summary>A run and who reads it.</summary>
internal sealed class ReadRun(Reference.ToRun run)
{
    /// <summary>The run.</summary>
    public Reference.ToRun Run { get; } = run;

    /// <summary>Its readers.</summary>
    public HashSet<Node> Readers { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>The order that last counted <see cref="Waiting"/>.</summary>
    public int Counted { get; set; }

    /// <summary>While cells are put in order: how many of those inside are not placed yet.</summary>
    public int Waiting { get; set; }
}
