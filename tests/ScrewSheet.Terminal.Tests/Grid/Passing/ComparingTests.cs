using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Tests.Grid.Passing;

/// <summary>What is on the screen compared with another version.</summary>
public sealed class ComparingTests
{
    private const KeyName Enter = KeyName.Enter, Down = KeyName.Down;

    [Fact]
    public void WithTheFileAsSaved_WhatChangedAndWhatFollows_EachLeadsToItsCell()
    {
        using Walk walk = new(Book.Text, width: 120);
        walk.Go("exposed").Enter("exposed [mm] = 45 mm ± 10 mm rectangular within 0 mm to 120 mm").Settle().Command('7');
        Assert.Equal(walk.At("book.screwsheet"), Assert.IsType<Stepping>(walk.State.Mode).Typed.Text);
        Assert.Contains("as it was last saved", walk.Screen, StringComparison.Ordinal);
        walk.Press(Enter).Settle();
        Listing list = Assert.IsType<Listing>(walk.State.Mode);
        Assert.Equal(["in all", "changed", "follows"], list.Items.Select(item => item.Word));
        Assert.Equal("1 cell the author changed; 1 result with another value.", list.Items[0].Text);
        Assert.StartsWith("Fall.B3 exposed: given 40 mm ± 10 mm", list.Items[1].Text, StringComparison.Ordinal);
        Assert.Contains("Fall.B4 moment: 340.0 N·m → 382.5 N·m (+12.5 %)", walk.Screen, StringComparison.Ordinal);
        walk.Press(Down, Enter);
        Assert.Equal("B3", walk.State.Open.Cursor.ToString());
        walk.Command('7').Type("l").Press(Down, Down, Enter);
        Assert.Equal("B4", walk.State.Open.Cursor.ToString());
        walk.Ctrl('b').Ctrl('b');
        Assert.Equal("B4", walk.State.Open.Cursor.ToString());
        Assert.Equal(Book.Text, walk.Saved);
    }

    [Fact]
    public void ACellThatIsGone_IsListed_AndLeadsNowhere()
    {
        using Walk walk = new(Book.Text);
        walk.Go("A3").Press(KeyName.Delete).Settle().Command('7').Press(Enter).Settle();
        Assert.Contains("removed: \"Exposed length\"", walk.Screen, StringComparison.Ordinal);
        walk.Press(Down, Enter);
        Assert.IsType<Listing>(walk.State.Mode);
    }

    [Fact]
    public void WhatDiffersInTheLibrary_IsTold()
    {
        using Walk walk = new(Book.Text.Replace("=> peak * exposed", "=> peak * exposed gives 340.0 N·m", StringComparison.Ordinal), width: 120);
        File.WriteAllText(walk.At("older.screwsheet"), Book.Text.Replace("=> peak * exposed", "=> peak * exposed gives 341.0 N·m", StringComparison.Ordinal));
        walk.Command('7').Ctrl('u').Type(walk.At("older.screwsheet")).Press(Enter).Settle();
        Assert.Contains("library  Fall.B4 moment: kept as 341.0 N·m → 340.0 N·m (this version computes 340.0 N·m from either)", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void WhereNothingChanged_ThatIsSaid()
    {
        using Walk walk = new(Book.Text);
        walk.Command('7').Press(Enter).Settle();
        Assert.Equal($"What is on the screen says the same as {walk.At("book.screwsheet")}.", walk.State.Notice?.Text);
        Assert.IsType<Browsing>(walk.State.Mode);
    }

    [Fact]
    public void AfterAChange_TheOldListIsNotOffered()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Settle().Command('7').Press(Enter).Settle().Press(KeyName.Escape).Command('7');
        Assert.Contains("L  the list again: since ", walk.Screen, StringComparison.Ordinal);
        walk.Type("n");
        Assert.IsType<Stepping>(walk.State.Mode);
        walk.Press(KeyName.Escape).Go("C3").Enter("6 kN").Settle().Command('7');
        Assert.IsType<Stepping>(walk.State.Mode);
    }

    [Theory]
    [InlineData("missing.screwsheet", "There is no file")]
    [InlineData("words.txt", "words.txt")]
    [InlineData(".", "is a folder")]
    [InlineData("", "Name the file to compare with.")]
    public void AFileThatCannotBeRead_IsASentence_AndAskedForAgain(string name, string sentence)
    {
        using Walk walk = new(Book.Text);
        File.WriteAllText(walk.At("words.txt"), "just words\n");
        walk.Go("C2").Enter("5 kN").Settle().Command('7').Ctrl('u').Type(name.Length == 0 ? "" : walk.At(name)).Press(Enter).Settle();
        Assert.Contains(sentence, Assert.IsType<Stepping>(walk.State.Mode).Trouble, StringComparison.Ordinal);
        Assert.Equal("= 5 kN", walk.Entry("C2"));
    }

    [Fact]
    public void AWorkbookWithoutAFile_AsksForOne()
    {
        using Walk walk = new();
        walk.Press(Enter).Enter("a = 1").Settle().Command('7');
        Assert.Contains("This one has none of its own yet.", walk.Screen, StringComparison.Ordinal);
        Assert.Equal("", Assert.IsType<Stepping>(walk.State.Mode).Typed.Text);
    }
}
