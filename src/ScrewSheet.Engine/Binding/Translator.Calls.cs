using System.Collections.Immutable;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>Calls: the library's functions, the author's, the engine's own.</summary>
internal sealed partial class Translator
{
    private BoundExpression Invocation(IInvocationOperation call)
    {
        string name = call.TargetMethod.Name;
        switch (call.TargetMethod.ContainingType.Name)
        {
            case "F" when library.Function(name) is { } function: return LibraryCall(call, function);
            case "F": return Intrinsic(call, name);
            case "M": return MathCall(call, name);
            case "U": return OwnCall(call, own[name]);
            case "String": return TextCall(call, name);
            case "Series": return Selection(call, name);
            default: throw Refuse(BindingFaults.NotInLanguage(name, PlaceOf(call)));
        }
    }

    private IOperation?[] InOrder(IInvocationOperation call)
    {
        IOperation?[] ordered = new IOperation?[call.TargetMethod.Parameters.Length];
        foreach (IArgumentOperation argument in call.Arguments)
            if (argument.ArgumentKind != ArgumentKind.DefaultValue) ordered[argument.Parameter!.Ordinal] = argument.Value;
        return ordered;
    }

    private BoundCall LibraryCall(IInvocationOperation call, LibraryFunction function)
    {
        IOperation?[] given = InOrder(call);
        var arguments = ImmutableArray.CreateBuilder<BoundExpression>(given.Length);
        Dictionary<string, CellType> kinds = [];
        for (int i = 0; i < given.Length; i++)
        {
            LibraryParameter parameter = function.Parameters[i];
            BoundExpression argument = given[i] is { } operation ? Branch(operation) : Default(parameter, PlaceOf(call));
            if (parameter.Type is null) Unify(parameter.Clr, argument.Type, kinds, function, argument.Place);
            else if (!TypeRules.Fits(argument.Type, parameter.Type))
                throw Refuse(BindingFaults.Wanted(parameter.Type, argument.Type, $"the parameter {parameter.Name} of {function.Name}", argument.Place));
            arguments.Add(argument);
        }
        return new BoundCall(function, arguments.ToImmutable(), TypeArguments(function, kinds), ReturnType(function, kinds), PlaceOf(call));
    }

    private static BoundExpression Default(LibraryParameter parameter, Place place) => parameter.Default switch
    {
        bool truth => new BoundTruth(truth, place),
        string text => new BoundText(text, place),
        Enum option => new BoundOption(option, place),
        double number => new BoundNumber(number, place),
        int number => parameter.Clr.IsEnum ? new BoundOption((Enum)Enum.ToObject(parameter.Clr, number), place) : new BoundNumber(number, place),
        _ when parameter.Type is QuantityType quantity => new BoundUnitLiteral(0, new Quantities.Units.Unit(quantity.Kind?.SiSymbol ?? quantity.Dimension.ToString(), quantity.Dimension, quantity.Kind, 1), quantity, place),
        _ => throw new NotSupportedException($"The parameter {parameter.Name} has a default that cells do not know."),
    };

    private static ImmutableArray<CellType> TypeArguments(LibraryFunction function, Dictionary<string, CellType> kinds) =>
        function.Method.IsGenericMethodDefinition ? [.. function.Method.GetGenericArguments().Select(argument => kinds[argument.Name])] : [];

    private static CellType ReturnType(LibraryFunction function, Dictionary<string, CellType> kinds) =>
        function.ReturnType ?? ClrTypes.Close(function.Method.ReturnType, null, kinds);

    /// <summary>Finds what a function's type parameters stand for from the type of an argument.</summary>
    private void Unify(Type pattern, CellType actual, Dictionary<string, CellType> kinds, LibraryFunction function, Place place)
    {
        if (pattern.IsGenericParameter)
        {
            if (actual is not (NumberType or QuantityType)) throw Refuse(BindingFaults.NotMeasured(function.Name, actual, place));
            CellType known = kinds.GetValueOrDefault(pattern.Name) ?? actual;
            kinds[pattern.Name] = TypeRules.Common(known, actual) ?? throw Refuse(BindingFaults.OneKind(function.Name, known, actual, place));
            return;
        }
        CellType[]? inner = actual switch { SeriesType series when ClrTypes.IsSeries(pattern) => [series.Element], RecordType record when pattern.Name == record.Clr.Name => [.. record.Arguments], _ => null };
        if (inner is null) throw Refuse(BindingFaults.Kinds(null, place));
        foreach ((Type argument, CellType type) in pattern.GetGenericArguments().Zip(inner)) Unify(argument, type, kinds, function, place);
    }

