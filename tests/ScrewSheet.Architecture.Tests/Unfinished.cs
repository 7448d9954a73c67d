using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace ScrewSheet.Architecture.Tests;

/// <summary>Nothing in the tree says that it is not done, and no test is left out.</summary>
public sealed class Unfinished
{
    // put together here so that this file does not name them
    private static readonly string[] Words = ["TO" + "DO", "FIX" + "ME", "X" + "XX", "HA" + "CK", "NotImplemented" + "Exception"];

    [Fact]
    public void NoFileSaysItIsUnfinished() => Rule.Holds("a word that says something is not done",
        from file in Repository.Sources.Concat(Repository.Tests)
        from word in Words
        where Regex.IsMatch(file.Text, $@"\b{word}\b")
        select $"{file.Path}: {word}");

    [Fact]
    public void NoTestIsLeftOut() => Rule.Holds("a test is left out",
        from file in Repository.Tests
        from argument in file.Syntax.DescendantNodes().OfType<AttributeArgumentSyntax>()
        where argument.NameEquals?.Name.Identifier.Text is "Skip" or "SkipUnless" or "SkipWhen"
        select file.Path);

    [Fact]
    public void EveryTestProjectIsInTheSolutionOrIsRunApart()
    {
        string solution = File.ReadAllText(Path.Combine(TestKit.GoldenFile.Root, "ScrewSheet.sln"));
        Rule.Holds("a test project that nobody runs",
            from project in Repository.Tests.Select(file => file.Project).Distinct()
            where project.EndsWith(".Tests", StringComparison.Ordinal) && project is not ("ScrewSheet.EndToEnd.Tests" or "ScrewSheet.Browser.Tests" or "ScrewSheet.Safety.Tests") && !solution.Contains(project + ".csproj", StringComparison.Ordinal)
            select project);
    }
}
