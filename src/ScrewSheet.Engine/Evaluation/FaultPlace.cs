using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>After an evaluation has failed: finds the innermost part that fails, so that the fast way needs to carry no places.</summary>
internal static class FaultPlace
{
    /// <summary>The fault with its place, and with the function's name where a library function refused.</summary>
    public static Fault Find(BoundExpression tree, Frame frame, CodeCache cache, Fault fault)
    {
        if (fault.Kind == FaultKind.Budget) return fault;
        BoundExpression innermost = tree;
        while (Failing(innermost, frame, cache) is { } below) innermost = below;
        string message = fault.Kind == FaultKind.Domain && innermost is BoundCall call ? $"{call.Function.Name}: {fault.Message}" : fault.Message;
        return fault with { Message = message, Place = innermost.Place };
    }

    private static BoundExpression? Failing(BoundExpression node, Frame frame, CodeCache cache)
    {
        if (node is BoundSwitch or BoundSeriesOperation or BoundSelection or BoundComposedText) return null;
        foreach (BoundExpression child in BoundChildren.Of(node))
        {
            (bool failed, object? value) = Try(child, frame, cache);
            if (failed) return child;
            if (node is BoundConditional conditional && ReferenceEquals(child, conditional.Test))
            {
                BoundExpression taken = value is true ? conditional.WhenTrue : conditional.WhenFalse;
                return Try(taken, frame, cache).Failed ? taken : null;
            }
        }
        return null;
    }

    private static (bool Failed, object? Value) Try(BoundExpression tree, Frame frame, CodeCache cache)
    {
        try
        {
            Emitter emitter = new(cache);
            return (false, Emitter.IsNumeric(tree.Type) ? emitter.Number(tree)(frame) : emitter.Other(tree)(frame));
        }
        catch (Exception exception) when (exception is EvaluationException or DomainException)
        {
            return (true, null);
        }
    }
}
