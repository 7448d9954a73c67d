using System.Reflection;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Statistics.Tests;

/// <summary>Every callable function carries all that help, worked steps and the catalogue read.</summary>
public sealed class DeclarationTests
{
    private static Assembly Library => typeof(SampleStatistics).Assembly;

    private static IReadOnlyList<MethodInfo> Callables { get; } =
        [.. Library.GetTypes().SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Public)).Where(method => method.IsDefined(typeof(CallableAttribute)))];

    public static IEnumerable<object[]> Names => Callables.Select(method => new object[] { method.Name });

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
}
