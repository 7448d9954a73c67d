using System.Collections.Immutable;
using System.Linq.Expressions;
using System.Reflection;
using ScrewSheet.Engine;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Kernels;

/// <summary>Calls: the author's functions and declared formulas are written into the loop; other library functions are called from it.</summary>
internal sealed partial class KernelEmitter
{
    public override Emitted Visit(BoundOwnCall node)
    {
        BoundExpression body = node.Function.Body ?? throw None(node);
        ImmutableArray<Emitted> arguments = [.. node.Arguments.Select(Argument)];
        return Inside(arguments, () => Emit(body) with { IsLoose = false });
    }

    /// <summary>An argument, finite and in a local.</summary>
    private Emitted Argument(BoundExpression argument)
    {
        Emitted value = Emit(argument);
        if (value.Constant is not null) return value;
        return new Emitted(IsNumeric(argument.Type) && value.NeedsCheck ? code.Finite(value.Code) : code.Local(value.Code));
    }

    /// <summary>Writes with other parameters in sight and no references.</summary>
    private Emitted Inside(ImmutableArray<Emitted> seen, Func<Emitted> write)
    {
        (var outerReferences, var outerParameters) = (references, parameters);
        (references, parameters) = ([], seen);
        KeyValuePair<BoundExpression, Emitted>[] outerSubjects = [.. subjects];
        subjects.Clear();
        try
        {
            return write();
        }
        finally
        {
            (references, parameters) = (outerReferences, outerParameters);
            foreach (var (tree, subject) in outerSubjects) subjects.Add(tree, subject);
        }
    }

    public override Emitted Visit(BoundCall node)
    {
        Operations++;
        return node.Function.Formulas is [{ Member: null } formula] && trials.Suits(node, null, formula) ? Formula(node, formula) : Direct(node);
    }

    public override Emitted Visit(BoundMember node)
    {
        Operations++;
        if (node.Target is BoundCall { Function.Cautions.IsEmpty: true } call && call.Function.Formulas.FirstOrDefault(formula => formula.Member == node.Member.Name) is { } formula && trials.Suits(call, node, formula)) return Formula(call, formula);
        Expression target = Emit(node.Target).Code;
        if (target.Type.IsValueType || !IsPlain(node.Type)) throw None(node);
        Type owner = ClrTypes.ToClr(node.Target.Type);
        return Called(Expression.Property(Expression.Convert(target, owner), owner.GetProperty(node.Member.Name)!), node.Type);
    }

    /// <summary>The declared formula in place of the call, with the limits, ranges and cautions the call would look at.</summary>
    private Emitted Formula(BoundCall node, FormulaAttribute formula)
    {
        ImmutableArray<Emitted> arguments = [.. node.Arguments.Select(argument => FormulaArgument(argument))];
        for (int i = 0; i < arguments.Length; i++) Limits(node.Function.Parameters[i], arguments[i]);
        arguments = [.. arguments.Select(argument => argument with { IsPending = false, IsLoose = false })];
        Ranges(node.Function, arguments);
        DeclaredFormula declared = DeclaredFormula.Read(node.Function, formula.Text, library);
        return Inside(arguments, () =>
        {
            foreach (var (_, value) in declared.Lets) parameters = parameters.Add(Let(value));
            Emitted result = Emit(declared.Value);
            if (node.Function.Cautions.IsEmpty) return result with { IsPending = result.Constant is null };
            result = new Emitted(result.Code.Type == typeof(double) ? code.Finite(result.Code) : code.Local(result.Code), result.Constant);
            Conditions(node.Function, parameters, result, formula.Symbol ?? "result");
            return result;
        });
    }

    // the limits look at what is not finite as well, so nothing else needs to
    private Emitted FormulaArgument(BoundExpression argument)
    {
        Emitted value = Emit(argument);
        return value.Constant is not null ? value : new Emitted(code.Local(value.Code), null, value.IsPending, value.IsLoose);
    }

    private Emitted Let(BoundExpression value)
    {
        Emitted let = Emit(value);
        return let.Constant is not null ? let : let with { Code = code.Local(let.Code) };
    }

    /// <summary>Leaves the scenario beyond a declared limit, and a hair before it, where rounding could decide otherwise: the engine then looks itself.</summary>
    private void Limits(LibraryParameter parameter, Emitted value)
    {
        ParameterLimits limits = ParameterLimits.Of(parameter);
        if (value.Constant is { } constant)
        {
            code.Need(Expression.Constant(limits.Hold(SiValue.Of(constant)!.Value) && (parameter.Clr != typeof(int) || IsWhole(constant))));
            return;
        }
        if (limits.Low > double.NegativeInfinity) code.Need(limits.LowIncluded ? Expression.GreaterThanOrEqual(value.Code, Expression.Constant(limits.Low)) : Expression.GreaterThan(value.Code, Expression.Constant(limits.Low)));
        if (limits.High < double.PositiveInfinity) code.Need(limits.HighIncluded ? Expression.LessThanOrEqual(value.Code, Expression.Constant(limits.High)) : Expression.LessThan(value.Code, Expression.Constant(limits.High)));
        if (value.NeedsCheck && !limits.IsClosed) code.Finite(value.Code);
        if (parameter.Clr == typeof(int)) code.Need(Whole(value));
    }

    private static Expression Whole(Emitted value) => value.Constant is { } constant ? Expression.Constant(IsWhole(constant)) : Expression.Equal(value.Code, Expression.Call(typeof(Math), nameof(Math.Floor), null, value.Code));

    private static bool IsWhole(CellValue constant) => SiValue.Of(constant) is { } si && si == Math.Floor(si);

