using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Tests.Files;

namespace ScrewSheet.Terminal.Tests.Grid.Recovery;

/// <summary>What a reader meets after the grid was killed.</summary>
public sealed class RecoveryWalks
{
    private const string Words = "screwsheet 1\n\nsheet S\nA1 = 1 kN\n";

    private static string[] Journals(Walk walk, string which = "*.unsaved") => Directory.Exists(walk.At("state/unsaved")) ? Directory.GetFiles(walk.At("state/unsaved"), which) : [];

    private static string Flat(string screen) => string.Join(' ', screen.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void Killed_TheEntriesAreOffered_TakenAndSaved_AndThenNothingIsOffered()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Enter("6 kN").Again();
        Assert.Matches("2 changes of [0-9]+ [A-Z][a-z]+ 20[0-9][0-9] at [0-9][0-9]:[0-9][0-9] were not saved\\.", Flat(walk.Screen));
        walk.Type("t").Settle();
        Assert.Equal("= 5 kN", walk.Entry("C2"));
        Assert.True(walk.State.Open.IsUnsaved);
        Assert.Contains("Took 2 changes in. Ctrl+S saves them.", walk.Screen, StringComparison.Ordinal);
        walk.Ctrl('s');
        Assert.Contains("C3 = 6 kN", walk.Saved, StringComparison.Ordinal);
        walk.Again();
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.Empty(Journals(walk));
    }

    [Fact]
    public void Taken_ItCanBeTakenBack()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Again().Type("t").Ctrl('z');
        Assert.Null(walk.Entry("C2"));
        Assert.False(walk.State.Open.IsUnsaved);
        Assert.Contains("Took back taking what was not saved.", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Taken_AndKilledAgain_ItIsOfferedAgain()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Again().Type("t").Go("C3").Enter("6 kN").Again();
        Assert.Contains("2 changes of", walk.Screen, StringComparison.Ordinal);
        Assert.Single(Journals(walk));
        walk.Type("t");
        Assert.Equal("= 6 kN", walk.Entry("C3"));
    }

