using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using ScrewSheet.Exports.Html;
using ScrewSheet.Exports.Markdown;

namespace ScrewSheet.Exports.Tests.Html;

/// <summary>A handout is correct HTML, keeps what it is told to keep, and obeys nothing that a file says.</summary>
public sealed class HandoutHtmlTests
{
    private const string Hostile = "</title><script>alert(1)</script><img src=x onerror=alert(1)> & \\\"quoted\\\" 'q' <!-- ]]> \\u202E \\u0007 javascript:";

    public static TheoryData<string> Workbooks => ["short-screw", "standard-drop", "standing-out", "placement-study", "batch-rating"];

    [Theory]
    [MemberData(nameof(Workbooks))]
    public void ShippedWorkbooks_AreCorrectHtml(string name)
    {
        foreach (bool blanks in (bool[])[false, true]) Check(HandoutHtml.Write(Made.Request(Made.Shipped(name), blanks)));
    }

    [Fact]
    public void AHostileFile_ChangesNothingButWords()
    {
        string text = $"""
            screwsheet 1
            title {Hostile.Replace("\\\"", "\"", StringComparison.Ordinal)}
            author <script>alert(2)</script>
            date "><img src=y>
            // <script>alert(3)</script>

            sheet S "{Hostile}"
            column D word
            A1 "{Hostile}"
            A2 "{Hostile}"
            B2 x = 3 kN source "{Hostile}" // {Hostile}
            A3 "{Hostile}"
            B3 y => x * 2 // {Hostile}
            B4 z = "{Hostile}"
            B5 t => $"a {Hostile.Replace("<", "<", StringComparison.Ordinal)} b"
            D7 = "{Hostile}"
            B8 line that cannot be read <script>alert(4)</script>
            """;
        IHtmlDocument page = Check(HandoutHtml.Write(Made.Request(Made.Calculate(text)) with { Author = "<b>me</b>", Date = "<i>now</i>" }));
        Assert.Empty(page.QuerySelectorAll("script, img, i, iframe, object, embed, [onerror], [onload], [onclick], link, form, base"));
        Assert.Contains("<script>alert(1)</script>", page.Body!.TextContent, StringComparison.Ordinal);
        Assert.Contains("<b>me</b>, <i>now</i>", page.Body.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain('\u202E', page.DocumentElement.OuterHtml);
        Assert.DoesNotContain('\u0007', page.DocumentElement.OuterHtml);

        string markdown = HandoutMarkdown.Write(Made.Request(Made.Calculate(text)));
        Assert.DoesNotContain("<script", markdown, StringComparison.Ordinal);
        Assert.DoesNotContain("<img", markdown, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Workbooks))]
    public void NoHandout_AsksForAnythingElse(string name)
    {
        string html = HandoutHtml.Write(Made.Request(Made.Shipped(name)));
        IHtmlDocument page = Check(html);
        Assert.Empty(page.QuerySelectorAll("[src], link, script, [style*=url]"));
        Assert.DoesNotContain("url(", html, StringComparison.Ordinal);
        Assert.All(page.QuerySelectorAll("a"), link => Assert.NotNull(page.GetElementById(link.GetAttribute("href")![1..])));
    }

    [Fact]
    public void SameWorkbook_GivesTheSameBytes() =>
        Assert.Equal(HandoutHtml.Write(Made.Request(Made.Shipped("standard-drop"))), HandoutHtml.Write(Made.Request(Made.Shipped("standard-drop"))));

    [Fact]
    public void WithoutADate_NoneIsPrinted()
    {
        string html = HandoutHtml.Write(Made.Request(Made.Calculate("screwsheet 1\ntitle T\nauthor A\nsheet S\nA1 = 1 kN\n")));
        Assert.Contains("<p class=\"by\">A</p>", html, StringComparison.Ordinal);
        Assert.Contains("<p class=\"by\">A, 2026-01-31</p>", HandoutHtml.Write(Made.Request(Made.Calculate("screwsheet 1\ntitle T\nauthor A\ndate 2026-01-31\nsheet S\nA1 = 1 kN\n"))), StringComparison.Ordinal);
    }

