using System.Collections.Immutable;
using System.Linq.Expressions;
using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>
/// Turns a bound tree into runnable code over doubles in coherent SI: units were checked when it was bound and are gone here,
/// but for the calls of library functions, which get and give the quantities they declare.
/// </summary>
internal sealed partial class Emitter : BoundVisitor<Expression>
{
    private static readonly ParameterExpression FrameParameter = Expression.Parameter(typeof(Frame), "frame");

    private readonly CodeCache cache;
    private readonly Dictionary<BoundExpression, ParameterExpression> subjects = new(ReferenceEqualityComparer.Instance);

    public Emitter(CodeCache cache) => this.cache = cache;

    /// <summary>Code for a number or quantity.</summary>
    public Func<Frame, double> Number(BoundExpression tree) => Expression.Lambda<Func<Frame, double>>(Checked(tree), FrameParameter).Compile(preferInterpretation: true);

    /// <summary>Code for anything else.</summary>
    public Func<Frame, object> Other(BoundExpression tree) =>
        Expression.Lambda<Func<Frame, object>>(Expression.Convert(Emit(tree), typeof(object)), FrameParameter).Compile(preferInterpretation: true);

    /// <summary>True for the types that are doubles while they run.</summary>
    public static bool IsNumeric(CellType type) => type is NumberType or QuantityType;

    private Expression Emit(BoundExpression tree) => subjects.TryGetValue(tree, out ParameterExpression? known) ? known : tree.Accept(this);

    /// <summary>A sum or product may have grown beyond all numbers; where it is used as a value it is looked at.</summary>
    private Expression Checked(BoundExpression tree) => NeedsCheck(tree) ? Call(nameof(Arithmetic.Finite), Emit(tree)) : Emit(tree);

    internal static bool NeedsCheck(BoundExpression tree) => tree switch
    {
        BoundBinary { Operation: BinaryOperation.Add or BinaryOperation.Subtract or BinaryOperation.Multiply } sum => IsNumeric(sum.Type),
        BoundUnary unary => NeedsCheck(unary.Operand),
        BoundConditional conditional => NeedsCheck(conditional.WhenTrue) || NeedsCheck(conditional.WhenFalse),
        BoundSwitch => IsNumeric(tree.Type),
        _ => false,
    };

    public override Expression Visit(BoundNumber node) => Expression.Constant(node.Value);

    public override Expression Visit(BoundUnitLiteral node) => Expression.Constant(node.Unit.ToSi(node.Value));

    public override Expression Visit(BoundText node) => Expression.Constant(node.Value);

    public override Expression Visit(BoundTruth node) => Expression.Constant(node.Value);

    public override Expression Visit(BoundOption node) => Expression.Constant(node.Value, typeof(object));

    public override Expression Visit(BoundReference node) => Slot(node.Type, nameof(Frame.Si), nameof(Frame.Others), node.Slot);

    public override Expression Visit(BoundParameter node) => Slot(node.Type, nameof(Frame.ParameterSi), nameof(Frame.ParameterOthers), node.Index);

    private static Expression Slot(CellType type, string numbers, string others, int index) => IsNumeric(type)
        ? Expression.ArrayIndex(Expression.Field(FrameParameter, numbers), Expression.Constant(index))
        : Expression.Convert(Expression.ArrayIndex(Expression.Field(FrameParameter, others), Expression.Constant(index)), Held(type));

    /// <summary>The type a value has while it runs.</summary>
    private static Type Held(CellType type) => type switch { TruthType => typeof(bool), TextType => typeof(string), _ when IsNumeric(type) => typeof(double), _ => typeof(object) };

    public override Expression Visit(BoundUnary node) => node.Operation == UnaryOperation.Negate ? Expression.Negate(Emit(node.Operand)) : Expression.Not(Emit(node.Operand));

    public override Expression Visit(BoundBinary node)
    {
        if (node.Type is TruthType && node.Operation is not (BinaryOperation.And or BinaryOperation.Or)) return Comparison(node);
        Expression left = Emit(node.Left), right = Emit(node.Right);
        return node.Operation switch
        {
            BinaryOperation.Add when node.Type is TextType => Call(nameof(Arithmetic.Join), left, right),
            BinaryOperation.Add => Expression.Add(left, right),
            BinaryOperation.Subtract => Expression.Subtract(left, right),
            BinaryOperation.Multiply => Expression.Multiply(left, right),
            BinaryOperation.Divide => Call(nameof(Arithmetic.Divide), left, right),
            BinaryOperation.And => Expression.AndAlso(left, right),
            _ => Expression.OrElse(left, right),
        };
    }

