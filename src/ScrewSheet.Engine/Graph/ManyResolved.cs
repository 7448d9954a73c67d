using ScrewSheet.Engine.Binding;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Engine.Graph;

/// <summary>Resolves the expressions of a whole workbook on all processors: what the words of one mean depends on no other expression.</summary>
internal static class ManyResolved
{
    /// <summary>Fewer cells than this are not worth a thread.</summary>
    public const int WorthIt = 1000;

    private const int MostThreads = 4;

    /// <summary>What became of each text, in order; null where there is none.</summary>
    /// <param name="cells">Each cell's sheet and its text.</param>
    /// <param name="caches">Makes the resolvers of one thread.</param>
    public static (ResolvedExpression? Expression, Fault? Fault)[] Of(IReadOnlyList<(string Sheet, string? Text)> cells, Func<Func<string, PatternCache>> caches)
    {
        var resolved = new (ResolvedExpression?, Fault?)[cells.Count];
        int parts = Math.Clamp(Environment.ProcessorCount, 1, MostThreads);
        Parallel.For(0, parts, part => DeepStack.Run(() =>
        {
            Func<string, PatternCache> patterns = caches();
            for (int i = From(part); i < From(part + 1); i++)
                if (cells[i].Text is { } text) resolved[i] = patterns(cells[i].Sheet).Resolve(text);
            return true;
        }));
        return resolved;

        int From(int part) => (int)((long)cells.Count * part / parts);
    }
}
