using System.Text.RegularExpressions;
using ScrewSheet.Exports.Html;
using ScrewSheet.Exports.Markdown;
using ScrewSheet.Exports.Tables;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Tests.Html;

/// <summary>The variant for students has the same parts and no answer anywhere, neither shown nor in the markup.</summary>
public sealed partial class BlanksTests
{
    // figures that stand nowhere in what the author wrote
    private const string Text = """
        screwsheet 1
        title Work it out
        sheet S
        A1 "Load"
        B1 load [kN] = 4.37 kN
        A2 "Arm"
        B2 arm [mm] = 53 mm
        A3 "Moment"
        B3 Torque moment [N·m, 1 decimal] => load * arm
        A4 "Weight of it"
        B4 w [kN, 4 decimals] => Weight(91 kg)
        A5 "Ratio"
        B5 r [4 decimals] => FrictionRatio(0.77, 200 °)
        A6 "Is it strong enough?"
        B6 strong => moment < 7000 N·m
        A7 "Words"
        B7 words => $"the moment is {moment:N·m, 3 decimals}"
        A8 "A section"
        B8 section => Tube(19.3 mm, 1.7 mm)

        what-if D2 "Moment by arm"
          vary arm: 11 mm, 22 mm
          show moment
        plot F2 "Moment" of D2
        """;

    private static readonly string[] Answers = ["231.6", "0.8924", "14.69", "14.7", ">holds<", ": holds", "231.610", "94.0", "93.99", "1.470"];

    [Fact]
    public void TheSolvedOne_HasTheAnswers()
    {
        string html = HandoutHtml.Write(Request(false));
        Assert.All((string[])["231.6", "0.8924", "14.69", ">holds<", "231.610"], answer => Assert.Contains(answer, html, StringComparison.Ordinal));
    }

    [Fact]
    public void TheOtherOne_HasNone()
    {
        foreach (string page in (string[])[HandoutHtml.Write(Request(true)), HandoutMarkdown.Write(Request(true))])
        {
            Assert.All(Answers, answer => Assert.DoesNotContain(answer, page, StringComparison.Ordinal));
            Assert.Contains("4.37", page, StringComparison.Ordinal);
            Assert.Contains("_____", page.Replace("\\_", "_", StringComparison.Ordinal), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void BothHaveTheSameParts()
    {
        var solved = HandoutHtmlTests.Check(HandoutHtml.Write(Request(false)));
        var blank = HandoutHtmlTests.Check(HandoutHtml.Write(Request(true)));
        foreach (string part in (string[])["h1, h2, h3", "table", "th", "td", ".math", ".with li", "svg", "figcaption", ".by-call", ".step"])
            Assert.Equal(solved.QuerySelectorAll(part).Length, blank.QuerySelectorAll(part).Length);
    }

    /// <summary>In the shipped workbooks no figure that was worked out is left, unless its author wrote it as well.</summary>
    [Theory]
    [InlineData("short-screw")]
    [InlineData("standard-drop")]
    [InlineData("standing-out")]
    public void ShippedWorkbooks_LoseEveryFigureThatWasWorkedOut(string name)
    {
        Calculation calculation = Made.Shipped(name);
        string html = HandoutHtml.Write(Made.Request(calculation, blanks: true));
        HashSet<string> shown = [.. Figure().Matches(Words(html)).Select(match => match.Value)];
        string own = string.Concat(calculation.Workbook.Sheets.SelectMany(sheet => sheet.CellsInOrder).Select(cell => cell.Content switch
        {
            NoteContent note => note.Text, GivenContent given => given.Text, ResultContent result => result.Expression, _ => "",
        } + " " + cell.Remark + " ")) + string.Concat(HeadRemarks.Of(calculation.Workbook));
        foreach (CellResult cell in calculation.Cells.Values.Where(cell => cell.Cell.Content is ResultContent && cell.Value is NumberValue or QuantityValue))
        {
            string figure = ValueText.Format(cell.Value!, cell.Cell.Format, calculation.Workbook.Head.Units).Number;
            if (figure.Length > 3 && !own.Contains(figure, StringComparison.Ordinal)) Assert.DoesNotContain(figure, shown);
        }
    }

    private static Pages.HandoutRequest Request(bool blanks)
    {
        Calculation calculation = Made.Calculate(Text);
        CellId moment = new("S", new CellAddress(2, 3)), arm = new("S", new CellAddress(2, 2));
        ComputedTable table = new()
        {
            Sheet = "S", Anchor = new CellAddress(4, 2), Title = "Moment by arm",
            Axes = [new TableAxis(arm, "arm", null, [new TableEntry("11", 11), new TableEntry("22", 22)])],
            Columns = [new TableColumn(moment, "moment", null, null, false, [new TableEntry("48.07", 48.07), new TableEntry("96.14", 96.14)])],
        };
        Pages.HandoutRequest request = Made.Request(calculation, blanks) with { Tables = [table] };
        if (blanks) Assert.DoesNotContain("48.07", HandoutHtml.Write(request), StringComparison.Ordinal);
        return request;
    }

    private static string Words(string html) => new AngleSharp.Html.Parser.HtmlParser().ParseDocument(html).Body!.TextContent;

    [GeneratedRegex(@"\d+(\.\d+)?", RegexOptions.CultureInvariant)]
    private static partial Regex Figure();
}