    private Expression Comparison(BoundBinary node)
    {
        Expression left = Checked(node.Left), right = Checked(node.Right);
        bool quantities = node.Left.Type is QuantityType;
        return node.Operation switch
        {
            BinaryOperation.Less => Expression.LessThan(left, right),
            BinaryOperation.Greater => Expression.GreaterThan(left, right),
            BinaryOperation.LessOrEqual => quantities ? Ordered(nameof(SiOrder.AtMost), left, right) : Expression.LessThanOrEqual(left, right),
            BinaryOperation.GreaterOrEqual => quantities ? Ordered(nameof(SiOrder.AtLeast), left, right) : Expression.GreaterThanOrEqual(left, right),
            BinaryOperation.Equal => Same(left, right),
            _ => Expression.Not(Same(left, right)),
        };
    }

    private static Expression Same(Expression left, Expression right) =>
        left.Type == typeof(object) ? Expression.Call(typeof(object), nameof(Equals), null, left, right) : Expression.Equal(left, right);

    public override Expression Visit(BoundPower node)
    {
        Expression value = Emit(node.Base);
        return node.Form switch
        {
            PowerForm.Sqrt => Call(nameof(Arithmetic.Sqrt), value),
            PowerForm.Cbrt => Call(nameof(Arithmetic.Cbrt), value),
            PowerForm.Root => Call(nameof(Arithmetic.Root), value, Emit(node.Exponent)),
            _ => Call(nameof(Arithmetic.Pow), value, Emit(node.Exponent)),
        };
    }

    public override Expression Visit(BoundMath node) => node.Arguments.Length == 1
        ? Call(nameof(Arithmetic.Math1), Expression.Constant(node.Function), Emit(node.Arguments[0]))
        : Call(nameof(Arithmetic.Finite), Expression.Call(typeof(Math), node.Function.ToString(), null, Emit(node.Arguments[0]), Emit(node.Arguments[1])));

    public override Expression Visit(BoundConditional node) => Expression.Condition(Emit(node.Test), Emit(node.WhenTrue), Emit(node.WhenFalse), Held(node.Type));

    public override Expression Visit(BoundSwitch node)
    {
        ParameterExpression subject = Expression.Variable(Held(node.Subject.Type));
        Expression assigned = Expression.Assign(subject, Checked(node.Subject));
        subjects.Add(node.Subject, subject);
        Expression chosen = Expression.Call(typeof(Arithmetic), nameof(Arithmetic.NoArm), [Held(node.Type)]);
        foreach (BoundArm arm in node.Arms.Reverse())
        {
            Expression fits = arm.Pattern is null ? Expression.Constant(true) : Emit(arm.Pattern);
            if (arm.When is not null) fits = Expression.AndAlso(fits, Emit(arm.When));
            chosen = Expression.Condition(fits, Emit(arm.Value), chosen, Held(node.Type));
        }
        subjects.Remove(node.Subject);
        return Expression.Block([subject], assigned, chosen);
    }

    public override Expression Visit(BoundTextTest node)
    {
        Expression target = Emit(node.Target);
        if (node.Operation == TextOperation.Length) return Expression.Convert(Expression.Property(target, nameof(string.Length)), typeof(double));
        MethodInfo method = typeof(string).GetMethod(node.Operation.ToString(), [typeof(string), typeof(StringComparison)])!;
        return Expression.Call(target, method, Emit(node.Argument!), Expression.Constant(StringComparison.Ordinal));
    }

    public override Expression Visit(BoundComposedText node)
    {
        ImmutableArray<Func<Frame, object>?> values = [.. node.Pieces.Select(piece => piece.Value is null ? null : Other(piece.Value))];
        return Expression.Call(Expression.Constant(new TextComposer(node.Pieces, values)), nameof(TextComposer.Compose), null, FrameParameter);
    }

    private static MethodCallExpression Ordered(string relation, Expression left, Expression right) => Expression.Call(typeof(SiOrder), relation, null, left, right);

    private static MethodCallExpression Call(string method, params Expression[] arguments) => Expression.Call(typeof(Arithmetic), method, null, arguments);
}
