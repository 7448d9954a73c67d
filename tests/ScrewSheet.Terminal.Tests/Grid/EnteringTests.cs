using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Tests.Grid;

public sealed class EnteringTests
{
    [Fact]
    public void AnOpenBracket_IsNoFault_WhileTheLineGoesOn()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("=> Sqrt(peak").Settle();
        Assert.Contains(" so far   The bracket ( is not closed", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Left).Settle();
        Assert.Contains(" fault    The bracket ( is not closed", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.End).Press(KeyName.Enter).Settle();
        walk.Go("C2");
        Assert.Contains("fault", walk.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=> Sqrt(peak", "The bracket ( is not closed")]
    [InlineData("=> peak > 1 kN ? \"yes", "The quote opened here is not closed")]
    [InlineData("=> $\"at {peak", "The quote opened here is not closed")]
    [InlineData("\"not yet", "The quote opened here is not closed")]
    public void WhatIsOpen_IsNoFault_WhileTheLineGoesOn(string typed, string sentence)
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type(typed).Settle();
        Assert.Contains(" so far   " + sentence, walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Left).Settle();
        Assert.Contains(" fault    " + sentence, walk.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData('a', 0)]
    [InlineData('e', 4)]
    [InlineData('u', 0)]
    public void LinesAreEditedAlike_WhereverOneIsTyped(char letter, int caret)
    {
        using Walk walk = new(Book.Text);
        foreach (Func<TypedText> typed in (Func<TypedText>[])[InAnEntry, InAQuestion, InAStudy])
        {
            TypedText line = typed();
            Assert.Equal((letter == 'u' ? "" : "b2 2", caret), (line.Text, line.Caret));
            walk.Press(KeyName.Escape).Press(KeyName.Escape);
        }

        TypedText InAnEntry() => ((Entering)walk.Go("C2").Type("b2 2").Press(KeyName.Left).Ctrl(letter).State.Mode).Entry.Typed;
        TypedText InAQuestion() => ((Asking)walk.Ctrl('g').Ctrl('u').Type("b2 2").Press(KeyName.Left).Ctrl(letter).State.Mode).Typed;
        TypedText InAStudy() => ((Stepping)walk.Go("moment").Ctrl('t').Type("u").Ctrl('u').Type("b2 2").Press(KeyName.Left).Ctrl(letter).State.Mode).Typed;
    }

    [Fact]
    public void AGivenAndAResult_FromAnEmptyWorkbook()
    {
        using Walk walk = new();
        walk.Press(KeyName.Enter).Enter("load [kN] = 6 kN").Enter("arm = 30 mm").Enter("moment [N·m] => load * arm").Settle();
        Assert.Equal(" 180 N·m", walk.Face("A3"));
        Assert.Equal("A4", walk.State.Open.Cursor.ToString());
        Assert.True(walk.State.Open.IsUnsaved);
    }

    [Fact]
    public void WhileTyping_ValueAndTypeAreShown_BeforeAnythingIsPutIn()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("=> peak * exposed").Settle();
        Assert.Contains(" gives    340 N·m", walk.Screen, StringComparison.Ordinal);
        Assert.Null(walk.Entry("C2"));
    }

    [Fact]
    public void WhileTyping_TheFaultIsShown()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("=> peak + exposed").Settle();
        Assert.Contains(" fault ", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void WhileTyping_ACircleIsSeen()
    {
        using Walk walk = new(Book.Text);
        walk.Go("B2").Ctrl('u').Type("peak => moment / exposed").Settle();
        Assert.Contains("wait for itself", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void ALineThatDoesNotRead_StaysUnderTheFingers()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("40m").Press(KeyName.Enter);
        Assert.IsType<Entering>(walk.State.Mode);
        Assert.Contains("Not put in", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("» 40m", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void ATakenName_IsRefused()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("peak = 3 kN").Press(KeyName.Enter);
        Assert.IsType<Entering>(walk.State.Mode);
        Assert.Null(walk.Entry("C2"));
    }

    [Fact]
    public void TabGoesRight_AndEnterBelowWhereTheRowBegan()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C10").Type("1 kN").Press(KeyName.Tab).Type("2 kN").Press(KeyName.Tab).Type("3 kN").Press(KeyName.Enter);
        Assert.Equal(("= 1 kN", "= 2 kN", "= 3 kN"), (walk.Entry("C10"), walk.Entry("D10"), walk.Entry("E10")));
        Assert.Equal("C11", walk.State.Open.Cursor.ToString());
    }

    [Fact]
    public void Escape_LeavesTheCell_AndTheLineCanBeBroughtBack()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("a long thought").Press(KeyName.Escape);
        Assert.Null(walk.Entry("C2"));
        walk.Command('e').Press(KeyName.Enter);
        Assert.Equal("\"a long thought\"", walk.Entry("C2"));
    }

    [Fact]
    public void WhatTheFileKept_IsNotShownForEditing_AndStaysWhenNothingChanged()
    {
        using Walk walk = new(Book.Text);
        walk.Go("weak").Press(KeyName.Enter);
        Assert.DoesNotContain("gives holds", walk.Screen.Split('\n')[^2], StringComparison.Ordinal);
        walk.Press(KeyName.Enter);
        Assert.False(walk.State.Open.IsUnsaved);
    }

    [Fact]
    public void Completion_OffersNamesFunctionsAndSheets_WithAWordAboutEach()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("=> expo");
        Assert.Contains("exposed", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("B3  40 mm", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Down, KeyName.Enter);
        Assert.Equal("=> exposed", ((Entering)walk.State.Mode).Entry.Typed.Text);
        walk.Type(" + FallF");
        Assert.Contains("FallFactor", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Down, KeyName.Tab);
        Assert.EndsWith("FallFactor(", ((Entering)walk.State.Mode).Entry.Typed.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=> Other.tw", "twice")]
    [InlineData("= 5 k", "kN")]
    [InlineData("x [m", "mm")]
    [InlineData("=> peak + 5 k", "kN")]
    public void Completion_KnowsSheetsAndUnits(string typed, string offered)
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type(typed);
        Assert.Contains(((Entering)walk.State.Mode).Entry.Suggestions, suggestion => suggestion.Shown == offered);
    }

    [Theory]
    [InlineData("just some words")]
    [InlineData("=> \"in quotes pea")]
    [InlineData("= 5 kN // remark pea")]
    public void Completion_IsSilentWhereNothingFits(string typed)
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type(typed);
        Assert.Empty(((Entering)walk.State.Mode).Entry.Suggestions);
    }

    [Fact]
    public void InsideACall_TheParameterIsExplained()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("=> FallFactor(4 m, ");
        CallHelp call = Assert.IsType<CallHelp>(((Entering)walk.State.Mode).Entry.Call);
        Assert.Equal(("FallFactor", 1), (call.Name, call.Current));
        Assert.Contains($"[{call.Parameters[1]}]", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(", in m", call.Meaning, StringComparison.Ordinal);
    }

    [Fact]
    public void ALongLine_Wraps_WithTheCaretInIt()
    {
        using Walk walk = new(Book.Text);
        string line = "=> " + string.Join(" + ", Enumerable.Repeat("peak", 20));
        walk.Go("C2").Type(line);
        var picture = ScrewSheet.Terminal.Grid.Screen.Painter.Of(walk.State);
        Assert.Equal(24, picture.Lines.Length);
        Assert.NotNull(picture.Caret);
        Assert.Equal(line, string.Concat(picture.Lines.Skip(picture.Caret.Value.Line - 1).Take(2).Select(each => each.Text.TrimEnd('\n'))).Replace("» ", "", StringComparison.Ordinal).TrimEnd().Replace("  ", " ", StringComparison.Ordinal));
    }

    [Fact]
    public void PastedText_GoesIntoTheLineBeingTyped()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("=> ");
        walk.Program.Handle(new Paste("peak\n* 2"));
        Assert.Equal("=> peak * 2", ((Entering)walk.State.Mode).Entry.Typed.Text);
    }
}
