using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>A comparison in a check that a reader can do with the figures on the page: a cell against a constant or another cell.</summary>
/// <param name="Operation">Less, greater and their kin.</param>
/// <param name="Left">The left side.</param>
/// <param name="Right">The right side.</param>
internal sealed record ShownComparison(BinaryOperation Operation, ShownSide Left, ShownSide Right)
{
    private const double Allowance = 1e-12;

    /// <summary>Every such comparison of a check.</summary>
    public static IEnumerable<ShownComparison> In(CellResult check, Calculation calculation) => check.Bound is null ? [] : In(check.Bound, check, calculation);

    /// <summary>Whether it holds for two values in coherent SI.</summary>
    public bool Of(double left, double right)
    {
        double slack = Allowance * Math.Max(Math.Abs(left), Math.Abs(right));
        return Operation switch
        {
            BinaryOperation.Less => left < right,
            BinaryOperation.LessOrEqual => left <= right + slack,
            BinaryOperation.Greater => left > right,
            _ => left >= right - slack,
        };
    }

    private static IEnumerable<ShownComparison> In(BoundExpression node, CellResult check, Calculation calculation) => node switch
    {
        BoundUnary { Operation: UnaryOperation.Not } not => In(not.Operand, check, calculation),
        BoundBinary { Operation: BinaryOperation.And or BinaryOperation.Or } both => In(both.Left, check, calculation).Concat(In(both.Right, check, calculation)),
        BoundBinary { Operation: BinaryOperation.Less or BinaryOperation.LessOrEqual or BinaryOperation.Greater or BinaryOperation.GreaterOrEqual } binary
            when ShownSide.Of(binary.Left, check, calculation) is ShownSide left && ShownSide.Of(binary.Right, check, calculation) is ShownSide right => [new(binary.Operation, left, right)],
        _ => [],
    };
}

/// <summary>One side of it: a constant, or a cell that is shown.</summary>
/// <param name="Si">The value in coherent SI.</param>
/// <param name="Cell">The cell, or null for a constant.</param>
internal sealed record ShownSide(double Si, CellResult? Cell)
{
    /// <summary>The side a node is; null for anything the page does not show.</summary>
    public static ShownSide? Of(BoundExpression node, CellResult check, Calculation calculation) => node switch
    {
        BoundNumber number => new ShownSide(number.Value, null),
        BoundUnitLiteral literal => new ShownSide(literal.Unit.ToSi(literal.Value), null),
        BoundReference reference when reference.Slot < check.References.Length && check.References[reference.Slot] is { Last: null } to => OfCell(calculation.Cells.GetValueOrDefault(to.First)),
        _ => null,
    };

    private static ShownSide? OfCell(CellResult? cell) => cell?.Value switch
    {
        NumberValue number => new ShownSide(number.Value, cell),
        QuantityValue quantity => new ShownSide(quantity.Si, cell),
        _ => null,
    };
}
