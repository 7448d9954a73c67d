using System.Collections.Immutable;
using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Lexing;

namespace ScrewSheet.Engine.Binding;

/// <summary>
/// Turns the compiler's operations into the bound tree, giving every node its dimension on the way. An operation that has no case here cannot run.
/// </summary>
internal sealed partial class Translator
{
    private readonly ResolvedExpression expression;
    private readonly ImmutableArray<CellType> slots;
    private readonly FunctionLibrary library;
    private readonly IReadOnlyDictionary<string, OwnFunction> own;
    private readonly int codeStart;
    private readonly Dictionary<string, BoundParameter> lambdas = [];
    private int nextPiece;

    private Translator(ResolvedExpression expression, ImmutableArray<CellType> slots, FunctionLibrary library, IReadOnlyDictionary<string, OwnFunction> own, int codeStart)
    {
        this.expression = expression;
        this.slots = slots;
        this.library = library;
        this.own = own;
        this.codeStart = codeStart;
    }

    /// <summary>The bound tree, or why there is none.</summary>
    public static (BoundExpression? Tree, Fault? Fault) Translate(
        ResolvedExpression expression, ImmutableArray<CellType> slots, BoundShape shape, FunctionLibrary library, IReadOnlyDictionary<string, OwnFunction> own)
    {
        Translator translator = new(expression, slots, library, own, shape.CodeStart);
        if (shape.Operation is null) return (null, translator.FromCompiler(shape));
        try
        {
            BoundExpression tree = translator.Visit(shape.Operation);
            return tree.Type is LambdaType ? (null, BindingFaults.LambdaDepth(tree.Place)) : (tree, null);
        }
        catch (Refusal refusal)
        {
            return (null, refusal.Fault);
        }
    }

    private BoundExpression Visit(IOperation operation) => operation switch
    {
        ILiteralOperation literal => Literal(literal),
        IConversionOperation conversion => Conversion(conversion),
        IUnaryOperation unary => Unary(unary),
        IBinaryOperation binary => Binary(binary),
        IConditionalOperation conditional => Conditional(conditional),
        IParameterReferenceOperation parameter => Parameter(parameter),
        IInvocationOperation invocation => Invocation(invocation),
        IPropertyReferenceOperation property => Property(property),
        IFieldReferenceOperation field => Field(field),
        ISwitchExpressionOperation choice => Switch(choice),
        IWithOperation with => With(with),
        _ => throw Refuse(BindingFaults.NotInLanguage(operation.Kind.ToString(), PlaceOf(operation))),
    };

    private BoundExpression Literal(ILiteralOperation literal) => literal.ConstantValue.Value switch
    {
        double number => new BoundNumber(number, PlaceOf(literal)),
        string text => new BoundText(text, PlaceOf(literal)),
        bool truth => new BoundTruth(truth, PlaceOf(literal)),
        _ => throw Refuse(BindingFaults.NotInLanguage("literal", PlaceOf(literal))),
    };

    /// <summary>The compiler converts a quantity to a number where only a number fits; it must be one.</summary>
    private BoundExpression Conversion(IConversionOperation conversion)
    {
        if (!conversion.IsImplicit) throw Refuse(BindingFaults.Cast(PlaceOf(conversion)));
        BoundExpression value = Visit(conversion.Operand);
        if (conversion.Type?.SpecialType == SpecialType.System_Double && value.Type is not NumberType) throw Refuse(BindingFaults.NotANumber(value.Type, value.Place));
        if (conversion.Type?.SpecialType == SpecialType.System_Object) throw Refuse(BindingFaults.ValueInText(value.Type, value.Place));
        return value;
    }

    private BoundExpression Parameter(IParameterReferenceOperation reference)
    {
        string name = reference.Parameter.Name;
        Place place = PlaceOf(reference);
        if (name.StartsWith("p_", StringComparison.Ordinal))
        {
            BoundParameter parameter = lambdas.GetValueOrDefault(name) ?? expression.Parameters.First(p => "p_" + p.Name == name);
            return parameter with { Place = place };
        }
        int index = int.Parse(name.AsSpan(1), CultureInfo.InvariantCulture);
        return name[0] == 'r' ? new BoundReference(index, slots[index], place) : UnitLiteral(expression.Literals[index], place);
    }

    private static BoundUnitLiteral UnitLiteral(Token token, Place place)
    {
        Unit unit = token.Unit!;
        return new BoundUnitLiteral(token.Value, unit, unit.Kind is { } kind ? CellType.Of(kind) : CellType.Of(unit.Dimension), place);
    }

