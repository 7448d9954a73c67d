using System.Collections.Immutable;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Grid.Keys;

/// <summary>Lists that lead somewhere.</summary>
internal static class Lists
{
    /// <summary>What needs attention.</summary>
    public static GridState Attention(GridState state)
    {
        ImmutableArray<Item> items = AttentionList.Of(state.Open);
        if (!state.Open.IsCalculated || state.Open.Known!.Reviewed is null) return state.Say("The results are not all in yet.");
        return items.IsEmpty ? state.Say("Nothing needs attention: no fault, no failing check, no changed result, no review that fell, no caution.") : state with { Mode = new Listing("What needs attention", items) };
    }

    /// <summary>The functions of the library, by topic.</summary>
    public static GridState Catalogue(GridState state) => state with { Mode = new Listing("Functions of the library", Functions(state.Lexicon)) };

    private static ImmutableArray<Item> Functions(Lexicon lexicon) =>
        [.. lexicon.Library.Functions.OrderBy(function => function.Declaration.Topic, StringComparer.Ordinal).ThenBy(function => function.Name, StringComparer.Ordinal)
            .Select(function => new Item(PlainText.Of(function.Declaration.Topic), $"{function.Name}  {PlainText.Of(function.Declaration.Answers)}", More(function), new PutIn(Call(function))))];

    /// <summary>The call with the names of the parameters it must be given.</summary>
    private static string Call(LibraryFunction function) =>
        $"{function.Name}({string.Join(", ", function.Parameters.Where(parameter => !parameter.HasDefault).Select(parameter => parameter.Name))})";

    private static string More(LibraryFunction function) => PlainText.Of(string.Join("; ", function.Parameters.Select(parameter =>
        $"{parameter.Name}{(parameter.Declaration.Unit.Length > 0 ? $" [{parameter.Declaration.Unit}]" : "")}: {parameter.Declaration.Meaning}"))
        + (function.Formulas.IsEmpty ? "" : $". {function.Formulas[0].Symbol ?? function.Formulas[0].Member ?? "result"} = {function.Formulas[0].Text}")
        + (function.Sources.IsEmpty ? "" : $". Source: {function.Sources[0].Work} ({StandingText.Of(function.Sources[0].Standing)})"));
}
