using System.Collections.Immutable;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;
using ScrewSheet.Workbooks.Reviewing;

namespace ScrewSheet.Terminal.Grid.State;

/// <summary>Everything in a workbook that somebody must look at: faults first, then failing checks, changed results, reviews that no longer hold, cautions, cells that wait.</summary>
internal static class AttentionList
{
    /// <summary>The items, each leading to its cell.</summary>
    public static ImmutableArray<Item> Of(Session session)
    {
        if (session.Known is not { } known) return [];
        List<(int Rank, Item Item)> items = [];
        foreach (Fault fault in known.Calculation.Faults) items.Add((0, new Item("fault", OriginText.Of(fault), fault.Remedy is null ? "" : PlainText.Of(fault.Remedy), new Nothing(), IsBad: true)));
        items.AddRange(TableAttention.Of(session).Select(item => (0, item)));
        foreach (Sheet sheet in session.Workbook.Sheets)
        {
            foreach (Cell cell in sheet.CellsInOrder)
            {
                if (session.Result(new CellId(sheet.Name, cell.Address)) is { } result) items.AddRange(Of(session, result));
            }
        }
        return [.. items.OrderBy(item => item.Rank).Select(item => item.Item)];
    }

    private static IEnumerable<(int, Item)> Of(Session session, CellResult result)
    {
        string place = PlainText.Of(result.Cell.Name is null ? result.Id.ToString() : $"{result.Id.Sheet}.{result.Cell.Name}");
        Item Make(string word, string text, bool bad) => new(word, $"{place}: {text}", "", new GoTo(result.Id), bad);
        if (result.Fault is { } fault) yield return fault.Kind == FaultKind.Waiting ? (5, Make("waits", PlainText.Of(fault.Message), false)) : (0, Make("fault", PlainText.Of(fault.Sentence), true));
        if (Verdict.Fails(result)) yield return (1, Make("fails", PlainText.Of(((ResultContent)result.Cell.Content).Expression), true));
        if (Verdict.Changed(result)) yield return (2, Make("changed", $"the file says {PlainText.Of(((ResultContent)result.Cell.Content).Kept ?? "")}, now {session.Known!.Shown(result)}", true));
        foreach (CellReview review in session.ReviewsOf(result.Id).Where(review => !review.Holds)) yield return (3, Make("review", PlainText.Of(review.ToString()), false));
        foreach (Caution caution in result.Cautions.Where(caution => caution.Origin is null)) yield return (4, Make("caution", PlainText.Of(caution.Message), false));
    }
}
