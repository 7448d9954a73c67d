using NPOI.SS.UserModel;
using NPOI.XSSF.UserModel;
using ScrewSheet.Exports.Tests.Support;

namespace ScrewSheet.Exports.Tests.Xlsx;

/// <summary>What cells of the file hold, show and say.</summary>
public sealed class CellTests
{
    private static ICell At(XSSFWorkbook file, string sheet, string address)
    {
        Assert.True(Workbooks.Model.CellAddress.TryParse(address, out Workbooks.Model.CellAddress at));
        return file.GetSheet(sheet).GetRow(at.Row - 1).GetCell(at.Column - 1);
    }

    private static ICell At(string lines, string address) => At(ExportedBook.Of(lines).Open(), "S", address);

    [Theory]
    [InlineData("B2 peak [kN] = 8.5 kN", 8.5, "General\" kN\"")]
    [InlineData("B2 peak [kN, 2 decimals] = 8.5 kN", 8.5, "0.00\" kN\"")]
    [InlineData("B2 exposed [mm] = 40 mm", 40, "General\" mm\"")]
    [InlineData("B2 share [%] = 12.5 %", 0.125, "0.0\\ %")]
    [InlineData("B2 cold [°C] = -4 °C", -4, "General\" °C\"")]
    [InlineData("B2 angle [°] = 15 °", 15, "General\" °\"")]
    [InlineData("B2 m => 3 kN * 40 mm", 120, "0.0\" N·m\"")]
    [InlineData("B2 m [3 digits] => 2 / 3", 0.6666666666666666, "0.000")]
    [InlineData("B2 m [1 decimal down] => 2 / 3", 0.6666666666666666, "0.000")]
    [InlineData("B2 m => 1 / 3e20", 3.3333333333333333e-21, "0.000E+00")]
    public void ACellHoldsTheNumberItShows_AndItsFormatTheUnit(string line, double number, string format)
    {
        ICell cell = At(line + "\n", "B2");
        Assert.Equal(number, cell.NumericCellValue, Math.Abs(number) * 1e-14);
        Assert.Equal(format, cell.CellStyle.GetDataFormatString());
    }

    [Theory]
    [InlineData("A1 peak = 8.5 kN\nA2 exposed = 40 mm\nB1 m [N·m] => peak * exposed\n", "B1", "peak*1000*(exposed/1000)")]
    [InlineData("A1 = 8.5 kN\nB1 [kN] => A1 * 2\n", "B1", "A1*1000*2/1000")]
    [InlineData("A1 a = 15 °\nB1 => Sin(a)\n", "B1", "SIN(a*PI()/180)")]
    [InlineData("A1 x = 2\nB1 => -x * x - Pow(-x, 2)\n", "B1", "(-x)*x-(-x)^2")]
    [InlineData("A1 x = 2\nB1 => x < 3\n", "B1", "IF(x<3,1,0)")]
    [InlineData("A1 x = 2\nB1 bool y => x < 3\n", "B1", "x<3")]
    [InlineData("A1 x = 2 m\nB1 => x <= 3 m\n", "B1", "IF(x/1000-3<=1E-12*MAX(ABS(x/1000),ABS(3)),1,0)")]
    [InlineData("A1 x [mm] = 48.3 mm\nB1 => x < 48.3 mm\n", "B1", "IF(x/1000<48.3/1000,1,0)")]
    [InlineData("A1 word = \"a\"\nB1 => word == \"b\"\n", "B1", "IF(EXACT(word,\"b\"),1,0)")]
    [InlineData("A1 = 1 mm\nA2 = 2 mm\nB1 => Sum(Series(A1, A2))\n", "B1", "SUM(A1:A2)/1000*1000")]
    public void AFormula_IsInCoherentUnitsInside(string lines, string address, string formula) => Assert.Equal(formula, At(lines, address).CellFormula);

    [Fact]
    public void ACheckSaysItsWord_AndIsMarked()
    {
        XSSFWorkbook file = ExportedBook.Of("A1 x = 2\nB1 small => x < 3\nB2 large => x > 3\n").Open();
        Assert.Equal([1, 0], new[] { "B1", "B2" }.Select(address => At(file, "S", address).NumericCellValue));
        Assert.Equal("[=1]\"holds\";[=0]\"FAILS\";General", At(file, "S", "B1").CellStyle.GetDataFormatString());
        Assert.Equal(1, file.GetSheet("S").SheetConditionalFormatting.NumConditionalFormattings);
    }

