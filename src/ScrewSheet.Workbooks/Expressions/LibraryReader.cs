using System.Collections.Immutable;
using System.Reflection;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>Reads declarations from the marks on library code.</summary>
internal static class LibraryReader
{
    private const BindingFlags OwnStatic = BindingFlags.Public | BindingFlags.Static | BindingFlags.DeclaredOnly;

    public static IEnumerable<LibraryFunction> FunctionsOf(Type type) =>
        type.GetMethods(OwnStatic).Where(method => method.IsDefined(typeof(CallableAttribute), false)).Select(method => new LibraryFunction(method));

    public static LibraryRecord Record(Type type) =>
        new(type, type.GetCustomAttribute<SheetRecordAttribute>()!.Meaning, Members(type, BindingFlags.Public | BindingFlags.Instance));

    public static LibraryValues Values(Type type) =>
        new(type, type.GetCustomAttribute<SheetValuesAttribute>()!.Meaning, Members(type, OwnStatic),
            [.. type.GetNestedTypes().Where(nested => nested.IsDefined(typeof(SheetValuesAttribute), false)).Select(Values)]);

    public static LibraryParameter Parameter(ParameterInfo parameter)
    {
        ParameterAttribute declaration = parameter.GetCustomAttribute<ParameterAttribute>()
            ?? throw new NotSupportedException($"{parameter.Member.Name}: the parameter {parameter.Name} has no declaration.");
        return new LibraryParameter(parameter.Name!, parameter.ParameterType, ClrTypes.ToCellType(parameter.ParameterType, declaration.Unit), declaration,
            parameter.HasDefaultValue, parameter.HasDefaultValue ? parameter.DefaultValue : null);
    }

    private static ImmutableArray<LibraryMember> Members(Type type, BindingFlags where) =>
        [.. type.GetProperties(where).Where(property => property.IsDefined(typeof(MemberAttribute))).Select(Member)];

    private static LibraryMember Member(PropertyInfo property)
    {
        MemberAttribute declaration = property.GetCustomAttribute<MemberAttribute>()!;
        return new LibraryMember(property.Name, property, ClrTypes.ToCellType(property.PropertyType, declaration.Unit), declaration, [.. property.GetCustomAttributes<SourceAttribute>()]);
    }
}
