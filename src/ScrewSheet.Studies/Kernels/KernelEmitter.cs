using System.Collections.Immutable;
using System.Linq.Expressions;
using ScrewSheet.Engine;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Kernels;

/// <summary>Writes bound trees into a loop: what does not change is worked out now, by the engine, and stands in the loop as a constant.</summary>
/// <remarks>It answers as the engine's own code does, faults included; where an operation has no form here it says so.</remarks>
internal sealed partial class KernelEmitter : BoundVisitor<Emitted>
{
    private readonly LoopCode code;
    private readonly FunctionLibrary library;
    private readonly TreeEvaluation trees;
    private readonly FunctionTrials trials;
    private readonly Dictionary<BoundExpression, Emitted> subjects = new(ReferenceEqualityComparer.Instance);
    private readonly HashSet<Expression> open = [];
    private ImmutableArray<Emitted> references = [], parameters = [];

    public KernelEmitter(LoopCode code, FunctionLibrary library, TreeEvaluation trees, FunctionTrials trials) =>
        (this.code, this.library, this.trees, this.trials) = (code, library, trees, trials);

    /// <summary>How many operations were written.</summary>
    public int Operations { get; private set; }

    /// <summary>
    /// The value of a cell in a local. Whether it is finite is looked at where it could be lost, or in the end: a cell that is not takes every cell that reads it along.
    /// </summary>
    public Emitted Cell(BoundExpression tree, ImmutableArray<Emitted> reads)
    {
        references = reads;
        Emitted value = Emit(tree);
        if (value.Constant is not null) return value;
        // a cell that is only another one has that one's local, and is looked at in its place
        Expression local = code.Local(value.Code);
        if (!IsNumeric(tree.Type)) return new Emitted(local);
        if (local is ParameterExpression) open.Add(local);
        return new Emitted(local, null, IsPending: true);
    }

    /// <summary>Looks at every cell that no other cell takes along.</summary>
    public void Close()
    {
        foreach (Expression local in open) code.Finite(local);
        open.Clear();
    }

    private static bool IsNumeric(CellType type) => type is NumberType or QuantityType;

    private Emitted Emit(BoundExpression tree)
    {
        if (subjects.TryGetValue(tree, out Emitted subject)) return subject;
        if (Folded(tree) is { } constant) return constant;
        return tree.Accept(this);
    }

    /// <summary>The value of a tree that reads nothing varied; its cautions stay where they were met. One in fault is left to the scenarios that reach it.</summary>
    private Emitted? Folded(BoundExpression tree)
    {
        if (tree is BoundReference or BoundParameter or BoundLambda || !Stays(tree)) return null;
        Evaluated evaluated = trees.Run(tree, [.. references.Select(reference => reference.Constant)], null, [.. parameters.Select(parameter => parameter.Constant)]);
        if (evaluated.Value is null) return null;
        foreach (string caution in evaluated.Cautions) code.Caution(UsualRange.WithoutValue(caution), null);
        return Emitted.Of(evaluated.Value);
    }

    private bool Stays(BoundExpression tree) => BoundChildren.All(tree).All(node => node switch
    {
        BoundReference reference => references[reference.Slot].Constant is not null,
        // a parameter beyond those of the function belongs to a lambda inside the tree
        BoundParameter parameter => parameter.Index >= parameters.Length || parameters[parameter.Index].Constant is not null,
        // the subject of a switch stands in its patterns
        _ => !subjects.ContainsKey(node),
    });

    /// <summary>The code of a number or quantity where the engine would look whether it is finite.</summary>
    private Expression Settled(BoundExpression tree)
    {
        Emitted value = Emit(tree);
        return IsNumeric(tree.Type) && value.NeedsCheck ? code.Finite(value.Code) : value.Code;
    }

    /// <summary>The code of a number where a value that is not finite could be lost.</summary>
    private Expression Kept(BoundExpression tree)
    {
        Emitted value = Emit(tree);
        return value.IsPending ? code.Finite(value.Code) : value.Code;
    }

