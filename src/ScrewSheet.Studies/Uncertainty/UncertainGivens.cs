using System.Collections.Immutable;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>Finds what a result rests on and what rests on it.</summary>
internal static class UncertainGivens
{
    /// <summary>The givens with a tolerance that these cells depend on, sheet by sheet in row order.</summary>
    public static ImmutableArray<UncertainGiven> Behind(Calculation calculation, IEnumerable<CellId> cells)
    {
        HashSet<CellId> seen = [];
        Stack<CellId> open = new(cells);
        List<CellResult> found = [];
        while (open.TryPop(out CellId id))
        {
            if (!seen.Add(id) || calculation.Cells.GetValueOrDefault(id) is not { } result) continue;
            if (result.Cell.Content is GivenContent { Tolerance: not null } && SiValue.Of(result.Value) is not null) found.Add(result);
            foreach (CellReference reference in result.References)
                foreach (CellId read in ReadCells.Of(calculation.Workbook, reference)) open.Push(read);
        }
        List<string> sheets = [.. calculation.Workbook.Sheets.Select(sheet => sheet.Name)];
        return [.. found.OrderBy(result => sheets.IndexOf(result.Id.Sheet)).ThenBy(result => result.Id.Address).Select(result => Of(calculation.Workbook, result))];
    }

    /// <summary>The checks that depend on a cell, in the order of the file.</summary>
    public static IEnumerable<CellId> ChecksAfter(Calculation calculation, CellId cell)
    {
        CellId[] checks = [.. calculation.Workbook.Sheets.SelectMany(calculation.Of).Where(result => result.IsCheck).Select(result => result.Id)];
        Cone cone = Cone.Of(calculation, [cell], checks);
        return checks.Where((_, i) => cone.Shown[i] >= 0);
    }

    private static UncertainGiven Of(Workbook workbook, CellResult result)
    {
        var content = (GivenContent)result.Cell.Content;
        Tolerance tolerance = content.Tolerance!;
        double si = SiValue.Of(result.Value)!.Value;
        double half = tolerance.Relative ? Math.Abs(si) * tolerance.HalfWidthSi : tolerance.HalfWidthSi;
        return new UncertainGiven(result.Id, CellNaming.Label(workbook, result.Id), GivenValues.TypeOf(result)!, result.Cell.Format, si, half, tolerance.Shape, tolerance.DegreesOfFreedom ?? double.PositiveInfinity,
            content.Within?.FromSi ?? double.NegativeInfinity, content.Within?.ToSi ?? double.PositiveInfinity);
    }
}
