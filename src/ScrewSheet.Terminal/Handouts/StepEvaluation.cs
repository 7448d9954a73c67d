using ScrewSheet.Engine;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Handouts;

/// <summary>Works out pieces of expressions for worked steps, with the code cells use.</summary>
internal sealed class StepEvaluation(Calculation calculation, FunctionLibrary library)
{
    private readonly TreeEvaluation trees = new(library, calculation.Workbook.Head.Units);
    private readonly Dictionary<CellId, (CellValue?[] Values, DisplayFormat?[] Formats)> read = [];

    /// <summary>The value of a piece; null where it has none.</summary>
    public CellValue? Value(CellResult? cell, BoundExpression tree, IReadOnlyList<CellValue?> parameters)
    {
        (CellValue?[] values, DisplayFormat?[] formats) = cell is null ? ([], []) : Read(cell);
        if (BoundChildren.All(tree).OfType<BoundReference>().Any(reference => values.ElementAtOrDefault(reference.Slot) is null)) return null;
        return trees.Run(tree, values, formats, parameters).Value;
    }

    private (CellValue?[] Values, DisplayFormat?[] Formats) Read(CellResult cell)
    {
        if (read.TryGetValue(cell.Id, out var known)) return known;
        known = ([.. cell.References.Select(Value)], [.. cell.References.Select(reference => calculation.Cells.GetValueOrDefault(reference.First)?.Cell.Format)]);
        read.Add(cell.Id, known);
        return known;
    }

    private CellValue? Value(CellReference reference)
    {
        if (reference.Last is null) return calculation.Cells.GetValueOrDefault(reference.First)?.Value;
        (CellId Id, CellValue Value)[] run = [.. reference.In(calculation.Workbook).Select(id => (id, calculation.Cells.GetValueOrDefault(id)?.Value)).Where(pair => pair.Value is not null).Select(pair => (pair.id, pair.Value!))];
        return run.Length == 0 ? null : RunSeries.Of(reference, run);
    }
}
