using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace ScrewSheet.Architecture.Tests;

/// <summary>The same workbook gives the same numbers everywhere and always: no state, clock, chance or surroundings behind anybody's back.</summary>
public sealed class HiddenState
{
    private const BindingFlags Statics = BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly;

    private static readonly string[] Ambient =
    [
        "DateTime.Now", "DateTime.UtcNow", "DateTime.Today", "DateTimeOffset.Now", "DateTimeOffset.UtcNow", "TimeProvider.System", "Stopwatch.StartNew",
        "Stopwatch.GetTimestamp", "Environment.TickCount", "Environment.TickCount64", "Environment.GetEnvironmentVariable", "Environment.MachineName",
        "Environment.UserName", "Environment.CurrentDirectory", "Random.Shared", "Guid.NewGuid", "RandomNumberGenerator.Create", "RandomNumberGenerator.GetBytes",
        "CultureInfo.CurrentCulture", "CultureInfo.CurrentUICulture", "TimeZoneInfo.Local", "Console.Out", "Console.Error", "Console.WriteLine", "Console.Write",
    ];

    [Fact]
    public void NoStaticFieldCanChange() => Rule.Holds("a static field can change, or holds a collection that can",
        from assembly in Repository.Assemblies
        from type in assembly.GetTypes()
        where !type.IsDefined(typeof(CompilerGeneratedAttribute), false) && !type.Name.StartsWith('<')
        from field in type.GetFields(Statics)
        where !field.IsLiteral && (!field.IsInitOnly || IsChangeable(field.FieldType))
        select $"{type.FullName}.{field.Name}", Allowances.StaticFields);

    [Fact]
    public void LibrariesKnowNoClockChanceOrSurroundings() => Rule.Holds("a library reads a clock, chance or its surroundings",
        from file in Repository.Sources
        where Repository.Libraries.Contains(file.Project)
        from use in Uses(file.Syntax)
        select $"{file.Path}: {use}", Allowances.Ambient);

    private static IEnumerable<string> Uses(SyntaxNode root)
    {
        foreach (SyntaxNode node in root.DescendantNodes())
        {
            if (node is MemberAccessExpressionSyntax access && Array.Find(Ambient, name => access.ToString() == name || access.ToString().EndsWith("." + name, StringComparison.Ordinal)) is string found) yield return found;
            if (node is ObjectCreationExpressionSyntax { Type: IdentifierNameSyntax { Identifier.Text: "Random" or "Stopwatch" } made }) yield return "new " + made;
        }
    }

    // arrays are how tables are written; a growing collection is state
    private static bool IsChangeable(Type type) =>
        !type.IsArray && type.IsGenericType && type.Namespace is "System.Collections.Generic" or "System.Collections.Concurrent" && typeof(ICollection).IsAssignableFrom(type);
}
