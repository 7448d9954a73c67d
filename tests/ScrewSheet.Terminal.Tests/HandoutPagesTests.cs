using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests;

/// <summary>The handouts in <c>docs/handouts</c> are what the program writes of the shipped workbooks today.</summary>
public sealed class HandoutPagesTests
{
    [Theory]
    [InlineData("short-screw", "short-screw.html")]
    [InlineData("standing-out", "standing-out.html")]
    [InlineData("standard-drop", "standard-drop-blanks.html", "--blanks", "--author", "Winter course", "--date", "2026-12-05")]
    public void TheHandout_IsWhatTheProgramWrites(string workbook, string page, params string[] options)
    {
        using Session session = new() { Calculator = Calculators.OfThread };
        string output = session.At(page);
        int status = session.Run(["handout", Path.Combine(GoldenFile.Root, "workbooks", workbook + ".screwsheet"), "-o", output, .. options]);
        Assert.Equal(("", 0), (session.Error, status));
        GoldenFile.Holds($"docs/handouts/{page}", File.ReadAllText(output));
    }
}
