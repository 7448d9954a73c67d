using ScrewSheet.Terminal.Handouts;

namespace ScrewSheet.Terminal.Tests.Commands;

/// <summary>The verb <c>handout</c>: what it writes, what it never writes over, how it ends.</summary>
public sealed class HandoutTests
{
    private const string Text = """
        screwsheet 1
        title A small one
        sheet S
        A1 "Load"
        B1 load [kN] = 4 kN
        B2 twice => load * 2

        """;

    [Theory]
    [InlineData("out.html", "<!DOCTYPE html>\n<html lang=\"en\">")]
    [InlineData("out.htm", "<!DOCTYPE html>\n<html lang=\"en\">")]
    [InlineData("out.md", "# A small one\n")]
    public void TheEndingSaysWhatIsWritten(string name, string beginning)
    {
        using Session session = Real();
        Assert.Equal(0, Write(session, Text, name));
        Assert.StartsWith(beginning, File.ReadAllText(session.At(name)), StringComparison.Ordinal);
        Assert.Equal(($"Wrote {name}.\n", ""), (session.Output, session.Error));
    }

    [Theory]
    [InlineData("out.docx")]
    [InlineData("out")]
    public void AnotherEnding_IsRefused(string name)
    {
        using Session session = Real();
        Assert.Equal(2, Write(session, Text, name));
        Assert.Equal($"screwsheet: {name} has no ending that says what to write. End it with .html, .md or .pdf.\n", session.Error);
    }

    [Theory]
    [InlineData("out.html")]
    [InlineData("out.md")]
    public void AFileThatIsThere_IsWrittenOverOnlyWhenAsked(string name)
    {
        using Session session = Real();
        session.File(name, "my own page\n");
        Assert.Equal(2, Write(session, Text, name));
        Assert.Equal("my own page\n", File.ReadAllText(session.At(name)));
        Assert.Equal($"screwsheet: {name} is there already and was left as it is. Choose another name, or say --replace.\n", session.Error);

        Assert.Equal(0, Write(session, Text, name, "--replace"));
        Assert.Contains("A small one", File.ReadAllText(session.At(name)), StringComparison.Ordinal);
        Assert.Equal($"Replaced {name}.\n", session.Output);
    }

    [Fact]
    public void TheWorkbookItself_IsNeverWrittenOver()
    {
        using Session session = Real();
        string file = session.File("w.md", Text);
        Assert.Equal(2, session.Run("handout", file, "-o", file));
        Assert.Equal(Text, File.ReadAllText(file));
    }

    [Fact]
    public void AFailingCheck_IsWrittenAndEndsWithOne()
    {
        using Session session = Real();
        Assert.Equal(1, Write(session, Text + "B3 ok => twice < 7 kN\n", "out.md"));
        Assert.Contains("The check S.ok FAILS.", File.ReadAllText(session.At("out.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void AnAuthorAndADateGivenHere_GoBeforeThoseOfTheFile()
    {
        using Session session = Real();
        Assert.Equal(0, Write(session, Text.Replace("sheet S", "author Somebody\ndate 2026-01-02\nsheet S", StringComparison.Ordinal), "out.md", "--author", "Winter course", "--date", "2026-12-05"));
        Assert.Contains("Winter course, 2026-12-05\n", File.ReadAllText(session.At("out.md")), StringComparison.Ordinal);
    }

    [Fact]
    public void BothSystemsAtOnce_AreRefused()
    {
        using Session session = Real();
        Assert.Equal(2, Write(session, Text, "out.md", "--us", "--si"));
        Assert.Equal("screwsheet: --us and --si exclude each other. Choose one.\n", session.Error);
    }

    [Fact]
    public void InUsUnits_AllIsShownInThem()
    {
        using Session session = Real();
        Assert.Equal(0, Write(session, Text, "out.md", "--us"));
        string page = File.ReadAllText(session.At("out.md")).Replace('\u00A0', ' ');
        Assert.Contains("899.2 lbf", page, StringComparison.Ordinal);
        Assert.DoesNotContain("kN", page, StringComparison.Ordinal);
    }

    [Fact]
    public void WithoutABrowser_ASentenceNamesTheWay()
    {
        foreach ((string? named, string? path) in new[] { (null, Path.GetTempPath()), (null, null), ("/nowhere/browser", "/usr/bin") })
        {
            UserMistake mistake = Assert.Throws<UserMistake>(() => Printing.Browser(named, path));
            Assert.Equal("No Chromium or Chrome was found to print the PDF. Write the handout as .html and print it from a browser, or name one in SCREWSHEET_BROWSER.", mistake.Message);
        }
    }

    [Fact]
    public void ABrowserThatPrintsNothing_IsSaid()
    {
        if (OperatingSystem.IsWindows()) return;
        UserMistake mistake = Assert.Throws<UserMistake>(() => Printing.Pdf("<p>", "/bin/true"));
        Assert.Equal("/bin/true did not print the handout. Write it as .html and print it from a browser.", mistake.Message);
    }

    [Fact]
    public void APlotOfNoTable_IsSaid()
    {
        using Session session = Real();
        Write(session, Text + "plot F2 \"Nothing\" of D2\n", "out.md");
        Assert.Contains("The plot at F2 is not drawn: no what-if table stands at D2.", File.ReadAllText(session.At("out.md")), StringComparison.Ordinal);
    }

    private static Session Real() => new() { Calculator = Calculators.OfThread };

    private static int Write(Session session, string text, string name, params string[] options) => session.Run(["handout", session.File("w.screwsheet", text), "-o", session.At(name), .. options]);
}
