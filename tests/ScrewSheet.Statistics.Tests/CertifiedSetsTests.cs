namespace ScrewSheet.Statistics.Tests;

/// <summary>The number of correct digits of each certified set.</summary>
public sealed class CertifiedSetsTests
{
    [Theory]
    [InlineData("NumAcc1", 13)]
    [InlineData("NumAcc2", 13)]
    [InlineData("NumAcc3", 9)]
    [InlineData("NumAcc4", 8)]
    [InlineData("Mavro", 12)]
    [InlineData("Michelso", 12)]
    [InlineData("Norris", 11)]
    [InlineData("Pontius", 10)]
    [InlineData("NoInt1", 13)]
    [InlineData("NoInt2", 13)]
    [InlineData("SiRstv", 12)]
    [InlineData("AtmWtAg", 7)]
    public void CorrectDigits_OfEachSet_AreAtLeast(string set, double digits)
    {
        double ours = CertifiedSets.FewestDigits().Single(each => each.Set == set).Digits;
        Assert.True(ours >= digits, $"{set}: {ours:F1} correct digits");
    }

    [Fact]
    public void CorrectDigits_CountWhatTheySay()
    {
        Assert.Equal(3, new CertifiedFigure("x", "y", "1000", 1, () => 1001).CorrectDigits(), 1e-9);
        Assert.Equal(15, new CertifiedFigure("x", "y", "1000", 1, () => 1000).CorrectDigits());
        Assert.Equal(0, new CertifiedFigure("x", "y", "1000", 1, () => -5000).CorrectDigits());
    }
}