    [Fact]
    public void TheComment_HoldsTheLineAndTheSource()
    {
        XSSFWorkbook file = ExportedBook.Of("A1 peak [kN] = 8.5 kN ± 0.5 kN within 0 kN to 20 kN // from the rig\nA2 h = 2 m\nB1 => FallSpeed(h) // how fast\nB2 => ToleranceFactor(20, 0.9, 0.9) + h / (1 m)\n").Open();
        Assert.Equal("= 8.5 kN ± 0.5 kN within 0 kN to 20 kN\nfrom the rig", At(file, "S", "A1").CellComment.String.String);
        Assert.StartsWith("=> FallSpeed(h)\nhow fast\nFallSpeed: ", At(file, "S", "B1").CellComment.String.String, StringComparison.Ordinal);
        IDataValidation limits = Assert.Single(file.GetSheet("S").GetDataValidations());
        Assert.Equal(("0", "20"), (limits.ValidationConstraint.Formula1, limits.ValidationConstraint.Formula2));
    }

    [Fact]
    public void AResultWithoutAFormula_IsAValueAndSaysSo()
    {
        ExportedBook book = ExportedBook.Of("A1 n = 20\nB1 k => ToleranceFactor(n, 0.9, 0.9)\nB2 twice => 2 * k\n");
        XSSFWorkbook file = book.Open();
        Assert.Equal(CellType.Numeric, At(file, "S", "B1").CellType);
        Assert.Contains("A value, no formula: ToleranceFactor has no closed formula:", At(file, "S", "B1").CellComment.String.String, StringComparison.Ordinal);
        Assert.Equal("2*k", At(file, "S", "B2").CellFormula);
        Assert.Equal((1, 2), (book.Report.LiveResults, book.Report.Results));
        Assert.Equal("S.B1 k", Assert.Single(book.Report.Fixed).Label);
    }

    [Fact]
    public void AFault_IsNoNumber()
    {
        ExportedBook book = ExportedBook.Of("A1 x = 0\nB1 bad => 1 / x\nB2 waits => bad + 1\nB3 broken => 1 +\n");
        foreach (string address in new[] { "B1", "B2", "B3" }) Assert.Equal(CellType.Error, At(book.Open(), "S", address).CellType);
        Assert.Empty(book.Problems());
    }

    [Fact]
    public void OutsideTheLimitsOfAFunction_ThereIsNoNumber()
    {
        XSSFWorkbook file = ExportedBook.Of("A1 outer = 17 mm\nA2 wall = 1.5 mm\nB1 => Tube(outer, wall).Area\n").Open();
        At(file, "S", "A2").SetCellValue(9);
        Assert.Equal(CellType.Error, file.GetCreationHelper().CreateFormulaEvaluator().Evaluate(At(file, "S", "B1")).CellType);
        At(file, "S", "A2").SetCellValue(-1);
        Assert.Equal(CellType.Error, file.GetCreationHelper().CreateFormulaEvaluator().Evaluate(At(file, "S", "B1")).CellType);
    }

    [Fact]
    public void AColumnBeyondTheLastOne_IsLeftOutAndSaid()
    {
        ExportedBook book = ExportedBook.Of("A1 x = 2\nZZZ1 far => x * 2\nA2 near => far + 1\n");
        Assert.Equal("S.ZZZ1 far lies beyond column XFD, the last one of such a file, and was left out.", Assert.Single(book.Report.Left));
        Assert.Equal(0, book.Report.LiveResults);
        Assert.Empty(book.Problems());
    }

    [Fact]
    public void TheFirstSheet_SaysWhatMustBeKnown()
    {
        ISheet first = ExportedBook.Of("screwsheet 1\ntitle A title\nauthor Somebody\n\nsheet S\nA1 h = 2 m\nB1 => ToleranceFactor(20, 0.9, 0.9) * h\n").Open().GetSheetAt(0);
        string[] lines = [.. Enumerable.Range(0, first.LastRowNum + 1).Select(row => first.GetRow(row)?.GetCell(0)?.ToString() ?? "")];
        Assert.Equal("A title", lines[0]);
        Assert.Contains("Author: Somebody", lines);
        Assert.Contains("Estimates for people who test and teach. They permit nothing: what holds is shown by a test, not by a sheet.", lines);
        Assert.Contains("1 of 1 results follow.", lines);
    }
}
