using System.Text.RegularExpressions;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Tests;

/// <summary><c>docs/test-records.md</c>: its file is imported, what the program prints is compared, its cells are computed.</summary>
public sealed partial class TestRecordsPageTests
{
    [Fact]
    public void ThePageIsTrue()
    {
        string page = File.ReadAllText(Path.Combine(GoldenFile.Root, "docs/test-records.md"));
        using Session session = new() { Calculator = new EngineCalculator(FunctionLibrary.Of(typeof(Statistics.SampleStatistics).Assembly)) };
        string data = session.File("batch.csv", Block(page, "csv")), into = session.File("rating.screwsheet", "screwsheet 1\n\nsheet Rating\n");
        Assert.Equal(1, session.Run("import", data, "--into", into, "--sheet", "Tests"));
        Assert.Equal(Block(page, "console"), "$ screwsheet import batch.csv --into rating.screwsheet --sheet Tests\n" + session.Output);
        File.AppendAllText(into, "\n" + Block(page, "screwsheet-cells"));
        int status = session.Run("run", into, "--sheet", "Use");
        Assert.True(status == 0, session.Output);
    }

    private static string Block(string page, string kind) => Assert.Single(Blocks().Matches(page), match => match.Groups[1].Value == kind).Groups[2].Value;

    [GeneratedRegex("```([a-z-]+)\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Blocks();
}
