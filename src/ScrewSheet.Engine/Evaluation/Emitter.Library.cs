using System.Collections.Immutable;
using System.Linq.Expressions;
using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>Calls of library functions and members: quantities are made at the door and read behind it.</summary>
internal sealed partial class Emitter
{
    public override Expression Visit(BoundCall node)
    {
        MethodInfo method = node.Function.Method;
        if (method.IsGenericMethodDefinition) method = method.MakeGenericMethod([.. node.TypeArguments.Select(ClrTypes.ToClr)]);
        ParameterInfo[] parameters = method.GetParameters();
        List<ParameterExpression> locals = [];
        List<Expression> body = [];
        Expression[] handed = new Expression[parameters.Length];
        if (node.Function.NoFormula is { } unclosed) body.Add(Expression.Call(Expression.Property(FrameParameter, nameof(Frame.Budget)), nameof(Budget.Step), null, Expression.Constant((long)unclosed.Steps)));
        for (int i = 0; i < parameters.Length; i++)
        {
            ParameterExpression local = Expression.Variable(Held(node.Arguments[i].Type));
            locals.Add(local);
            body.Add(Expression.Assign(local, Checked(node.Arguments[i])));
            if (node.Arguments[i].Type is SeriesType) body.Add(Expression.Call(typeof(SeriesCode), nameof(SeriesCode.Count), null, FrameParameter, local));
            handed[i] = ToClr(local, node.Function.Parameters[i].Type is QuantityType { Kind: null } general ? general : node.Arguments[i].Type, parameters[i]);
        }
        Expression result = FromClr(Expression.Call(method, handed), node.Type);
        if (node.Type is RecordType made && RecordRows.Of(made) is { } rows) result = Expression.Call(Expression.Constant(rows), nameof(RecordRows.Count), null, FrameParameter, result);
        if (cache.GuardOf(node.Function) is { } guard) result = Guarded(guard, node, locals, body, result);
        body.Add(result);
        return Expression.Block(locals, body);
    }

    /// <summary>Looks at the arguments and the result for cautions.</summary>
    private static Expression Guarded(FunctionGuard guard, BoundCall node, List<ParameterExpression> locals, List<Expression> body, Expression result)
    {
        ParameterExpression value = Expression.Variable(result.Type);
        Expression[] numbers = [.. locals.Select((local, i) => IsNumeric(node.Arguments[i].Type) ? (Expression)local : Expression.Constant(double.NaN))];
        locals.Add(value);
        body.Add(Expression.Assign(value, result));
        body.Add(result.Type == typeof(double)
            ? Expression.Call(Expression.Constant(guard), nameof(FunctionGuard.Consider), null, FrameParameter, Expression.NewArrayInit(typeof(double), numbers.Append(value)))
            : Expression.Call(Expression.Constant(guard), nameof(FunctionGuard.ConsiderRecord), null, FrameParameter, Expression.NewArrayInit(typeof(double), numbers), Expression.Convert(value, typeof(object))));
        return value;
    }

    /// <summary>What a library function takes, from a value while it runs.</summary>
    private static Expression ToClr(Expression value, CellType type, ParameterInfo parameter)
    {
        Type clr = parameter.ParameterType;
        if (clr == typeof(int)) return Expression.ConvertChecked(Call(nameof(Arithmetic.Whole), value, Expression.Constant(parameter.Name)), typeof(int));
        return ToClr(value, type, clr);
    }

    private static Expression ToClr(Expression value, CellType type, Type clr)
    {
        if (value.Type == clr) return value;
        if (clr == typeof(Quantity)) return Expression.Call(typeof(Quantity), nameof(Quantity.FromSi), null, value, Expression.Constant(type is QuantityType quantity ? quantity.Dimension : Dimension.None));
        if (QuantityKinds.ByType(clr) is { } kind) return Expression.Call(Expression.Constant(kind), "Make", null, value);
        return Expression.Convert(value, clr);
    }

    /// <summary>A value while it runs, from what a library function gives.</summary>
    private static Expression FromClr(Expression given, CellType type)
    {
        if (given.Type == typeof(double)) return Call(nameof(Arithmetic.Finite), given);
        if (given.Type == typeof(int)) return Expression.Convert(given, typeof(double));
        if (given.Type == typeof(bool) || given.Type == typeof(string)) return given;
        if (given.Type == typeof(Quantity)) return Call(nameof(Arithmetic.Finite), Expression.Property(given, nameof(Quantity.Si)));
        if (QuantityKinds.ByType(given.Type) is { } kind) return Call(nameof(Arithmetic.Finite), Expression.Call(Expression.Constant(kind), "Si", null, given));
        Expression boxed = Expression.Convert(given, typeof(object));
        return type is RecordType ? Expression.Call(FrameParameter, nameof(Frame.Cautioned), null, boxed) : boxed;
    }

