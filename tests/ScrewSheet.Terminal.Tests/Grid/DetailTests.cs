using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Tests.Grid;

public sealed class DetailTests
{
    [Fact]
    public void AnOwnFunction_IsShownWithThoseItCalls()
    {
        using Walk walk = new("screwsheet 1\nfunction double Twice(double x) => x * 2\nfunction double Four(double x) => Twice(Twice(x))\nfunction double Other(double x) => x\n\nsheet S\nA1 => Four(2)\n", height: 40);
        Assert.Contains("function double Four(double x) => Twice(Twice(x))", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("function double Twice(double x) => x * 2", walk.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("Other", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void MoreLinesThanHaveRoom_AreReachedByScrolling()
    {
        string words = string.Join(' ', Enumerable.Range(1, 120).Select(i => $"word{i}"));
        using Walk walk = new($"screwsheet 1\n\nsheet S\nA1 \"{words}\"\n");
        Assert.Contains("more lines: Tab, then Page Down", walk.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("word120", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Tab);
        Assert.Contains("from line 1 of", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.PageDown, KeyName.PageDown, KeyName.PageDown);
        Assert.Contains("word120", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.PageUp, KeyName.PageUp, KeyName.PageUp, KeyName.Down, KeyName.Up);
        Assert.Contains("from line 1 of", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape);
        Assert.IsType<Browsing>(walk.State.Mode);
    }

    [Fact]
    public void ALibraryCall_IsExplainedWithItsNumbersAndItsSource_BelowTheResult()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 load [kN] = 8 kN\nA2 theta [°] = 60 °\nA3 each [kN, 2 decimals] => LegTension(load, theta) * 1\n");
        walk.Go("each");
        Assert.True(walk.Screen.Contains(" formula  LegTension(load, θ) · 1\n numbers  4.619 kN · 1\n result   4.62 kN\n uses      load 8 kN  theta 60 °\n by       LegTension: ", StringComparison.Ordinal), walk.Screen);
        walk.Press(KeyName.Tab, KeyName.PageDown, KeyName.PageDown);
        Assert.Contains("T = F / (2 · cos(θ / 2)) = 8 kN / (2 · cos(60 ° / 2))", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" source ", walk.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain('\u00A0', walk.Screen);
    }

    [Fact]
    public void TheStepOfACell_IsMadeOnceWhileNothingChanges()
    {
        using Walk walk = new(Book.Text);
        walk.Go("moment");
        GridState before = walk.State;
        var step = before.Open.Known!.Steps.Of(before.Open.Result(before.Open.At)!);
        walk.Press(KeyName.Tab, KeyName.Escape);
        Assert.Same(step, walk.State.Open.Known!.Steps.Of(walk.State.Open.Result(walk.State.Open.At)!));
    }

    [Fact]
    public void AnExpressionTooLongToWriteOut_StandsAsItWasTyped()
    {
        string sum = string.Join(" + ", Enumerable.Repeat("A1", 600));
        using Walk walk = new($"screwsheet 1\n\nsheet S\nA1 = 2\nA2 => {sum}\n", height: 60);
        walk.Go("A2").Press(KeyName.Tab).Press(Enumerable.Repeat(KeyName.PageDown, 9).ToArray());
        Assert.Contains("result   1200\n", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("A1 + A1 + A1", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void AResultOfALongRun_IsShown()
    {
        string cells = string.Concat(Enumerable.Range(2, 2500).Select(row => $"A{row} = 1\n"));
        using Walk walk = new($"screwsheet 1\n\nsheet S\nB1 all => Sum(Series(A2, A2501)) * 2\n{cells}");
        walk.Go("all");
        Assert.Contains("result   5000\n", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("formula  ", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void ScrolledAway_TheNextCellIsBroughtBack()
    {
        string givens = string.Concat(Enumerable.Range(2, 30).Select(i => $"A{i} name_of_given_{i} = {i}\n"));
        string sum = string.Join(" + ", Enumerable.Range(2, 30).Select(i => $"name_of_given_{i}"));
        using Walk walk = new($"screwsheet 1\n\nsheet S\nA1 => {sum}\n{givens}");
        walk.Press(KeyName.Tab);
        Assert.Contains("▸name_of_given_2 ", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.PageDown, KeyName.PageDown, KeyName.PageDown, KeyName.Tab);
        Assert.Contains("▸name_of_given_3 ", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.BackTab, KeyName.BackTab);
        Assert.Contains("▸name_of_given_31 ", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void ALine_IsTakenBackWordByWord()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Type("=> peak * 2");
        Assert.Contains("» => peak * 2", walk.Screen, StringComparison.Ordinal);
        walk.Ctrl('z');
        Assert.Contains("» => peak * \n", walk.Screen.Replace("» => peak *\n", "» => peak * \n", StringComparison.Ordinal), StringComparison.Ordinal);
        walk.Ctrl('u').Ctrl('z').Ctrl('y').Ctrl('z').Type("3").Press(KeyName.Enter);
        Assert.Equal("=> peak * 3", walk.Entry("C2"));
        walk.Press(KeyName.Up, KeyName.Enter).Type("7").Ctrl('z').Press(KeyName.Enter);
        Assert.Equal("=> peak * 3", walk.Entry("C2"));
    }
}