    private void Ranges(LibraryFunction function, ImmutableArray<Emitted> arguments)
    {
        foreach (UsualRange range in UsualRange.Of(function))
        {
            Expression value = arguments[range.Index].Code;
            if (value.Type != typeof(double)) continue;
            if (arguments[range.Index].Constant is { } constant)
            {
                if (range.IsOutside(SiValue.Of(constant)!.Value)) code.Caution(range.Sentence, null);
                continue;
            }
            List<Expression> outside = [];
            if (range.FromSi > double.NegativeInfinity) outside.Add(Expression.LessThan(value, Expression.Constant(range.FromSi)));
            if (range.ToSi < double.PositiveInfinity) outside.Add(Expression.GreaterThan(value, Expression.Constant(range.ToSi)));
            code.Caution(range.Sentence, outside.Aggregate(Expression.OrElse));
        }
    }

    /// <summary>The declared cautions whose condition holds; <paramref name="known"/> are arguments and intermediates.</summary>
    private void Conditions(LibraryFunction function, ImmutableArray<Emitted> known, Emitted result, string symbol)
    {
        foreach (CautionWhenAttribute caution in function.Cautions)
        {
            DeclaredFormula condition = DeclaredFormula.Read(function, caution.Condition, library, symbol, "result");
            Emitted holds = Inside(known.Add(result).Add(result), () => Emit(condition.Value));
            string sentence = $"{function.Name}: {caution.Sentence}";
            if (holds.Constant is null) code.Caution(sentence, holds.Code);
            else if (holds.Constant is TruthValue { Value: true }) code.Caution(sentence, null);
        }
    }

    /// <summary>A call of the function's own code from the loop.</summary>
    private Emitted Direct(BoundCall node)
    {
        bool cautious = node.Type is RecordType record && (typeof(ICautioned).IsAssignableFrom(record.Clr) || record.Clr.IsValueType || !node.Function.Cautions.IsEmpty);
        if (cautious || (!IsPlain(node.Type) && node.Type is not RecordType) || (!node.Function.Cautions.IsEmpty && !node.Arguments.All(argument => IsNumeric(argument.Type)))) throw None(node);
        MethodInfo method = node.Function.Method;
        if (method.IsGenericMethodDefinition) method = method.MakeGenericMethod([.. node.TypeArguments.Select(ClrTypes.ToClr)]);
        ImmutableArray<Emitted> arguments = [.. node.Arguments.Select(Argument)];
        ParameterInfo[] declared = method.GetParameters();
        Expression[] handed = [.. arguments.Select((argument, i) => Handed(argument, node.Function.Parameters[i].Type is QuantityType { Kind: null } general ? general : node.Arguments[i].Type, declared[i].ParameterType))];
        for (int i = 0; i < handed.Length; i++)
            if (declared[i].ParameterType == typeof(int)) code.Need(Whole(arguments[i]));
        Emitted result = Called(Expression.Call(method, handed), node.Type);
        Ranges(node.Function, arguments);
        if (!node.Function.Cautions.IsEmpty) WithLets(node.Function, arguments, result);
        return result;
    }

    private void WithLets(LibraryFunction function, ImmutableArray<Emitted> arguments, Emitted result) => Inside(arguments, () =>
    {
        DeclaredFormula any = DeclaredFormula.Read(function, "true", library);
        foreach (var (_, value) in any.Lets) parameters = parameters.Add(Let(value));
        Conditions(function, parameters, result, function.Formulas.FirstOrDefault()?.Symbol ?? "result");
        return result;
    });

    private static bool IsPlain(CellType type) => IsNumeric(type) || type is TruthType;

    private static Expression Handed(Emitted value, CellType type, Type clr)
    {
        Expression held = value.Code;
        if (held.Type == clr) return held;
        if (clr == typeof(int)) return Expression.ConvertChecked(held, typeof(int));
        if (clr == typeof(Quantity)) return Expression.Call(typeof(Quantity), nameof(Quantity.FromSi), null, held, Expression.Constant(type is QuantityType quantity ? quantity.Dimension : Dimension.None));
        if (held.Type == typeof(double) && QuantityKinds.ByType(clr) is { } kind) return Expression.Call(Expression.Constant(kind), "Make", null, held);
        return Expression.Convert(held, clr);
    }

    /// <summary>What library code gives, in a local; a refusal leaves the scenario.</summary>
    private Emitted Called(Expression given, CellType type)
    {
        if (type is RecordType)
        {
            Expression record = code.Local(Tried(given, Expression.Constant(null, given.Type)));
            code.Need(Expression.NotEqual(record, Expression.Constant(null, given.Type)));
            return new Emitted(record);
        }
        Expression number = given.Type switch
        {
            var clr when clr == typeof(double) => given,
            var clr when clr == typeof(bool) => Expression.Condition(given, Expression.Constant(1.0), Expression.Constant(0.0)),
            var clr when clr == typeof(int) => Expression.Convert(given, typeof(double)),
            var clr when clr == typeof(Quantity) => Expression.Property(given, nameof(Quantity.Si)),
            var clr => Expression.Call(Expression.Constant(QuantityKinds.ByType(clr) ?? throw new NoKernelException($"{clr.Name} has no form in a kernel.")), "Si", null, given),
        };
        Expression value = code.Finite(Tried(number, Expression.Constant(double.NaN)));
        return new Emitted(type is TruthType ? code.Local(Expression.NotEqual(value, Expression.Constant(0.0))) : value);
    }

    private static TryExpression Tried(Expression work, Expression otherwise) => Expression.TryCatch(work, Expression.Catch(typeof(DomainException), otherwise));
}