    private BoundOwnCall OwnCall(IInvocationOperation call, OwnFunction function)
    {
        ImmutableArray<BoundExpression> arguments = [.. InOrder(call).Select(argument => Branch(argument!))];
        for (int i = 0; i < arguments.Length; i++)
            if (!TypeRules.Fits(arguments[i].Type, function.Parameters[i].Type))
                throw Refuse(BindingFaults.Wanted(function.Parameters[i].Type, arguments[i].Type, $"the parameter {function.Parameters[i].Name} of {function.Name}", arguments[i].Place));
        return new BoundOwnCall(function, arguments, function.ReturnType, PlaceOf(call));
    }

    private BoundExpression MathCall(IInvocationOperation call, string name)
    {
        ImmutableArray<BoundExpression> arguments = [.. InOrder(call).Select(argument => Visit(argument!))];
        Place place = PlaceOf(call);
        return name switch
        {
            "Sqrt" => Power(arguments[0], new BoundNumber(0.5, place), PowerForm.Sqrt, (1, 2), place),
            "Cbrt" => Power(arguments[0], new BoundNumber(1.0 / 3, place), PowerForm.Cbrt, (1, 3), place),
            "Pow" => Power(arguments[0], arguments[1], PowerForm.Pow, Rational(arguments[1]), place),
            "Log" => new BoundMath(MathFunction.Ln, arguments, place),
            _ => new BoundMath(Enum.Parse<MathFunction>(name), arguments, place),
        };
    }

    private BoundExpression Intrinsic(IInvocationOperation call, string name)
    {
        IOperation[] given = [.. InOrder(call)!];
        Place place = PlaceOf(call);
        switch (name)
        {
            case "T": return Composed(call);
            case "Values": return Written(call);
            case "N": return Subject(given[0]);
            case "Sqrt": return Power(Branch(given[0]), new BoundNumber(0.5, place), PowerForm.Sqrt, (1, 2), place);
            case "Cbrt": return Power(Branch(given[0]), new BoundNumber(1.0 / 3, place), PowerForm.Cbrt, (1, 3), place);
            case "Pow": return Raised(Branch(given[0]), Visit(given[1]), PowerForm.Pow, place);
            case "Root": return Raised(Branch(given[0]), Visit(given[1]), PowerForm.Root, place);
            default: return SeriesCall(call, Enum.Parse<SeriesOperation>(name));
        }
    }

    private BoundPower Raised(BoundExpression value, BoundExpression exponent, PowerForm form, Place place)
    {
        if (exponent.Type is not NumberType) throw Refuse(BindingFaults.ExponentUnit(exponent.Type, exponent.Place));
        if (form == PowerForm.Pow) return Power(value, exponent, form, Rational(exponent), place);
        BoundExpression inverse = exponent is BoundNumber { Value: not 0 } constant
            ? new BoundNumber(1 / constant.Value, exponent.Place)
            : new BoundBinary(BinaryOperation.Divide, new BoundNumber(1, exponent.Place), exponent, CellType.Number, exponent.Place);
        (int, int)? rational = exponent is BoundNumber { Value: > 0 and <= 1000 } whole && whole.Value == Math.Floor(whole.Value) ? (1, (int)whole.Value) : null;
        return Power(value, inverse, form, rational, place);
    }

    private BoundPower Power(BoundExpression value, BoundExpression exponent, PowerForm form, (int Top, int Bottom)? rational, Place place)
    {
        if (value.Type is NumberType) return new BoundPower(value, exponent, form, CellType.Number, place);
        if (value.Type is not QuantityType) throw Refuse(BindingFaults.NotANumber(value.Type, value.Place));
        if (rational is not { } fixedExponent) throw Refuse(BindingFaults.ExponentNotFixed(exponent.Place));
        (CellType? type, Fault? fault) = TypeRules.Power(value.Type, fixedExponent.Top, fixedExponent.Bottom, place);
        return fault is null ? new BoundPower(value, exponent, form, type!, place) : throw Refuse(fault);
    }

    /// <summary>The exponent as a quotient of whole numbers when it is written as a number or a quotient of two.</summary>
    private static (int Top, int Bottom)? Rational(BoundExpression exponent)
    {
        if (exponent is BoundNumber number && Math.Abs(number.Value) <= 1000 && number.Value * 12 == Math.Round(number.Value * 12)) return ((int)Math.Round(number.Value * 12), 12);
        if (exponent is BoundUnary { Operation: UnaryOperation.Negate } minus && Rational(minus.Operand) is { } inner) return (-inner.Top, inner.Bottom);
        if (exponent is BoundBinary { Operation: BinaryOperation.Divide, Left: BoundNumber top, Right: BoundNumber { Value: >= 1 and <= 1000 } bottom }
            && top.Value == Math.Floor(top.Value) && bottom.Value == Math.Floor(bottom.Value) && Math.Abs(top.Value) <= 1000) return ((int)top.Value, (int)bottom.Value);
        return null;
    }

    private BoundTextTest TextCall(IInvocationOperation call, string name) =>
        new(Enum.Parse<TextOperation>(name), Visit(call.Instance!), Visit(InOrder(call)[0]!), CellType.Truth, PlaceOf(call));
}
