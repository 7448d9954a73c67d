using System.Collections.Immutable;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>
/// What a tree reads only where a choice goes its way. The engine needs every cell and argument to have a value before it begins; a formula would not notice a missing one on
/// the way not taken.
/// </summary>
internal sealed class LazyReads
{
    private readonly SortedSet<int> always = [], sometimes = [];
    private readonly bool parameters;

    private LazyReads(bool parameters) => this.parameters = parameters;

    /// <summary>The slots of such references.</summary>
    public static IEnumerable<int> Slots(BoundExpression tree) => Found(tree, parameters: false);

    /// <summary>The indexes of such parameters of a function, and of those its body does not read at all.</summary>
    public static IEnumerable<int> Parameters(BoundExpression body, int count)
    {
        LazyReads reads = new(parameters: true);
        reads.Walk(body, isLazy: false);
        return Enumerable.Range(0, count).Where(index => !reads.always.Contains(index));
    }

    private static IEnumerable<int> Found(BoundExpression tree, bool parameters)
    {
        LazyReads reads = new(parameters);
        reads.Walk(tree, isLazy: false);
        return reads.sometimes.Except(reads.always);
    }

    private void Walk(BoundExpression node, bool isLazy)
    {
        switch (node)
        {
            case BoundReference reference when !parameters: (isLazy ? sometimes : always).Add(reference.Slot); break;
            case BoundParameter parameter when parameters: (isLazy ? sometimes : always).Add(parameter.Index); break;
            case BoundConditional choice: First(choice.Test, [choice.WhenTrue, choice.WhenFalse], isLazy); break;
            case BoundBinary { Operation: BinaryOperation.And or BinaryOperation.Or } both: First(both.Left, [both.Right], isLazy); break;
            case BoundSwitch choice: First(choice.Subject, [.. BoundChildren.Of(choice).Skip(1)], isLazy); break;
            default:
                foreach (BoundExpression child in BoundChildren.Of(node)) Walk(child, isLazy);
                break;
        }
    }

    private void First(BoundExpression first, ImmutableArray<BoundExpression> rest, bool isLazy)
    {
        Walk(first, isLazy);
        foreach (BoundExpression other in rest) Walk(other, isLazy: true);
    }
}
