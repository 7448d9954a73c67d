using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests.Commands;

public sealed class FunctionsTests
{
    private static Session Start(int width) => new() { Width = width, Calculator = new EngineCalculator(ToyLibrary.Library) };

    [Theory]
    [InlineData(80)]
    [InlineData(40)]
    public void TheListIsByTopic(int width)
    {
        using Session session = Start(width);
        Assert.Equal(0, session.Run("functions"));
        GoldenFile.Holds($"tests/ScrewSheet.Terminal.Tests/Pages/functions-{width}.txt", session.Output);
    }

    [Fact]
    public void AFunctionsHelpSaysEverything()
    {
        using Session session = Start(80);
        Assert.Equal(0, session.Run("functions", "ToyFall"));
        GoldenFile.Holds("tests/ScrewSheet.Terminal.Tests/Pages/functions-ToyFall.txt", session.Output);
    }

    [Theory]
    [InlineData("toyfall", "ToyFall\n")]
    [InlineData("SECTIONS", "ToySection\n")]
    [InlineData("tightens", "ToyFall\n")]
    public void AWordFindsNameTopicOrQuestion(string word, string start)
    {
        using Session session = Start(80);
        Assert.Equal(0, session.Run("functions", word));
        Assert.StartsWith(start, session.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void AWordThatFindsNothingIsRefused()
    {
        using Session session = Start(80);
        Assert.Equal(2, session.Run("functions", "zebra"));
        Assert.Equal("screwsheet: No function has zebra in its name, topic or question. screwsheet functions lists them all.\n", session.Error);
    }
}
