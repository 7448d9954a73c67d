using System.Text;
using CsCheck;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Editing;

public sealed class RelocationTests
{
    private const string File =
        """
        screwsheet 1
        units SI

        sheet Fall
        widths A 20, C 9

        // travels with its cell
        A1 "Words about B3"
        B2   peak [kN]   = 8.5 kN   // stays as it is
        B3 => B2 * 2 gives 17.0 kN // twice
        B4 => Sum(Series(B2, B3)) + peak
        what-if D2 "B3 in a title"
          vary B2: 1 kN, 2 kN
          show B4
        B9 => $"{B3:kN} and B3" == "B3"

        sheet Other
        A1 => Fall.B3 + Fall.peak
        A2 => A1 / B3

        """;

    private static Workbook Read(string text = File) => Assert.IsType<WorkbookRead>(WorkbookText.Read(text)).Workbook;

    private static string Text(Workbook workbook) => Encoding.UTF8.GetString(WorkbookText.Write(workbook));

    [Fact]
    public void InsertRows_EveryReferenceFollows_AndNoOtherByteChanges()
    {
        Workbook moved = RowsAndColumns.InsertRows(Read(), "Fall", 3, 2);
        string expected = File
            .Replace("B3 => B2 * 2", "B5 => B2 * 2", StringComparison.Ordinal)
            .Replace("B4 => Sum(Series(B2, B3))", "B6 => Sum(Series(B2, B5))", StringComparison.Ordinal)
            .Replace("show B4", "show B6", StringComparison.Ordinal)
            .Replace("B9 => $\"{B3:kN} and B3\"", "B11 => $\"{B5:kN} and B3\"", StringComparison.Ordinal)
            .Replace("Fall.B3", "Fall.B5", StringComparison.Ordinal);
        Assert.Equal(expected, Text(moved));
    }

