namespace ScrewSheet.Terminal.Tests.Commands;

/// <summary>What stands in the file and is not printed here is named, so that nobody takes silence for an answer.</summary>
public sealed class NotComputedTests
{
    private const string Text = """
        screwsheet 1
        correlate a, b 0.86

        sheet S
        A1 x = 2 kN
        A2 y = 3 kN

        what-if D2 "Load"
          vary x: 0 kN to 6 kN step 1 kN
          show y
        plot F2 "Load" of D2

        """;

    [Theory]
    [InlineData("run", "")]
    [InlineData("check", "w.screwsheet: ")]
    public void TheVerbSaysWhatItDoesNotCompute(string verb, string before)
    {
        using Session session = new();
        session.Run(verb, session.File("w.screwsheet", Text));
        Assert.Equal($"screwsheet: {before}1 what-if table is not printed here; screwsheet what-if does.\nscrewsheet: {before}1 plot is not drawn here; screwsheet handout does.\n", session.Error);
    }
}
