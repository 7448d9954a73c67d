using System.Net;
using System.Text.RegularExpressions;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Tests.Harmless;
using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests;

/// <summary>Whoever is handed a number is told what it is worth and whose word counts, also where its author wrote no caution.</summary>
public sealed partial class CautionTests
{
    private const string Plain = "screwsheet 1\n\nsheet S\nA1 force = 5 kN\nA2 arm = 40 mm\nA3 moment => force * arm\n";

    [Theory]
    [InlineData("handout", "out.html")]
    [InlineData("handout", "out.md")]
    [InlineData("handout", "out.html", "--blanks")]
    [InlineData("export", "out.xlsx")]
    public void WhatIsHandedOut(string verb, string file, params string[] more)
    {
        using Session session = new() { Calculator = Calculators.OfThread };
        Assert.Equal(0, session.Run([verb, session.File("book.screwsheet", Plain), "-o", session.At(file), .. more]));
        HasTheUsual(file.EndsWith(".xlsx", StringComparison.Ordinal) ? HarmlessFiles.Xlsx(File.ReadAllBytes(session.At(file))) : File.ReadAllText(session.At(file)));
    }

    [Fact]
    public void TheHelp()
    {
        using Session session = new();
        session.Run("--help");
        HasTheUsual(session.Output);
    }

    [Fact]
    public void TheFirstPageOfTheGrid() => HasTheUsual(string.Join('\n', Pages.Lines(PageName.Cautions, 78).Select(line => line.Text)));

    [Fact]
    public void TheReadme() => HasTheUsual(File.ReadAllText(Path.Combine(GoldenFile.Root, "README.md")));

    private static void HasTheUsual(string text)
    {
        string words = Blanks().Replace(WebUtility.HtmlDecode(text), " ");
        foreach (string needed in (string[])["People can be hurt", "estimate", "permit", "manufacturer's instructions, local codes and licensed or certified practice decide"])
            Assert.Contains(needed, words, StringComparison.OrdinalIgnoreCase);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
