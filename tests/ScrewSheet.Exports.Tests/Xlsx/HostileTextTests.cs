using NPOI.SS.UserModel;
using NPOI.XSSF.UserModel;
using ScrewSheet.Exports.Tests.Support;
using ScrewSheet.Exports.Xlsx.Naming;

namespace ScrewSheet.Exports.Tests.Xlsx;

/// <summary>Text from a stranger's workbook stays text, and names stay valid.</summary>
public sealed class HostileTextTests
{
    [Theory]
    [InlineData("=1+1")]
    [InlineData("+cmd|' /C calc'!A0")]
    [InlineData("-2+3")]
    [InlineData("@SUM(A1)")]
    [InlineData("  =HYPERLINK(A1)")]
    [InlineData("＝1+1")]
    public void TextThatLooksLikeAFormula_StaysTextAndIsMarkedSo(string text)
    {
        ExportedBook book = ExportedBook.Of($"A1 \"{text}\"\nA2 given = \"{text}\"\nA3 copy => given\n");
        XSSFWorkbook file = book.Open();
        foreach (int row in new[] { 0, 1 })
        {
            ICell cell = file.GetSheet("S").GetRow(row).GetCell(0);
            Assert.Equal(CellType.String, cell.CellType);
            Assert.Equal(text, cell.StringCellValue);
            Assert.True(((XSSFCellStyle)cell.CellStyle).GetCoreXf().quotePrefix);
        }
        Assert.Empty(book.Problems());
        Assert.Empty(book.Disagreements());
    }

    [Fact]
    public void WhatCannotBeSeen_IsShownByNumber()
    {
        ExportedBook book = ExportedBook.Of("A1 \"safe\u202Etxt\"\nA2 given = \"a\\u0001b\\n=c\" // remark\u202Eend\nA3 both => given + \"x\"\n");
        Assert.Empty(book.Problems());
        Assert.Equal("safe‹U+202E›txt", book.Open().GetSheet("S").GetRow(0).GetCell(0).StringCellValue);
        Assert.Contains("‹U+0001›", book.Open().GetSheet("S").GetRow(1).GetCell(0).StringCellValue, StringComparison.Ordinal);
    }

    [Fact]
    public void AngleBracketsAndQuotes_AreText()
    {
        ExportedBook book = ExportedBook.Of("A1 \"<script>&amp; ]]>\"\nA2 t = \"a\\\"b<c>&\"\nA3 joined => t + \"\\\"<&>'\"\nA4 ends => joined.EndsWith(\"'\")\n");
        Assert.Empty(book.Problems());
        Assert.Empty(book.Disagreements());
        Assert.Equal(2, book.Report.LiveResults);
    }

    [Fact]
    public void NamesThatCouldBeReadAsSomethingElse_AreChanged()
    {
        ExportedBook book = ExportedBook.Of("A1 r = 1\nA2 c = 2\nA3 rc = 3\nA4 r_1 = 4\nA5 sum = 5\nA6 max = 6\nA7 α = 7\nA8 abc1234567 = 8\nA9 total => r + c + rc + r_1 + sum + max + α + abc1234567\n");
        XSSFWorkbook file = book.Open();
        string[] names = [.. Enumerable.Range(0, file.NumberOfNames).Select(i => file.GetNameAt(i).NameName).Order(StringComparer.Ordinal)];
        Assert.Equal(["abc1234567_", "c_", "max_", "r_", "r_1", "rc_", "sum_", "total", "α"], names);
        Assert.Empty(book.Problems());
        Assert.Empty(book.Disagreements());
    }

    [Fact]
    public void NamesThatDifferByCaseOrSheetOnly_AreToldApart()
    {
        ExportedBook book = ExportedBook.Of("screwsheet 1\n\nsheet Fall\nA1 peak = 2 kN\nA2 pEak = 3 kN\nA3 sum => peak + pEak\n\nsheet FALL\nA1 peak = 5 kN\nA2 twice => peak + Fall.peak\n");
        Assert.Empty(book.Problems());
        Assert.Empty(book.Disagreements());
        Assert.Equal(["Read first", "Fall", "FALL 2"], Enumerable.Range(0, book.Open().NumberOfSheets).Select(book.Open().GetSheetName));
    }

    [Theory]
    [InlineData("Short", "Short")]
    [InlineData("A[b]:c*d?e/f\\g", "A_b__c_d_e_f_g")]
    [InlineData("'quoted'", "quoted")]
    [InlineData("history", "history_")]
    [InlineData("", "_")]
    [InlineData("AVeryLongNameOfASheetThatGoesOnAndOn", "AVeryLongNameOfASheetThatGoesOn")]
    public void SheetNames_AreAllowed(string wanted, string given) => Assert.Equal(given, new SheetNames().Add(wanted));

    [Fact]
    public void LongSheetNamesThatBeginAlike_AreToldApart()
    {
        SheetNames names = new();
        string name = new('A', 60);
        Assert.Equal(new string('A', 31), names.Add(name));
        Assert.Equal(new string('A', 29) + " 2", names.Add(name.ToLowerInvariant().ToUpperInvariant()));
        Assert.Equal(new string('a', 29) + " 3", names.Add(name.ToLowerInvariant()));
    }
}
