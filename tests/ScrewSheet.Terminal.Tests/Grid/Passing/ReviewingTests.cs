using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Tests.Grid.Passing;

/// <summary>Review marks put on, seen to hold, seen to fall, and taken away.</summary>
public sealed class ReviewingTests
{
    private const KeyName Enter = KeyName.Enter;

    private static Walk Marked(string cell = "moment")
    {
        Walk walk = new(Book.Text, width: 120);
        walk.Go(cell).Command('8').Type("m").Enter("KM").Enter("2026-11-25").Settle();
        return walk;
    }

    [Fact]
    public void AMarkedResult_ShowsItInTheGridTheDetailAndTheTitle_AndInTheFile()
    {
        using Walk walk = Marked();
        Assert.Contains("340.0 N·m●", walk.Screen, StringComparison.Ordinal);
        Assert.Matches(@"review +reviewed by KM, 2026-11-25", walk.Screen);
        Assert.Contains("· 1 of 7 reviewed ·", walk.Screen, StringComparison.Ordinal);
        walk.Ctrl('s').Settle();
        Assert.Matches("\nreviewed KM 2026-11-25 [0-9a-f-]+\nB4 Torque moment", walk.Saved);
        using Session session = new() { Width = 200, Calculator = Calculators.OfThread };
        session.Run("check", walk.At("book.screwsheet"));
        Assert.Contains("1 of 7 reviewed.", session.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void TheMark_CanBeTakenBackAndDoneAgain()
    {
        using Walk walk = Marked();
        Assert.Equal("Marked moment as reviewed by KM, 2026-11-25. Ctrl+Z takes it back.", walk.State.Notice?.Text);
        walk.Ctrl('z').Settle();
        Assert.Equal("Took back marking moment as reviewed.", walk.State.Notice?.Text);
        Assert.DoesNotContain("●", walk.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("reviewed ·", walk.Screen, StringComparison.Ordinal);
        Assert.Equal(" 340.0 N·m", walk.Face("B4"));
        walk.Ctrl('y').Settle();
        Assert.Contains("340.0 N·m●", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void WhenSomethingItDependsOnChanges_ItFalls_AndIsListed_AndRisesWithTheChangeTakenBack()
    {
        using Walk walk = Marked();
        walk.Go("exposed").Enter("exposed [mm] = 45 mm").Settle().Go("moment");
        Assert.Contains("382.5 N·m○", walk.Screen, StringComparison.Ordinal);
        Assert.Matches(@"review +the review by KM of 2026-11-25 no longer holds: a cell it depends on was changed\.", walk.Screen);
        Assert.Contains("· 0 of 7 reviewed ·", walk.Screen, StringComparison.Ordinal);
        walk.Go("A1").Ctrl('a');
        Listing list = Assert.IsType<Listing>(walk.State.Mode);
        Item item = Assert.Single(list.Items, item => item.Word == "review");
        Assert.Equal("Fall.moment: the review by KM of 2026-11-25 no longer holds: a cell it depends on was changed.", item.Text);
        walk.Type("no longer holds").Press(Enter);
        Assert.Equal("B4", walk.State.Open.Cursor.ToString());
        walk.Ctrl('z').Settle();
        Assert.Contains("340.0 N·m●", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void WhileItIsNotCalculated_NoMarkIsShownToHold()
    {
        using Walk walk = Marked();
        walk.Go("exposed").Enter("exposed [mm] = 45 mm");
        Assert.False(walk.State.Open.IsCalculated);
        Assert.DoesNotContain("●", walk.Screen, StringComparison.Ordinal);
        walk.Settle();
    }

    [Fact]
    public void AskedOnce_WhoReviewsIsKnown_AndAnotherCanBeNamed()
    {
        using Walk walk = Marked();
        walk.Go("strong").Command('8');
        Assert.Contains("M  mark it as checked by KM, 2026-11-25", walk.Screen, StringComparison.Ordinal);
        walk.Type("m").Settle().Go("moment").Command('8').Type("o").Ctrl('u').Enter("AB").Ctrl('u').Enter("2026-11-26").Settle();
        Assert.Contains("reviewed by KM, 2026-11-25", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("reviewed by AB, 2026-11-26", walk.Screen, StringComparison.Ordinal);
        walk.Command('8').Type("1").Settle();
        Assert.Equal("No mark any more on moment by KM of 2026-11-25. Ctrl+Z takes that back.", walk.State.Notice?.Text);
        Assert.DoesNotContain("by KM, 2026-11-25\n", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("reviewed by AB, 2026-11-26", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("· 2 of 7 reviewed ·", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void ABlock_IsMarkedAtOnce_WithoutThoseThatHaveNoValue_AndInOneStepTakenBack()
    {
        using Walk walk = new(Book.Text, width: 120);
        walk.Go("A2").Shift(KeyName.Right).Shift(KeyName.Down, 6).Command('8');
        Assert.Contains("Review of A2 to B8. None of 7 reviewed.", walk.Screen, StringComparison.Ordinal);
        walk.Type("m").Enter("KM").Enter("2026-11-25").Settle();
        Assert.Equal("Marked 3 results as reviewed by KM, 2026-11-25. 2 without a value were left. Ctrl+Z takes it back.", walk.State.Notice?.Text);
        Assert.Contains("· 3 of 7 reviewed ·", walk.Screen, StringComparison.Ordinal);
        walk.Command('8');
        Assert.Contains("T  take away all 3 marks", walk.Screen, StringComparison.Ordinal);
        walk.Type("t").Settle();
        Assert.DoesNotContain("●", walk.Screen, StringComparison.Ordinal);
        walk.Ctrl('z').Settle();
        Assert.Contains("· 3 of 7 reviewed ·", walk.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("K M", null, "K M are no initials. Write one to twelve letters, like KM.")]
    [InlineData("", null, "are no initials.")]
    [InlineData("KM", "25.11.2026", "25.11.2026 is no day. Write year, month and day, like 2026-11-25.")]
    [InlineData("KM", "2026-02-30", "2026-02-30 is no day.")]
    public void WhatIsNoNameOrDay_IsAskedForAgain(string who, string? when, string sentence)
    {
        using Walk walk = new(Book.Text);
        walk.Go("moment").Command('8').Type("m").Enter(who);
        if (when is not null) walk.Enter(when);
        Assert.Contains(sentence, Assert.IsType<Stepping>(walk.State.Mode).Trouble, StringComparison.Ordinal);
        Assert.False(walk.State.Open.IsUnsaved);
        Assert.Null(walk.State.Reviewer);
    }

    [Theory]
    [InlineData("peak")]
    [InlineData("A2")]
    [InlineData("F9")]
    public void WhatIsNoResult_CannotBeMarked(string cell)
    {
        using Walk walk = new(Book.Text);
        walk.Go(cell).Command('8');
        Assert.Equal("No result is selected: only what is computed from an expression can be marked as reviewed. None of 7 reviewed.", walk.State.Notice?.Text);
    }

    [Fact]
    public void AResultInFault_CannotBeMarked()
    {
        using Walk walk = Marked("broken");
        Assert.Equal("broken has no value and cannot be marked as reviewed.", walk.State.Notice?.Text);
        Assert.False(walk.State.Open.IsUnsaved);
    }

    [Fact]
    public void AMarkOnACellThatIsInFaultNow_IsSeenToHaveFallen_AndCanBeTakenAway()
    {
        using Walk walk = Marked();
        walk.Enter("moment => peak + exposed").Settle().Go("moment");
        Assert.Matches(@"!fault +○", walk.Screen);
        walk.Command('8').Type("1").Settle();
        Assert.DoesNotContain("○", walk.Screen, StringComparison.Ordinal);
    }
}
