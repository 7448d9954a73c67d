using System.Reflection;
using System.Runtime.CompilerServices;

namespace ScrewSheet.Architecture.Tests;

/// <summary>What other projects can do with ours.</summary>
public sealed class PublicSurface
{
    private const BindingFlags Declared = BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    private static IEnumerable<Type> Exported => Repository.Assemblies.SelectMany(assembly => assembly.GetExportedTypes());

    [Fact]
    public void EveryAssemblyIsLookedAt() =>
        Assert.Equal(Repository.Projects.Count(project => project != "ScrewSheet.Exports"), Repository.Assemblies.Count(assembly => assembly.GetName().Name != "ScrewSheet.Exports"));

    [Fact]
    public void PublicClassesAreSealedAbstractOrStatic() => Rule.Holds("a public class is open for inheritance without being made for it",
        from type in Exported where type.IsClass && !type.IsSealed && !type.IsAbstract select type.FullName, Allowances.OpenClasses);

    [Fact]
    public void NothingPublicCanBeSet() => Rule.Holds("a public property can be set after construction",
        from type in Exported
        from property in type.GetProperties(Declared)
        where property.SetMethod is { IsPublic: true } set && !set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit))
        select $"{type.FullName}.{property.Name}", Allowances.Setters);

    [Fact]
    public void NoFieldIsPublicExceptConstants() => Rule.Holds("a public field",
        from type in Exported where !type.IsEnum from field in type.GetFields(Declared) where !field.IsLiteral select $"{type.FullName}.{field.Name}");

    [Fact]
    public void PublicStructuresAreReadOnly() => Rule.Holds("a public structure can be changed in place",
        from type in Exported where type.IsValueType && !type.IsEnum && !type.IsDefined(typeof(IsReadOnlyAttribute)) select type.FullName);

    [Fact]
    public void TheExecutableOffersNothing() =>
        Assert.Empty(Repository.Assemblies.Single(assembly => assembly.GetName().Name == "screwsheet").GetExportedTypes());
}
