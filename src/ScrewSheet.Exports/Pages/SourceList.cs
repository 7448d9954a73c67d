using System.Collections.Immutable;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Pages;

/// <summary>The sources a handout stands on, numbered in the order they are first met.</summary>
internal sealed class SourceList
{
    private readonly List<(string Work, List<string> Users)> works = [];

    /// <summary>The rows of the list.</summary>
    public ImmutableArray<SourceRow> Rows => [.. works.Select((work, i) => new SourceRow(i + 1, work.Work, string.Join(", ", work.Users)))];

    /// <summary>The numbers of some declared sources.</summary>
    public ImmutableArray<int> Add(string user, IEnumerable<SourceAttribute> sources) => [.. sources.Select(source => Add(user, $"{source.Work} ({StandingText.Of(source.Standing)})"))];

    /// <summary>The number of a source.</summary>
    public int Add(string user, string work)
    {
        int at = works.FindIndex(known => known.Work == work);
        if (at < 0)
        {
            works.Add((work, []));
            at = works.Count - 1;
        }
        if (!works[at].Users.Contains(user)) works[at].Users.Add(user);
        return at + 1;
    }

    /// <summary>The numbers of the sources an expression stands on besides those of the calls that are explained: ready values, and what the author's functions call.</summary>
    public ImmutableArray<int> Of(CellResult cell)
    {
        if (cell.Bound is null) return [];
        HashSet<int> numbers = [];
        foreach (BoundExpression node in Used(cell.Bound))
        {
            if (node is BoundLibraryValue value) numbers.UnionWith(Add(value.Path, value.Member.Sources));
            if (node is BoundCall call && !Elementary.Is(call.Function.Name)) numbers.UnionWith(Add(call.Function.Name, call.Function.Sources));
        }
        return [.. numbers.Order()];
    }

    /// <summary>The works an expression stands on that nobody compared with their source.</summary>
    public static IEnumerable<string> FromMemory(CellResult cell) => cell.Bound is null ? [] : Used(cell.Bound).SelectMany(node => node switch
    {
        BoundCall call => call.Function.Sources.Where(IsMemory).Select(source => $"{call.Function.Name}: {source.Work}"),
        BoundLibraryValue value => value.Member.Sources.Where(IsMemory).Select(source => $"{value.Path}: {source.Work}"),
        _ => [],
    });

    private static bool IsMemory(SourceAttribute source) => source.Standing == Standing.FromMemory;

    // the author's functions are looked into where they are called, each once
    private static IEnumerable<BoundExpression> Used(BoundExpression root)
    {
        HashSet<OwnFunction> entered = [];
        Queue<BoundExpression> trees = new([root]);
        while (trees.TryDequeue(out BoundExpression? tree))
        {
            foreach (BoundExpression node in BoundChildren.All(tree))
            {
                if (node is BoundOwnCall { Function: { Body: { } body } function } && entered.Add(function)) trees.Enqueue(body);
                yield return node;
            }
        }
    }
}
