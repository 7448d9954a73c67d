using ScrewSheet.Exports.Tests.Support;

namespace ScrewSheet.Exports.Tests.Xlsx;

/// <summary>Every workbook that comes with the program: valid by the standard's own library, recalculated by another program to what we compute.</summary>
public sealed class ShippedWorkbookTests
{
    public static TheoryData<string> Names => ExportedBook.Shipped;

    [Theory, MemberData(nameof(Names))]
    public void TheFileIsValid(string name) => Assert.Empty(ExportedBook.Of(ExportedBook.ReadShipped(name)).Problems());

    [Theory, MemberData(nameof(Names))]
    public void AnotherProgramComputesTheSame(string name)
    {
        ExportedBook book = ExportedBook.Of(ExportedBook.ReadShipped(name));
        Assert.Empty(book.Disagreements());
        Assert.Equal(book.Report.LiveResults + book.Report.LiveEntries, ExportedBook.Formulas(book.Open()).Count(cell => cell.CellStyle.FillPattern == NPOI.SS.UserModel.FillPattern.NoFill));
    }

    /// <summary>Every result of these three is live, so that all of them must follow.</summary>
    [Theory]
    [InlineData("standing-out", "mass", "110 kg", 110)]
    [InlineData("standing-out", "exposed", "55 mm", 55)]
    [InlineData("short-screw", "wall", "1.1 mm", 1.1)]
    [InlineData("short-screw", "lost", "0 mm", 0)]
    [InlineData("standard-drop", "certified", "8.2 kN", 8.2)]
    [InlineData("standard-drop", "climber", "60 kg", 60)]
    public void AGivenTypedThere_IsAGivenTypedHere(string name, string given, string value, double typed)
    {
        ExportedBook book = ExportedBook.Of(ExportedBook.ReadShipped(name));
        Assert.Equal(book.Report.Results, book.Report.LiveResults);
        NPOI.XSSF.UserModel.XSSFWorkbook file = book.Open();
        NPOI.SS.Util.CellReference at = new(file.GetName(given).RefersToFormula);
        file.GetSheet(at.SheetName).GetRow(at.Row).GetCell(at.Col).SetCellValue(typed);
        Assert.Empty(ExportedBook.Disagreements(file, ExportedBook.Of(ExportedBook.ReadShipped(name), (given, value))));
    }
}
