using System.Reflection;
using ScrewSheet.Mechanics.Tests.Declarations;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Tests.Rope;

/// <summary>The declared limits of the fall and rope functions are what their code refuses.</summary>
public sealed class RopeDeclarationTests
{
    private const double Open = 1e-3;

    public static IEnumerable<object[]> Bounds => RopeCall.Functions.SelectMany(method => method.GetParameters().Where(p => !p.ParameterType.IsEnum).SelectMany(p => Beyond(p).Select(value => new object[] { method.Name, p.Name!, value })));

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
        foreach (var method in RopeCall.Functions)
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
}
