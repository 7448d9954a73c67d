using System.Reflection;
using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics.Tests.Declarations;

/// <summary>Every function of the mechanics library that a workbook may call.</summary>
internal static class Callables
{
    public static Assembly Library { get; } = typeof(FallFactors).Assembly;

    public static IReadOnlyList<MethodInfo> All { get; } =
        [.. Library.GetTypes().SelectMany(type => type.GetMethods(BindingFlags.Static | BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(method => method.IsDefined(typeof(CallableAttribute)))
            .OrderBy(method => method.Name, StringComparer.Ordinal)];

    public static MethodInfo Named(string name) => All.Single(method => method.Name == name);

    public static string Where(MethodInfo method) => $"{method.DeclaringType!.Name}.{method.Name}";
}
