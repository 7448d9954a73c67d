using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>Where the library functions and ready values of a result come from.</summary>
internal static class CitedSources
{
    /// <summary>The works, each once, with how far each was compared.</summary>
    public static IEnumerable<string> Of(CellResult cell)
    {
        if (cell.Bound is null) return [];
        return BoundChildren.All(cell.Bound).SelectMany(Of).Select(source => PlainText.Of($"{source.Work} ({StandingText.Of(source.Standing)})")).Distinct();
    }

    private static IEnumerable<SourceAttribute> Of(BoundExpression node) => node switch
    {
        BoundCall call => call.Function.Sources,
        BoundLibraryValue value => value.Member.Sources,
        _ => [],
    };
}
