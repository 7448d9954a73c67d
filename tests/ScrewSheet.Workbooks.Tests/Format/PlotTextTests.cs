using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

/// <summary>Plot lines say where they stand, what is written above and which table they draw.</summary>
public sealed class PlotTextTests
{
    [Theory]
    [InlineData("plot F2 \"Moment by length\" of D2", "F2", "Moment by length", "D2")]
    [InlineData("plot F2 of D20 // the wide one", "F2", null, "D20")]
    [InlineData("  plot AA9   \"a \\\"b\\\" of C3\"   of   D2  ", "AA9", "a \"b\" of C3", "D2")]
    public void Of_ASheet_ReadsItsPlots(string line, string at, string? title, string table)
    {
        Workbook workbook = Assert.IsType<WorkbookRead>(WorkbookText.Read($"screwsheet 1\nsheet S\n{line}\n")).Workbook;
        Assert.Empty(workbook.Faults);
        PlotLine plot = Assert.Single(PlotText.Of(workbook.Sheets[0]));
        Assert.Equal((at, title, table), (plot.At.ToString(), plot.Title, plot.Table.ToString()));
    }

    [Fact]
    public void Of_ALineThatCannotBeRead_IsLeftOut()
    {
        Workbook workbook = Assert.IsType<WorkbookRead>(WorkbookText.Read("screwsheet 1\nsheet S\nplot F2\nplot F2 of D2\n")).Workbook;
        Assert.Single(workbook.Faults);
        Assert.Single(PlotText.Of(workbook.Sheets[0]));
    }

    [Fact]
    public void HeadRemarks_AreParagraphs()
    {
        Workbook workbook = Assert.IsType<WorkbookRead>(WorkbookText.Read("screwsheet 1\n// One line\n// and its end.\n// heavier climbers: another thing\n\n// A third.\nsheet S\n// not in the head\nA1 = 1 kN\n")).Workbook;
        Assert.Equal((string[])["One line and its end.", "heavier climbers: another thing", "A third."], HeadRemarks.Of(workbook).ToArray());
    }
}
