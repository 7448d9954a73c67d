using System.Globalization;
using System.Reflection;
using System.Text.RegularExpressions;
using ScrewSheet.Quantities.Declarations;
using UnitsNet;

namespace ScrewSheet.Statistics.Tests;

/// <summary>Every callable function carries all that help, worked steps and the catalogue read.</summary>
public sealed partial class DeclarationTests
{
    private static Assembly Library => typeof(SampleStatistics).Assembly;

    private static IReadOnlyList<MethodInfo> Callables { get; } =
        [.. Library.GetTypes().SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public)).Where(method => method.IsDefined(typeof(CallableAttribute)))];

    public static IEnumerable<object[]> Names => Callables.Select(method => new object[] { method.Name });

    public static IEnumerable<object[]> Examples => Callables.SelectMany(method => method.GetCustomAttributes<ExampleAttribute>()).Select(example => new object[] { example.Expression, example.Gives });

    [Fact]
    public void EveryPublicStaticFunctionIsCallable()
    {
        var open = Library.GetExportedTypes().Where(type => type.IsAbstract && type.IsSealed)
            .SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly)).Where(method => !method.IsDefined(typeof(CallableAttribute)));
        Assert.Empty(open.Select(method => method.Name));
    }

    [Fact]
    public void BareNamesAreUnique() => Assert.Empty(Callables.GroupBy(method => method.Name).Where(group => group.Count() > 1).Select(group => group.Key));

    [Theory]
    [MemberData(nameof(Names))]
    public void DeclarationIsComplete(string name)
    {
        MethodInfo method = Callables.Single(each => each.Name == name);
        CallableAttribute callable = method.GetCustomAttribute<CallableAttribute>()!;
        Assert.EndsWith("?", callable.Answers, StringComparison.Ordinal);
        Assert.NotEmpty(method.GetCustomAttributes<SourceAttribute>());
        Assert.True(method.GetCustomAttributes<FormulaAttribute>().Any() != method.IsDefined(typeof(NoFormulaAttribute)), "exactly one of formula and no formula");
        Assert.All(method.GetParameters(), parameter => Assert.NotEqual("", parameter.GetCustomAttribute<ParameterAttribute>()?.Meaning ?? ""));
        Assert.All(method.GetParameters().Where(parameter => parameter.ParameterType == typeof(int)), parameter => Assert.Fail($"{parameter.Name}: counts in cells are numbers"));
        bool scalar = method.GetParameters().All(parameter => parameter.ParameterType == typeof(double) || parameter.ParameterType.IsGenericMethodParameter || parameter.ParameterType.IsEnum);
        if (scalar && method.ReturnType != typeof(string) && !method.GetParameters()[^1].ParameterType.IsEnum && name != nameof(StandardPlans.StandardSamplingPlan))
            Assert.NotEmpty(method.GetCustomAttributes<ExampleAttribute>());
    }

    [Fact]
    public void RecordsDescribeEveryMember()
    {
        foreach (Type record in Callables.Select(method => method.ReturnType).Where(type => type.IsClass && type.Assembly == Library).Select(type => type.IsGenericType ? type.GetGenericTypeDefinition() : type).Distinct())
        {
            Assert.True(record.IsDefined(typeof(SheetRecordAttribute)), record.Name);
            foreach (PropertyInfo property in record.GetProperties().Where(property => property.Name is not ("Cautions" or "EqualityContract")))
                Assert.True(property.IsDefined(typeof(MemberAttribute)), $"{record.Name}.{property.Name}");
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void ExampleGivesWhatItSays(string expression, string gives)
    {
        Match call = Call().Match(expression);
        MethodInfo method = Callables.Single(each => each.Name == call.Groups["name"].Value);
        bool force = expression.Contains(" kN", StringComparison.Ordinal);
        if (method.IsGenericMethodDefinition) method = method.MakeGenericMethod(force ? typeof(Force) : typeof(double));
        string[] given = call.Groups["arguments"].Value.Split(',', StringSplitOptions.TrimEntries);
        object?[] arguments = [.. method.GetParameters().Select((parameter, i) => i < given.Length ? Read(given[i]) : parameter.DefaultValue)];
        object result = method.Invoke(null, arguments)!;
        if (call.Groups["member"].Success) result = result.GetType().GetProperty(call.Groups["member"].Value)!.GetValue(result)!;
        double ours = result is Force pull ? pull.Kilonewtons : (double)result;
        string numeral = gives.Split(' ')[0];
        int decimals = numeral.Contains('.', StringComparison.Ordinal) ? numeral.Length - numeral.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        Assert.Equal(gives.EndsWith(" kN", StringComparison.Ordinal), result is Force);
        Assert.Equal(double.Parse(numeral, CultureInfo.InvariantCulture), ours, 0.51 * Math.Pow(10, -decimals));
    }

    private static object Read(string text) => text.EndsWith(" kN", StringComparison.Ordinal)
        ? Force.FromKilonewtons(double.Parse(text[..^3], CultureInfo.InvariantCulture))
        : double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^(?<name>\w+)\((?<arguments>[^)]*)\)(\.(?<member>\w+))?$")]
    private static partial Regex Call();
}
