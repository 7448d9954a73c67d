using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>Puts the cells that may change in levels, each after all it reads, and finds the cells that wait for each other.</summary>
/// <remarks>R. Tarjan, Depth-first search and linear graph algorithms, SIAM Journal on Computing 1972, without recursion: a chain may be as long as a sheet.</remarks>
internal sealed class Order
{
    private readonly CellGraph graph;
    private readonly HashSet<Node> affected;
    private readonly Dictionary<Node, Mark> marks = new(ReferenceEqualityComparer.Instance);
    private readonly Stack<Node> open = new();

    private Order(CellGraph graph, HashSet<Node> affected)
    {
        this.graph = graph;
        this.affected = affected;
    }

    /// <summary>The cells in levels.</summary>
    public List<List<Node>> Levels { get; } = [];

    /// <summary>The cells that wait for each other, each with a circle it stands in.</summary>
    public Dictionary<Node, IReadOnlyList<CellId>> Circles { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>The seeds and all that depends on them, in order.</summary>
    public static Order Of(CellGraph graph, IEnumerable<Node> seeds)
    {
        HashSet<Node> affected = new(ReferenceEqualityComparer.Instance);
        Queue<Node> queue = new();
        foreach (Node seed in seeds)
            if (affected.Add(seed)) queue.Enqueue(seed);
        while (queue.TryDequeue(out Node? node))
            foreach (Node reader in graph.Readers(node.Id))
                if (affected.Add(reader)) queue.Enqueue(reader);
        Order order = new(graph, affected);
        foreach (Node node in affected)
            if (!order.marks.ContainsKey(node)) order.Visit(node);
        return order;
    }

    private void Visit(Node start)
    {
        Stack<(Node Node, IEnumerator<Node> Reads)> path = new();
        path.Push(Enter(start));
        while (path.TryPeek(out var top))
        {
            if (!top.Reads.MoveNext())
            {
                path.Pop();
                Leave(top.Node);
                if (path.TryPeek(out var parent)) marks[parent.Node].Low = Math.Min(marks[parent.Node].Low, marks[top.Node].Low);
                continue;
            }
            Node next = top.Reads.Current;
            if (!affected.Contains(next)) continue;
            if (!marks.TryGetValue(next, out Mark? mark)) path.Push(Enter(next));
            else if (mark.IsOpen) marks[top.Node].Low = Math.Min(marks[top.Node].Low, mark.Number);
        }
    }

    private (Node Node, IEnumerator<Node> Reads) Enter(Node node)
    {
        marks.Add(node, new Mark { Number = marks.Count, Low = marks.Count, IsOpen = true });
        open.Push(node);
        return (node, graph.Read(node).GetEnumerator());
    }

    /// <summary>When all a cell reads is done: the cells still open above it and itself wait for each other, or it stands alone.</summary>
    private void Leave(Node node)
    {
        if (marks[node].Low != marks[node].Number) return;
        List<Node> together = [];
        do
        {
            together.Add(open.Pop());
            marks[together[^1]].IsOpen = false;
        }
        while (!ReferenceEquals(together[^1], node));
        int level = together.Max(Height);
        while (Levels.Count <= level) Levels.Add([]);
        foreach (Node member in together)
        {
            marks[member].Level = level;
            Levels[level].Add(member);
        }
        if (together.Count > 1 || graph.Read(node).Contains(node)) CircleFinder.Name(graph, together, Circles);
    }

    private int Height(Node node)
    {
        int height = 0;
        foreach (Node read in graph.Read(node))
            if (marks.TryGetValue(read, out Mark? mark) && mark.Level >= 0) height = Math.Max(height, mark.Level + 1);
        return height;
    }

    private sealed class Mark
    {
        public int Number, Low, Level = -1;
        public bool IsOpen;
    }
}
