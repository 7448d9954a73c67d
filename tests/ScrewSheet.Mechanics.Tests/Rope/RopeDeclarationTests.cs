using System.Reflection;
using CsCheck;
using ScrewSheet.Mechanics.Tests.Declarations;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;
using Xunit;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>Worked numbers, formulas and limits of the fall and rope functions against their code.</summary>
public sealed class RopeDeclarationTests
{
    private const double Open = 1e-3;

    public static IEnumerable<object[]> Examples => RopeDeclared.Functions.SelectMany(method => method.GetCustomAttributes<ExampleAttribute>().Select(e => new object[] { e.Expression, e.Gives }));

    public static IEnumerable<object[]> Formulas => RopeDeclared.Functions.SelectMany(method => method.GetCustomAttributes<FormulaAttribute>().Select(f => new object[] { method.Name, f.Member ?? "" }));

    public static IEnumerable<object[]> Bounds => RopeDeclared.Functions.SelectMany(method => method.GetParameters().Where(p => !p.ParameterType.IsEnum).SelectMany(p => Beyond(p).Select(value => new object[] { method.Name, p.Name!, value })));

    [Theory]
    [MemberData(nameof(Examples))]
    public void WorkedNumber_IsWhatTheCodeGives(string expression, string gives)
    {
        double expected = RopeCall.Number(gives);
        Assert.Equal(expected, RopeCall.Read(expression).Run(), Math.Abs(expected) * 1e-7);
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public async Task Formula_AgreesWithTheCodeAtTheWorkedNumber(string name, string member)
    {
        var call = RopeCall.Read(Callables.Named(name).GetCustomAttribute<ExampleAttribute>()!.Expression) with { Members = member.Length == 0 ? [] : [member] };
        double ours = call.Run();
        double declared = await RopeDeclared.FormulaAsync(call.Method, member.Length == 0 ? null : member, [.. call.Arguments.Select(a => RopeCall.Si(a!))]);
        Assert.Equal(declared, ours, (Math.Abs(declared) * 1e-11) + 1e-12);
    }

    [Theory]
    [MemberData(nameof(Formulas))]
    public async Task Formula_AgreesWithTheCodeAtRandomPoints(string name, string member)
    {
        var method = Callables.Named(name);
        await RopeDeclared.FormulaAsync(method, member.Length == 0 ? null : member, new double[method.GetParameters().Length]);
        int answered = 0;
        Point(method).Sample(si =>
        {
            double ours;
            try { ours = (RopeCall.With(method, si) with { Members = member.Length == 0 ? [] : [member] }).Run(); }
            catch (DomainException) { return; }
            double declared = RopeDeclared.FormulaAsync(method, member.Length == 0 ? null : member, si).Result;
            Assert.Equal(declared, ours, (Math.Abs(declared) * 1e-9) + 1e-9);
            Interlocked.Increment(ref answered);
        }, iter: 200);
        Assert.True(answered > 20, $"{name}: only {answered} points answered");
    }

    [Theory]
    [MemberData(nameof(Bounds))]
    public void ValueBeyondADeclaredLimit_IsRefusedByName(string name, string parameter, double value)
    {
        var call = RopeCall.Read(Callables.Named(name).GetCustomAttribute<ExampleAttribute>()!.Expression);
        int index = Array.FindIndex(call.Method.GetParameters(), p => p.Name == parameter);
        object?[] arguments = [.. call.Arguments];
        var type = call.Method.GetParameters()[index].ParameterType;
        arguments[index] = arguments[index] is Series series ? RopeCall.Series(type.GetGenericArguments()[0], [value, .. series.Si.Skip(1)]) : RopeCall.Make(type, value);
        var refusal = Assert.Throws<DomainException>(() => (call with { Arguments = arguments }).Answer());
        Assert.Equal(parameter, refusal.Parameter);
        Assert.StartsWith(parameter + " must be ", refusal.Message, StringComparison.Ordinal);
        string unit = call.Method.GetParameters()[index].GetCustomAttribute<ParameterAttribute>()!.Unit;
        Assert.Contains(unit.Length == 0 ? "; it is" : $" {unit}; it is", refusal.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void PureNumberThatIsNotFinite_IsRefusedByName(double value)
    {
        foreach (var method in RopeDeclared.Functions)
            foreach (var parameter in method.GetParameters().Where(p => p.ParameterType == typeof(double)))
            {
                var call = RopeCall.Read(method.GetCustomAttribute<ExampleAttribute>()!.Expression);
                object?[] arguments = [.. call.Arguments];
                arguments[parameter.Position] = value;
                var refusal = Assert.Throws<DomainException>(() => (call with { Arguments = arguments }).Answer());
                Assert.Equal(parameter.Name, refusal.Parameter);
                Assert.Contains("not a finite number", refusal.Message, StringComparison.Ordinal);
            }
    }

    private static IEnumerable<object> Beyond(ParameterInfo parameter)
    {
        var declared = parameter.GetCustomAttribute<ParameterAttribute>()!;
        double scale = RopeCall.Scale(declared.Unit);
        if (!double.IsNaN(declared.Above)) yield return declared.Above * scale;
        if (!double.IsNaN(declared.Above)) yield return (declared.Above - 1) * scale;
        if (!double.IsNaN(declared.AtLeast)) yield return (declared.AtLeast - 1) * scale;
        if (!double.IsNaN(declared.AtMost)) yield return ((declared.AtMost * 1.001) + Open) * scale;
    }

    private static Gen<double[]> Point(MethodInfo method)
    {
        Gen<double>[] each = [.. method.GetParameters().Select(p => Values(p.GetCustomAttribute<ParameterAttribute>()!))];
        return Sequence(each);
    }

    private static Gen<double[]> Sequence(Gen<double>[] each) =>
        each.Aggregate(Gen.Const(Array.Empty<double>()), (all, next) => Gen.Select(all, next, (a, b) => (double[])[.. a, b]));

    private static Gen<double> Values(ParameterAttribute declared)
    {
        double hard = First(declared.AtLeast, declared.Above, 0), most = First(declared.AtMost, declared.Below, 1);
        double low = First(declared.UsualFrom, hard), high = First(declared.UsualTo, Math.Min(most, 20 * Math.Max(1, low)));
        double floor = double.IsNaN(declared.Above) ? low : Math.Max(low, declared.Above + (1e-3 * (high - low)));
        return Gen.Double[floor, high].Select(value => value * RopeCall.Scale(declared.Unit));
    }

    private static double First(params double[] candidates) => candidates.First(value => !double.IsNaN(value));
}
