using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Tests.Grid;

public sealed class BrowsingTests
{
    [Fact]
    public void OpenedFile_ShowsValuesWithUnits_AndMarksWhatNeedsALook()
    {
        using Walk walk = new(Book.Text);
        Assert.Equal("›8.5 kN", walk.Face("B2"));
        Assert.Equal(" 340.0 N·m", walk.Face("B4"));
        Assert.Equal("✓holds", walk.Face("B5"));
        Assert.Equal("!fault", walk.Face("B6"));
        Assert.Equal("~waits", walk.Face("B7"));
        Assert.Equal("✗FAILS", walk.Face("B8"));
        Assert.Contains("‹Fall› Other", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("340.0 N·m", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Detail_OfAResult_IsFormulaNumbersResult_WithWhatItUsesAndWhatUsesIt()
    {
        using Walk walk = new(Book.Text);
        walk.Go("moment");
        Assert.Contains("B4 moment · result · Torque · shown in N·m, 1 decimal", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" formula  peak · exposed", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" numbers  8.5 kN · 40 mm", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" result   340.0 N·m", walk.Screen, StringComparison.Ordinal);
        Assert.Matches(@"uses +peak 8.5 kN +exposed 40 mm", walk.Screen);
        Assert.Matches(@"used by +strong holds +weak FAILS", walk.Screen);
    }

    [Fact]
    public void Detail_OfAGiven_ShowsToleranceLimitsAndRemark()
    {
        using Walk walk = new(Book.Text, height: 40);
        walk.Go("exposed");
        Assert.Contains("10 mm rectangular", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("allowed  0 mm to 120 mm", walk.Screen, StringComparison.Ordinal);
        walk.Go("peak");
        Assert.Contains("0.5 kN (95 %, k = 2)", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("remark   from the fall sheet", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Detail_OfACellThatWaits_LeadsToItsCause()
    {
        using Walk walk = new(Book.Text);
        walk.Go("B7").Press(KeyName.Tab, KeyName.Enter);
        Assert.Equal("B6", walk.State.Open.Cursor.ToString());
        Assert.Contains("fault", walk.Screen, StringComparison.Ordinal);
        walk.Command('b');
        Assert.Equal("B7", walk.State.Open.Cursor.ToString());
    }

    [Fact]
    public void Tab_StepsThroughTheCellsTheDetailSpeaksOf()
    {
        using Walk walk = new(Book.Text);
        walk.Go("moment").Press(KeyName.Tab, KeyName.Tab);
        Assert.Contains("▸exposed", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Enter);
        Assert.Equal("B3", walk.State.Open.Cursor.ToString());
    }

    [Fact]
    public void Sheets_RememberWhereTheReaderWas()
    {
        using Walk walk = new(Book.Text);
        walk.Go("B4").Type(">");
        Assert.Equal(("Other", "A1"), (walk.State.Open.SheetName, walk.State.Open.Cursor.ToString()));
        walk.Type(">");
        Assert.Equal(("Fall", "B4"), (walk.State.Open.SheetName, walk.State.Open.Cursor.ToString()));
    }

    [Theory]
    [InlineData("b3", "Fall", "B3")]
    [InlineData("exposed", "Fall", "B3")]
    [InlineData("twice", "Other", "A1")]
    [InlineData("Other", "Other", "A1")]
    [InlineData("Other.a2", "Other", "A2")]
    public void Go_FindsAddressesNamesAndSheets(string typed, string sheet, string address)
    {
        using Walk walk = new(Book.Text);
        walk.Go(typed);
        Assert.Equal((sheet, address), (walk.State.Open.SheetName, walk.State.Open.Cursor.ToString()));
    }

    [Fact]
    public void Go_ToNothing_SaysSo()
    {
        using Walk walk = new(Book.Text);
        walk.Go("nowhere");
        Assert.Contains("No cell, name or sheet is called nowhere.", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Attention_ListsFaultsFirst_AndEnterGoesThere()
    {
        using Walk walk = new(Book.Text);
        walk.Ctrl('a');
        string[] lines = walk.Screen.Split('\n');
        Assert.Contains("fault", lines[2], StringComparison.Ordinal);
        Assert.Contains("Fall.broken", lines[2], StringComparison.Ordinal);
        Assert.Contains("fails", lines[3], StringComparison.Ordinal);
        Assert.Contains("changed", lines[4], StringComparison.Ordinal);
        Assert.Contains("waits", lines[5], StringComparison.Ordinal);
        walk.Press(KeyName.Down, KeyName.Enter);
        Assert.Equal("B8", walk.State.Open.Cursor.ToString());
    }

    [Fact]
    public void TheCursorIsAlwaysOnTheScreen()
    {
        using Walk walk = new(Book.Text);
        walk.Press([.. Enumerable.Repeat(KeyName.Down, 60), .. Enumerable.Repeat(KeyName.Right, 20)]);
        Assert.Contains("61▸", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("▾U", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.PageUp, KeyName.PageUp, KeyName.PageUp, KeyName.PageUp, KeyName.PageUp, KeyName.PageUp);
        Assert.Contains(" 1▸", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void AFigureWithoutRoom_IsAnEllipsis_AndStandsInTheDetail()
    {
        using Walk walk = new(Book.Text.Replace("widths A 30", "widths A 30, B 6", StringComparison.Ordinal));
        walk.Go("moment");
        Assert.Contains("…", walk.Screen.Split('\n')[5], StringComparison.Ordinal);
        Assert.DoesNotContain("340", walk.Screen.Split('\n')[5], StringComparison.Ordinal);
        Assert.Contains("result   340.0 N·m", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void BeforeTheResultsAreIn_GivensAreShownAlready()
    {
        using Walk walk = new(Book.Text);
        GridState early = walk.State with { Session = walk.State.Open with { Known = null } };
        string screen = ScrewSheet.Terminal.Grid.Screen.Painter.Of(early).ToString();
        Assert.Contains("8.5 kN", screen, StringComparison.Ordinal);
        Assert.Contains("⋯", screen, StringComparison.Ordinal);
        Assert.Contains("calculating", screen, StringComparison.Ordinal);
    }
}