    private static NoKernelException None(BoundExpression node) => new($"{node.GetType().Name} over varied values has no form in a kernel.");

    public override Emitted Visit(BoundNumber node) => Emitted.Of(new NumberValue(node.Value));

    public override Emitted Visit(BoundUnitLiteral node) => Emitted.Of(new NumberValue(node.Unit.ToSi(node.Value)));

    public override Emitted Visit(BoundText node) => Emitted.Of(new TextValue(node.Value));

    public override Emitted Visit(BoundTruth node) => Emitted.Of(new TruthValue(node.Value));

    public override Emitted Visit(BoundOption node) => Emitted.Of(new OptionValue(node.Value));

    public override Emitted Visit(BoundReference node)
    {
        Emitted read = references[node.Slot];
        if (!code.IsInBranch) open.Remove(read.Code);
        return read;
    }

    public override Emitted Visit(BoundParameter node) => node.Index < parameters.Length ? parameters[node.Index] : throw None(node);

    public override Emitted Visit(BoundUnary node)
    {
        Operations++;
        Emitted operand = Emit(node.Operand);
        return node.Operation == UnaryOperation.Not ? new Emitted(Expression.Not(operand.Code)) : operand with { Code = Expression.Negate(operand.Code), Constant = null };
    }

    public override Emitted Visit(BoundBinary node)
    {
        Operations++;
        if (node.Operation is BinaryOperation.And or BinaryOperation.Or) return Both(node);
        if (node.Type is TruthType) return new Emitted(Comparison(node));
        if (!IsNumeric(node.Type)) throw None(node);
        Emitted left = Emit(node.Left);
        if (node.Operation == BinaryOperation.Divide) return new Emitted(Expression.Divide(left.Code, Kept(node.Right)), IsPending: true);
        Emitted right = Emit(node.Right);
        BinaryExpression made = node.Operation switch
        {
            BinaryOperation.Add => Expression.Add(left.Code, right.Code),
            BinaryOperation.Subtract => Expression.Subtract(left.Code, right.Code),
            _ => Expression.Multiply(left.Code, right.Code),
        };
        return new Emitted(made, IsPending: left.IsPending || right.IsPending, IsLoose: true);
    }

    private Expression Comparison(BoundBinary node)
    {
        Expression left = Settled(node.Left), right = Settled(node.Right);
        bool quantities = node.Left.Type is QuantityType;
        if (left.Type != right.Type || (left.Type != typeof(double) && left.Type != typeof(bool))) throw None(node);
        return node.Operation switch
        {
            BinaryOperation.Less => Expression.LessThan(left, right),
            BinaryOperation.Greater => Expression.GreaterThan(left, right),
            BinaryOperation.LessOrEqual => quantities ? Expression.Call(typeof(SiOrder), nameof(SiOrder.AtMost), null, left, right) : Expression.LessThanOrEqual(left, right),
            BinaryOperation.GreaterOrEqual => quantities ? Expression.Call(typeof(SiOrder), nameof(SiOrder.AtLeast), null, left, right) : Expression.GreaterThanOrEqual(left, right),
            BinaryOperation.Equal => Expression.Equal(left, right),
            _ => Expression.NotEqual(left, right),
        };
    }

    /// <summary>The right side runs only where the left one does not decide.</summary>
    private Emitted Both(BoundBinary node)
    {
        Expression left = Emit(node.Left).Code;
        ParameterExpression value = code.Variable(typeof(bool));
        code.Add(Expression.Assign(value, left));
        BlockExpression right = code.Branch(() => code.Add(Expression.Assign(value, Emit(node.Right).Code)));
        code.Add(Expression.IfThen(node.Operation == BinaryOperation.And ? value : Expression.Not(value), right));
        return new Emitted(value);
    }

