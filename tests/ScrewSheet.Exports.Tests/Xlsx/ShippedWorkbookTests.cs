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
}
