using System.Globalization;
using CsCheck;
using NPOI.XSSF.UserModel;
using ScrewSheet.Exports.Tests.Support;

namespace ScrewSheet.Exports.Tests.Xlsx;

/// <summary>Random workbooks: the file is valid, another program computes what we compute, and follows a changed given as we do.</summary>
public sealed class RandomWorkbookTests
{
    private const int Books = 40;

    [Fact]
    public void TheFileIsValid() => RandomBook.Text.Sample(text => Assert.Empty(ExportedBook.Of(text).Problems()), iter: Books / 3, threads: 1);

    [Fact]
    public void AnotherProgramComputesTheSame() => RandomBook.Text.Sample(text => Assert.Empty(ExportedBook.Of(text).Disagreements()), iter: Books, threads: 1);

    [Fact]
    public void AGivenTypedThere_IsAGivenTypedHere() => Gen.Select(RandomBook.Text, Gen.Int[-12, 12]).Sample((text, eighths) =>
    {
        double value = eighths / 4.0;
        XSSFWorkbook file = ExportedBook.Of(text).Open();
        file.GetSheet("S").GetRow(0).GetCell(0).SetCellValue(value);
        ExportedBook typedHere = ExportedBook.Of(text.Replace($"A1 p = {RandomBook.First}", string.Create(CultureInfo.InvariantCulture, $"A1 p = {value}"), StringComparison.Ordinal));
        Assert.Empty(ExportedBook.Disagreements(file, typedHere));
    }, iter: Books, threads: 1);

    [Fact]
    public void MostResults_AreFormulas()
    {
        int live = 0, all = 0;
        List<string> why = [];
        RandomBook.Text.Sample(text =>
        {
            ExportedBook book = ExportedBook.Of(text);
            int faulty = book.Calculation.Cells.Values.Count(cell => cell.Fault is not null && cell.Cell.Content is Workbooks.Model.ResultContent);
            live += book.Report.LiveResults;
            why.AddRange(book.Report.Fixed.Select(result => result.Why));
            all += book.Report.Results - faulty;
        }, iter: 20, threads: 1);
        Assert.True(live > 0.95 * all, $"{live} of {all}: {string.Join("; ", why)}");
    }
}
