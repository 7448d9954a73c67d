using PuppeteerSharp;
using PuppeteerSharp.Media;
using ScrewSheet.TestKit;

namespace ScrewSheet.Browser.Tests;

/// <summary>The handouts of <c>docs/</c>, opened as a reader opens them: on a screen, on a phone, on paper.</summary>
[Collection(nameof(Browsers))]
public sealed class HandoutsInTheBrowser(Browsers browsers)
{
    private const double LeastContrast = 7;

    public static TheoryData<string> Handouts => [.. Directory.EnumerateFiles(Path.Combine(GoldenFile.Root, "docs", "handouts"), "*.html").Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal)];

    [Fact]
    public void ThereAreThree() => Assert.Equal(3, Handouts.Count);

    [Theory]
    [MemberData(nameof(Handouts))]
    public async Task NothingIsFetched_AndTheConsoleIsSilent(string file)
    {
        List<string> requests = [], said = [];
        await using IPage page = await browsers.Browser.NewPageAsync();
        page.Request += (_, asked) => requests.Add(asked.Request.Url);
        page.Console += (_, line) => said.Add(line.Message.Text);
        page.PageError += (_, error) => said.Add(error.Message);
        string address = Address(file);
        await page.GoToAsync(address, WaitUntilNavigation.Networkidle0);
        Assert.Equal([address], requests);
        Assert.Empty(said);
    }

    [Theory]
    [MemberData(nameof(Handouts))]
    public async Task EveryFormula_HasSizeAndIsUnderstood(string file)
    {
        await using IPage page = await Open(file, 900);
        Formulas formulas = await page.EvaluateExpressionAsync<Formulas>("""
            (() => {
              const all = [...document.querySelectorAll('math, math *')].filter(e => e.localName !== 'none');
              const flat = all.filter(e => e.localName !== 'mspace' && e.textContent.trim().length > 0).filter(e => { const b = e.getBoundingClientRect(); return !(b.width > 0 && b.height > 0); });
              const foreign = all.filter(e => e.namespaceURI !== 'http://www.w3.org/1998/Math/MathML');
              const fractions = [...document.querySelectorAll('mfrac')].filter(e => e.children[0].getBoundingClientRect().bottom > e.children[1].getBoundingClientRect().top + 1);
              return { count: document.querySelectorAll('math').length, flat: flat.map(e => e.outerHTML), foreign: foreign.length, fractions: fractions.length };
            })()
            """);
        Assert.True(formulas.Count > 20, $"{formulas.Count} formulas");
        Assert.Empty(formulas.Flat);
        Assert.Equal((0, 0), (formulas.Foreign, formulas.Fractions));
    }

    [Theory]
    [MemberData(nameof(Handouts))]
    public async Task EveryText_HasContrast(string file)
    {
        await using IPage page = await Open(file, 900);
        double[] contrasts = await page.EvaluateExpressionAsync<double[]>("""
            (() => {
              const light = c => { const [r, g, b] = c.match(/[\d.]+/g).map(Number).map(v => v / 255).map(v => v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4); return 0.2126 * r + 0.7152 * g + 0.0722 * b; };
              const behind = e => { for (; e; e = e.parentElement) { const c = getComputedStyle(e).backgroundColor; if (!c.startsWith('rgba(0, 0, 0, 0')) return c; } return 'rgb(255, 255, 255)'; };
              return [...document.querySelectorAll('body *')].filter(e => [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim())).map(e => {
                const svg = e.namespaceURI.endsWith('svg'), s = getComputedStyle(e), front = light(svg ? s.fill : s.color), back = light(behind(e));
                return (Math.max(front, back) + 0.05) / (Math.min(front, back) + 0.05);
              });
            })()
            """);
        Assert.NotEmpty(contrasts);
        Assert.True(contrasts.Min() >= LeastContrast, $"{contrasts.Min()}");
    }

    [Theory]
    [MemberData(nameof(Handouts))]
    public async Task OnAPhone_OnlyWideTablesAndLongFractionsScroll(string file)
    {
        await using IPage page = await Open(file, 360);
        string[] wide = await page.EvaluateExpressionAsync<string[]>("""
            [...document.querySelectorAll('body *')].filter(e => !e.closest('.wide, .math, .with li') && e.getBoundingClientRect().right > innerWidth + 1).map(e => e.outerHTML.slice(0, 200))
            """);
        Assert.Empty(wide);
        int scroll = await page.EvaluateExpressionAsync<int>("document.documentElement.scrollWidth - innerWidth");
        Assert.InRange(scroll, int.MinValue, 0);
    }

    [Theory]
    [MemberData(nameof(Handouts))]
    public async Task EveryTable_HasHeadsThatTheBrowserKnowsAsHeads(string file)
    {
        await using IPage page = await Open(file, 900);
        ICDPSession session = await page.CreateCDPSessionAsync();
        var tree = await session.SendAsync<AccessibilityTree>("Accessibility.getFullAXTree");
        string[] roles = [.. tree.Nodes.Where(node => !node.Ignored).Select(node => node.Role?.Value.ToString() ?? "")];
        int tables = await page.EvaluateExpressionAsync<int>("document.querySelectorAll('table').length");
        Assert.Equal(tables, roles.Count(role => role == "table"));
        Assert.True(roles.Count(role => role == "columnheader") >= 2 * tables, $"{roles.Count(role => role == "columnheader")} heads over {tables} tables");
        Assert.Contains("rowheader", roles);
        Assert.All(tree.Nodes.Where(node => !node.Ignored && node.Role?.Value.ToString() is "image" or "table"), node => Assert.NotEmpty(node.Name?.Value.ToString() ?? ""));
    }

    /// <summary>Pages counted on the printed file; a handout that grows says so here and its number is looked at again.</summary>
    [Theory]
    [InlineData("short-screw.html", 7, 9)]
    [InlineData("standing-out.html", 5, 7)]
    [InlineData("standard-drop-blanks.html", 11, 14)]
    public async Task OnPaper_ItHasAsManyPagesAsExpected(string file, int least, int most)
    {
        await using IPage page = await Open(file, 900);
        byte[] pdf = await page.PdfDataAsync(new PdfOptions { Format = PaperFormat.A4, PreferCSSPageSize = true });
        int pages = System.Text.Encoding.Latin1.GetString(pdf).Split("/Type /Page\n").Length - 1;
        Assert.InRange(pages, least, most);
    }

    private async Task<IPage> Open(string file, int width)
    {
        IPage page = await browsers.Browser.NewPageAsync();
        await page.SetViewportAsync(new ViewPortOptions { Width = width, Height = 800 });
        await page.GoToAsync(Address(file), WaitUntilNavigation.Load);
        return page;
    }

    private static string Address(string file) => new Uri(Path.Combine(GoldenFile.Root, "docs", "handouts", file)).AbsoluteUri;

    private sealed record Formulas(int Count, string[] Flat, int Foreign, int Fractions);

    private sealed record AccessibilityTree(AccessibleNode[] Nodes);

    private sealed record AccessibleNode(bool Ignored, AccessibleValue? Role, AccessibleValue? Name);

    private sealed record AccessibleValue(System.Text.Json.JsonElement Value);
}
