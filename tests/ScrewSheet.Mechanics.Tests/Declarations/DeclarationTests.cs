using System.Reflection;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Tests.Declarations;

/// <summary>What every function of the library must say about itself.</summary>
public sealed class DeclarationTests
{
    public static IEnumerable<object[]> Names => Callables.All.Select(method => new object[] { method.Name });

    [Fact]
    public void TheLibraryIsFound() => Assert.True(Callables.All.Count > 40, $"{Callables.All.Count} functions");

    [Fact]
    public void NamesAreUniqueAcrossTheLibrary() =>
        Assert.Empty(Callables.All.GroupBy(method => method.Name).Where(same => same.Count() > 1).Select(same => string.Join(", ", same.Select(Callables.Where))));

    [Fact]
    public void MarkedMethodsOfTheLibraryAreNotOverloadedByUnmarkedOnes() =>
        Assert.Empty(Callables.All.Where(method => method.DeclaringType!.GetMethods().Count(other => other.Name == method.Name) > 1).Select(Callables.Where));

    [Theory]
    [MemberData(nameof(Names))]
    public void IsAPublicStaticMethodOfAPublicStaticClass(string name)
    {
        var method = Callables.Named(name);
        Assert.True(method is { IsPublic: true, IsStatic: true } && method.DeclaringType is { IsPublic: true, IsAbstract: true, IsSealed: true }, Callables.Where(method));
        Assert.DoesNotContain(method.GetParameters(), p => p.IsDefined(typeof(ParamArrayAttribute)) || p.IsOut || p.ParameterType.IsByRef);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void SaysWhatItAnswersAndWhereItComesFrom(string name)
    {
        var method = Callables.Named(name);
        var callable = method.GetCustomAttribute<CallableAttribute>()!;
        Assert.False(string.IsNullOrWhiteSpace(callable.Topic), "topic");
        Assert.True(callable.Answers.Trim().Length > 10, "answers");
        Assert.NotEmpty(method.GetCustomAttributes<SourceAttribute>());
        Assert.All(method.GetCustomAttributes<SourceAttribute>(), source => Assert.False(string.IsNullOrWhiteSpace(source.Work)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void HasAWorkedNumber(string name)
    {
        var examples = Callables.Named(name).GetCustomAttributes<ExampleAttribute>().ToList();
        Assert.NotEmpty(examples);
        Assert.All(examples, example => Assert.Contains(name + "(", example.Expression, StringComparison.Ordinal));
        Assert.All(examples, example => Assert.False(string.IsNullOrWhiteSpace(example.Gives)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void HasAFormulaOrSaysWhyNot(string name)
    {
        var method = Callables.Named(name);
        var formulas = method.GetCustomAttributes<FormulaAttribute>().ToList();
        Assert.True(formulas.Count > 0 != method.IsDefined(typeof(NoFormulaAttribute)), $"{name}: either a formula or the method used, not both");
        if (formulas.Count > 1) Assert.All(formulas, formula => Assert.NotNull(formula.Member));
        Assert.All(formulas.Where(f => f.Member is not null), f => Assert.True(method.ReturnType.GetProperty(f.Member!)?.IsDefined(typeof(MemberAttribute)), $"{name}: {f.Member}"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void DeclaresEveryParameterWithASymbolOfItsOwn(string name)
    {
        var parameters = Callables.Named(name).GetParameters();
        Assert.All(parameters, p => Assert.True(p.IsDefined(typeof(ParameterAttribute)), $"{name}: {p.Name} is not declared"));
        Assert.All(parameters, p => Assert.False(string.IsNullOrWhiteSpace(p.GetCustomAttribute<ParameterAttribute>()!.Meaning), $"{name}: {p.Name}"));
        // a choice or a record has no symbol in the trade
        var symbols = parameters.Where(p => !p.ParameterType.IsEnum && !p.ParameterType.IsDefined(typeof(SheetRecordAttribute))).Select(p => p.GetCustomAttribute<ParameterAttribute>()!.Symbol).ToList();
        Assert.All(symbols, symbol => Assert.False(string.IsNullOrWhiteSpace(symbol), name));
        Assert.Equal(symbols.Count, symbols.Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void BoundsAreInOrder(string name) => Assert.All(Callables.Named(name).GetParameters(), p =>
    {
        var declared = p.GetCustomAttribute<ParameterAttribute>()!;
        double[] rising = [.. new[] { declared.Above, declared.AtLeast, declared.UsualFrom, declared.UsualTo, declared.AtMost, declared.Below }.Where(bound => !double.IsNaN(bound))];
        Assert.Equal(rising.Order(), rising);
    });

    [Theory]
    [MemberData(nameof(Names))]
    public void SingleValuesAreQuantitiesNumbersOrMarkedTypes(string name)
    {
        var method = Callables.Named(name);
        Assert.All(method.GetParameters().Select(p => p.ParameterType).Append(method.ReturnType), type => Assert.True(Known(type), $"{name}: {type.Name}"));
    }

    private static bool Known(Type type) =>
        type == typeof(double) || type == typeof(int) || type == typeof(bool) || type == typeof(string) || type == typeof(Quantity) || type.IsGenericParameter
        || QuantityKinds.ByType(type) is not null
        || typeof(Series).IsAssignableFrom(type)
        || typeof(Delegate).IsAssignableFrom(type)
        || type.IsDefined(typeof(SheetRecordAttribute)) || type.IsDefined(typeof(SheetOptionAttribute));
}
