using ScrewSheet.Terminal.Grid.State;

namespace ScrewSheet.Terminal.Tests.Grid;

public sealed class LeavingTests
{
    [Fact]
    public void Save_WritesTheFileWithItsResults_AndOpenedAgainItIsTheSame()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("extra => peak * 2").Ctrl('s');
        Assert.Contains("Saved", walk.Screen, StringComparison.Ordinal);
        Assert.False(walk.State.Open.IsUnsaved);
        Assert.Contains("C2 extra => peak * 2 gives 17 kN", walk.Saved, StringComparison.Ordinal);
        Assert.Contains("weak => moment < 100 N·m gives fails", walk.Saved, StringComparison.Ordinal);
        using var again = walk.Start(walk.At("book.screwsheet"));
        again.Settle(TimeSpan.FromSeconds(60));
        Assert.Equal(Workbooks.Format.WorkbookText.Write(walk.Workbook), Workbooks.Format.WorkbookText.Write(again.State.Open.Workbook));
    }

    [Fact]
    public void Leave_WithChanges_AsksFirst()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Ctrl('q');
        Assert.False(walk.Program.HasLeft);
        Assert.Contains("changes that are not saved", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape);
        Assert.IsType<Browsing>(walk.State.Mode);
        walk.Ctrl('q').Type("s");
        Assert.True(walk.Program.HasLeft);
        Assert.Contains("C2 = 5 kN", walk.Saved, StringComparison.Ordinal);
    }

    [Fact]
    public void Leave_DroppingTheChanges_LeavesTheFileAlone()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Ctrl('q').Type("d");
        Assert.True(walk.Program.HasLeft);
        Assert.Equal(Book.Text, walk.Saved);
    }

    [Fact]
    public void Leave_WithoutChanges_DoesNotAsk()
    {
        using Walk walk = new(Book.Text);
        walk.Ctrl('q');
        Assert.True(walk.Program.HasLeft);
    }

    [Fact]
    public void SaveAndLeave_ThatCannotSave_DoesNotLeave()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN");
        File.AppendAllText(walk.At("book.screwsheet"), "A9 = 1\n");
        walk.Ctrl('q').Type("s");
        Assert.False(walk.Program.HasLeft);
        Assert.Contains("was changed by another program", walk.Screen, StringComparison.Ordinal);
        Assert.EndsWith("A9 = 1\n", walk.Saved, StringComparison.Ordinal);
        Assert.Equal("= 5 kN", walk.Entry("C2"));
    }

    [Fact]
    public void SaveAs_NeverWritesOverAFile_AndKeepsTheWork()
    {
        using Walk walk = new(Book.Text);
        walk.Command('w').Type(walk.At("book")).Press(KeyName.Enter);
        Assert.Contains("is there already", walk.Screen, StringComparison.Ordinal);
        walk.Command('w').Type(walk.At("copy")).Press(KeyName.Enter);
        Assert.True(File.Exists(walk.At("copy.screwsheet")));
        Assert.Equal(walk.At("copy.screwsheet"), walk.State.Open.Path);
    }

    [Theory]
    [InlineData("no-such-folder/book")]
    [InlineData("book.screwsheet/inside-a-file")]
    [InlineData("/proc/book")]
    [InlineData("a-name-\0-with-a-zero")]
    [InlineData("")]
    public void SaveAs_WhereItCannotBe_IsASentence(string name)
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Command('w').Type(name.Length == 0 ? "" : walk.At(name)).Press(KeyName.Enter);
        Assert.True(walk.State.Notice?.IsTrouble);
        Assert.Equal("= 5 kN", walk.Entry("C2"));
        Assert.True(walk.State.Open.IsUnsaved);
    }

    [Fact]
    public void SaveAs_ANameThatIsTooLong_IsASentence() => SaveAs_WhereItCannotBe_IsASentence(new string('a', 300));

    [Fact]
    public void Save_WhereTheFolderIsGone_IsASentence_AndTheWorkIsSavedElsewhere()
    {
        using Walk walk = new(Book.Text);
        string there = walk.At("there");
        Directory.CreateDirectory(there);
        walk.Command('w').Type(Path.Combine(there, "book")).Press(KeyName.Enter);
        walk.Go("C2").Enter("5 kN");
        Directory.Delete(there, recursive: true);
        walk.Ctrl('s');
        Assert.True(walk.State.Notice?.IsTrouble);
        Assert.True(walk.State.Open.IsUnsaved);
        walk.Command('w').Type(walk.At("other")).Press(KeyName.Enter);
        Assert.Contains("C2 = 5 kN", File.ReadAllText(walk.At("other.screwsheet")), StringComparison.Ordinal);
    }

    [Fact]
    public void StartPage_OffersANewWorkbookAndTheShippedOnes()
    {
        using Walk walk = new();
        Assert.Contains("An empty workbook", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Down, KeyName.Enter).Settle();
        Assert.Equal(" 340.0 N·m", walk.Face("B4"));
        Assert.Null(walk.State.Open.Path);
        walk.Go("C2").Enter("5 kN").Ctrl('s').Type(walk.At("mine")).Press(KeyName.Enter);
        Assert.True(File.Exists(walk.At("mine.screwsheet")));
        using var again = walk.Start(null);
        Assert.Contains(again.State.StartItems, item => item.Text == walk.At("mine.screwsheet"));
    }

    [Fact]
    public void Cautions_AreShownOnce()
    {
        using Walk walk = new(Book.Text, cautionsRead: false);
        Assert.Contains("People can be hurt", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Enter);
        Assert.IsType<Browsing>(walk.State.Mode);
        using var again = walk.Start(walk.At("book.screwsheet"));
        Assert.IsType<Browsing>(again.State.Mode);
    }

    [Fact]
    public void StoppedFromOutside_ChangesAndTheLineBeingTyped_AreKept()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Type("6 kN");
        string path = Assert.IsType<string>(walk.Program.Rescue());
        Assert.Contains("C2 = 5 kN\n", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Contains("C3 = 6 kN\n", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal(Book.Text, walk.Saved);
    }

    [Fact]
    public void StoppedFromOutside_WithoutChanges_KeepsNothing()
    {
        using Walk walk = new(Book.Text);
        Assert.Null(walk.Program.Rescue());
    }

    [Fact]
    public void AFileInFault_OpensAndShowsWhere()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 = = =\nA2 = 1 kN\n");
        Assert.Equal("!fault", walk.Face("A1"));
        walk.Ctrl('a');
        Assert.Contains("S.A1", walk.Screen, StringComparison.Ordinal);
    }
}
