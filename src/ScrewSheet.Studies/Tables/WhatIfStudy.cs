using System.Collections.Immutable;
using ScrewSheet.Engine;
using ScrewSheet.Studies.Faults;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tables;

/// <summary>Makes a what-if table.</summary>
internal static class WhatIfStudy
{
    public static StudyOutcome<WhatIfTable> Run(StudyTools tools, Calculation calculation, WhatIfRequest request, IProgress<double>? progress, CancellationToken stop)
    {
        if (request.Vary.IsEmpty) return StudyFaults.Missing("vary", request.Place);
        if (request.Show.IsEmpty) return StudyFaults.Missing("show", request.Place);
        var axes = ImmutableArray.CreateBuilder<WhatIfAxis>();
        foreach (VarySpec spec in request.Vary)
        {
            StudyOutcome<WhatIfAxis> axis = AxisBuilder.Build(calculation, spec, request.Sheet, tools.Library);
            if (!axis.IsAnswered) return axis.Fault;
            if (axes.Any(other => other.Cell == axis.Answer.Cell)) return StudyFaults.VariedTwice(axis.Answer.Label, CellNaming.PlaceOf(spec.Name));
            axes.Add(axis.Answer);
        }
        List<CellId> shown = [];
        foreach (PlacedText name in request.Show)
        {
            if (CellNaming.Find(calculation.Workbook, name, request.Sheet, out Fault? fault) is not { } id) return fault!;
            if (calculation.Cells[id].Outcome is null) return StudyFaults.NoValue(name.Text, CellNaming.PlaceOf(name));
            shown.Add(id);
        }
        double entries = axes.Aggregate((double)shown.Count, (product, axis) => product * axis.Values.Length);
        if (entries > WhatIfTable.MostEntries) return StudyFaults.TooMany(AxisBuilder.Count(entries), request.Place);
        ScenarioSpace space = new(tools, axes.ToImmutable(), Bound(tools, calculation, axes.ToImmutable(), shown, stop), request.Method);
        WhatIfTable table = space.Fill(progress, stop) with { Title = request.Title, Anchor = request.Anchor };
        return Occupied(calculation.Workbook, table, request) is { } occupied ? occupied : table with { Notes = Notes(space.Cone, table) };
    }

    /// <summary>The cone, with every cell bound: where one could not be at the file's own givens, at the first scenario where it can.</summary>
    private static Cone Bound(StudyTools tools, Calculation calculation, ImmutableArray<WhatIfAxis> axes, List<CellId> shown, CancellationToken stop)
    {
        ImmutableArray<CellId> varied = [.. axes.Select(axis => axis.Cell)];
        Cone cone = Cone.Of(calculation, varied, shown);
        const int tries = 5;
        Calculator? calculator = null;
        for (int i = 0; i < tries && cone.Unbound is not null; i++)
        {
            Workbook scenario = axes.Aggregate(calculation.Workbook, (workbook, axis) =>
            {
                int at = (int)((axis.Values.Length - 1L) * i / (tries - 1));
                return ScenarioWorkbook.With(workbook, axis.Cell, axis.Values[at], axis.Words.ElementAtOrDefault(at));
            });
            Cone other = Cone.Of((calculator ??= new Calculator(tools.Library)).Calculate(scenario, stop), varied, shown);
            if (other.Unbound is null) cone = other;
        }
        return cone;
    }

    private static Fault? Occupied(Workbook workbook, WhatIfTable table, WhatIfRequest request)
    {
        if (request.Anchor is not { } anchor || workbook.Find(request.Sheet ?? "") is not { } sheet) return null;
        (int rows, int columns) = table.Extent;
        CellAddress? cell = sheet.Cells.Keys.Where(at => at.Row >= anchor.Row && at.Row < anchor.Row + rows && at.Column >= anchor.Column && at.Column < anchor.Column + columns)
            .Order().Select(at => (CellAddress?)at).FirstOrDefault();
        return cell is { } found ? StudyFaults.Occupied(found.ToString(), anchor.ToString(), request.Place) : null;
    }

    private static ImmutableArray<Fault> Notes(Cone cone, WhatIfTable table)
    {
        string all = string.Join(" or ", table.Axes.Select(axis => axis.Label));
        IEnumerable<Fault> same = table.Columns.Where((_, i) => cone.Shown[i] < 0).Select(column => StudyFaults.DependsOnNothing(column.Label, all));
        bool every = cone.Shown.All(place => place < 0);
        IEnumerable<Fault> vain = table.Axes.Where(axis => !every && !cone.Reaches(axis.Cell)).Select(axis => StudyFaults.VariedInVain(axis.Label));
        return [.. same, .. vain];
    }
}
