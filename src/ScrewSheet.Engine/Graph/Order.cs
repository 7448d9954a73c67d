using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>Puts the cells that may change in levels, each after all it reads, and finds the circles.</summary>
internal sealed class Order
{
    private readonly CellGraph graph;
    private readonly Dictionary<Node, int> level = new(ReferenceEqualityComparer.Instance);
    private readonly HashSet<Node> affected;

    private Order(CellGraph graph, HashSet<Node> affected)
    {
        this.graph = graph;
        this.affected = affected;
    }

    /// <summary>The cells in levels.</summary>
    public List<List<Node>> Levels { get; } = [];

    /// <summary>The cells that wait for each other, each with its circle.</summary>
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
        foreach (Node node in affected) order.Place(node);
        foreach ((Node node, int height) in order.level)
        {
            while (order.Levels.Count <= height) order.Levels.Add([]);
            order.Levels[height].Add(node);
        }
        return order;
    }

    /// <summary>Depth first without recursion: a chain may be as long as a sheet.</summary>
    private void Place(Node start)
    {
        if (level.ContainsKey(start)) return;
        Stack<(Node Node, IEnumerator<Node> Reads)> path = new();
        HashSet<Node> onPath = new(ReferenceEqualityComparer.Instance) { start };
        path.Push((start, graph.Read(start).GetEnumerator()));
        while (path.TryPeek(out var top))
        {
            if (!top.Reads.MoveNext())
            {
                level[top.Node] = Height(top.Node);
                onPath.Remove(top.Node);
                path.Pop();
                continue;
            }
            Node next = top.Reads.Current;
            if (onPath.Contains(next)) Circle(path, next);
            else if (affected.Contains(next) && !level.ContainsKey(next))
            {
                onPath.Add(next);
                path.Push((next, graph.Read(next).GetEnumerator()));
            }
        }
    }

    private int Height(Node node)
    {
        int height = 0;
        foreach (Node read in graph.Read(node))
            if (level.TryGetValue(read, out int below)) height = Math.Max(height, below + 1);
        return height;
    }

    private void Circle(Stack<(Node Node, IEnumerator<Node> Reads)> path, Node first)
    {
        List<CellId> members = [];
        List<Node> nodes = [];
        foreach (var (node, _) in path)
        {
            members.Insert(0, node.Id);
            nodes.Add(node);
            if (ReferenceEquals(node, first)) break;
        }
        members.Add(first.Id);
        foreach (Node node in nodes) Circles.TryAdd(node, members);
    }
}