    [Fact]
    public void AFault_AFailingCheckAndACaution_StandAtTheTop()
    {
        const string text = "screwsheet 1\nsheet S\nA1 x = 0 kN\nA2 q => 2 kN / x\nA3 ok => x > 1 kN\nA4 r => FrictionRatio(0.9, 90 °)\n";
        string top = Check(HandoutHtml.Write(Made.Request(Made.Calculate(text)))).QuerySelector(".cautions")!.TextContent;
        Assert.Contains("S.q has no value", top, StringComparison.Ordinal);
        Assert.Contains("The check S.ok FAILS.", top, StringComparison.Ordinal);
        Assert.Contains("S.r: FrictionRatio", top, StringComparison.Ordinal);
        Assert.Contains("People can be hurt", top, StringComparison.Ordinal);
    }

    [Fact]
    public void InUsUnits_GivensFormulasAndResultsAreConverted()
    {
        const string text = "screwsheet 1\nsheet S\nA1 x [kN] = 8.5 kN ± 0.5 kN within 0 kN to 20 kN\nA2 a [m, 1 decimal] = 2 m\nA3 Torque m [N·m, 1 decimal] => x * a + 10 N·m\n";
        string words = Check(HandoutHtml.Write(Made.Request(Made.Calculate(text, Quantities.Units.UnitSystem.US), allUnits: true))).Body!.TextContent;
        Assert.Contains("1911\u00A0lbf", words, StringComparison.Ordinal);
        Assert.Contains("112 lbf", words, StringComparison.Ordinal);
        Assert.Contains("6.56", words, StringComparison.Ordinal);
        Assert.Contains("ft·lbf", words, StringComparison.Ordinal);
        Assert.DoesNotContain("8.5", words, StringComparison.Ordinal);
    }

    /// <summary>Parses as strictly as the standard allows and looks at what every reader needs.</summary>
    internal static IHtmlDocument Check(string html)
    {
        IHtmlDocument page = new HtmlParser(new HtmlParserOptions { IsStrictMode = true }).ParseDocument(html);
        Assert.Equal("en", page.DocumentElement.GetAttribute("lang"));
        Assert.NotEmpty(page.Title!);
        int before = 0;
        foreach (IElement heading in page.QuerySelectorAll("h1, h2, h3, h4, h5, h6"))
        {
            int level = heading.LocalName[1] - '0';
            Assert.True(level <= before + 1, $"{heading.TextContent} skips a level");
            before = level;
        }
        Assert.Single(page.QuerySelectorAll("h1"));
        Assert.All(page.QuerySelectorAll("th"), head => Assert.Contains(head.GetAttribute("scope"), (string[])["col", "row", "colgroup"]));
        Assert.All(page.QuerySelectorAll("table"), table => Assert.NotEmpty(table.QuerySelector("caption")!.TextContent));
        Assert.All(page.QuerySelectorAll("table"), table => Assert.Single(table.QuerySelectorAll("tr").Select(Wide).Distinct()));
        Assert.All(page.QuerySelectorAll("svg"), svg => Assert.All(svg.GetAttribute("aria-labelledby")!.Split(' '), id => Assert.NotEmpty(page.GetElementById(id)!.TextContent)));
        string[] names = [.. page.QuerySelectorAll("[id]").Select(element => element.Id!)];
        Assert.Equal(names.Length, names.Distinct().Count());
        Assert.All(page.QuerySelectorAll("mfrac, msup, msub, mroot"), element => Assert.Equal(2, element.ChildElementCount));
        return page;
    }

    private static int Wide(IElement row) => row.Children.Sum(cell => int.Parse(cell.GetAttribute("colspan") ?? "1", System.Globalization.CultureInfo.InvariantCulture));
}
