using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

public sealed class EntryTests
{
    private static readonly CellAddress At = new(2, 3);

    [Theory]
    [InlineData("8.5 kN ± 0.5 kN // measured", "B3 = 8.5 kN ± 0.5 kN // measured")]
    [InlineData("-18 °C", "B3 = -18 °C")]
    [InlineData("  42 ", "B3 = 42")]
    [InlineData("exposed [mm] = 40 mm", "B3 exposed [mm] = 40 mm")]
    [InlineData("= 2 * 3 kN", "B3 = 2 * 3 kN")]
    [InlineData("=> peak * 2", "B3 => peak * 2")]
    [InlineData("Torque moment [N.m,1 decimal]=>peak*arm", "B3 Torque moment [N·m, 1 decimal] => peak*arm")]
    [InlineData("Peak force // at the hanger", "B3 \"Peak force // at the hanger\"")]
    [InlineData("\"Peak\" // hanger", "B3 \"Peak\" // hanger")]
    [InlineData("say \"Peak\"", "B3 say \"Peak\"")]
    [InlineData("He said \"Peak\" twice", "B3 \"He said \\\"Peak\\\" twice\"")]
    [InlineData("back\\slash", "B3 \"back\\\\slash\"")]
    [InlineData("unclosed \" quote", "B3 \"unclosed \\\" quote\"")]
    [InlineData("unclosed (bracket", "B3 \"unclosed (bracket\"")]
    [InlineData("force (F = m a)", "B3 \"force (F = m a)\"")]
    [InlineData("an [a = b] and (an open one", "B3 \"an [a = b] and (an open one\"")]
    [InlineData("closed ) only", "B3 \"closed ) only\"")]
    public void AnEntryIsRead(string entry, string line)
    {
        Cell cell = Assert.IsType<EntryRead>(CellText.ReadEntry(entry, At)).Cell;
        Assert.Equal(line, CellText.Write(cell));
        Assert.Equal(line, CellText.Write(Assert.IsType<EntryRead>(CellText.ReadEntry(CellText.WriteEntry(cell), At)).Cell));
    }

    [Theory]
    [InlineData("40m", 1101, 1, "\"40m\": a blank stands between number and unit; write 40 m.")]
    [InlineData("2 screws in a leg", 1105, 1, "This begins like a number and cannot be read as one. Write a value such as 8.5 kN, put = before a constant, => before an expression, or quotes round a text.")]
    [InlineData("- remark", 1105, 1, "This begins like a number and cannot be read as one. Write a value such as 8.5 kN, put = before a constant, => before an expression, or quotes round a text.")]
    [InlineData("8.5 kX", 1104, 5, "\"kX\" is no unit.")]
    [InlineData("Peak = 3", 2003, 1, "The name of a cell begins with a small letter, Peak does not. Write peak.")]
    [InlineData("=>", 1032, 3, "Nothing follows =>. Write an expression.")]
    [InlineData("\"open", 1023, 1, "The quote opened here is not closed. Close it with \" before the end of the line.")]
    [InlineData("load [kN = 6 kN", 1037, 6, "The bracket [ opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("load [kN => peak * 2", 1037, 6, "The bracket [ opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("load [kN = 6 kN // measured [once]", 1037, 6, "The bracket [ opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("load (kN = 6 kN", 1037, 6, "The bracket ( opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("load {kN = 6 kN", 1037, 6, "The bracket { opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("Torque moment [N·m, 1 decimal => peak * arm", 1037, 15, "The bracket [ opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("[kN = 6 kN", 1037, 1, "The bracket [ opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("a (b) load [kN = 6 kN", 1037, 12, "The bracket [ opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("load [[kN] = 6 kN", 1037, 6, "The bracket [ opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("load [kN \" = 6 kN", 1037, 6, "The bracket [ opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("Sum(Map(pull, x => x)", 1037, 4, "The bracket ( opened here is not closed. Close it, or put quotes round a text.")]
    [InlineData("load \" = 6 kN", 1023, 6, "The quote opened here is not closed. Close it with \" before the end of the line.")]
    [InlineData("load \" => peak", 1023, 6, "The quote opened here is not closed. Close it with \" before the end of the line.")]
    [InlineData("load = \"six", 1023, 8, "The quote opened here is not closed. Close it with \" before the end of the line.")]
    [InlineData("load [kN) = 6 kN", 1028, 6, "The bracket opened here is not closed. Write it like [kN] or [kN, 1 decimal].")]
    [InlineData("two\nlines", 1026, 4, "The line holds the control character U+000A. Remove it.")]
    public void AnEntryInFaultIsRefused(string entry, int code, int column, string sentence)
    {
        var fault = Assert.IsType<EntryRefused>(CellText.ReadEntry(entry, At)).Fault;
        Assert.Equal((code, 0, column, sentence), (fault.Code, fault.Place!.Value.Line, fault.Place.Value.Column, fault.Sentence));
    }

    [Fact]
    public void ANewWorkbookHoldsATitleAndASheet() =>
        Assert.Equal("screwsheet 1\ntitle Two screws\nunits SI\n\nsheet Sheet\n", Text.Write(NewWorkbook.Empty("Two\nscrews")));
}
