using System.IO.Compression;
using System.Xml.Linq;
using NPOI.SS.UserModel;
using NPOI.XSSF.UserModel;
using ScrewSheet.Exports.Tests.Support;

namespace ScrewSheet.Exports.Tests.Xlsx;

/// <summary>The file as a file: the same for the same workbook, with nothing of the machine or the moment in it, and every value as it is.</summary>
public sealed class FileTests
{
    private const string Made = "screwsheet 1\ntitle A title\nauthor Somebody\n\nsheet S\nA1 h [m] = 2 m within 1 m to 3 m\nB1 twice => 2 * h\nB2 holds? => h < 5 m\nwhat-if D2\n  vary h: 1 m to 3 m step 1 m\n  show twice\n";

    [Theory]
    [InlineData("standing-out")]
    [InlineData("standard-drop")]
    public void TheSameWorkbook_GivesTheSameBytes(string name) =>
        Assert.True(ExportedBook.Of(ExportedBook.ReadShipped(name)).Bytes.AsSpan().SequenceEqual(ExportedBook.Of(ExportedBook.ReadShipped(name)).Bytes));

    [Fact]
    public void NoPart_HoldsAMoment()
    {
        using ZipArchive parts = Parts(ExportedBook.Of(Made));
        // the first day that can stand in a package: common practice, no source
        Assert.All(parts.Entries, part => Assert.Equal(new DateTime(1980, 1, 1), part.LastWriteTime.DateTime));
        Assert.Equal(["A title", "Somebody"], Root(parts, Assert.Single(parts.Entries, part => part.FullName.Contains("core", StringComparison.Ordinal)).FullName).Elements().Select(element => element.Value));
    }

    [Fact]
    public void TheFile_SaysWhatMadeItAndForWhom()
    {
        using ZipArchive parts = Parts(ExportedBook.Of(Made));
        Assert.Equal("ScrewSheet", Root(parts, "docProps/app.xml").Value);
        ZipArchiveEntry[] comments = [.. parts.Entries.Where(part => part.FullName.Contains("comments", StringComparison.Ordinal))];
        Assert.NotEmpty(comments);
        Assert.All(comments, part => Assert.Equal("Somebody", Root(parts, part.FullName).Elements().First().Value));
    }

    [Fact]
    public void Numbers_KeepAllTheirDigits()
    {
        ExportedBook book = ExportedBook.Of("A1 x = 0.1234567890123456\nB1 live => x / 3\nB2 kept => ToleranceFactor(20, 0.9, 0.9) * 1\n");
        foreach ((int row, int column) in new[] { (0, 0), (0, 1), (1, 1) })
            Assert.Equal(((Workbooks.Results.NumberValue)book.Calculation.Cells[new Workbooks.Model.CellId("S", new Workbooks.Model.CellAddress(column + 1, row + 1))].Value!).Value, book.Open().GetSheet("S").GetRow(row).GetCell(column).NumericCellValue);
    }

    [Fact]
    public void ATextOfNoLetters_IsAText()
    {
        ExportedBook book = ExportedBook.Of("A1 t = \"\"\nB1 copy => t\nB2 joined => t + \"x\"\n");
        Assert.Equal(CellType.String, book.Open().GetSheet("S").GetRow(0).GetCell(0).CellType);
        Assert.Equal("", book.Open().GetSheet("S").GetRow(0).GetCell(0).StringCellValue);
        Assert.Empty(book.Problems());
        Assert.Empty(book.Disagreements());
    }

    [Fact]
    public void CommentsInTheLastColumn_HaveAPlace()
    {
        // XFD, the 16,384th, is the last column: common practice, no source
        ExportedBook book = ExportedBook.Of("XFD1 x = 2\nXFD99999 twice => x * 2\n");
        Assert.Equal("=> x * 2", book.Open().GetSheet("S").GetRow(99_998).GetCell(16_383).CellComment.String.String);
        Assert.Empty(book.Problems());
    }

    [Fact]
    public void CellsFarApart_NeedNoRoomBetweenThem()
    {
        string cells = string.Concat(Enumerable.Range(1, 3_000).Select(n => $"{Workbooks.Model.CellAddress.ColumnName(n)}{n} = {n}\n"));
        long before = GC.GetAllocatedBytesForCurrentThread();
        ExportedBook book = ExportedBook.Of(cells);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 600_000_000);
        Assert.Equal("= 3000", book.Open().GetSheet("S").GetRow(2_999).GetCell(2_999).CellComment.String.String);
    }

    private static ZipArchive Parts(ExportedBook book) => new(new MemoryStream(book.Bytes));

    private static XElement Root(ZipArchive parts, string name)
    {
        using Stream stream = parts.GetEntry(name)!.Open();
        return XDocument.Load(stream).Root!;
    }
}
