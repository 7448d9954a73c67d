using System.Text;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Terminal.Handouts;

namespace ScrewSheet.Terminal.Tests.Grid.Passing;

/// <summary>The workbook passed on as a file: what is on the screen, where the reader says, never over a file unasked.</summary>
public sealed class PassingOnTests
{
    private const KeyName Enter = KeyName.Enter;

    [Fact]
    public void AHandout_StandsBesideTheWorkbook_AndHoldsWhatIsNotSaved()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("extra [kN] => peak * 2").Settle().Command('6');
        Assert.Contains("H  a handout: every result worked out (.html, .pdf, .md)", walk.Screen, StringComparison.Ordinal);
        walk.Type("h");
        Assert.Equal(walk.At("book.html"), Assert.IsType<Stepping>(walk.State.Mode).Typed.Text);
        Assert.Contains("with the changes that are not saved", walk.Screen, StringComparison.Ordinal);
        walk.Press(Enter).Settle();
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.StartsWith($"Wrote {walk.At("book.html")}. It holds what is on the screen, with the changes that are not saved.", walk.State.Notice!.Text, StringComparison.Ordinal);
        Assert.Contains("extra", File.ReadAllText(walk.At("book.html")), StringComparison.Ordinal);
        Assert.Equal(Book.Text, walk.Saved);
        Assert.True(walk.State.Open.IsUnsaved);
    }

    [Fact]
    public void WhatIsSaid_NamesCellsThatNeedAttention()
    {
        using Walk walk = new(Book.Text);
        walk.Command('6').Type("h").Press(Enter).Settle();
        Assert.EndsWith("It holds what is on the screen. 3 cells need attention; the file holds them so.", walk.State.Notice!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void AnExercise_HoldsNoAnswer()
    {
        using Walk walk = new(Book.Text);
        walk.Command('6').Type("b").Press(Enter).Settle();
        string page = File.ReadAllText(walk.At("book-exercise.html"));
        Assert.Contains("8.5", page, StringComparison.Ordinal);
        Assert.DoesNotContain("340", page, StringComparison.Ordinal);
    }

    [Fact]
    public void TheEndingTyped_SaysWhatAHandoutBecomes()
    {
        using Walk walk = new(Book.Text);
        walk.Command('6').Type("h").Ctrl('u').Type(walk.At("page.md")).Press(Enter).Settle();
        Assert.Contains("# A walk", File.ReadAllText(walk.At("page.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void InUsUnits_WhereTheWorkbookIs()
    {
        // 1000 lbf, exactly: 0.45359237 · 9.80665 · 1000 N (Thompson and Taylor, NIST Special Publication 811, 2008, Appendix B)
        using Walk walk = new("screwsheet 1\nsheet S\nA1 load = 4448.2216152605 N\nA2 twice => load * 2\n");
        walk.Command('1').Settle().Command('6').Type("h").Ctrl('u').Type(walk.At("page.md")).Press(Enter).Settle();
        Assert.Contains("2000 lbf", File.ReadAllText(walk.At("page.md")).Replace('\u00A0', ' '), StringComparison.Ordinal);
    }

    [Fact]
    public void AnXlsx_SaysHowManyResultsAreLive()
    {
        using Walk walk = new(Book.Text);
        walk.Command('6').Type("x").Press(Enter).Settle();
        Assert.StartsWith("PK", Encoding.Latin1.GetString(File.ReadAllBytes(walk.At("book.xlsx"))), StringComparison.Ordinal);
        Assert.Contains("5 of 7 results are formulas. The first sheet lists the others and why.", walk.State.Notice!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void ACsv_IsOfTheSheetTheReaderIsOn()
    {
        using Walk walk = new(Book.Text);
        walk.Type(">").Command('6').Type("c").Press(Enter).Settle();
        string table = File.ReadAllText(walk.At("book-Other.csv"));
        Assert.Contains("A1,twice,17,kN", table, StringComparison.Ordinal);
        Assert.DoesNotContain("peak", table, StringComparison.Ordinal);
    }

    [Fact]
    public void AFileThatIsThere_IsReplacedOnYesOnly()
    {
        using Walk walk = new(Book.Text);
        File.WriteAllText(walk.At("book.html"), "mine");
        walk.Command('6').Type("h").Press(Enter).Settle();
        Assert.Contains("book.html is there already.", walk.Screen, StringComparison.Ordinal);
        walk.Type("b");
        Assert.Equal("Nothing was written.", walk.State.Notice?.Text);
        walk.Command('6').Type("h").Press(Enter).Settle().Press(KeyName.Escape);
        Assert.Equal("mine", File.ReadAllText(walk.At("book.html")));
        walk.Command('6').Type("h").Press(Enter).Settle().Type("o").Ctrl('u').Type(walk.At("other")).Press(Enter).Settle();
        Assert.True(File.Exists(walk.At("other.html")));
        Assert.Equal("mine", File.ReadAllText(walk.At("book.html")));
        walk.Command('6').Type("h").Press(Enter).Settle().Type("r").Settle();
        Assert.StartsWith("Replaced ", walk.State.Notice?.Text, StringComparison.Ordinal);
        Assert.Contains("<html", File.ReadAllText(walk.At("book.html")), StringComparison.Ordinal);
    }

    [Fact]
    public void TheWorkbooksOwnFile_IsNeverWrittenOver_ThroughALinkEither()
    {
        using Walk walk = new(Book.Text);
        File.CreateSymbolicLink(walk.At("way.csv"), walk.At("book.screwsheet"));
        walk.Command('6').Type("c").Ctrl('u').Type(walk.At("way.csv")).Press(Enter).Settle();
        Assert.Contains("is this workbook's own file. Choose another name.", Trouble(walk), StringComparison.Ordinal);
        Assert.Equal(Book.Text, walk.Saved);
    }

    [Theory]
    [InlineData('h', "no-such-folder/page.html", "there is no folder")]
    [InlineData('h', "book.screwsheet/page.html", "cannot be written")]
    [InlineData('x', "/proc/page.xlsx", "cannot be written")]
    [InlineData('c', "page-\0.csv", "is no file name")]
    [InlineData('h', "page.txt", "End it with .html, .md or .pdf.")]
    [InlineData('x', "page.csv", "End it with .xlsx.")]
    [InlineData('c', "page.xlsx", "End it with .csv.")]
    [InlineData('h', "", "A file needs a name.")]
    public void WhatCannotBeWritten_IsASentence_AndTheWorkIsKept(char form, string name, string sentence)
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Settle().Command('6').Type(form.ToString()).Ctrl('u').Type(name.Length == 0 ? "" : walk.At(name)).Press(Enter).Settle();
        Assert.Contains(sentence, Trouble(walk), StringComparison.Ordinal);
        Assert.Equal("= 5 kN", walk.Entry("C2"));
        Assert.True(walk.State.Open.IsUnsaved);
        Assert.Equal(Book.Text, walk.Saved);
    }

    [Fact]
    public void WithoutABrowser_ThePdfIsASentenceThatNamesTheWay()
    {
        string? before = Environment.GetEnvironmentVariable(Printing.Variable);
        try
        {
            Environment.SetEnvironmentVariable(Printing.Variable, "/nowhere/browser");
            using Walk walk = new(Book.Text);
            walk.Command('6').Type("h").Ctrl('u').Type(walk.At("page.pdf")).Press(Enter).Settle();
            Assert.Contains("No Chromium or Chrome was found", Trouble(walk), StringComparison.Ordinal);
            Assert.Contains("Write the handout as .html", walk.Screen, StringComparison.Ordinal);
            Assert.False(File.Exists(walk.At("page.pdf")));
        }
        finally
        {
            Environment.SetEnvironmentVariable(Printing.Variable, before);
        }
    }

    [Fact]
    public void BeforeTheResultsAreIn_NothingIsPassedOn()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C2").Enter("5 kN").Command('6');
        Assert.Equal("The results are not all in yet; pass the workbook on when they are.", walk.State.Notice?.Text);
        walk.Settle();
    }

    private static string Trouble(Walk walk) => Assert.IsType<Stepping>(walk.State.Mode).Trouble ?? "";
}
