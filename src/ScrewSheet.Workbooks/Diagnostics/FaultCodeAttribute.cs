using System.Reflection;

namespace ScrewSheet.Workbooks.Diagnostics;

/// <summary>Marks a static method that words one fault; <c>docs/diagnostics.md</c> lists every one.</summary>
/// <param name="code">The fault's stable code.</param>
/// <param name="summary">What it means and what to do, in one line of the list; Markdown, no vertical strokes.</param>
[AttributeUsage(AttributeTargets.Method)]
public sealed class FaultCodeAttribute(int code, string summary) : Attribute
{
    /// <summary>The stable code; ranges as on <see cref="Fault"/>.</summary>
    public int Code { get; } = code;

    /// <summary>One line for the list.</summary>
    public string Summary { get; } = summary;
}

/// <summary>One row of the list of faults.</summary>
/// <param name="Code">The stable code.</param>
/// <param name="Name">The method that words it.</param>
/// <param name="Summary">What it means.</param>
/// <param name="Wording">The method.</param>
public sealed record FaultCode(int Code, string Name, string Summary, MethodInfo Wording);

/// <summary>Finds the faults an assembly can word.</summary>
public static class FaultCodes
{
    private const BindingFlags AnyStatic = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    /// <summary>All faults of the assembly, by code; a code used by two methods appears twice.</summary>
    public static IReadOnlyList<FaultCode> In(Assembly assembly) =>
        [.. assembly.GetTypes().SelectMany(type => type.GetMethods(AnyStatic)).Select(Row).OfType<FaultCode>().OrderBy(row => row.Code)];

    private static FaultCode? Row(MethodInfo method) =>
        method.GetCustomAttribute<FaultCodeAttribute>() is { } mark ? new FaultCode(mark.Code, method.Name, mark.Summary, method) : null;
}
