using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Studies;

/// <summary>What cells rest on.</summary>
internal static class Upstream
{
    /// <summary>The cells themselves and everything they are computed from, each once; nothing behind those of <paramref name="end"/>. A cell that is read and not there has no result.</summary>
    public static IEnumerable<(CellId Id, CellResult? Result)> Of(Calculation calculation, IEnumerable<CellId> cells, IReadOnlySet<CellId> end)
    {
        HashSet<CellId> seen = [];
        Queue<CellId> open = new(cells);
        while (open.TryDequeue(out CellId id))
        {
            if (!seen.Add(id)) continue;
            CellResult? result = calculation.Cells.GetValueOrDefault(id);
            yield return (id, result);
            if (result is null || end.Contains(id)) continue;
            foreach (CellReference reference in result.References)
                foreach (CellId read in reference.In(calculation.Workbook)) open.Enqueue(read);
        }
    }

    /// <summary>The givens a cell is computed from, the nearest first.</summary>
    public static IReadOnlyList<CellResult> Givens(Calculation calculation, CellId cell) =>
        [.. Of(calculation, [cell], new HashSet<CellId>()).Select(pair => pair.Result).OfType<CellResult>().Where(result => result.Cell.Content is GivenContent && result.Id != cell)];
}
