using System.Text;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

public sealed class ReadTests
{
    private static readonly Workbook Full = Text.Read(SampleTexts.Full);

    [Fact]
    public void TheHeadIsRead()
    {
        Head expected = new() { Title = "Radial load on a short screw", Author = "Training desk", Date = "2026-11-25", Units = UnitSystem.SI, Seed = 7, MadeWith = "0.3.0" };
        Assert.Equal(expected, Full.Head);
        Assert.Equal("correlate", Assert.Single(Full.Reserved).Word);
    }

    [Fact]
    public void AFunctionIsRead()
    {
        FunctionDefinition function = Assert.Single(Full.Functions);
        Assert.Equal(("Torque", "HingeMoment", "f * arm", 53), (function.ReturnType, function.Name, function.Body, function.BodyColumn));
        Assert.Equal(new[] { ("Force", "f"), ("Length", "arm") }, function.Parameters.AsEnumerable());
    }

    [Fact]
    public void AFunctionWithoutParametersIsRead() => Assert.Empty(Assert.Single(Text.Read("screwsheet 1\nfunction Force Body() => 0.8 kN // worn\n").Functions).Parameters);

    [Fact]
    public void SheetsAreReadInOrder()
    {
        Assert.Equal([("Placement", "What the fall leaves on the screw"), ("Fall", null)], Full.Sheets.Select(sheet => (sheet.Name, sheet.Title)));
        Assert.Equal([(1, 34), (2, 16)], Full.Sheets[0].Widths.OrderBy(pair => pair.Key).Select(pair => (pair.Key, pair.Value)));
    }

    [Fact]
    public void AResultIsReadWithTypeNameFormatAndKeptText()
    {
        Cell cell = At("B5");
        Assert.Equal(("Torque", "moment", "N·m", 1, false), (cell.DeclaredType, cell.Name, cell.Format!.Unit!.Symbol, cell.Format.Digits!.Count, cell.Format.Digits.Significant));
        Assert.Equal(new ResultContent("HingeMoment(peak, exposed + offset)", 38) { Kept = "425.0 N·m" }, cell.Content);
        Assert.Equal((22, 1, 2), (cell.Place.Line, cell.Place.Column, cell.Place.Length));
    }

    [Fact]
    public void GivesInsideQuotesIsNoKeptResult() =>
        Assert.Equal(new ResultContent("$\"gives {moment}\"", 12) { Kept = "\"gives 425 N·m\"" }, At("B7").Content);

    [Theory]
    [InlineData("A1 => F(a gives 3", "F(a", "3")]
    [InlineData("A1 => F(a gives 3)", "F(a gives 3)", null)]
    [InlineData("A1 => a gives b gives 3", "a gives b", "3")]
    [InlineData("A1 => a / b // c gives 3", "a / b", null)]
    public void TheKeptResultFollowsTheLastGivesOutsideBrackets(string line, string expression, string? kept)
    {
        var result = Assert.IsType<ResultContent>(Text.Cell(line).Content);
        Assert.Equal((expression, kept), (result.Expression, result.Kept));
    }

    [Fact]
    public void ANoteIsReadWithItsQuotesAndStrokes() => Assert.Equal(new NoteContent("Exposed after the \"surface\" ice // has gone"), At("A3").Content);

    [Fact]
    public void ARemarkEndsTheCell() => Assert.Equal("from the fall sheet", At("B2").Remark);

    [Fact]
    public void AWhatIfTableIsKeptAsRead()
    {
        WhatIfBlock table = Assert.Single(Full.Sheets[0].WhatIfs);
        Assert.Equal(("D2", "Moment by exposed length"), (table.Anchor.ToString(), table.Title));
        Assert.Equal(["exposed: 0 mm to 60 mm step 10 mm", "peak: 4 kN, 6 kN, 8 kN"], table.Vary.Select(vary => vary.Text));
        Assert.Equal(("moment", 36, 8), (table.Show[0].Text, table.Show[0].Place.Line, table.Show[0].Place.Column));
    }

    [Fact]
    public void ReservedLinesAreNoFaults()
    {
        Assert.Equal(["plot", "reviewed"], Full.Sheets[0].Reserved.Select(line => line.Word));
        Assert.Equal(["B20", "B21", "C1"], Full.Sheets[0].CellsInOrder.Where(cell => cell.Content is BrokenContent).Select(cell => cell.Address.ToString()));
        Assert.Empty(Full.Faults);
    }

    [Fact]
    public void NamesLeadToTheirCells() => Assert.Equal("B3", Full.Sheets[0].Names["exposed"].ToString());

    [Fact]
    public void BytesThatAreNotUtf8AreRefusedWithTheirPlace()
    {
        byte[] file = [.. Encoding.UTF8.GetBytes("screwsheet 1\ntitle ±"), 0xC3, 0x28, (byte)'\n'];
        var fault = Assert.IsType<Refusal>(WorkbookText.Read(file)).Fault;
        Assert.Equal((1004, 2, 8, "The file is not UTF-8 text at this place. Save it as UTF-8."), (fault.Code, fault.Place!.Value.Line, fault.Place.Value.Column, fault.Sentence));
    }

    [Fact]
    public void HalfASurrogatePairIsRefusedWithItsPlace()
    {
        var fault = Assert.IsType<Refusal>(WorkbookText.Read("screwsheet 1\ntitle ±\uD800\n")).Fault;
        Assert.Equal((1004, 2, 8), (fault.Code, fault.Place!.Value.Line, fault.Place.Value.Column));
    }

    [Fact]
    public void AFileOfMoreThan32MegabytesIsRefused()
    {
        var fault = Assert.IsType<Refusal>(WorkbookText.Read(new byte[WorkbookText.LargestFile + 1])).Fault;
        Assert.Equal((1005, "The file has 33,554,433 bytes, at most 33,554,432 (32 MB) are read. Split the workbook."), (fault.Code, fault.Sentence));
    }

    [Fact]
    public void MoreThanHalfAMillionCellsAreRefused()
    {
        StringBuilder text = new("screwsheet 1\nsheet A\n");
        for (int i = 0; i <= WorkbookText.MostCells; i++) text.Append(CellAddress.ColumnName(1 + (i / 99_999))).Append(1 + (i % 99_999)).Append(" \"\"\n");
        var fault = Assert.IsType<Refusal>(WorkbookText.Read(text.ToString())).Fault;
        Assert.Equal((1006, "A workbook takes at most 500,000 cells. Split the workbook.", 500_003), (fault.Code, fault.Sentence, fault.Place!.Value.Line));
    }

    [Theory]
    [InlineData("A1 \""), InlineData("A1 => "), InlineData("// "), InlineData("A1 = "), InlineData("what-if A1 "), InlineData("title "), InlineData("")]
    public void ALineOfTenMegabytesIsReadAndWrittenBack(string start)
    {
        string text = $"screwsheet 1\nsheet A\n{start}{new string('x', 10_000_000)}";
        Assert.Equal(text, Text.Write(Text.Read(text)));
    }

    [Fact]
    public void TenMegabytesOfBracketsAreReadAndWrittenBack()
    {
        string text = $"screwsheet 1\nsheet A\nA1 => {new string('(', 10_000_000)} gives 3";
        Assert.Equal(text, Text.Write(Text.Read(text)));
    }

    private static Cell At(string address) => CellAddress.TryParse(address, out CellAddress at) ? Full.Sheets[0].Cells[at] : throw new ArgumentException(address);
}
