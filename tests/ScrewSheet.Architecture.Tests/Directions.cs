using System.Xml.Linq;
using ScrewSheet.TestKit;

namespace ScrewSheet.Architecture.Tests;

/// <summary>Who may know whom. Dependencies point down; a project not named here may know nothing.</summary>
public sealed class Directions
{
    private static readonly Dictionary<string, string[]> Projects = new()
    {
        ["ScrewSheet.Quantities"] = [],
        ["ScrewSheet.Mechanics"] = ["ScrewSheet.Quantities"],
        ["ScrewSheet.Statistics"] = ["ScrewSheet.Quantities"],
        ["ScrewSheet.Workbooks"] = ["ScrewSheet.Quantities"],
        ["ScrewSheet.Engine"] = ["ScrewSheet.Workbooks", "ScrewSheet.Quantities"],
        ["ScrewSheet.Studies"] = ["ScrewSheet.Engine", "ScrewSheet.Workbooks", "ScrewSheet.Quantities"],
        ["ScrewSheet.Exports"] = ["ScrewSheet.Workbooks", "ScrewSheet.Quantities"],
        ["ScrewSheet.Terminal"] = ["ScrewSheet.Studies", "ScrewSheet.Engine", "ScrewSheet.Exports", "ScrewSheet.Workbooks", "ScrewSheet.Mechanics", "ScrewSheet.Statistics", "ScrewSheet.Quantities"],
    };

    // what a package's assemblies begin with, and the only projects that may use them
    private static readonly Dictionary<string, string[]> Packages = new()
    {
        ["UnitsNet"] = [.. Projects.Keys],
        ["MathNet.Numerics"] = ["ScrewSheet.Mechanics", "ScrewSheet.Statistics", "ScrewSheet.Engine", "ScrewSheet.Studies"],
        ["Microsoft.CodeAnalysis"] = ["ScrewSheet.Engine"],
        ["Terminal.Gui"] = ["ScrewSheet.Terminal"],
        ["System.CommandLine"] = ["ScrewSheet.Terminal"],
        ["CsvHelper"] = ["ScrewSheet.Terminal", "ScrewSheet.Exports", "ScrewSheet.Workbooks"],
        ["ClosedXML"] = ["ScrewSheet.Exports"],
        ["DocumentFormat.OpenXml"] = ["ScrewSheet.Exports"],
        ["System.IO.Packaging"] = ["ScrewSheet.Exports"],
    };

    [Fact]
    public void EveryProjectHasItsPlaceInTheMap() => Rule.Holds("a project that is not in the map", Repository.Projects.Where(name => !Projects.ContainsKey(name)));

    [Fact]
    public void ProjectFilesPointDownward() => Rule.Holds("a project file refers upward or sideways",
        from project in Repository.Projects
        from reference in Items(project, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path.Replace('\\', '/')))
        where !Projects.GetValueOrDefault(project, []).Contains(reference)
        select $"{project} -> {reference}");

    [Fact]
    public void AssembliesPointDownward() => Rule.Holds("an assembly refers upward or sideways",
        from assembly in Repository.Assemblies
        let project = ProjectOf(assembly.GetName().Name!)
        from reference in assembly.GetReferencedAssemblies().Select(name => ProjectOf(name.Name!))
        where reference.StartsWith("ScrewSheet.", StringComparison.Ordinal) && !Projects.GetValueOrDefault(project, []).Contains(reference)
        select $"{project} -> {reference}");

    [Fact]
    public void PackagesStayBehindTheirDoors() => Rule.Holds("a package is used by a project that may not know it",
        (from project in Repository.Projects
         from package in Items(project, "PackageReference")
         where !MayUse(project, package)
         select $"{project} -> {package}")
        .Concat(
         from assembly in Repository.Assemblies
         let project = ProjectOf(assembly.GetName().Name!)
         from reference in assembly.GetReferencedAssemblies().Select(name => name.Name!)
         where !IsOurs(reference) && !IsFramework(reference) && !MayUse(project, reference)
         select $"{project} -> {reference}"));

    [Fact]
    public void QuantitiesStandOnUnitsNetAlone() => Assert.Equal(["UnitsNet"], Items("ScrewSheet.Quantities", "PackageReference"));

    [Fact]
    public void CommandsAndTheirOutputKnowNoGrid() => Rule.Holds("a command uses the grid's library",
        from file in Repository.Sources
        where file.Path.StartsWith("src/ScrewSheet.Terminal/Commands/", StringComparison.Ordinal) || file.Path.StartsWith("src/ScrewSheet.Terminal/Output/", StringComparison.Ordinal)
        where file.Text.Contains("Terminal.Gui", StringComparison.Ordinal)
        select file.Path);

    [Fact]
    public void OnlyTheToolkitFolderKnowsTheToolkit() => Rule.Holds("the grid's state, keys or screen use the toolkit",
        from file in Repository.Sources
        where !file.Path.StartsWith("src/ScrewSheet.Terminal/Grid/Toolkit/", StringComparison.Ordinal)
        where file.Text.Contains("Terminal.Gui", StringComparison.Ordinal)
        select file.Path);

    [Fact]
    public void EveryFileNamesWhatItUses() => Rule.Holds("a global using hides the direction of dependencies",
        from file in Repository.Sources
        where file.Syntax.DescendantTokens().Any(token => token.Text == "global" && token.Parent is Microsoft.CodeAnalysis.CSharp.Syntax.UsingDirectiveSyntax)
        select file.Path);

    private static bool MayUse(string project, string package) =>
        Packages.Where(entry => package.StartsWith(entry.Key, StringComparison.Ordinal)).Any(entry => entry.Value.Contains(project));

    private static bool IsOurs(string assembly) => ProjectOf(assembly).StartsWith("ScrewSheet.", StringComparison.Ordinal);

    private static bool IsFramework(string assembly) =>
        assembly is "netstandard" or "mscorlib" or "Microsoft.CSharp" || (assembly.StartsWith("System.", StringComparison.Ordinal) && !Packages.Keys.Any(package => assembly.StartsWith(package, StringComparison.Ordinal)));

    private static string ProjectOf(string assembly) => assembly == "screwsheet" ? "ScrewSheet.Terminal" : assembly;

    private static string[] Items(string project, string kind) =>
        [.. XDocument.Load(Path.Combine(GoldenFile.Root, "src", project, project + ".csproj")).Descendants(kind).Select(item => item.Attribute("Include")!.Value)];
}
