using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>Names a shortest circle for each of the cells that wait for each other.</summary>
internal static class CircleFinder
{
    /// <summary>Beyond this many cells one circle is named for all.</summary>
    private const int Each = 64;

    /// <summary>Adds a circle for each cell, named from the first of its cells in sheet and row order.</summary>
    public static void Name(CellGraph graph, List<Node> together, Dictionary<Node, IReadOnlyList<CellId>> circles)
    {
        HashSet<Node> members = new(together, ReferenceEqualityComparer.Instance);
        IReadOnlyList<CellId>? shared = together.Count > Each ? Shortest(graph, First(together), members) : null;
        foreach (Node node in together) circles[node] = shared ?? Shortest(graph, node, members);
    }

    private static Node First(IEnumerable<Node> nodes) => nodes.OrderBy(node => node.Id.Sheet, StringComparer.Ordinal).ThenBy(node => node.Id.Address).First();

    /// <summary>Breadth first from a cell back to itself.</summary>
    private static List<CellId> Shortest(CellGraph graph, Node start, HashSet<Node> members)
    {
        Dictionary<Node, Node> from = new(ReferenceEqualityComparer.Instance);
        Queue<Node> queue = new([start]);
        while (queue.TryDequeue(out Node? node))
        {
            foreach (Node read in graph.Read(node).Where(members.Contains).OrderBy(read => read.Id.Sheet, StringComparer.Ordinal).ThenBy(read => read.Id.Address))
            {
                if (ReferenceEquals(read, start)) return Turned(Path(from, start, node));
                if (from.TryAdd(read, node)) queue.Enqueue(read);
            }
        }
        throw new InvalidOperationException("Cells that wait for each other have no circle.");
    }

    private static List<Node> Path(Dictionary<Node, Node> from, Node start, Node last)
    {
        List<Node> path = [last];
        while (!ReferenceEquals(path[^1], start)) path.Add(from[path[^1]]);
        path.Reverse();
        return path;
    }

    /// <summary>The same circle begun at its first cell, whoever found it.</summary>
    private static List<CellId> Turned(List<Node> path)
    {
        int first = path.IndexOf(First(path));
        List<CellId> turned = [.. path.Skip(first).Concat(path.Take(first)).Select(node => node.Id)];
        turned.Add(turned[0]);
        return turned;
    }
}
