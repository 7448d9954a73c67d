using System.Reflection;
using ScrewSheet.Engine;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Documents.Tests;

/// <summary>What a function declares as its formula is what its code computes, at random points inside its limits.</summary>
public sealed class DeclaredFormulas
{
    private const int Trials = 400, Enough = 20;

    public static TheoryData<string> WithFormula => [.. TheLibrary.Functions.Functions.Where(function => !function.Formulas.IsEmpty).Select(function => function.Name)];

    public static TheoryData<string> WithCautions => [.. TheLibrary.Functions.Functions.Where(function => !function.Cautions.IsEmpty).Select(function => function.Name)];

    [Theory]
    [MemberData(nameof(WithFormula))]
    public void Formula_AtRandomPointsInsideTheLimits_IsWhatTheCodeGives(string name)
    {
        LibraryFunction function = TheLibrary.Named(name);
        FormulaEvaluation evaluation = new(TheLibrary.Functions);
        RandomPoints points = new(function);
        int answered = 0;
        for (int seed = 0; seed < Trials; seed++)
        {
            double[] si = points.At(seed);
            object answer;
            try
            {
                answer = CodeOf.Answer(function, si);
            }
            catch (DomainException)
            {
                continue; // arguments that depend on each other may not fit; enough must
            }
            answered++;
            foreach (FormulaAttribute formula in function.Formulas)
            {
                double code = CodeOf.Si(formula.Member is null ? answer : CodeOf.Member(answer, formula.Member)), declared = evaluation.Value(function, formula, si);
                Assert.True(Agree(code, declared, function, si), $"{name} {formula.Member} at {string.Join(", ", si)} (seed {seed}): the code gives {code:R}, its formula {declared:R}");
            }
        }
        Assert.True(answered >= Enough, $"{name}: only {answered} of {Trials} points were answered");
    }

    [Theory]
    [MemberData(nameof(WithCautions))]
    public void EveryCaution_CanBeReadAndDecided(string name)
    {
        LibraryFunction function = TheLibrary.Named(name);
        FormulaEvaluation evaluation = new(TheLibrary.Functions);
        RandomPoints points = new(function);
        bool scalar = function.Parameters.All(CodeOf.IsScalar);
        int decided = 0;
        for (int seed = 0; seed < Trials && decided < Enough; seed++)
        {
            double[] si = points.At(seed);
            object answer;
            try
            {
                answer = scalar ? CodeOf.Answer(function, si) : double.NaN;
            }
            catch (DomainException)
            {
                continue;
            }
            var said = evaluation.Cautions(function, si, scalar && CodeOf.IsNumeric(answer.GetType()) ? CodeOf.Si(answer) : answer);
            foreach (CautionWhenAttribute always in function.Cautions.Where(caution => caution.Condition == "true")) Assert.Contains($"{name}: {always.Sentence}", said);
            decided++;
        }
        Assert.True(decided >= Enough, $"{name}: only {decided} points were decided");
    }

    [Fact]
    public void EveryFormula_IsOverParametersThatAreNumbersOrQuantities() => Assert.Empty(
        from function in TheLibrary.Functions.Functions
        where !function.Formulas.IsEmpty
        from parameter in function.Parameters
        where !CodeOf.IsScalar(parameter)
        select $"{function.Name}: {parameter.Name}");

    [Fact]
    public void EveryLet_StatesAUnitThatExists() => Assert.Empty(
        from function in TheLibrary.Functions.Functions
        from named in function.Lets
        where named.Unit.Length > 0 && !UnitText.TryParse(named.Unit, out _, out _)
        select $"{function.Name}: {named.Name} in {named.Unit}");

    [Fact]
    public void AFormulaOfARecord_NamesItsMemberOnce() => Assert.Empty(
        from function in TheLibrary.Functions.Functions
        where function.ReturnType is RecordType && !function.Formulas.IsEmpty
        from member in function.Formulas.GroupBy(formula => formula.Member)
        where member.Key is null || member.Count() > 1
        select $"{function.Name}: {member.Key ?? "no member"}");

    /// <summary>To 1e-9 relative, of the greater of the value and, where a difference of like things nearly cancels, what a rounding of the arguments does to it.</summary>
    private static bool Agree(double code, double declared, LibraryFunction function, double[] si)
    {
        double off = Math.Abs(code - declared), size = Math.Max(Math.Abs(code), Math.Abs(declared));
        if (off <= 1e-9 * size) return true;
        double like = function.Parameters.Zip(si).Where(pair => CodeOf.Dimension(pair.First) == CodeOf.Dimension(function)).Select(pair => Math.Abs(pair.Second)).DefaultIfEmpty(0).Max();
        return off <= 1e-13 * like;
    }
}

/// <summary>Calls the code of a library function with plain numbers in coherent SI.</summary>
internal static class CodeOf
{
    public static object Answer(LibraryFunction function, double[] si)
    {
        MethodInfo method = function.Method;
        if (method.IsGenericMethodDefinition) method = method.MakeGenericMethod([.. method.GetGenericArguments().Select(_ => typeof(double))]);
        object[] arguments = [.. method.GetParameters().Select((parameter, i) => Make(parameter.ParameterType, function.Parameters[i].Declaration.Unit, si[i]))];
        return method.Invoke(null, BindingFlags.DoNotWrapExceptions, null, arguments, null)!;
    }

    public static object Member(object record, string member) => record.GetType().GetProperty(member)!.GetValue(record)!;

    public static double Si(object value) => value switch
    {
        double number => number,
        bool holds => holds ? 1 : 0,
        int count => count,
        Quantity quantity => quantity.Si,
        _ => QuantityKinds.ByType(value.GetType())!.ToSi(value),
    };

    public static bool IsNumeric(Type type) => type == typeof(double) || type == typeof(int) || type == typeof(Quantity) || QuantityKinds.ByType(type) is not null;

    public static bool IsScalar(LibraryParameter parameter) => parameter.Clr.IsGenericMethodParameter || IsNumeric(parameter.Clr);

    public static Dimension Dimension(LibraryParameter parameter) => parameter.Type is QuantityType quantity ? quantity.Dimension : Quantities.Dimension.None;

    public static Dimension Dimension(LibraryFunction function) => function.ReturnType is QuantityType quantity ? quantity.Dimension : Quantities.Dimension.None;

    public static Unit UnitOf(LibraryParameter parameter) =>
        parameter.Declaration.Unit.Length == 0 ? UnitTable.Number : UnitText.TryParse(parameter.Declaration.Unit, out Unit? unit, out string? problem) ? unit : throw new FormatException(problem);

    private static object Make(Type type, string unit, double si)
    {
        if (type == typeof(double)) return si;
        if (type != typeof(Quantity)) return QuantityKinds.ByType(type)!.FromSi(si);
        return Quantity.FromSi(si, UnitText.TryParse(unit, out Unit? read, out string? problem) ? read.Dimension : throw new FormatException(problem));
    }
}
