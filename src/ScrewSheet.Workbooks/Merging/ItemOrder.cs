namespace ScrewSheet.Workbooks.Merging;

/// <summary>In which order the parts of a merged file stand.</summary>
internal static class ItemOrder
{
    /// <summary>The order of the version that changed it, ours where both did; what only the other has stands behind what it stood behind there.</summary>
    /// <param name="origin">The keys of the base, in order; each once.</param>
    /// <param name="ours">Those of ours.</param>
    /// <param name="theirs">Those of theirs.</param>
    /// <param name="stays">True for the keys that are in the merged file.</param>
    public static IEnumerable<string> Of(string[] origin, string[] ours, string[] theirs, Func<string, bool> stays)
    {
        (string[] spine, string[] other) = ours.SequenceEqual(origin) ? (theirs, ours) : (ours, theirs);
        LinkedList<string> order = new(spine.Where(stays));
        Dictionary<string, LinkedListNode<string>> nodes = new(StringComparer.Ordinal);
        for (LinkedListNode<string>? node = order.First; node is not null; node = node.Next) nodes.Add(node.Value, node);
        Insert(order, nodes, other, stays);
        // what both lack and a merge keeps all the same
        Insert(order, nodes, origin, stays);
        return order;
    }

    private static void Insert(LinkedList<string> order, Dictionary<string, LinkedListNode<string>> nodes, string[] keys, Func<string, bool> stays)
    {
        LinkedListNode<string>? behind = null;
        HashSet<string> all = [.. keys];
        foreach (string key in keys)
        {
            if (nodes.TryGetValue(key, out LinkedListNode<string>? there)) behind = there;
            else if (stays(key))
            {
                while (Next(order, behind) is { } next && !all.Contains(next.Value) && Precedes(next.Value, key)) behind = next;
                behind = behind is null ? order.AddFirst(key) : order.AddAfter(behind, key);
                nodes.Add(key, behind);
            }
        }
    }

    private static LinkedListNode<string>? Next(LinkedList<string> order, LinkedListNode<string>? node) => node is null ? order.First : node.Next;

    /// <summary>Cells that both versions added stand in the order of their addresses.</summary>
    private static bool Precedes(string one, string other) => MergeItems.AddressIn(one) is { } before && MergeItems.AddressIn(other) is { } after && before.CompareTo(after) < 0;
}
