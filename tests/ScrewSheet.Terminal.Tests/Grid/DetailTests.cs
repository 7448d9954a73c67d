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
