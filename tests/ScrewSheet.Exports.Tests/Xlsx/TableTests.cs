using DocumentFormat.OpenXml.Packaging;
using NPOI.SS.UserModel;
using NPOI.XSSF.UserModel;
using ScrewSheet.Exports.Tests.Support;

namespace ScrewSheet.Exports.Tests.Xlsx;

/// <summary>What-if tables in the file, and their charts.</summary>
public sealed class TableTests
{
    private const string Book = """
        screwsheet 1

        sheet S
        A1 peak [kN] = 8.5 kN
        A2 arm [mm] = 40 mm
        A3 wet = false
        B1 Torque m [N·m] => peak * arm * (wet ? 2 : 1)
        B2 small => m < 400 N·m
        B3 k => ToleranceFactor(20, 0.9, 0.9) * m / (1 N·m)

        what-if D2 "Moments"
          vary arm: 10 mm to 40 mm step 10 mm
          vary peak: 4 kN, 8 kN
          show m, small

        what-if D20
          vary arm: 10 mm to 30 mm step 10 mm
          show m, k

        what-if J2
          vary wet: false, true
          show m

        plot M2 "Over the arm" of D2

        """;

    private static ICell At(XSSFWorkbook file, string address)
    {
        Assert.True(Workbooks.Model.CellAddress.TryParse(address, out Workbooks.Model.CellAddress at));
        return file.GetSheet("S").GetRow(at.Row - 1).GetCell(at.Column - 1);
    }

    [Fact]
    public void EveryEntry_IsAFormulaOfItsHeads()
    {
        ExportedBook book = ExportedBook.Of(Book);
        XSSFWorkbook file = book.Open();
        Assert.Empty(book.Problems());
        Assert.Empty(book.Disagreements());
        Assert.Equal((24, 24), (book.Report.LiveEntries, book.Report.Entries));
        Assert.Equal("Moments", At(file, "D1").StringCellValue);
        Assert.Equal("m [N·m]; down arm [mm], across peak [kN]", At(file, "D2").StringCellValue);
        Assert.Equal("E3*1000*(D4/1000)*IF(wet,2,1)", At(file, "E4").CellFormula);
        Assert.Equal("D4", At(file, "D10").CellFormula);
    }

    [Fact]
    public void AHeadTypedOver_ChangesItsEntriesAndNoOthers()
    {
        XSSFWorkbook file = ExportedBook.Of(Book).Open();
        At(file, "E3").SetCellValue(6);
        At(file, "D5").SetCellValue(25);
        IFormulaEvaluator evaluator = file.GetCreationHelper().CreateFormulaEvaluator();
        Assert.Equal([60, 80, 150, 200], new[] { "E4", "F4", "E5", "F5" }.Select(address => Math.Round(evaluator.Evaluate(At(file, address)).NumberValue, 9)));
        Assert.Equal(1, evaluator.Evaluate(At(file, "E11")).NumberValue);
    }

    [Fact]
    public void ATableOfOneGiven_HasAChartForEachUnit_AndAPlotStandsWhereItSays()
    {
        using MemoryStream stream = new(ExportedBook.Of(Book).Bytes);
        using SpreadsheetDocument document = SpreadsheetDocument.Open(stream, isEditable: false);
        Assert.Equal(["k: 1 line", "m [N·m]: 1 line"], Charts(document, "Charts"));
        Assert.Equal(["Over the arm: 2 lines"], Charts(document, "S"));
    }

    private static string[] Charts(SpreadsheetDocument document, string sheet)
    {
        WorkbookPart book = document.WorkbookPart!;
        string id = book.Workbook.Descendants<DocumentFormat.OpenXml.Spreadsheet.Sheet>().First(candidate => candidate.Name == sheet).Id!;
        return [.. ((WorksheetPart)book.GetPartById(id)).DrawingsPart!.ChartParts.Select(part => part.ChartSpace).Select(chart =>
        {
            int lines = chart.Descendants<DocumentFormat.OpenXml.Drawing.Charts.ScatterChartSeries>().Count();
            return $"{chart.Descendants<DocumentFormat.OpenXml.Drawing.Text>().First().Text}: {lines} {(lines == 1 ? "line" : "lines")}";
        }).Order(StringComparer.Ordinal)];
    }

    [Fact]
    public void ATableVariedInWords_IsValuesAndSaysSo()
    {
        ExportedBook book = ExportedBook.Of("A1 word = \"a\"\nB1 letters => word.Length * 2\nwhat-if D2\n  vary word: \"a\", \"bcd\"\n  show letters\n");
        Assert.Equal((0, 2), (book.Report.LiveEntries, book.Report.Entries));
        Assert.Contains("word is varied in words", Assert.Single(book.Report.Fixed).Why, StringComparison.Ordinal);
        Assert.Empty(book.Problems());
    }

    [Fact]
    public void ALongChainOfResults_IsFollowedInATable()
    {
        string chain = string.Concat(Enumerable.Range(2, 600).Select(row => $"B{row} => B{row - 1} * 1.001 + 1\n"));
        ExportedBook book = ExportedBook.Of($"A1 x = 1\nB1 => x * 2\n{chain}C1 last => B601\nwhat-if E2\n  vary x: 1 to 3 step 1\n  show last\n");
        Assert.Equal((3, 3), (book.Report.LiveEntries, book.Report.Entries));
        Assert.Empty(book.Disagreements());
    }
}
