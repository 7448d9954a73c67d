using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests.Commands;

public sealed class CheckTests
{
    [Fact]
    public void NothingToFind()
    {
        using Session session = new() { Calculator = Example.Fine };
        Assert.Equal(0, session.Run("check", session.File("a.screwsheet", Example.Text)));
        Assert.Equal("a.screwsheet\n  2 results; 1 check holds. None of 2 reviewed.\n", session.Output);
    }

    [Fact]
    public void EverythingToLookAt()
    {
        using Session session = new() { Calculator = Example.Worse };
        Assert.Equal(1, session.Run("check", session.File("a.screwsheet", Example.Text)));
        GoldenFile.Holds("tests/ScrewSheet.Terminal.Tests/Pages/check-worse.txt", session.Output);
    }

    [Fact]
    public void ALineThatIsNoCellCounts()
    {
        using Session session = new();
        Assert.Equal(1, session.Run("check", session.File("a.screwsheet", "screwsheet 1\nunits SI\n\nfunction ?\n\nsheet S\nA1 = 1 kN\nthis is nothing\n")));
        Assert.Contains("  fault: ", session.Output, StringComparison.Ordinal);
        Assert.Contains("line 4", session.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TheWorstOfSeveralFilesCounts()
    {
        using Session session = new() { Calculator = Example.Fine };
        string fine = session.File("a.screwsheet", Example.Text);
        Assert.Equal(2, session.Run("check", fine, session.At("none.screwsheet"), fine));
        Assert.Equal("screwsheet: There is no file none.screwsheet. Check the spelling and the folder.\n", session.Error);
        Assert.Equal(2, session.Output.Split("a.screwsheet\n").Length - 1);
    }
}