    private BoundExpression Unary(IUnaryOperation unary)
    {
        BoundExpression operand = Visit(unary.Operand);
        Place place = PlaceOf(unary);
        switch (unary.OperatorKind)
        {
            case UnaryOperatorKind.Plus: return operand;
            case UnaryOperatorKind.Not when operand.Type is TruthType: return new BoundUnary(UnaryOperation.Not, operand, CellType.Truth, place);
            case UnaryOperatorKind.Minus when operand is BoundNumber number: return new BoundNumber(-number.Value, place);
            case UnaryOperatorKind.Minus when operand.Type is NumberType or QuantityType:
                if (operand.Type is QuantityType { Kind: { } kind } && kind == Quantities.QuantityKinds.Temperature) throw Refuse(BindingFaults.Temperature(place));
                return new BoundUnary(UnaryOperation.Negate, operand, operand.Type, place);
            default: throw Refuse(BindingFaults.NotNegated(operand.Type, place));
        }
    }

    private BoundExpression Binary(IBinaryOperation binary)
    {
        BoundExpression left = Visit(binary.LeftOperand), right = Visit(binary.RightOperand);
        Place place = PlaceOf(binary);
        if (Operation(binary.OperatorKind) is not { } operation) throw Refuse(BindingFaults.NotInLanguage(binary.OperatorKind.ToString(), place));
        return new BoundBinary(operation, left, right, Operated(operation, left.Type, right.Type, place), place);
    }

    private static CellType Operated(BinaryOperation operation, CellType left, CellType right, Place place)
    {
        (CellType? type, Fault? fault) = operation switch
        {
            BinaryOperation.Add or BinaryOperation.Subtract => TypeRules.Sum(left, right, operation, place),
            BinaryOperation.Multiply => TypeRules.Product(left, right, place),
            BinaryOperation.Divide => TypeRules.Quotient(left, right, place),
            BinaryOperation.Equal or BinaryOperation.NotEqual => (CellType.Truth, TypeRules.Equality(left, right, place)),
            BinaryOperation.And or BinaryOperation.Or => (CellType.Truth, left is TruthType && right is TruthType ? null : BindingFaults.Kinds(null, place)),
            _ => (CellType.Truth, TypeRules.Order(left, right, place)),
        };
        return fault is null ? type! : throw Refuse(fault);
    }

    private static BinaryOperation? Operation(BinaryOperatorKind kind) => kind switch
    {
        BinaryOperatorKind.Add => BinaryOperation.Add,
        BinaryOperatorKind.Subtract => BinaryOperation.Subtract,
        BinaryOperatorKind.Multiply => BinaryOperation.Multiply,
        BinaryOperatorKind.Divide => BinaryOperation.Divide,
        BinaryOperatorKind.LessThan => BinaryOperation.Less,
        BinaryOperatorKind.LessThanOrEqual => BinaryOperation.LessOrEqual,
        BinaryOperatorKind.GreaterThan => BinaryOperation.Greater,
        BinaryOperatorKind.GreaterThanOrEqual => BinaryOperation.GreaterOrEqual,
        BinaryOperatorKind.Equals => BinaryOperation.Equal,
        BinaryOperatorKind.NotEquals => BinaryOperation.NotEqual,
        BinaryOperatorKind.ConditionalAnd => BinaryOperation.And,
        BinaryOperatorKind.ConditionalOr => BinaryOperation.Or,
        _ => null,
    };

    private BoundConditional Conditional(IConditionalOperation conditional)
    {
        BoundExpression test = Visit(conditional.Condition), yes = Branch(conditional.WhenTrue), no = Branch(conditional.WhenFalse!);
        Place place = PlaceOf(conditional);
        CellType type = TypeRules.Common(yes.Type, no.Type) ?? throw Refuse(BindingFaults.Branches(yes.Type, no.Type, place));
        return new BoundConditional(test, yes, no, type, place);
    }

    /// <summary>A branch without the conversion the compiler adds where one branch is a number: our own sentence says more.</summary>
    private BoundExpression Branch(IOperation branch) =>
        branch is IConversionOperation { IsImplicit: true, Type.SpecialType: SpecialType.System_Double } conversion ? Visit(conversion.Operand) : Visit(branch);

    private Place PlaceOf(IOperation operation) => expression.SourceOf(operation.Syntax.SpanStart - codeStart, operation.Syntax.Span.Length);

    private static Refusal Refuse(Fault fault) => new(fault);

    /// <summary>Carries a fault out of the walk; never leaves <see cref="Translate"/>.</summary>
    private sealed class Refusal(Fault fault) : Exception
    {
        public Fault Fault { get; } = fault;
    }
}