    [Fact]
    public void LookedAtFirst_EveryChangeIsListed_AndTakenFromThere()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Go("peak").Enter("peak [kN] = 9 kN").Go("A3").Press(KeyName.Delete).Again().Type("l");
        Assert.Contains("Fall.C2", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("5 kN", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("8.5 kN", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("Exposed length", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Enter);
        Assert.IsType<Confirming>(walk.State.Mode);
        walk.Type("l").Press(KeyName.Down, KeyName.Enter);
        Assert.Equal("= 5 kN", walk.Entry("C2"));
        Assert.Null(walk.Entry("A3"));
    }

    [Fact]
    public void PutAway_ItIsGoneForGood()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Again().Type("p");
        Assert.Null(walk.Entry("C2"));
        Assert.Empty(Journals(walk, "*"));
        walk.Again();
        Assert.IsType<Browsing>(walk.State.Mode);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void NotAnswered_ItIsOfferedAtTheNextStart(bool escape)
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Again();
        if (escape) walk.Press(KeyName.Escape);
        else walk.Type("n");
        Assert.Null(walk.Entry("C2"));
        walk.Again();
        Assert.Contains("1 change of", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void TheFileChangedSince_ItIsSaid_AndNothingIsEverOverwritten()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN");
        File.AppendAllText(walk.At("book.screwsheet"), "A9 = 1\n");
        walk.Again();
        Assert.Contains("Another program has changed the file since, so they are taken without a file: save them under a new name, then compare the two.", Flat(walk.Screen), StringComparison.Ordinal);
        walk.Type("t").Ctrl('s');
        Assert.Equal("= 5 kN", walk.Entry("C2"));
        Assert.Equal("Save as", Assert.IsType<Asking>(walk.State.Mode).Question);
        walk.Type(walk.At("mine")).Press(KeyName.Enter);
        Assert.EndsWith("A9 = 1\n", walk.Saved, StringComparison.Ordinal);
        Assert.DoesNotContain("A9 = 1", File.ReadAllText(walk.At("mine.screwsheet")), StringComparison.Ordinal);
    }

    [Fact]
    public void AWorkbookNeverSaved_IsOfferedOnTheStartPage()
    {
        using Walk walk = new();
        walk.Press(KeyName.Enter).Enter("5 kN").Again(withFile: false);
        Assert.Contains("not saved", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("a workbook without a file", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Enter).Type("t").Ctrl('s').Type(walk.At("mine")).Press(KeyName.Enter);
        Assert.Contains("A1 = 5 kN", File.ReadAllText(walk.At("mine.screwsheet")), StringComparison.Ordinal);
        Assert.Empty(Journals(walk.Again(withFile: false)));
    }

    [Fact]
    public void AFileThatIsNotThereAnyMore_IsOfferedOnTheStartPage()
    {
        using Walk walk = new(Words);
        walk.Enter("5 kN");
        walk.Settle().Program.Dispose();
        File.Move(walk.At("book.screwsheet"), walk.At("gone"));
        walk.Again(withFile: false).Press(KeyName.Enter);
        Assert.Contains("is not there any more, so they are taken without a file.", Flat(walk.Screen), StringComparison.Ordinal);
        walk.Type("t");
        Assert.Null(walk.State.Open.Path);
        Assert.Equal("= 5 kN", walk.Entry("A1"));
    }

    [Fact]
    public void AFileThatIsThere_IsOpenedFromTheStartPage()
    {
        using Walk walk = new(Words);
        walk.Enter("5 kN").Again(withFile: false).Press(KeyName.Enter).Type("t");
        Assert.Equal(walk.At("book.screwsheet"), walk.State.Open.Path);
        Assert.Equal("= 5 kN", walk.Entry("A1"));
    }

    [Fact]
    public void TwoGridsOnOneFile_EachHasItsOwnJournal_AndNoneTouchesTheOthers()
    {
        using Walk walk = new(Words);
        walk.Enter("5 kN").Settle();
        using (var other = walk.Start(walk.At("book.screwsheet")))
        {
            Assert.IsType<Browsing>(other.State.Mode);
            Assert.Contains("Another grid has changes of", other.State.Notice!.Text, StringComparison.Ordinal);
            other.Handle(new Press(KeyName.Text, "7"));
            other.Handle(new Press(KeyName.Enter));
            other.Handle(new Press(KeyName.Text, "q", Ctrl: true));
            other.Handle(new Press(KeyName.Text, "d"));
        }
        Assert.Single(Journals(walk));
        Assert.Contains("A1 = 5 kN", File.ReadAllText(Journals(walk)[0]), StringComparison.Ordinal);
    }

    [Fact]
    public void TwoGridsOnOneFile_BothKilled_BothAreOffered_TheNewerFirst()
    {
        using Walk walk = new(Words);
        walk.Enter("5 kN").Settle();
        using (var other = walk.Start(walk.At("book.screwsheet")))
        {
            Thread.Sleep(20);
            other.Handle(new Press(KeyName.Text, "7"));
            other.Handle(new Press(KeyName.Enter));
        }
        walk.Again().Type("l");
        Assert.Contains("→ 7", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Enter).Type("p");
        Assert.Contains("1 change of", walk.Screen, StringComparison.Ordinal);
        walk.Type("t");
        Assert.Equal("= 5 kN", walk.Entry("A1"));
    }

    [Fact]
    public void WhileOneGridAsks_AnotherIsNotOfferedTheSame()
    {
        using Walk walk = new(Words);
        walk.Enter("5 kN").Again();
        using var other = walk.Start(walk.At("book.screwsheet"));
        Assert.IsType<Browsing>(other.State.Mode);
        walk.Type("t");
        Assert.Equal("= 5 kN", walk.Entry("A1"));
    }

    [Fact]
    public void TakenBackToWhatIsSaved_ThereIsNoJournal()
    {
        using Walk walk = new(Words);
        walk.Enter("5 kN").Ctrl('z').Again();
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.Empty(Journals(walk, "*"));
    }

    [Fact]
    public void LeftWithTheChangesDropped_NothingIsOffered()
    {
        using Walk walk = new(Words);
        walk.Enter("5 kN").Ctrl('q').Type("d");
        Assert.True(walk.Program.HasLeft);
        Assert.IsType<Browsing>(walk.Again().State.Mode);
    }

    [Fact]
    public void TheJournal_IsTheReadersOwn_AndHoldsTheWorkbookAsItStands_AndNoMore()
    {
        using Walk walk = new(Words);
        walk.Enter("\"secret\"").Go("A1").Enter("7 kN").Go("B1").Enter("8 kN").Ctrl('c').Ctrl('z').Go("C1").Enter("9 kN");
        walk.Settle().Program.Dispose();
        string journal = File.ReadAllText(Assert.Single(Journals(walk)));
        Assert.Matches("^screwsheet unsaved 1\nfile [^\n]*/book\\.screwsheet\nsaved [0-9a-f]{64}\n\npart [0-9]+ 0 0 [0-9]+ [0-9a-f]{16}\nscrewsheet 1\n\nsheet S\nA1 = 7 kN\nC1 = 9 kN\n\n$", journal);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(Journals(walk)[0]));
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(walk.At("state/unsaved")));
    }

    [Fact]
    public void AJournalThatCannotBeWritten_IsSaidOnce_AndTheWorkGoesOn()
    {
        using Walk walk = new(Words);
        File.WriteAllText(walk.At("state/unsaved"), "a file where the folder should be");
        walk.Enter("5 kN");
        WaitFor(walk, () => walk.State.Notice is { IsTrouble: true });
        Assert.StartsWith("What is typed cannot be kept against a power cut, so save often. ", walk.State.Notice!.Text, StringComparison.Ordinal);
        walk.Enter("6 kN").Settle();
        Assert.Null(walk.State.Notice);
        walk.Ctrl('s');
        Assert.Contains("A2 = 6 kN", walk.Saved, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("screwsheet unsaved 1\nfile BOOK\n\npart 5 0 0 12 0000000000000000\n\u0001\u0002 no workbook\n", "cannot be read any more")]
    [InlineData("screwsheet unsaved 1\nfile BOOK\n\npart 5 0 0 900 0000000000000000\nscrewsheet 1\n\nsheet S\nA1 = 5 kN\nA2 = 6", "Their record is damaged: what follows is what can be read of it.")]
    [InlineData("screwsheet unsaved 1\nfile BOOK\n\n", "cannot be read any more")]
    public void ADamagedJournal_NeverKeepsAWorkbookFromOpening(string journal, string said)
    {
        using Walk walk = new(Words);
        Directory.CreateDirectory(walk.At("state/unsaved"));
        File.WriteAllText(walk.At("state/unsaved/0123456789abcdef.unsaved"), journal.Replace("BOOK", walk.At("book.screwsheet"), StringComparison.Ordinal));
        walk.Again();
        Assert.Contains(said, Flat(walk.Screen), StringComparison.Ordinal);
        walk.Type("p");
        Assert.Empty(Journals(walk));
        Assert.Equal("= 1 kN", walk.Entry("A1"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("no journal")]
    [InlineData("screwsheet unsaved 1\nfile %00\n\n")]
    public void AFileThatIsNoJournal_IsPassedOver(string text)
    {
        using Walk walk = new(Words);
        Directory.CreateDirectory(walk.At("state/unsaved"));
        File.WriteAllText(walk.At("state/unsaved/odd.unsaved"), text);
        Assert.IsType<Browsing>(walk.Again().State.Mode);
        walk.Again(withFile: false);
        Assert.Contains("An empty workbook", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void BeforeTheCautionsWereRead_TheQuestionComesAfterThem()
    {
        using Walk walk = new(Words);
        walk.Enter("5 kN");
        walk.Settle().Program.Dispose();
        File.Delete(walk.At("state/cautions-read"));
        walk.Again();
        Assert.Contains("People can be hurt", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Enter);
        Assert.Contains("1 change of", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void OnTheSmallestScreen_EveryAnswerIsShown()
    {
        using Walk walk = new(Words, GridState.LeastWidth, GridState.LeastHeight);
        walk.Enter("5 kN");
        File.AppendAllText(walk.At("book.screwsheet"), "A9 = 1\n");
        walk.Again();
        walk.Program.Handle(new Resize(GridState.LeastWidth, GridState.LeastHeight + 2));
        foreach (string answer in (string[])["T  take them", "L  look at them", "P  put them away", "N  neither now"]) Assert.Contains(answer, walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void SavedButKilledBeforeTheJournalWasRemoved_NothingIsOffered()
    {
        using Walk walk = new(Words);
        walk.Enter("5 kN").Go("B1").Enter("=> A1 * 2");
        walk.Settle().Program.Dispose();
        string journal = File.ReadAllText(Journals(walk)[0]);
        walk.Again().Type("t").Settle().Ctrl('s');
        Assert.Contains("gives", walk.Saved, StringComparison.Ordinal);
        walk.Settle().Program.Dispose();
        File.WriteAllText(walk.At("state/unsaved/0123456789abcdef.unsaved"), journal);
        Assert.IsType<Browsing>(walk.Again().State.Mode);
        Assert.Empty(Journals(walk));
    }

    [Fact]
    public void ASaveCutShortAtAnyStep_IsASentence_AndTheEntriesAreThere_HereOrAtTheNextStart()
    {
        foreach (Cut cut in (Cut[])[Cut.Fails, Cut.FailsAfter])
        {
            bool isCut = true;
            for (int step = 0; isCut; step++)
            {
                using Walk walk = new(Words);
                CutDisk disk = new(step, cut, () => new IOException("No space left on device"));
                walk.Disk = disk;
                walk.Again().Enter("5 kN").Settle().Ctrl('s');
                Assert.True(walk.State.Notice!.IsTrouble || walk.Saved.Contains("5 kN", StringComparison.Ordinal), $"step {step}, {cut}: {walk.State.Notice}");
                Assert.Equal("= 5 kN", walk.Entry("A1"));
                walk.Disk = new Disk();
                walk.Again();
                if (walk.State.Mode is Confirming) walk.Type("t");
                Assert.Equal("= 5 kN", walk.Entry("A1"));
                isCut = disk.IsCut;
            }
        }
    }

    private static void WaitFor(Walk walk, Func<bool> holds)
    {
        for (int i = 0; i < 500 && !holds(); i++)
        {
            Thread.Sleep(10);
            walk.Program.TakeArrived();
        }
        Assert.True(holds());
    }
}
