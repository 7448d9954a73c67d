namespace ScrewSheet.Architecture.Tests;

/// <summary>The one list of exceptions from the rules of this project, each with its reason. A rule's test fails when an entry is no longer needed.</summary>
internal static class Allowances
{
    /// <summary>Public setters: property, reason.</summary>
    public static IReadOnlyDictionary<string, string> Setters { get; } = new Dictionary<string, string>
    {
        ["ScrewSheet.Workbooks.Expressions.OwnFunction.Body"] = "an author's functions may call each other in any order, so a function exists before its body is bound",
        ["ScrewSheet.Workbooks.Expressions.OwnFunction.Fault"] = "for the same reason: what is wrong with a body is known after the function exists",
    };

    /// <summary>Static fields that hold something changeable: field, reason.</summary>
    public static IReadOnlyDictionary<string, string> StaticFields { get; } = new Dictionary<string, string>
    {
        ["ScrewSheet.Engine.Graph.DeepStack.inside"] = "one for each thread: says that the large stack is already under it",
        ["ScrewSheet.Workbooks.Format.KnownFormats.known"] = "one for each thread: formats read before, which answers do not depend on",
    };

    /// <summary>Files of more than 400 lines: path below src, reason.</summary>
    public static IReadOnlyDictionary<string, string> LongFiles { get; } = new Dictionary<string, string>();

    /// <summary>Methods of more than 40 lines: file and method, reason.</summary>
    public static IReadOnlyDictionary<string, string> LongMethods { get; } = new Dictionary<string, string>();

    /// <summary>Public classes that are neither sealed nor abstract nor static: type, reason.</summary>
    public static IReadOnlyDictionary<string, string> OpenClasses { get; } = new Dictionary<string, string>();

    /// <summary>Uses of a clock, of chance or of surroundings in a library project: file and text, reason.</summary>
    public static IReadOnlyDictionary<string, string> Ambient { get; } = new Dictionary<string, string>();
}

/// <summary>Compares what breaks a rule with what is allowed to.</summary>
internal static class Rule
{
    /// <summary>Fails for a breach that is not allowed, and for an allowance nothing needs.</summary>
    public static void Holds(string rule, IEnumerable<string> breaches, IReadOnlyDictionary<string, string> allowed)
    {
        string[] found = [.. breaches.Distinct().Order(StringComparer.Ordinal)];
        string[] refused = [.. found.Where(breach => !allowed.ContainsKey(breach))];
        Assert.True(refused.Length == 0, $"{rule}\n{string.Join('\n', refused)}");
        string[] idle = [.. allowed.Keys.Except(found)];
        Assert.True(idle.Length == 0, $"no longer needed, take it from the list: {string.Join(", ", idle)}");
    }

    /// <summary>Fails for any breach.</summary>
    public static void Holds(string rule, IEnumerable<string> breaches) => Holds(rule, breaches, new Dictionary<string, string>());
}
