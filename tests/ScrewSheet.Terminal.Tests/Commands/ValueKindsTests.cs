using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests.Commands;

/// <summary>Every kind of value in every form of output, computed by the engine.</summary>
public sealed class ValueKindsTests
{
    private const string Text =
        """
        screwsheet 1
        title Every kind of value
        units SI

        sheet Kinds
        A1 height [m] = 2 m
        A2 fall [m, 2 decimals] => ToyFall(height, 0.5 m)
        A3 square => ToySection(30 mm)
        A4 area [mm²] => square.Area
        A5 ratio [2 decimals] => height / fall
        A6 share [%, 1 decimal] => ratio
        A7 bool plain => fall > 1 m
        A8 holds_or_not => fall < 1 m
        A9 words => $"falls {fall}"
        A10 mark = "=1+2"
        A11 many => Series(A1, A2)
        A12 broken => height + area
        A13 after => broken * 2
        A14 odd [N²] => 3 N * 4 N
        A15 minus [kN] = -2 kN

        """;

    [Theory]
    [InlineData("text", "txt")]
    [InlineData("json", "json")]
    [InlineData("csv", "csv")]
    public void EveryKindInEveryForm(string format, string ending)
    {
        using Session session = new() { Width = 60, Calculator = new EngineCalculator(ToyLibrary.Library) };
        Assert.Equal(1, session.Run("run", session.File("a.screwsheet", Text), "--format", format));
        Assert.Equal("", session.Error);
        GoldenFile.Holds($"tests/ScrewSheet.Terminal.Tests/Pages/kinds.{ending}", session.Output);
    }

    [Fact]
    public void WhatStandsOnMemoryIsListed()
    {
        using Session session = new() { Calculator = new EngineCalculator(ToyLibrary.Library) };
        Assert.Equal(1, session.Run("check", session.File("a.screwsheet", Text)));
        GoldenFile.Holds("tests/ScrewSheet.Terminal.Tests/Pages/kinds-check.txt", session.Output);
    }

    [Fact]
    public void WhatIsKeptIsFoundTheSame()
    {
        using Session session = new() { Calculator = new EngineCalculator(ToyLibrary.Library) };
        string path = session.File("a.screwsheet", Text);
        session.Run("keep", path);
        using Session again = new() { Calculator = new EngineCalculator(ToyLibrary.Library) };
        again.Run("check", path);
        Assert.DoesNotContain("changed", again.Output, StringComparison.Ordinal);
        GoldenFile.Holds("tests/ScrewSheet.Terminal.Tests/Pages/kinds-kept.txt", File.ReadAllText(path));
    }
}
