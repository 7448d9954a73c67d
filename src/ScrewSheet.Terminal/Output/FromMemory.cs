using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>What in a workbook stands on memory only: library functions and ready values whose source nobody has compared, and givens whose source says so.</summary>
internal static class FromMemory
{
    private const string Words = "from memory";

    /// <summary>One harmless line each, every one once.</summary>
    public static IReadOnlyList<string> In(IEnumerable<CellResult> cells) =>
        [.. cells.SelectMany(Of).Distinct()];

    private static IEnumerable<string> Of(CellResult cell)
    {
        if (cell.Cell.Content is GivenContent { Source: string source } && source.Contains(Words, StringComparison.OrdinalIgnoreCase))
        {
            yield return PlainText.Of($"{cell.Id}{(cell.Cell.Name is null ? "" : " " + cell.Cell.Name)}: {source}");
        }
        if (cell.Bound is null) yield break;
        foreach (BoundExpression node in Used(cell.Bound))
        {
            foreach (string line in Of(node)) yield return PlainText.Of(line);
        }
    }

    // the author's functions are looked into where they are called, each once
    private static IEnumerable<BoundExpression> Used(BoundExpression root)
    {
        HashSet<OwnFunction> entered = [];
        Queue<BoundExpression> trees = new([root]);
        while (trees.TryDequeue(out BoundExpression? tree))
        {
            foreach (BoundExpression node in BoundChildren.All(tree))
            {
                if (node is BoundOwnCall { Function: { Body: BoundExpression body } function } && entered.Add(function)) trees.Enqueue(body);
                yield return node;
            }
        }
    }

    private static IEnumerable<string> Of(BoundExpression node) => node switch
    {
        BoundCall call => Lines(call.Function.Name, call.Function.Sources),
        BoundLibraryValue value => Lines(value.Path, value.Member.Sources),
        _ => [],
    };

    private static IEnumerable<string> Lines(string name, IEnumerable<SourceAttribute> sources) =>
        sources.Where(source => source.Standing == Standing.FromMemory).Select(source => $"{name}: {source.Work}");
}
