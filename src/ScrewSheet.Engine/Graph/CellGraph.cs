using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>All cells and who reads whom.</summary>
/// <remarks>Invariant: a cell stands in the readers of exactly the places it refers to, and in <see cref="runs"/> for each run it refers to; <see cref="columns"/> holds exactly the cells that are there.</remarks>
internal sealed class CellGraph
{
    private readonly Dictionary<CellId, Spot> spots = [];
    private readonly RunIndex runs = new();
    private readonly Dictionary<(string Sheet, int Column), Node[]> columns = [];
    private int count;

    /// <summary>All cells.</summary>
    public IEnumerable<Node> Nodes => spots.Values.Select(spot => spot.Node).OfType<Node>();

    /// <summary>Makes room for that many cells.</summary>
    public void MakeRoom(int cells) => spots.EnsureCapacity(cells);

    public Node? Find(CellId id) => spots.GetValueOrDefault(id)?.Node;

    /// <summary>Adds a cell that refers to nothing yet.</summary>
    public Node Add(CellId id, Cell cell)
    {
        Spot spot = SpotOf(id);
        count++;
        if (columns.Count > 0) columns.Remove((id.Sheet, id.Address.Column));
        return spot.Node = new Node(spot) { Cell = cell };
    }

    /// <summary>Takes a cell out; its readers stay and find it gone.</summary>
    public void Remove(Node node)
    {
        Disconnect(node);
        node.Spot.Node = null;
        count--;
        columns.Remove((node.Id.Sheet, node.Id.Address.Column));
        Drop(node.Spot);
    }

    /// <summary>Notes what a cell refers to.</summary>
    public void Connect(Node node)
    {
        Spot?[] sources = node.Reads.IsEmpty ? [] : new Spot?[node.Reads.Length];
        for (int i = 0; i < sources.Length; i++)
        {
            if (node.Reads[i] is Reference.ToCell cell) (sources[i] = SpotOf(cell.Cell)).Add(node);
            else
            {
                runs.Add((Reference.ToRun)node.Reads[i], node);
                node.ReadsRuns = true;
            }
        }
        node.Sources = sources;
    }

    /// <summary>Forgets what a cell refers to.</summary>
    public void Disconnect(Node node)
    {
        foreach (Spot? source in node.Sources)
        {
            source?.Remove(node);
            if (source is not null) Drop(source);
        }
        if (node.ReadsRuns) foreach (Reference.ToRun run in node.Reads.OfType<Reference.ToRun>()) runs.Remove(run, node);
        (node.Sources, node.ReadsRuns) = ([], false);
    }

    /// <summary>The cells that read this one, there or not; a cell that reads it twice stands there twice.</summary>
    public List<Node> Readers(CellId id)
    {
        if (!spots.TryGetValue(id, out Spot? spot)) return [];
        List<Node> readers = [];
        List<ReadRun> within = [];
        Around(spot, readers, within);
        return [.. readers, .. within.SelectMany(run => run.Readers)];
    }

    /// <summary>Fills one list with the cells that read a place itself, another with the runs it is within.</summary>
    public void Around(Spot spot, List<Node> readers, List<ReadRun> within)
    {
        readers.Clear();
        within.Clear();
        spot.CopyTo(readers);
        runs.CopyRuns(spot.Id, within);
    }

    /// <summary>True where all different runs of the workbook would span more cells than they may, with these.</summary>
    public bool SpansTooMuch(IEnumerable<Reference> more) => runs.Spanned + more.OfType<Reference.ToRun>().Sum(runs.Added) > RunIndex.MostSpanned;

    /// <summary>The cells a node reads that are there.</summary>
    public IEnumerable<Node> Read(Node node)
    {
        for (int i = 0; i < node.Sources.Length; i++)
        {
            if (node.Sources[i] is { } source)
            {
                if (source.Node is { } one) yield return one;
                continue;
            }
            foreach (Node inside in Inside((Reference.ToRun)node.Reads[i])) yield return inside;
        }
    }

    /// <summary>True when a cell this one reads has another value than before.</summary>
    public bool ReadsChanged(Node node)
    {
        foreach (Spot? source in node.Sources)
            if (source?.Node is { HasChanged: true }) return true;
        return node.ReadsRuns && Read(node).Any(read => read.HasChanged);
    }

    /// <summary>The cells of a run that are there, row by row.</summary>
    public IEnumerable<Node> Inside(Reference.ToRun run) => run.Column is not null ? Column(run.First) : run.Size <= count * 4L
        ? run.Cells().Select(Find).OfType<Node>()
        : Nodes.Where(node => run.Contains(node.Id)).OrderBy(node => node.Id.Address);

    /// <summary>The cells of a column from top to bottom, kept until one comes or goes.</summary>
    private Node[] Column(CellId top)
    {
        var key = (top.Sheet, top.Address.Column);
        if (!columns.TryGetValue(key, out Node[]? nodes))
            columns.Add(key, nodes = [.. Nodes.Where(node => node.Id.Address.Column == key.Column && node.Id.Sheet == key.Sheet).OrderBy(node => node.Id.Address.Row)]);
        return nodes;
    }

    /// <summary>Throws where an invariant does not hold; for tests.</summary>
    public void CheckInvariants()
    {
        int found = 0;
        foreach (Node node in Nodes)
        {
            found++;
            for (int i = 0; i < node.Reads.Length; i++)
                if (node.Reads[i] is Reference.ToCell cell ? !ReferenceEquals(node.Sources[i], spots.GetValueOrDefault(cell.Cell)) || !node.Sources[i]!.Has(node) : !runs.Has((Reference.ToRun)node.Reads[i], node))
                    throw new InvalidOperationException($"{node.Id} reads {node.Reads[i]} and is not among its readers.");
        }
        if (found != count) throw new InvalidOperationException($"{found} cells are there and {count} are counted.");
        foreach (Spot spot in spots.Values) CheckReaders(spot);
        foreach (((string sheet, int column), Node[] nodes) in columns)
            if (!Nodes.Where(node => node.Id.Sheet == sheet && node.Id.Address.Column == column).OrderBy(node => node.Id.Address.Row).SequenceEqual(nodes))
                throw new InvalidOperationException($"The cells of column {CellAddress.ColumnName(column)} of {sheet} are others than those kept.");
    }

    private void CheckReaders(Spot spot)
    {
        if (spot.Node is null && spot.IsUnread) throw new InvalidOperationException($"{spot.Id} is empty and unread, and kept.");
        List<Node> list = [];
        spot.CopyTo(list);
        foreach (Node reader in list)
            if (!ReferenceEquals(Find(reader.Id), reader) || !reader.Reads.Contains(new Reference.ToCell(spot.Id)))
                throw new InvalidOperationException($"{reader.Id} stands among the readers of {spot.Id} and does not read it.");
    }

    private Spot SpotOf(CellId id)
    {
        if (!spots.TryGetValue(id, out Spot? spot)) spots.Add(id, spot = new Spot(id));
        return spot;
    }

    private void Drop(Spot spot)
    {
        if (spot.Node is null && spot.IsUnread) spots.Remove(spot.Id);
    }
}
