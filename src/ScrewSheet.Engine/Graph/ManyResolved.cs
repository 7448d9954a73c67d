using ScrewSheet.Engine.Binding;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Engine.Graph;

/// <summary>Resolves the expressions of a whole workbook on all processors: what the words of one mean depends on no other expression.</summary>
/// <param name="caches">Makes the resolvers of one thread.</param>
internal sealed class ManyResolved(Func<Func<string, PatternCache>> caches)
{
    /// <summary>Fewer cells than this are not worth a thread.</summary>
    public const int WorthIt = 1000;

    /// <summary>How many cells are best resolved at once: what turns out to be a fault does not wait in memory for the last of half a million.</summary>
    public const int Together = 32_768;

    private const int MostThreads = 4;

    private readonly Func<string, PatternCache>[] patterns = [.. Enumerable.Range(0, Math.Clamp(Environment.ProcessorCount, 1, MostThreads)).Select(_ => caches())];

    /// <summary>What became of each text, in order; null where there is none.</summary>
    /// <param name="cells">Each cell's sheet and its text.</param>
    public (ResolvedExpression? Expression, Fault? Fault)[] Of(IReadOnlyList<(string Sheet, string? Text)> cells)
    {
        var resolved = new (ResolvedExpression?, Fault?)[cells.Count];
        Parallel.For(0, patterns.Length, part => DeepStack.Run(() =>
        {
            for (int i = From(part); i < From(part + 1); i++)
                if (cells[i].Text is { } text) resolved[i] = patterns[part](cells[i].Sheet).Resolve(text);
            return true;
        }));
        return resolved;

        int From(int part) => (int)((long)cells.Count * part / patterns.Length);
    }
}
