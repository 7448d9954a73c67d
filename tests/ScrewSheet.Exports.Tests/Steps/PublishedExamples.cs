namespace ScrewSheet.Exports.Tests.Steps;

/// <summary>Two published examples worked step by step as a reader would write them: the printed number stands at the end of the printed way.</summary>
public sealed class PublishedExamples
{
    /// <summary>
    /// Open statics course note on belt friction, read in the source: friction 0.3, one turn round the post, the ratio printed is 6.6.
    /// </summary>
    [Fact]
    public void TheCapstanWithOneTurnIsWorkedAsInTheStaticsNote()
    {
        const string text = """
            screwsheet 1
            sheet Post
            B1 friction = 0.3
            B2 wrap = 360 °
            B3 ratio [1 decimal] => FrictionRatio(friction, wrap)
            """;
        Assert.Equal(
        [
            "formula: FrictionRatio(friction, wrap)",
            "by: FrictionRatio: By what ratio does friction divide the tension where the rope bends over a carabiner?",
            "with: μ = friction = 0.3",
            "with: θ = wrap = 360 °",
            ": ρ = e^(μ · θ) = e^(0.3 · 6.283 rad) = 6.6",
            "result: 6.6",
        ], Made.Step(text, "ratio"));
    }

    /// <summary>
    /// Climbing-physics article on anchor angles, table of two equal legs under 8 kN, read in the source: 4.62 kN in each leg at an included angle of 60°, 5.66 kN at 90°.
    /// </summary>
    [Theory]
    [InlineData("60", "4.62")]
    [InlineData("90", "5.66")]
    public void TheAnchorWithTwoLegsIsWorkedAsInTheArticle(string angle, string printed)
    {
        string text = $"""
            screwsheet 1
            sheet Anchor
            B1 load = 8 kN
            B2 theta = {angle} °
            B3 each [kN, 2 decimals] => LegTension(load, theta)
            """;
        string[] lines = Made.Step(text, "each");
        Assert.Equal("formula: LegTension(load, θ)", lines[0]);
        Assert.Contains($": T = F / (2 · cos(θ / 2)) = 8 kN / (2 · cos({angle} ° / 2)) = {printed} kN", lines);
        Assert.Equal($"result: {printed} kN", lines[^1]);
    }
}
