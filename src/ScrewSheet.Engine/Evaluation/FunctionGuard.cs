using System.Collections.Immutable;
using System.Reflection;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>After a call of a library function: says where an argument is outside the usual range, and the declared cautions whose condition holds.</summary>
internal sealed class FunctionGuard
{
    private readonly LibraryFunction function;
    private readonly ImmutableArray<UsualRange> ranges;
    private readonly (DeclaredFormula Formula, Func<Frame, object> Holds, Func<Frame, double>[] Lets, string Sentence)[] conditions;
    private readonly PropertyInfo[] members;

    private FunctionGuard(LibraryFunction function, FunctionLibrary library, CodeCache cache)
    {
        this.function = function;
        ranges = UsualRange.Of(function);
        members = function.ReturnType is RecordType record ? [.. record.Clr.GetProperties().Where(property => property.IsDefined(typeof(MemberAttribute)) && IsNumeric(property))] : [];
        string[] results = members.Length > 0 ? [.. members.Select(member => member.Name)] : [function.Formulas.FirstOrDefault()?.Symbol ?? "result", "result"];
        conditions = [.. function.Cautions.Select(caution => Condition(caution, library, cache, results))];
    }

    /// <summary>The guard of a function, or null where it declares neither ranges nor cautions.</summary>
    public static FunctionGuard? Make(LibraryFunction function, FunctionLibrary library, CodeCache cache)
    {
        return !UsualRange.Of(function).IsEmpty || !function.Cautions.IsEmpty ? new FunctionGuard(function, library, cache) : null;
    }

    /// <summary>For a function that gives a number or quantity; its value stands last.</summary>
    public void Consider(Frame frame, double[] argumentsAndResult)
    {
        Ranges(frame, argumentsAndResult);
        Conditions(frame, argumentsAndResult.AsSpan(0, function.Parameters.Length), [argumentsAndResult[^1], argumentsAndResult[^1]]);
    }

    /// <summary>For a function that gives a record or anything else.</summary>
    public void ConsiderRecord(Frame frame, double[] arguments, object result)
    {
        Ranges(frame, arguments);
        if (conditions.Length > 0) Conditions(frame, arguments, [.. members.Select(member => ReadSi(member, result))]);
    }

    private void Ranges(Frame frame, double[] arguments)
    {
        foreach (UsualRange range in ranges)
        {
            double value = arguments[range.Index];
            if (range.IsOutside(value)) frame.Caution(range.SentenceFor(value));
        }
    }

    private void Conditions(Frame frame, ReadOnlySpan<double> arguments, double[] results)
    {
        foreach (var (formula, holds, lets, sentence) in conditions)
        {
            double[] values = [.. arguments, .. new double[lets.Length], .. results];
            Frame inner = new(frame.Budget, frame.Units) { ParameterSi = values };
            for (int i = 0; i < lets.Length; i++) values[arguments.Length + i] = lets[i](inner);
            if ((bool)holds(inner)) frame.Caution($"{function.Name}: {sentence}");
        }
    }

    private (DeclaredFormula, Func<Frame, object>, Func<Frame, double>[], string) Condition(CautionWhenAttribute caution, FunctionLibrary library, CodeCache cache, string[] results)
    {
        DeclaredFormula formula = DeclaredFormula.Read(function, caution.Condition, library, results);
        return (formula, new Emitter(cache).Other(formula.Value), [.. formula.Lets.Select(let => new Emitter(cache).Number(let.Value))], caution.Sentence);
    }

    private static bool IsNumeric(PropertyInfo property) => property.PropertyType == typeof(double) || Quantities.QuantityKinds.ByType(property.PropertyType) is not null;

    private static double ReadSi(PropertyInfo member, object record)
    {
        try
        {
            object? value = member.GetValue(record);
            return value is double number ? number : Quantities.QuantityKinds.ByType(member.PropertyType)!.ToSi(value!);
        }
        catch (TargetInvocationException exception) when (exception.InnerException is DomainException)
        {
            return double.NaN;
        }
    }
}
