using System.Linq.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Kernels;

/// <summary>The code of a value: free of side effects, over locals assigned before.</summary>
/// <param name="Code">The code: a double, a bool, or for anything else the value itself.</param>
/// <param name="Constant">The value where it is the same in every scenario.</param>
/// <param name="IsPending">
/// True where the engine would have stopped at a value that is not finite. Sums, products and square roots hand that on, so it is looked at once, before it could be lost:
/// below a stroke, in a comparison, at the end of the cell.
/// </param>
/// <param name="IsLoose">True where a sum or product may be too large and the engine looks at it only where it is used.</param>
internal readonly record struct Emitted(Expression Code, CellValue? Constant = null, bool IsPending = false, bool IsLoose = false)
{
    /// <summary>True where it must be looked at before it is compared or handed on.</summary>
    public bool NeedsCheck => (IsPending || IsLoose) && Constant is null;

    /// <summary>Of a constant.</summary>
    public static Emitted Of(CellValue value) => value switch
    {
        NumberValue number => new Emitted(Expression.Constant(number.Value), value),
        QuantityValue quantity => new Emitted(Expression.Constant(quantity.Si), value),
        TruthValue truth => new Emitted(Expression.Constant(truth.Value), value),
        TextValue text => new Emitted(Expression.Constant(text.Value), value),
        OptionValue option => new Emitted(Expression.Constant(option.Value), value),
        SeriesValue series => new Emitted(Expression.Constant(series.Value), value),
        TextSeriesValue texts => new Emitted(Expression.Constant(texts.Value), value),
        RecordValue record => new Emitted(Expression.Constant(record.Value), value),
        _ => throw new NoKernelException($"{value.GetType().Name} has no form in a kernel."),
    };
}
