using System.Reflection;
using System.Text.RegularExpressions;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Documents.Tests;

/// <summary>The two pages of pitfalls name functions, tests and files: each exists.</summary>
public sealed partial class PitfallPages
{
    /// <summary>Words of the language that stand on the pages as code.</summary>
    private static readonly HashSet<string> Language = ["Pow", "^", "gn"];

    public static IEnumerable<object[]> Pages => Directory.GetFiles(Path.Combine(GoldenFile.Root, "docs"), "pitfalls-*.md").Order(StringComparer.Ordinal).Select(file => new object[] { Path.GetFileName(file) });

    [Theory]
    [MemberData(nameof(Pages))]
    public void EverythingInCode_Exists(string page)
    {
        string text = File.ReadAllText(Path.Combine(GoldenFile.Root, "docs", page));
        string[] named = [.. Code().Matches(text).Select(match => match.Groups[1].Value).Distinct()];
        Assert.True(named.Length > 20, $"{page} names only {named.Length} things");
        Assert.Empty(named.Where(name => !Exists(name)));
    }

    [Theory]
    [MemberData(nameof(Pages))]
    public void EveryPitfall_HasItsNumberOnce(string page)
    {
        int[] numbers = [.. Row().Matches(File.ReadAllText(Path.Combine(GoldenFile.Root, "docs", page))).Select(match => int.Parse(match.Groups[1].Value, System.Globalization.CultureInfo.InvariantCulture))];
        Assert.Equal(Enumerable.Range(1, numbers.Length), numbers);
    }

    [Fact]
    public void EveryPitfallTest_StandsOnAPage()
    {
        string pages = string.Concat(Pages.Select(page => File.ReadAllText(Path.Combine(GoldenFile.Root, "docs", (string)page[0]))));
        string[] tests = [.. TestNames().Where(name => Numbered().IsMatch(name)).Select(name => name.Split('_')[0]).Distinct()];
        Assert.True(tests.Length > 30, $"only {tests.Length} tests of pitfalls were found");
        Assert.Empty(tests.Where(name => !pages.Contains(name, StringComparison.Ordinal)));
    }

    private static bool Exists(string name)
    {
        if (Language.Contains(name) || name.Contains('/', StringComparison.Ordinal)) return Language.Contains(name) || File.Exists(Path.Combine(GoldenFile.Root, name));
        if (name.Contains('…', StringComparison.Ordinal) && !name.Contains('(', StringComparison.Ordinal)) return TestNames().Any(test => test.StartsWith(name[..name.IndexOf('…', StringComparison.Ordinal)], StringComparison.Ordinal));
        string[] path = [.. Inner().Replace(name, "").Split('.')];
        return Known().Contains(path[0]) && path.Skip(1).All(member => Members().Contains(member)) || TestNames().Any(test => test == name || test.StartsWith(name + "_", StringComparison.Ordinal));
    }

    private static HashSet<string> Known() =>
    [
        .. TheLibrary.Functions.Functions.Select(function => function.Name),
        .. TheLibrary.Functions.Functions.SelectMany(function => function.Parameters).Select(parameter => parameter.Name),
        .. TheLibrary.Functions.Values.Select(values => values.Clr.Name),
        .. TheLibrary.Functions.Options.Select(option => option.Name),
    ];

    private static HashSet<string> Members() =>
    [
        .. TheLibrary.Functions.Records.SelectMany(record => record.Members).Select(member => member.Name),
        .. TheLibrary.Functions.Values.SelectMany(Deep),
    ];

    private static IEnumerable<string> Deep(LibraryValues values) => values.Members.Select(member => member.Name).Concat(values.Nested.SelectMany(nested => Deep(nested).Prepend(nested.Clr.Name)));

    private static IEnumerable<string> TestNames() =>
        TheLibrary.Tests.SelectMany(assembly => assembly.GetTypes()).SelectMany(type => type.GetMethods(BindingFlags.Public | BindingFlags.Instance | BindingFlags.DeclaredOnly).Select(method => method.Name).Prepend(type.Name));

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Code();

    [GeneratedRegex(@"^\| (\d+) \|", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(@"\(.*\)")]
    private static partial Regex Inner();

    [GeneratedRegex(@"^Pitfalls?\d")]
    private static partial Regex Numbered();
}
