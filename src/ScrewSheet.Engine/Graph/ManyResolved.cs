using ScrewSheet.Engine.Binding;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Engine.Graph;

/// <summary>Resolves the expressions of a whole workbook on all processors: what the words of one mean depends on no other expression.</summary>
/// <param name="caches">Makes the resolvers of one thread.</param>
internal sealed class ManyResolved(Func<Func<string, PatternCache>> caches)
{
    /// <summary>Fewer cells than this are not worth a thread.</summary>
    public const int WorthIt = 1000;

    /// <summary>How many cells are best resolved at once: what turns out to be a fault does not wait in memory for the last of half a million.</summary>
    public const int Together = 32_768;

    private const int MostThreads = 4, RowsTogether = 1024;

    private readonly Func<string, PatternCache>[] patterns = [.. Enumerable.Range(0, Math.Clamp(Environment.ProcessorCount, 1, MostThreads)).Select(_ => caches())];

    /// <summary>What became of each text, in order; null where there is none.</summary>
    /// <param name="cells">Each cell's place and its text.</param>
    public (ResolvedExpression? Expression, Fault? Fault)[] Of(IReadOnlyList<(CellId Id, string? Text)> cells)
    {
        var resolved = new (ResolvedExpression?, Fault?)[cells.Count];
        DeepStack.Run(patterns.Length, part =>
        {
            for (int i = 0; i < cells.Count; i++)
                if (cells[i] is { Text: { } text, Id: var id } && PartOf(id.Address) == part) resolved[i] = patterns[part](id.Sheet).Resolve(text);
        });
        return resolved;
    }

    /// <summary>What is filled down a column is resolved by one thread, which meets its form once; a column longer than all others put together by all of them.</summary>
    private int PartOf(CellAddress address) => (address.Column + (address.Row / RowsTogether)) % patterns.Length;
}
