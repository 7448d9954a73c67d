using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>All cells and who reads whom.</summary>
/// <remarks>Invariant: a cell stands in the readers of exactly the cells it refers to, and in <see cref="runs"/> once for each run it refers to.</remarks>
internal sealed class CellGraph
{
    private readonly Dictionary<CellId, Node> nodes = [];
    private readonly Dictionary<CellId, HashSet<Node>> readers = [];
    private readonly List<(Reference.ToRun Run, Node Reader)> runs = [];

    public IReadOnlyDictionary<CellId, Node> Nodes => nodes;

    public Node? Find(CellId id) => nodes.GetValueOrDefault(id);

    /// <summary>Adds a cell that refers to nothing yet.</summary>
    public void Add(Node node) => nodes.Add(node.Id, node);

    /// <summary>Takes a cell out; its readers stay and find it gone.</summary>
    public void Remove(Node node)
    {
        Disconnect(node);
        nodes.Remove(node.Id);
    }

    /// <summary>Notes what a cell refers to.</summary>
    public void Connect(Node node)
    {
        foreach (Reference reference in node.Reads)
        {
            if (reference is Reference.ToRun run) runs.Add((run, node));
            else if (reference is Reference.ToCell cell) ReadersSet(cell.Cell).Add(node);
        }
    }

    /// <summary>Forgets what a cell refers to.</summary>
    public void Disconnect(Node node)
    {
        bool any = false;
        foreach (Reference reference in node.Reads)
        {
            if (reference is Reference.ToRun) any = true;
            else if (reference is Reference.ToCell cell && readers.TryGetValue(cell.Cell, out HashSet<Node>? set) && set.Remove(node) && set.Count == 0) readers.Remove(cell.Cell);
        }
        if (any) runs.RemoveAll(entry => ReferenceEquals(entry.Reader, node));
    }

    /// <summary>The cells that read this one, there or not.</summary>
    public IEnumerable<Node> Readers(CellId id)
    {
        IEnumerable<Node> single = readers.TryGetValue(id, out HashSet<Node>? set) ? set : [];
        return runs.Count == 0 ? single : single.Concat(runs.Where(entry => entry.Run.Contains(id)).Select(entry => entry.Reader));
    }

    /// <summary>The cells a node reads that are there.</summary>
    public IEnumerable<Node> Read(Node node)
    {
        foreach (Reference reference in node.Reads)
        {
            if (reference is Reference.ToCell cell && nodes.TryGetValue(cell.Cell, out Node? one)) yield return one;
            if (reference is not Reference.ToRun run) continue;
            foreach (Node inside in Inside(run)) yield return inside;
        }
    }

    /// <summary>The cells of a run that are there, row by row.</summary>
    public IEnumerable<Node> Inside(Reference.ToRun run) => run.Size <= nodes.Count * 4L
        ? run.Cells().Select(Find).OfType<Node>()
        : nodes.Values.Where(node => run.Contains(node.Id)).OrderBy(node => node.Id.Address);

    /// <summary>Throws where an invariant does not hold; for tests.</summary>
    public void CheckInvariants()
    {
        foreach (Node node in nodes.Values)
            foreach (Reference reference in node.Reads)
                if (reference is Reference.ToCell cell ? !readers.TryGetValue(cell.Cell, out HashSet<Node>? set) || !set.Contains(node) : !runs.Contains(((Reference.ToRun)reference, node)))
                    throw new InvalidOperationException($"{node.Id} reads {reference} and is not among its readers.");
        foreach ((CellId id, HashSet<Node> set) in readers)
            foreach (Node reader in set)
                if (!nodes.TryGetValue(reader.Id, out Node? there) || !ReferenceEquals(there, reader) || !reader.Reads.Contains(new Reference.ToCell(id)))
                    throw new InvalidOperationException($"{reader.Id} stands among the readers of {id} and does not read it.");
    }

    private HashSet<Node> ReadersSet(CellId id)
    {
        if (!readers.TryGetValue(id, out HashSet<Node>? set)) readers.Add(id, set = new HashSet<Node>(ReferenceEqualityComparer.Instance));
        return set;
    }
}