    [Fact]
    public void RemoveRows_ARunShrinks_AndALostAddressBecomesANameNoCellHas()
    {
        string text = Text(RowsAndColumns.RemoveRows(Read(), "Fall", 3, 3));
        Assert.Contains("B3 => Sum(Series(B2, B2)) + peak\n", text, StringComparison.Ordinal);
        Assert.Contains("B8 => $\"{lost_B3:kN} and B3\"", text, StringComparison.Ordinal);
        Assert.Contains("A1 => Fall.lost_B3 + Fall.peak\n", text, StringComparison.Ordinal);
        Assert.Contains("A2 => A1 / B3\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain("twice", text, StringComparison.Ordinal);
    }

    [Fact]
    public void RemoveRows_ARunOfWhichNothingIsLeft_IsLost()
    {
        Workbook workbook = Read("screwsheet 1\n\nsheet S\nA1 = 1\nA5 = 2\nA6 = 3\nB1 => Sum(Series(A5, A6))\n");
        Assert.Contains("B1 => Sum(Series(lost_A5, lost_A6))", Text(RowsAndColumns.RemoveRows(workbook, "S", 5, 6)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Series(gone, A5)", "Series(gone, lost_A5)")]
    [InlineData("Series(A5, gone)", "Series(lost_A5, gone)")]
    [InlineData("Series(A5, 4) + B9", "Series(lost_A5, 4) + B9")]
    [InlineData("Series(Other.A1, A5)", "Series(Other.A1, lost_A5)")]
    [InlineData("Series(A5, Other.A1)", "Series(lost_A5, Other.A1)")]
    public void AHalfRun_LosesItsCornerAsAnyReferenceDoes(string before, string after)
    {
        Workbook workbook = Read($"screwsheet 1\n\nsheet S\nA1 = 1\nA5 = 2\nB9 => {before}\n\nsheet Other\nA1 = 3\n");
        Assert.Contains($"B8 => {after.Replace("B9", "B8", StringComparison.Ordinal)}\n", Text(RowsAndColumns.RemoveRows(workbook, "S", 5, 5)), StringComparison.Ordinal);
        Assert.Contains($"A9 => {after.Replace("B9", "A9", StringComparison.Ordinal)}\n", Text(RowsAndColumns.RemoveColumns(workbook, "S", 1, 1)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", 1, 3, "C")]
    [InlineData("C9 = 1 kN\n", 1, 3, "C")]
    [InlineData("C2 = 1 kN\n", 1, 3, "F")]
    [InlineData("C2 = 1 kN\nC9 = 2 kN\n", 1, 3, "C")]
    [InlineData("", 1, CellAddress.LastRow, "F")]
    [InlineData("", CellAddress.LastRow / 2, CellAddress.LastRow, "C")]
    public void AColumnByName_IsNeverLost_WhereABlockOverItMoves(string cells, int first, int last, string column)
    {
        Workbook workbook = Read($"screwsheet 1\n\nsheet S\ncolumn C loads [kN]\nA1 = 1\n{cells}");
        Workbook moved = Relocation.Apply(workbook, (id, _) => id.Address is { Column: >= 2 and <= 4 } at && at.Row >= first && at.Row <= last ? id with { Address = at with { Column = at.Column + 3 } } : id);
        Assert.Contains($"column {column} loads [kN]\n", Text(moved), StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_CarryTheirWidths()
    {
        Workbook wider = RowsAndColumns.InsertColumns(Read(), "Fall", 2, 1);
        Assert.Contains("widths A 20, D 9", Text(wider), StringComparison.Ordinal);
        Assert.Contains("C2   peak [kN]   = 8.5 kN", Text(wider), StringComparison.Ordinal);
        Assert.Contains("vary C2: 1 kN", Text(wider), StringComparison.Ordinal);
        Assert.Contains("what-if E2 \"B3 in a title\"", Text(wider), StringComparison.Ordinal);
        Assert.Contains("A1 => Fall.C3", Text(wider), StringComparison.Ordinal);
        Assert.Equal(File, Text(RowsAndColumns.RemoveColumns(wider, "Fall", 2, 2)));
    }

    [Fact]
    public void ACellThatGoesToAnotherSheet_IsNamedThere_AndNamesTheRestWhereItWas()
    {
        CellId from = new("Fall", new CellAddress(2, 4)), to = new("Other", new CellAddress(3, 3));
        string text = Text(Relocation.Apply(Read(File.Replace("A2 => A1 / B3", "A2 => A1 / Fall.B4", StringComparison.Ordinal)), (id, _) => id == from ? to : id));
        Assert.Contains("C3 => Sum(Series(Fall.B2, Fall.B3)) + Fall.peak\n", text, StringComparison.Ordinal);
        Assert.Contains("A2 => A1 / Other.C3\n", text, StringComparison.Ordinal);
    }

    private const string Tables =
        """
        screwsheet 1
        correlate Fall.B2, alone 0.5

        sheet Fall
        B2 peak = 8 kN ± 1 kN
        B3 => peak * 2
        what-if D2
          vary B2: 1 kN, 2 kN // B3
          show B3, Other.A2

        sheet Other
        // a remark on A1
        A1 alone = 3 ± 1
        what-if D2 "Fall.B2 in a title"
          vary Fall.B2: 1 kN, 2 kN
          vary peak: 3 kN, 4 kN
          show A2, Fall.B3, B7
        // a remark on A2
        A2 => alone * Fall.B3

        """;

    [Fact]
    public void ATableNamesItsCellsOnEverySheetWhereTheyWent()
    {
        string text = Text(RowsAndColumns.InsertRows(Read(Tables), "Fall", 1, 1));
        Assert.Equal(Tables.Replace("Fall.B2,", "Fall.B3,", StringComparison.Ordinal).Replace("B3 => peak", "B4 => peak", StringComparison.Ordinal).Replace("B2 peak", "B3 peak", StringComparison.Ordinal)
            .Replace("what-if D2\n  vary B2", "what-if D3\n  vary B3", StringComparison.Ordinal).Replace("show B3, Other", "show B4, Other", StringComparison.Ordinal)
            .Replace("vary Fall.B2", "vary Fall.B3", StringComparison.Ordinal).Replace("show A2, Fall.B3", "show A2, Fall.B4", StringComparison.Ordinal).Replace("* Fall.B3", "* Fall.B4", StringComparison.Ordinal), text);
    }

    [Fact]
    public void ATableNamesNoStrangerInPlaceOfACellThatIsGone()
    {
        string text = Text(RowsAndColumns.RemoveRows(Read(Tables.Replace("B7", "B3", StringComparison.Ordinal)), "Fall", 2, 3));
        Assert.Contains("  vary lost_B2: 1 kN, 2 kN // B3\n  show lost_B3, Other.A2\n", text, StringComparison.Ordinal);
        Assert.Contains("  vary Fall.lost_B2: 1 kN, 2 kN\n  vary peak: 3 kN, 4 kN\n  show A2, Fall.lost_B3, lost_B3\n", text, StringComparison.Ordinal);
        Assert.Contains("correlate Fall.lost_B2, alone 0.5\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void ACellThatGoesToAnotherSheet_TakesItsRemarkAlong_AndLeavesTheTableAboveItWhereItIs()
    {
        CellId from = new("Other", new CellAddress(1, 2)), to = new("Fall", new CellAddress(1, 5));
        string text = Text(Relocation.Apply(Read(Tables), (id, _) => id == from ? to : id));
        Assert.Contains("// a remark on A2\nA5 => Other.alone * Fall.B3\n", text, StringComparison.Ordinal);
        Assert.EndsWith("sheet Other\n// a remark on A1\nA1 alone = 3 ± 1\nwhat-if D2 \"Fall.B2 in a title\"\n  vary Fall.B2: 1 kN, 2 kN\n  vary peak: 3 kN, 4 kN\n  show Fall.A5, Fall.B3, B7\n", text, StringComparison.Ordinal);
        Assert.Contains("show B3, Fall.A5\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void RenamedCellAndSheet_AreRenamedInEveryTable()
    {
        string cell = Text(Renaming.Cell(Read(Tables), new CellId("Fall", new CellAddress(2, 2)), "load", out Fault? fault));
        Assert.Null(fault);
        Assert.Contains("vary load: 3 kN", cell, StringComparison.Ordinal);
        string sheet = Text(Renaming.Sheet(Read(Tables), "Fall", "Drop", out fault));
        Assert.Null(fault);
        Assert.DoesNotContain("Fall.B", sheet.Replace("\"Fall.B2 in a title\"", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Contains("correlate Drop.B2, alone 0.5\n", sheet, StringComparison.Ordinal);
        Assert.Contains("show A2, Drop.B3, B7\n", sheet, StringComparison.Ordinal);
    }

    [Fact]
    public void RowsInsertedAndRemovedAgain_LeaveTheFileAsItWas() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 5]).Sample((row, count) =>
        {
            Workbook there = RowsAndColumns.InsertRows(Read(), "Fall", row, count);
            return Text(RowsAndColumns.RemoveRows(there, "Fall", row, row + count - 1)) == File;
        });

    [Theory]
    [InlineData(2, 2, 1, "A3 + A4", "Series(A2, A9)")]
    [InlineData(9, 9, 1, "A2 + A4", "Series(A2, A8)")]
    [InlineData(9, 9, -4, "A2 + A4", "Series(A2, A9)")]
    [InlineData(2, 9, 3, "A5 + A7", "Series(A5, A12)")]
    [InlineData(2, 4, 7, "A9 + A11", "Series(A2, A6)")]
    [InlineData(1, 1, 5, "A1 + A3", "Series(A1, A9)")]
    [InlineData(12, 13, -8, "A2 + A6", "Series(A2, A11)")]
    [InlineData(12, 13, -10, "A4 + A6", "Series(A4, A11)")]
    public void MovedRows_CellsAreFollowed_AndARunKeepsItsOwnButTakesNoStrangersAtItsEnds(int first, int last, int by, string cells, string run)
    {
        const string text = "screwsheet 1\n\nsheet S\nA2 = 2\nA4 = 4\nA9 = 9\nC30 => Sum(Series(A2, A9))\n\nsheet T\nA1 => S.A2 + S.A4\n";
        string moved = Text(RowsAndColumns.MoveRows(Read(text), "S", first, last, by));
        Assert.Contains($"A1 => {cells.Replace("A", "S.A", StringComparison.Ordinal)}\n", moved, StringComparison.Ordinal);
        Assert.Contains($"C30 => Sum({run})\n", moved, StringComparison.Ordinal);
    }

    [Fact]
    public void RowsMovedThereAndBack_LeaveTheFileAsItWas() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[0, 3], Gen.Int[-11, 11]).Sample((first, more, by) =>
        {
            Workbook workbook = Read(File.Replace("Sum(Series(B2, B3)) + ", "", StringComparison.Ordinal)), there = RowsAndColumns.MoveRows(workbook, "Fall", first, first + more, by);
            return ReferenceEquals(there, workbook) || Text(RowsAndColumns.MoveRows(there, "Fall", first + by, first + more + by, -by)) == Text(workbook);
        });

    [Fact]
    public void ColumnsMovedThereAndBack_LeaveTheFileAsItWas() =>
        Gen.Select(Gen.Int[1, 5], Gen.Int[0, 2], Gen.Int[-4, 4]).Sample((first, more, by) =>
        {
            Workbook workbook = Read(), there = RowsAndColumns.MoveColumns(workbook, "Fall", first, first + more, by);
            return ReferenceEquals(there, workbook) || Text(RowsAndColumns.MoveColumns(there, "Fall", first + by, first + more + by, -by)) == Text(workbook);
        });

    [Theory]
    [InlineData("B2 * 2", "C5 * 2")]
    [InlineData("Fall.B2 + peak", "Fall.C5 + peak")]
    [InlineData("Sqrt(B2) + H2(B3)", "Sqrt(C5) + H2(C6)")]
    [InlineData("Map(Series(B2, B3), x => x * B2)", "Map(Series(C5, C6), x => x * C5)")]
    [InlineData("Near(value: B2, B3)", "Near(value: C5, C6)")]
    [InlineData("tube.B2", "tube.B2")]
    [InlineData("\"B2\"", "\"B2\"")]
    [InlineData("$\"B2 {B2}\"", "$\"B2 {C5}\"")]
    [InlineData("flag ? B2 : B3", "flag ? C5 : C6")]
    public void Copied_AddressesMove_NothingElse(string expression, string copy) => Assert.Equal(copy, ReferenceShift.Copied(expression, Read(), "Fall", "Fall", 1, 3));

    [Fact]
    public void Copied_OffTheSheet_IsLost() => Assert.Equal("lost_A1 + B1", ReferenceShift.Copied("A1 + C1", Read(), "Fall", "Fall", -1, 0));

    [Fact]
    public void Copied_ToAnotherSheet_NamesTheOldOneWhereTheNewLacksTheName() => Assert.Equal("Fall.peak * B2", ReferenceShift.Copied("peak * B2", Read(), "Fall", "Other", 0, 0));

    [Fact]
    public void RenamedCell_IsRenamedEverywhere()
    {
        Workbook renamed = Renaming.Cell(Read(File.Replace("vary B2", "vary peak", StringComparison.Ordinal)), new CellId("Fall", new CellAddress(2, 2)), "load", out Fault? fault);
        Assert.Null(fault);
        string text = Text(renamed);
        Assert.Contains("Series(B2, B3)) + load\n", text, StringComparison.Ordinal);
        Assert.Contains("Fall.B3 + Fall.load\n", text, StringComparison.Ordinal);
        Assert.Contains("vary load: 1 kN", text, StringComparison.Ordinal);
        Assert.DoesNotContain("peak", text, StringComparison.Ordinal);
        Assert.Equal("load", renamed.Find("Fall")!.WhatIfs[0].Vary[0].Text[..4]);
    }

    [Theory]
    [InlineData("2nd")]
    [InlineData("B7")]
    [InlineData("return")]
    [InlineData("Peak")]
    [InlineData("")]
    public void RenamedCell_ABadName_IsRefused(string name)
    {
        Workbook workbook = Read();
        Assert.Same(workbook, Renaming.Cell(workbook, new CellId("Fall", new CellAddress(2, 2)), name, out Fault? fault));
        Assert.NotNull(fault);
    }

    [Fact]
    public void RenamedSheet_IsRenamedEverywhere()
    {
        string text = Text(Renaming.Sheet(Read(), "Fall", "Drop", out Fault? fault));
        Assert.Null(fault);
        Assert.Contains("sheet Drop\n", text, StringComparison.Ordinal);
        Assert.Contains("A1 => Drop.B3 + Drop.peak\n", text, StringComparison.Ordinal);
    }
}
