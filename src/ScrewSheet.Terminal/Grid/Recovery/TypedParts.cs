namespace ScrewSheet.Terminal.Grid.Recovery;

/// <summary>Which parts of a text were put there since it was saved.</summary>
internal sealed class TypedParts
{
    private List<(int Start, int End)> parts = [];

    /// <summary>Nothing is typed any more.</summary>
    public void Clear() => parts.Clear();

    /// <summary>True where a change takes out something typed since.</summary>
    public bool AreLostBy(Splice splice) => splice.Removed > 0 && parts.Exists(part => part.Start < splice.At + splice.Removed && splice.At < part.End);

    /// <summary>Follows a change.</summary>
    public void Follow(Splice splice)
    {
        int end = splice.At + splice.Removed, by = splice.Put.Length - splice.Removed;
        List<(int Start, int End)> next = [];
        foreach ((int from, int to) in parts)
        {
            if (from < splice.At) next.Add((from, Math.Min(to, splice.At)));
            if (to > end) next.Add((Math.Max(from, end) + by, to + by));
        }
        if (splice.Put.Length > 0) next.Add((splice.At, splice.At + splice.Put.Length));
        parts = next;
    }
}