    public override Expression Visit(BoundLibraryValue node)
    {
        Expression value = FromClr(Expression.Property(null, node.Member.Property), node.Type);
        if (CodeCache.MemoryCaution(node) is not { } sentence) return value;
        return Expression.Block(Expression.Call(FrameParameter, nameof(Frame.Caution), null, Expression.Constant(sentence)), value);
    }

    public override Expression Visit(BoundMember node)
    {
        Type owner = ClrTypes.ToClr(node.Target.Type);
        PropertyInfo property = owner.GetProperty(node.Member.Name)!;
        return FromClr(Expression.Property(Expression.Convert(Emit(node.Target), owner), property), node.Type);
    }

    public override Expression Visit(BoundWith node)
    {
        Type owner = ClrTypes.ToClr(node.Type);
        PropertyInfo[] properties = [.. node.Changes.Select(change => owner.GetProperty(change.Member.Name)!)];
        IEnumerable<Expression> values = node.Changes.Select((change, i) => (Expression)Expression.Convert(ToClr(Checked(change.Value), change.Value.Type, properties[i].PropertyType), typeof(object)));
        return Expression.Call(Expression.Constant(new RecordChange(properties)), nameof(RecordChange.Apply), null, Emit(node.Target), Expression.NewArrayInit(typeof(object), values));
    }

    public override Expression Visit(BoundOwnCall node)
    {
        OwnCode code = cache.OwnCodeOf(node.Function);
        ImmutableArray<BoundExpression> arguments = node.Arguments;
        Expression numbers = Expression.NewArrayInit(typeof(double), arguments.Select(argument => IsNumeric(argument.Type) ? Checked(argument) : Expression.Constant(double.NaN)).Concat(code.Spare));
        Expression others = Expression.NewArrayInit(typeof(object), arguments.Select(argument => IsNumeric(argument.Type) ? Expression.Constant(null) : (Expression)Expression.Convert(Emit(argument), typeof(object))).Concat(code.SpareOthers));
        Expression inner = Expression.Call(FrameParameter, nameof(Frame.Call), null, numbers, others, Expression.Constant(code.Weight));
        return IsNumeric(node.Type)
            ? Expression.Call(Expression.Constant(code), nameof(OwnCode.Number), null, inner)
            : Expression.Convert(Expression.Call(Expression.Constant(code), nameof(OwnCode.Other), null, inner), Held(node.Type));
    }

    public override Expression Visit(BoundLambda node) => throw new InvalidOperationException("A lambda is code of the series operation it belongs to.");

    public override Expression Visit(BoundSeries node) => Expression.Convert(
        Expression.Call(typeof(SeriesFactory), nameof(SeriesFactory.Make), null, Expression.Constant(((SeriesType)node.Type).Element, typeof(CellType)), Expression.NewArrayInit(typeof(double), node.Values.Select(Checked))), typeof(object));

    public override Expression Visit(BoundSelection node)
    {
        BoundExpression? body = node.Lambda?.Body;
        SelectionCode code = new(node.Operation, node.Lambda is null ? null : new RowTest(node.Lambda.Parameters[0].Index, Other(body!), Weight.Of(body!)));
        Expression values = Expression.NewArrayInit(typeof(object), node.Values.Select(value => Expression.Convert(Emit(value), typeof(object))));
        return Expression.Call(Expression.Constant(code), nameof(SelectionCode.Pick), null, FrameParameter, Emit(node.Series), Emit(node.By), values);
    }

    public override Expression Visit(BoundSeriesOperation node)
    {
        BoundExpression? body = node.Lambda?.Body;
        SeriesCode code = new(node.Operation, node.Lambda?.Parameters[0].Index ?? 0,
            body is not null && IsNumeric(body.Type) ? Number(body) : null, body?.Type is TruthType ? Other(body) : null, node.Type, body is null ? 1 : Weight.Of(body));
        Expression result = Expression.Call(Expression.Constant(code), IsNumeric(node.Type) ? nameof(SeriesCode.Number) : nameof(SeriesCode.Other), null, FrameParameter, Emit(node.Series));
        return IsNumeric(node.Type) ? result : Expression.Convert(result, Held(node.Type));
    }
}
