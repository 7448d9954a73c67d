using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>Puts the cells that may change in levels, each after all it reads, and finds the cells that wait for each other.</summary>
/// <remarks>Cells that wait for none are taken level by level (A. Kahn, Topological sorting of large networks, Communications of the ACM 1962); where some are left over,
/// which needs a circle: R. Tarjan, Depth-first search and linear graph algorithms, SIAM Journal on Computing 1972, without recursion: a chain may be as long as a sheet.</remarks>
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
    /// <param name="graph">The cells.</param>
    /// <param name="seeds">Where the change begins.</param>
    /// <param name="number">Another number each time, by which cells know that they were counted.</param>
    public static Order Of(CellGraph graph, IReadOnlyList<Node> seeds, int number)
    {
        List<Node> affected = Affected(graph, seeds, number);
        Order order = new(graph, []);
        List<Node> level = [.. affected.Where(node => node.Waiting == 0)];
        int placed = 0;
        while (level.Count > 0)
        {
            order.Levels.Add(level);
            placed += level.Count;
            level = Next(graph, level);
        }
        return placed == affected.Count ? order : WithCircles(graph, affected);
    }

    /// <summary>The cells that wait for nothing once those of a level are placed.</summary>
    private static List<Node> Next(CellGraph graph, List<Node> level)
    {
        List<Node> next = [], readers = [];
        List<ReadRun> runs = [];
        foreach (Node node in level)
        {
            graph.Around(node.Spot, readers, runs);
            foreach (ReadRun run in runs)
                if (--run.Waiting == 0) readers.AddRange(run.Readers);
            foreach (Node reader in readers)
                if (--reader.Waiting == 0) next.Add(reader);
        }
        return next;
    }

    /// <summary>The seeds and all that depends on them; each knows for how many of them it waits, a run counting as one however many of its cells are among them.</summary>
    private static List<Node> Affected(CellGraph graph, IReadOnlyList<Node> seeds, int number)
    {
        List<Node> affected = [], readers = [];
        List<ReadRun> runs = [];
        foreach (Node seed in seeds) Count(seed, 0);
        for (int i = 0; i < affected.Count; i++)
        {
            graph.Around(affected[i].Spot, readers, runs);
            foreach (ReadRun run in runs)
            {
                if (run.Counted != number)
                {
                    (run.Counted, run.Waiting) = (number, 0);
                    readers.AddRange(run.Readers);
                }
                run.Waiting++;
            }
            foreach (Node reader in readers) Count(reader, 1);
        }
        return affected;

        void Count(Node node, int waiting)
        {
            if (node.Counted != number)
            {
                (node.Counted, node.Waiting) = (number, 0);
                affected.Add(node);
            }
            node.Waiting += waiting;
        }
    }

    private static Order WithCircles(CellGraph graph, List<Node> nodes)
    {
        HashSet<Node> affected = new(nodes, ReferenceEqualityComparer.Instance);
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
