using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>The list of the givens a result is computed from, one of which is chosen.</summary>
internal static class GivenChoice
{
    /// <summary>The list.</summary>
    /// <param name="state">The state.</param>
    /// <param name="title">The question.</param>
    /// <param name="givens">The givens.</param>
    /// <param name="first">What stands before them.</param>
    /// <param name="more">What is said about each.</param>
    /// <param name="choose">What choosing one does.</param>
    public static GridState Ask(GridState state, string title, IEnumerable<CellResult> givens, IEnumerable<Item> first, Func<CellResult, string> more, Func<GridState, CellResult, GridState> choose)
    {
        Session session = state.Open;
        ImmutableArray<Item> items = [.. first, .. givens.Select(given => new Item("given", Text(session, given), more(given), new Take(next => choose(next.Browse(), given))))];
        return state with { Mode = new Listing(title, items) };
    }

    /// <summary>True where a given takes numbers.</summary>
    public static bool IsNumeric(CellResult given) => given.Type is NumberType or QuantityType || given.Cell.Content is GivenContent { Literal: NumberLiteral };

    private static string Text(Session session, CellResult given)
    {
        string text = $"{session.NameOf(given.Id)} = {((GivenContent)given.Cell.Content).Text}";
        string words = session.Workbook.Find(given.Id.Sheet)?.Cells.GetValueOrDefault(given.Id.Address with { Column = Math.Max(1, given.Id.Address.Column - 1) })?.Content is NoteContent note ? $"  {note.Text}" : "";
        return PlainText.Of(text + words);
    }
}
