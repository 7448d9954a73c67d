using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Tests.Grid;

public sealed class BlockTests
{
    private const string Rows = "screwsheet 1\n\nsheet S\nA1 \"length\"\nB1 \"force\"\nA2 = 10 mm\nB2 = 3 kN\nA3 = 20 mm\nB3 = 1 kN\nA4 = 30 mm\nB4 = 2 kN\nC4 => B4 * 2\nD1 => B4 + B2\n";

    [Fact]
    public void Sorting_MovesTheRowsOfTheBlock_AndReferencesFollow()
    {
        using Walk walk = new(Rows);
        walk.Go("C2").Press(KeyName.Left, KeyName.Left).Shift(KeyName.Down, 2).Shift(KeyName.Right).Command('2').Type("r").Settle();
        Assert.Equal(("›20 mm", "›30 mm", "›10 mm"), (walk.Face("A2"), walk.Face("A3"), walk.Face("A4")));
        Assert.Equal(("›1 kN", "›2 kN", "›3 kN"), (walk.Face("B2"), walk.Face("B3"), walk.Face("B4")));
        Assert.Equal("=> B3 + B4", walk.Entry("D1"));
        Assert.Equal("=> B3 * 2", walk.Entry("C4"));
        walk.Command('3').Type("r").Settle();
        Assert.Equal("›3 kN", walk.Face("B2"));
        Assert.Equal(" 5 kN", walk.Face("D1"));
    }

    [Fact]
    public void Plot_DrawsOneColumnOverAnother_WithAxesInTheirUnits()
    {
        using Walk walk = new(Rows);
        walk.Go("A1").Shift(KeyName.Down, 3).Shift(KeyName.Right).Command('p');
        string[] lines = walk.Screen.Split('\n');
        Assert.Contains("force [kN] over length [mm]", lines[0], StringComparison.Ordinal);
        Assert.Contains("3 points; 1 rows without two figures are left out", lines[1], StringComparison.Ordinal);
        Assert.Matches(@"^ +3 ┤", lines[2]);
        Assert.Matches(@"^ +1 ┤", lines[^4]);
        Assert.Matches("10 +30$", lines[^2].TrimEnd());
        // the first point is the highest and leftmost, the last one is at the right, half way up
        Assert.NotEqual('\u2800', lines[2][12]);
        Assert.Equal(3, lines.Skip(2).Take(19).Sum(line => line.Count(c => c is > '\u2800' and <= '\u28FF')));
        walk.Press(KeyName.Escape);
        Assert.IsType<Browsing>(walk.State.Mode);
    }

    [Fact]
    public void Plot_OfNothing_SaysWhatToSelect()
    {
        using Walk walk = new(Rows);
        walk.Command('p');
        Assert.Contains("Select two columns of figures", walk.Screen, StringComparison.Ordinal);
        walk.Go("A1").Shift(KeyName.Down, 3).Shift(KeyName.Right, 4).Command('p');
        Assert.Contains("holds no figures", walk.Screen, StringComparison.Ordinal);
    }

    /// <summary>Whoever named the cell that is covered by its address would read another value without a word.</summary>
    [Theory]
    [InlineData("A4", "B2", "=> B4 + lost_B2", "=> B4 * 2")]
    [InlineData("B2", "B4", "=> lost_B4 + B4", "=> lost_B4 * 2")]
    [InlineData("B3", "B2", "=> B4 + lost_B2", "=> B4 * 2")]
    [InlineData("B4", "B5", "=> B5 + B2", "=> B5 * 2")]
    [InlineData("B3", "D2", "=> B4 + B2", "=> B4 * 2")]
    public void ACellThatIsCutAndPutOverAnother_IsNotReadInItsPlace(string from, string to, string sum, string twice)
    {
        using Walk walk = new(Rows);
        walk.Go(from).Ctrl('x').Go(to).Ctrl('v').Settle();
        Assert.Equal((sum, twice), (walk.Entry("D1"), walk.Entry("C4")));
    }

    [Fact]
    public void ASecondCut_AfterAChange_MustBeMadeAgain()
    {
        using Walk walk = new(Rows);
        walk.Go("A2").Ctrl('x').Go("F9").Enter("1").Go("F1").Ctrl('v');
        Assert.Contains("Cut it again", walk.Screen, StringComparison.Ordinal);
        Assert.Equal("= 10 mm", walk.Entry("A2"));
    }
}
