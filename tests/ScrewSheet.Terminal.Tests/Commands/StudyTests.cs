using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Tests.Commands;

/// <summary>What <c>what-if</c>, <c>solve</c> and <c>uncertainty</c> print, and how they end.</summary>
public sealed class StudyTests
{
    private const string Text = """
        screwsheet 1
        title Moments
        seed 7

        sheet Placement
        A1 peak [kN] = 8.5 kN ± 0.5 kN
        A2 exposed [mm] = 40 mm ± 10 mm rectangular within 0 mm to 55 mm
        A3 Torque moment [N·m, 1 decimal] => peak * exposed
        A4 strong => moment < 400 N·m
        A5 flag = true
        A6 chosen => flag ? moment : 2 * moment
        A7 sure = 3

        what-if D2 "Moment by exposed length"
          vary exposed: 0 mm to 60 mm step 20 mm
          show moment, strong, sure

        what-if D12 "Both ways"
          vary exposed: 0 mm to 40 mm over 2 steps
          vary peak: 4 kN, 8 kN
          show moment

        what-if D22
          vary flag: true, false
          vary exposed: 10 mm, 20 mm
          vary peak: 4 kN
          show chosen

        """;

    private static Session Make(int width = 80) => new() { Width = width, Calculator = new EngineCalculator(FunctionLibrary.Of()) };

    [Theory]
    [InlineData("text", 80, "study-what-if.txt", "what-if")]
    [InlineData("text", 30, "study-what-if-30.txt", "what-if")]
    [InlineData("csv", 80, "study-what-if.csv", "what-if")]
    [InlineData("json", 80, "study-what-if.json", "what-if", "--vary", "exposed: 0 mm to 60 mm step 20 mm", "--show", "moment,strong")]
    [InlineData("text", 80, "study-solve.txt", "solve", "--cell", "moment", "--equals", "300 N·m", "--by", "exposed")]
    [InlineData("csv", 80, "study-solve.csv", "solve", "--cell", "strong", "--equals", "holds", "--by", "exposed")]
    [InlineData("json", 80, "study-solve.json", "solve", "--cell", "moment", "--equals", "300 N·m", "--by", "exposed")]
    [InlineData("text", 80, "study-uncertainty.txt", "uncertainty", "--cell", "moment", "--samples", "20000")]
    [InlineData("text", 80, "study-uncertainty-check.txt", "uncertainty", "--cell", "strong", "--samples", "20000")]
    [InlineData("csv", 80, "study-uncertainty.csv", "uncertainty", "--cell", "moment", "--samples", "20000")]
    [InlineData("json", 80, "study-uncertainty.json", "uncertainty", "--cell", "moment", "--samples", "20000", "--seed", "8")]
    public void WhatIsPrinted_IsThatPage(string format, int width, string page, string verb, params string[] rest)
    {
        using Session session = Make(width);
        session.Run([verb, session.File("w.screwsheet", Text), .. rest, "--format", format]);
        GoldenFile.Holds($"tests/ScrewSheet.Terminal.Tests/Pages/{page}", session.Output);
    }

    [Theory]
    [InlineData(1, "what-if")]
    [InlineData(0, "what-if", "--vary", "exposed: 10 mm, 20 mm", "--show", "moment,strong")]
    [InlineData(1, "what-if", "--vary", "exposed: 10 mm, 50 mm", "--show", "strong")]
    [InlineData(2, "what-if", "--vary", "exposed: 10 mm, 50 N", "--show", "strong")]
    [InlineData(2, "what-if", "--show", "strong")]
    [InlineData(0, "solve", "--cell", "moment", "--equals", "300 N·m", "--by", "exposed")]
    [InlineData(1, "solve", "--cell", "moment", "--equals", "900 N·m", "--by", "exposed")]
    [InlineData(2, "solve", "--cell", "moment", "--equals", "900 N", "--by", "exposed")]
    [InlineData(2, "solve", "--cell", "moment", "--equals", "900 N·m")]
    [InlineData(0, "uncertainty", "--cell", "moment", "--samples", "2000")]
    [InlineData(2, "uncertainty", "--cell", "moment", "--samples", "many")]
    [InlineData(2, "uncertainty", "--cell", "sure")]
    public void TheStatusSaysHowItEnded(int status, string verb, params string[] rest)
    {
        using Session session = Make();
        Assert.Equal(status, session.Run([verb, session.File("w.screwsheet", Text), .. rest]));
        if (status == 2) Assert.Matches("^screwsheet: [^\n]+\n$", session.Error);
        if (status == 2) Assert.Equal("", session.Output);
    }

    [Fact]
    public void AWorkbookWithoutTables_SaysHowToAskForOne()
    {
        using Session session = Make();
        Assert.Equal(2, session.Run("what-if", session.File("w.screwsheet", "screwsheet 1\nsheet S\nA1 = 3\n")));
        Assert.Equal("screwsheet: The file has no what-if table. Give one here: --vary \"NAME: A to B step S\" --show NAME.\n", session.Error);
    }

    [Fact]
    public void AStoppedStudy_SaysSoAndLeavesTheFile()
    {
        using CancellationTokenSource stop = new();
        stop.Cancel();
        using Session session = Make();
        string path = session.File("w.screwsheet", Text);
        StringWriter output = new(), error = new();
        foreach (string[] study in new[] { new[] { "what-if", path }, ["uncertainty", path, "--cell", "moment"], ["solve", path, "--cell", "moment", "--equals", "300 N·m", "--by", "exposed"] })
        {
            error.GetStringBuilder().Clear();
            Assert.Equal(2, Program.Run(study, new Shell { Output = output, Error = error, Calculator = () => session.Calculator, Stop = stop.Token }));
            Assert.Equal("screwsheet: Stopped before the end. No file was changed.\n", error.ToString());
        }
        Assert.Equal("", output.ToString());
        Assert.Equal(Text, File.ReadAllText(path));
    }

    [Fact]
    public void ATableOfTheFileInFault_IsNamedWithItsPlace()
    {
        using Session session = Make();
        Assert.Equal(1, session.Run("what-if", session.File("w.screwsheet", "screwsheet 1\nsheet S\nA1 x = 3 mm\nA2 y => 2 * x\nwhat-if D2\n  vary x: 0 mm to 5 mm step 0 mm\n  show y\n")));
        Assert.Equal("\nfault: The step is zero, so the range would never end. Write a step that leads\n       from the first value to the last. (line 6, column 11)\n", session.Output[..session.Output.IndexOf("\nEstimates", StringComparison.Ordinal)]);
    }
}