    public override Emitted Visit(BoundPower node)
    {
        Operations++;
        if (node.Form == PowerForm.Sqrt) return new Emitted(Expression.Call(typeof(Math), nameof(Math.Sqrt), null, Emit(node.Base).Code), IsPending: true);
        Expression value = Kept(node.Base);
        if (node.Form == PowerForm.Cbrt) return new Emitted(Expression.Call(typeof(Math), nameof(Math.Cbrt), null, value), IsPending: true);
        if (node.Form == PowerForm.Root) throw None(node);
        Emitted exponent = Emit(node.Exponent);
        if (exponent.Constant is NumberValue { Value: 2 or 3 } small)
        {
            Expression local = code.Local(value), square = Expression.Multiply(local, local);
            return new Emitted(small.Value == 2 ? square : Expression.Multiply(square, local), IsPending: true);
        }
        if (exponent.IsPending) exponent = new Emitted(code.Finite(exponent.Code));
        return new Emitted(Expression.Call(typeof(Math), nameof(Math.Pow), null, value, exponent.Code), IsPending: true);
    }

    public override Emitted Visit(BoundMath node)
    {
        Operations++;
        Expression[] arguments = [.. node.Arguments.Select(Kept)];
        string name = node.Function == MathFunction.Ln ? nameof(Math.Log) : node.Function.ToString();
        return new Emitted(Expression.Call(typeof(Math), name, null, arguments), IsPending: true);
    }

    public override Emitted Visit(BoundConditional node)
    {
        Operations++;
        Expression test = Emit(node.Test).Code;
        ParameterExpression value = code.Variable(Held(node));
        bool pending = false, loose = false;
        BlockExpression yes = code.Branch(() => Put(node.WhenTrue)), no = code.Branch(() => Put(node.WhenFalse));
        code.Add(Expression.IfThenElse(test, yes, no));
        return new Emitted(value, null, pending, loose);

        void Put(BoundExpression branch)
        {
            Emitted put = Emit(branch);
            (pending, loose) = (pending || put.IsPending, loose || put.IsLoose);
            code.Add(Expression.Assign(value, put.Code));
        }
    }

    public override Emitted Visit(BoundSwitch node)
    {
        Operations++;
        ParameterExpression value = code.Variable(Held(node));
        bool pending = false;
        subjects.Add(node.Subject, new Emitted(code.Local(Settled(node.Subject))));
        Arm(0);
        subjects.Remove(node.Subject);
        return new Emitted(value, null, pending, IsLoose: value.Type == typeof(double));

        void Arm(int at)
        {
            if (at == node.Arms.Length)
            {
                code.Add(code.Fault());
                return;
            }
            BoundArm arm = node.Arms[at];
            ParameterExpression fits = code.Variable(typeof(bool));
            code.Add(Expression.Assign(fits, arm.Pattern is null ? Expression.Constant(true) : Emit(arm.Pattern).Code));
            if (arm.When is { } when) code.Add(Expression.IfThen(fits, code.Branch(() => code.Add(Expression.Assign(fits, Emit(when).Code)))));
            BlockExpression taken = code.Branch(() =>
            {
                Emitted put = Emit(arm.Value);
                pending |= put.IsPending;
                code.Add(Expression.Assign(value, put.Code));
            });
            code.Add(Expression.IfThenElse(fits, taken, code.Branch(() => Arm(at + 1))));
        }
    }

    private static Type Held(BoundExpression node) => node.Type switch { TruthType => typeof(bool), _ when IsNumeric(node.Type) => typeof(double), _ => throw None(node) };

    public override Emitted Visit(BoundTextTest node) => throw None(node);

    public override Emitted Visit(BoundWith node) => throw None(node);

    public override Emitted Visit(BoundLambda node) => throw None(node);

    public override Emitted Visit(BoundSeries node) => throw None(node);

    public override Emitted Visit(BoundSeriesOperation node) => throw None(node);

    public override Emitted Visit(BoundSelection node) => throw None(node);

    public override Emitted Visit(BoundComposedText node) => throw None(node);

    public override Emitted Visit(BoundLibraryValue node) => throw None(node);
}
