using System.Collections.Immutable;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Exports.Steps;

/// <summary>
/// The dimension of a declared formula, worked out from those of its parameters. A formula whose constants hide units, such as a fit to measurements, has none:
/// numbers may be put into it in coherent SI units only.
/// </summary>
internal sealed class FormulaDimension : BoundVisitor<Dimension?>
{
    private readonly List<Dimension?> parameters = [];
    private bool isSound = true;

    /// <summary>True where the formula holds whatever units the numbers have.</summary>
    public static bool IsSound(LibraryFunction function, DeclaredFormula formula)
    {
        FormulaDimension reader = new();
        foreach (LibraryParameter parameter in function.Parameters) reader.parameters.Add(parameter.Type is QuantityType quantity ? quantity.Dimension : OfUnit(parameter.Declaration.Unit));
        for (int i = 0; i < formula.Lets.Length; i++)
        {
            Dimension? declared = OfUnit(function.Lets[i].Unit);
            reader.Same(formula.Lets[i].Value.Accept(reader), declared);
            reader.parameters.Add(declared);
        }
        formula.Value.Accept(reader);
        return reader.isSound;
    }

    /// <summary>The dimension of a unit; none for an empty one, null for one that cannot be read.</summary>
    public static Dimension? OfUnit(string unit) => unit.Length == 0 ? Dimension.None : UnitText.TryParse(unit, out Unit? read, out _) ? read.Dimension : null;

    // null is what fits everything: zero, and what is not known
    private Dimension? Same(Dimension? one, Dimension? other)
    {
        if (one is { } left && other is { } right && left != right) isSound = false;
        return one ?? other;
    }

    private Dimension? None(params ReadOnlySpan<Dimension?> dimensions)
    {
        foreach (Dimension? dimension in dimensions) Same(dimension, Dimension.None);
        return Dimension.None;
    }

    public override Dimension? Visit(BoundNumber node) => node.Value switch { 0 => null, 9.80665 => Dimension.Of(length: 1, time: -2), _ => Dimension.None };
    public override Dimension? Visit(BoundUnitLiteral node) => node.Unit.Dimension;
    public override Dimension? Visit(BoundText node) => null;
    public override Dimension? Visit(BoundTruth node) => null;
    public override Dimension? Visit(BoundLibraryValue node) => null;
    public override Dimension? Visit(BoundOption node) => null;
    public override Dimension? Visit(BoundReference node) => null;
    public override Dimension? Visit(BoundParameter node) => node.Index < parameters.Count ? parameters[node.Index] : null;
    public override Dimension? Visit(BoundUnary node) => node.Operand.Accept(this);

    public override Dimension? Visit(BoundBinary node)
    {
        Dimension? left = node.Left.Accept(this), right = node.Right.Accept(this);
        return node.Operation switch
        {
            BinaryOperation.Multiply => left is { } a && right is { } b ? a * b : null,
            BinaryOperation.Divide => left is { } a && right is { } b ? a / b : null,
            BinaryOperation.And or BinaryOperation.Or => null,
            BinaryOperation.Add or BinaryOperation.Subtract => Same(left, right),
            _ => Compared(left, right),
        };
    }

    public override Dimension? Visit(BoundPower node)
    {
        Dimension? inner = node.Base.Accept(this);
        None(node.Exponent.Accept(this));
        if (inner is not { } dimension || dimension.IsNone) return inner;
        double? exponent = Constant(node.Exponent);
        if (exponent is not { } power) return Unsound();
        int parts = (int)Math.Round(power * Dimension.Parts);
        return Math.Abs(parts - (power * Dimension.Parts)) < 1e-9 && dimension.Power(parts, Dimension.Parts) is { } raised ? raised : Unsound();
    }

    public override Dimension? Visit(BoundConditional node)
    {
        node.Test.Accept(this);
        return Same(node.WhenTrue.Accept(this), node.WhenFalse.Accept(this));
    }

    public override Dimension? Visit(BoundSwitch node) => Unsound();

    public override Dimension? Visit(BoundCall node)
    {
        foreach (BoundExpression argument in node.Arguments) argument.Accept(this);
        return node.Function.ReturnType switch { QuantityType quantity => quantity.Dimension, NumberType => Dimension.None, _ => null };
    }

    public override Dimension? Visit(BoundMath node)
    {
        ImmutableArray<Dimension?> arguments = [.. node.Arguments.Select(argument => argument.Accept(this))];
        switch (node.Function)
        {
            case MathFunction.Abs: return arguments[0];
            case MathFunction.Min or MathFunction.Max: return Same(arguments[0], arguments[1]);
            case MathFunction.Atan2:
                Same(arguments[0], arguments[1]);
                return Dimension.None;
            default: return None(arguments[0]);
        }
    }

    public override Dimension? Visit(BoundOwnCall node) => null;
    public override Dimension? Visit(BoundMember node) => null;
    public override Dimension? Visit(BoundTextTest node) => null;
    public override Dimension? Visit(BoundWith node) => null;
    public override Dimension? Visit(BoundLambda node) => null;
    public override Dimension? Visit(BoundSeries node) => null;
    public override Dimension? Visit(BoundSeriesOperation node) => null;
    public override Dimension? Visit(BoundSelection node) => null;
    public override Dimension? Visit(BoundComposedText node) => null;

    private Dimension? Compared(Dimension? left, Dimension? right)
    {
        Same(left, right);
        return null;
    }

    private Dimension? Unsound()
    {
        isSound = false;
        return null;
    }

    private static double? Constant(BoundExpression exponent) => exponent switch
    {
        BoundNumber number => number.Value,
        BoundUnary { Operation: UnaryOperation.Negate } minus => -Constant(minus.Operand),
        BoundBinary { Operation: BinaryOperation.Divide } ratio => Constant(ratio.Left) / Constant(ratio.Right),
        _ => null,
    };
}
