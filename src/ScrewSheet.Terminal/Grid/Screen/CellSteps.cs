using ScrewSheet.Exports.Steps;
using ScrewSheet.Terminal.Handouts;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>
/// Worked steps for the screen. That of the cell under the cursor is made when it is first shown and kept while the reader stays there: most cells are only passed by.
/// </summary>
/// <remarks>For one thread at a time.</remarks>
/// <param name="calculation">All results.</param>
/// <param name="library">The library they were computed with.</param>
/// <param name="digits">How values are shown.</param>
internal sealed class CellSteps(Calculation calculation, FunctionLibrary library, ShownDigits digits)
{
    private const int MostNodes = 500, MostInRun = 2_000;

    private (CellResult Cell, WorkedStep? Step)? last;

    /// <summary>The step of a result; null where its expression is too long to be written out while the reader waits.</summary>
    public WorkedStep? Of(CellResult cell)
    {
        if (last is { } known && ReferenceEquals(known.Cell, cell)) return known.Step;
        WorkedStep? step = cell.Bound is { } tree && BoundChildren.All(tree).Take(MostNodes + 1).Count() <= MostNodes ? Make(cell) : null;
        last = (cell, step);
        return step;
    }

    private WorkedStep Make(CellResult cell)
    {
        StepEvaluation evaluation = new(calculation, library);
        bool isShort = !cell.References.Any(reference => reference.Last is { } end && IsLong(CellBlock.Between(reference.First.Address, end.Address)));
        return new StepBuilder(new StepTools
        {
            Calculation = calculation,
            Library = library,
            // a piece without a value stands there as it is written
            Evaluate = (at, tree, parameters) => isShort && IsQuick(tree, []) ? evaluation.Value(at, tree, parameters) : null,
            FormatOf = digits.FormatOf,
            Units = new UnitChoice(calculation.Workbook.Head.Units, All: false),
        }).Of(cell);
    }

    private static bool IsLong(CellBlock run) => (long)run.Rows * run.Columns > MostInRun;

    /// <summary>True for a piece that neither integrates nor solves: the keyboard waits for it.</summary>
    private static bool IsQuick(BoundExpression tree, HashSet<OwnFunction> entered) => BoundChildren.All(tree).All(node => node switch
    {
        BoundCall call => call.Function.NoFormula is null,
        BoundOwnCall { Function: { Body: { } body } function } => !entered.Add(function) || IsQuick(body, entered),
        _ => true,
    });
}
