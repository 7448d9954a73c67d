using System.Collections.Immutable;
using ScrewSheet.Engine;
using ScrewSheet.Studies.Faults;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tables;

/// <summary>Makes a what-if table.</summary>
internal static class WhatIfStudy
{
    private const long MostHeld = 5_000_000;

    private const int Few = 10;

    public static StudyOutcome<WhatIfTable> Run(StudyTools tools, Calculation calculation, WhatIfRequest request, IProgress<double>? progress, CancellationToken stop)
    {
        if (Plan(calculation, request, tools.Library, out Fault? fault) is not { } plan) return fault!;
        ScenarioSpace space = new(tools, plan.Axes, ConeOf(calculation, plan.Axes, plan.Shown), request.Method);
        WhatIfTable table;
        try
        {
            table = space.Fill(new HeldEntries(MostHeld / Crowd(calculation.Workbook)), progress, stop) with { Title = request.Title, Anchor = request.Anchor };
        }
        catch (NoRoom)
        {
            return StudyFaults.TooMuchHeld(request.Place);
        }
        return Occupied(calculation.Workbook, table.Shape, request) is { } occupied ? occupied : table with { Notes = Notes(space.Cone, table) };
    }

    /// <summary>How much room the table takes, or why it cannot be made; nothing is worked out.</summary>
    public static StudyOutcome<WhatIfShape> Check(Calculation calculation, WhatIfRequest request, FunctionLibrary library)
    {
        if (Plan(calculation, request, library, out Fault? fault) is not { } plan) return fault!;
        WhatIfShape shape = WhatIfShape.Of([.. plan.Axes.Select(axis => axis.Values.Length)], plan.Shown.Count);
        return Occupied(calculation.Workbook, shape, request) is { } occupied ? occupied : shape;
    }

    private static (ImmutableArray<WhatIfAxis> Axes, List<CellId> Shown)? Plan(Calculation calculation, WhatIfRequest request, FunctionLibrary library, out Fault? fault)
    {
        fault = request.Vary.IsEmpty ? StudyFaults.Missing("vary", request.Place) : request.Show.IsEmpty ? StudyFaults.Missing("show", request.Place) : null;
        if (fault is not null) return null;
        int most = WhatIfTable.MostEntries / (request.Anchor is null ? 1 : Crowd(calculation.Workbook));
        var axes = ImmutableArray.CreateBuilder<WhatIfAxis>();
        double scenarios = 1;
        foreach (VarySpec spec in request.Vary)
        {
            StudyOutcome<WhatIfAxis> axis = AxisBuilder.Build(calculation, spec, request.Sheet, library);
            fault = axis.Fault ?? (axes.Any(other => other.Cell == axis.Answer!.Cell) ? StudyFaults.VariedTwice(axis.Answer!.Label, CellNaming.PlaceOf(spec.Name)) : null);
            if (fault is not null) return null;
            axes.Add(axis.Answer!);
            scenarios *= axis.Answer!.Values.Length;
            // far beyond the most: no need to make room for the values of the other axes
            fault = scenarios > 1000.0 * WhatIfTable.MostEntries ? StudyFaults.TooMany(AxisBuilder.Count(scenarios), AxisBuilder.Count(most), request.Place) : null;
            if (fault is not null) return null;
        }
        List<CellId> shown = [];
        foreach (PlacedText name in request.Show)
        {
            if (CellNaming.Find(calculation.Workbook, name, request.Sheet, out fault) is not { } id) return null;
            fault = calculation.Cells[id].Outcome is null ? StudyFaults.NoValue(name.Text, CellNaming.PlaceOf(name)) : null;
            if (fault is not null) return null;
            shown.Add(id);
        }
        double entries = scenarios * shown.Count;
        fault = entries > most ? StudyFaults.TooMany(AxisBuilder.Count(entries), AxisBuilder.Count(most), request.Place) : null;
        return fault is null ? (axes.ToImmutable(), shown) : null;
    }

    /// <summary>How many tenths of the tables a workbook has: those of one file are held together, so many tables are smaller ones.</summary>
    private static int Crowd(Workbook workbook) => Math.Max(1, workbook.Sheets.Sum(sheet => sheet.WhatIfs.Length) / Few);

    private static Cone ConeOf(Calculation calculation, ImmutableArray<WhatIfAxis> axes, List<CellId> shown) =>
        Cone.Of(calculation, [.. axes.Select(axis => axis.Cell)], shown, (varied, value) => axes[varied].Words.ElementAtOrDefault(axes[varied].Values.IndexOf(value)));

    private static Fault? Occupied(Workbook workbook, WhatIfShape shape, WhatIfRequest request) =>
        request.Anchor is { } anchor && workbook.Find(request.Sheet ?? "") is { } sheet ? shape.CollisionOn(sheet, anchor, request.Place) : null;

    private static ImmutableArray<Fault> Notes(Cone cone, WhatIfTable table)
    {
        string all = string.Join(" or ", table.Axes.Select(axis => axis.Label));
        IEnumerable<Fault> same = table.Columns.Where((_, i) => cone.Shown[i] < 0).Select(column => StudyFaults.DependsOnNothing(column.Label, all));
        bool every = cone.Shown.All(place => place < 0);
        IEnumerable<Fault> vain = table.Axes.Where(axis => !every && !cone.Reaches(axis.Cell)).Select(axis => StudyFaults.VariedInVain(axis.Label));
        return [.. same, .. vain];
    }
}
