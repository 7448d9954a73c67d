namespace ScrewSheet.Terminal.Tests.Commands;

public sealed class UsageTests
{
    [Fact]
    public void Version_IsTheProjects()
    {
        using Session session = new();
        Assert.Equal(0, session.Run("--version"));
        Assert.Matches(@"^screwsheet \d+\.\d+\.\d+\n$", session.Output);
    }

    [Theory]
    [InlineData("screwsheet: Say what to do: screwsheet run FILE computes a workbook; screwsheet --help lists the rest.\n")]
    [InlineData("screwsheet: Required argument 'FILE' missing for command: 'run'. See: screwsheet run --help\n", "run")]
    [InlineData("screwsheet: There is no file compute. Check the spelling and the folder.\n", "compute")]
    [InlineData("screwsheet: Unrecognized command or argument 'b'. See: screwsheet run --help\n", "run", "a", "b")]
    [InlineData("screwsheet: Argument 'xml' not recognized. Must be one of: 'text' 'json' 'csv'. See: screwsheet run --help\n", "run", "a", "--format", "xml")]
    [InlineData("screwsheet: There is no file ‹U+001B›[2J. Check the spelling and the folder.\n", "\u001b[2J")]
    public void WrongUsageIsOneSentence(string message, params string[] args)
    {
        using Session session = new();
        Assert.Equal(2, session.Run(args));
        Assert.Equal(message, session.Error);
        Assert.Equal("", session.Output);
    }

    [Theory]
    [InlineData]
    [InlineData("run")]
    [InlineData("check")]
    [InlineData("keep")]
    [InlineData("functions")]
    [InlineData("new")]
    [InlineData("what-if")]
    [InlineData("solve")]
    [InlineData("uncertainty")]
    [InlineData("export")]
    public void HelpShowsExamplesAndCautions(params string[] verb)
    {
        using Session session = new();
        Assert.Equal(0, session.Run([.. verb, "--help"]));
        Assert.Equal("", session.Error);
        Assert.Contains("Usage:\n  screwsheet", session.Output, StringComparison.Ordinal);
        Assert.Contains($"Examples:\n  screwsheet {string.Concat(verb)}", session.Output, StringComparison.Ordinal);
        Assert.Contains("Cautions:\n  ", session.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void AFileNameMayBeginWithAnAtSign()
    {
        using Session session = new() { Calculator = Example.Fine };
        session.File("rest", "--cell\nnothing\n");
        Assert.Equal(2, session.Run("run", "@" + session.At("rest")));
        Assert.StartsWith("screwsheet: There is no file @", session.Error, StringComparison.Ordinal);
    }
}
