using System.Reflection;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using ScrewSheet.TestKit;

namespace ScrewSheet.Architecture.Tests;

/// <summary>A source file and its syntax.</summary>
/// <param name="Path">Below the repository, with strokes.</param>
/// <param name="Text">What it says.</param>
internal sealed record SourceFile(string Path, string Text)
{
    /// <summary>The root of its syntax tree.</summary>
    public SyntaxNode Syntax { get; } = CSharpSyntaxTree.ParseText(Text, new CSharpParseOptions(LanguageVersion.Preview)).GetRoot();

    /// <summary>The project folder it is in, such as <c>ScrewSheet.Engine</c>.</summary>
    public string Project => Path.Split('/')[1];
}

/// <summary>What stands in the repository, read once.</summary>
internal static class Repository
{
    /// <summary>The projects a workbook's meaning comes from: they know no clock, no chance and no surroundings.</summary>
    public static IReadOnlyList<string> Libraries { get; } = ["ScrewSheet.Quantities", "ScrewSheet.Mechanics", "ScrewSheet.Statistics", "ScrewSheet.Workbooks", "ScrewSheet.Engine", "ScrewSheet.Exports"];

    /// <summary>The files of the product.</summary>
    public static IReadOnlyList<SourceFile> Sources { get; } = Read("src");

    /// <summary>The files of the tests.</summary>
    public static IReadOnlyList<SourceFile> Tests { get; } = Read("tests");

    /// <summary>The names of the projects under src.</summary>
    public static IReadOnlyList<string> Projects { get; } =
        [.. Directory.GetFiles(Path.Combine(GoldenFile.Root, "src"), "*.csproj", SearchOption.AllDirectories).Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    /// <summary>The product's assemblies as built beside these tests.</summary>
    public static IReadOnlyList<Assembly> Assemblies { get; } =
        [.. Projects.Select(name => name == "ScrewSheet.Terminal" ? "screwsheet" : name)
            .Where(name => File.Exists(Path.Combine(AppContext.BaseDirectory, name + ".dll")))
            .Select(Assembly.Load)];

    private static SourceFile[] Read(string folder) =>
        [.. Directory.EnumerateFiles(Path.Combine(GoldenFile.Root, folder), "*.cs", SearchOption.AllDirectories)
            .Select(file => Path.GetRelativePath(GoldenFile.Root, file).Replace('\\', '/'))
            .Where(path => !path.Contains("/obj/") && !path.Contains("/bin/"))
            .Order(StringComparer.Ordinal)
            .Select(path => new SourceFile(path, File.ReadAllText(Path.Combine(GoldenFile.Root, path))))];
}
