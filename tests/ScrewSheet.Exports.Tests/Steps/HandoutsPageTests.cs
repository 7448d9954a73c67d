using ScrewSheet.TestKit;

namespace ScrewSheet.Exports.Tests.Steps;

/// <summary>The example of <c>docs/handouts.md</c> is worked as the page says.</summary>
public sealed class HandoutsPageTests
{
    [Fact]
    public void TheExample_IsWorkedAsThePageSays()
    {
        string page = File.ReadAllText(Path.Combine(GoldenFile.Root, "docs", "handouts.md"));
        string example = page.Split("```\n")[1];
        string worked = page.Split("is worked as *")[1].Split('*')[0];
        Assert.Contains(": " + worked, Made.Step(example, "each"));
    }

    [Fact]
    public void EveryHandoutItNames_IsThere()
    {
        string page = File.ReadAllText(Path.Combine(GoldenFile.Root, "docs", "handouts.md"));
        string[] named = [.. page.Split("](").Skip(1).Select(part => part[..part.IndexOf(')')]).Where(link => link.EndsWith(".html", StringComparison.Ordinal))];
        Assert.Equal(3, named.Length);
        Assert.All(named, link => Assert.True(File.Exists(Path.Combine(GoldenFile.Root, "docs", link)), link));
    }
}
