using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>
/// The four operations over numbers, literals and references, as steps over a small stack of doubles. Most cells are no more than this; it makes nothing while
/// it runs, is as deep as one call however the expression is nested, and answers as <see cref="Emitter"/>'s code does.
/// </summary>
internal sealed class PlainArithmetic
{
    private const int MaximumDepth = 64, MaximumSteps = 4096;

    private readonly List<Step> steps = [];
    private Step[] run = [];
    private int depth, deepest;

    private PlainArithmetic() { }

    private enum Work : byte { Constant, Reference, Negate, Add, Subtract, Multiply, Divide, Check }

    /// <summary>The code of a tree, or null where it holds more than arithmetic.</summary>
    public static PlainArithmetic? Of(BoundExpression tree)
    {
        PlainArithmetic code = new();
        if (!Emitter.IsNumeric(tree.Type) || !code.Put(tree)) return null;
        if (Emitter.NeedsCheck(tree)) code.Put(Work.Check, 0);
        code.run = [.. code.steps];
        return code;
    }

    /// <summary>The value over these references.</summary>
    public double Run(double[] references)
    {
        Span<double> stack = stackalloc double[MaximumDepth + 1];
        int top = -1;
        foreach (ref readonly Step step in run.AsSpan())
        {
            switch (step.Work)
            {
                case Work.Constant: stack[++top] = step.Value; break;
                case Work.Reference: stack[++top] = references[step.Slot]; break;
                case Work.Negate: stack[top] = -stack[top]; break;
                case Work.Add: top--; stack[top] += stack[top + 1]; break;
                case Work.Subtract: top--; stack[top] -= stack[top + 1]; break;
                case Work.Multiply: top--; stack[top] *= stack[top + 1]; break;
                case Work.Divide: top--; stack[top] = Arithmetic.Divide(stack[top], stack[top + 1]); break;
                default: Arithmetic.Finite(stack[top]); break;
            }
        }
        return stack[0];
    }

    /// <summary>Left-leaning chains may be as long as an expression, so they are walked, not descended.</summary>
    private bool Put(BoundExpression tree)
    {
        Stack<BoundExpression> chain = new();
        while (tree is BoundBinary or BoundUnary)
        {
            if (!Emitter.IsNumeric(tree.Type) || chain.Count > MaximumSteps) return false;
            chain.Push(tree);
            tree = tree is BoundBinary binary ? binary.Left : ((BoundUnary)tree).Operand;
        }
        if (!PutLeaf(tree)) return false;
        while (chain.TryPop(out BoundExpression? outer))
        {
            if (outer is BoundBinary binary ? !PutBinary(binary) : !Put(Work.Negate, 0)) return false;
        }
        return steps.Count <= MaximumSteps;
    }

    private bool PutLeaf(BoundExpression leaf) => leaf switch
    {
        BoundNumber number => Put(Work.Constant, 1, number.Value),
        BoundUnitLiteral literal => Put(Work.Constant, 1, literal.Unit.ToSi(literal.Value)),
        BoundReference reference when Emitter.IsNumeric(reference.Type) => Put(Work.Reference, 1, 0, reference.Slot),
        _ => false,
    };

    private bool PutBinary(BoundBinary binary)
    {
        Work? work = binary.Operation switch
        {
            BinaryOperation.Add => Work.Add,
            BinaryOperation.Subtract => Work.Subtract,
            BinaryOperation.Multiply => Work.Multiply,
            BinaryOperation.Divide => Work.Divide,
            _ => null,
        };
        return work is { } known && Put(binary.Right) && Put(known, -1);
    }

    private bool Put(Work work, int grows, double value = 0, int slot = 0)
    {
        steps.Add(new Step(work, slot, value));
        depth += grows;
        deepest = Math.Max(deepest, depth);
        return deepest <= MaximumDepth;
    }

    private readonly record struct Step(Work Work, int Slot, double Value);
}
