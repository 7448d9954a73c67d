using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

public sealed class RefusalTests
{
    public static TheoryData<int> RefusedCases => [.. Enumerable.Range(0, RefusalCases.Refused.Count)];

    public static TheoryData<int> LineCases => [.. Enumerable.Range(0, RefusalCases.Lines.Count)];

    [Theory]
    [MemberData(nameof(RefusedCases))]
    public void AFileThatIsNoWorkbookIsRefused(int index)
    {
        RefusalCase expected = RefusalCases.Refused[index];
        Holds(expected, Assert.IsType<Refusal>(WorkbookText.Read(expected.Text)).Fault);
    }

    [Theory]
    [MemberData(nameof(LineCases))]
    public void ALineInFaultIsKeptAndSaysWhy(int index)
    {
        RefusalCase expected = RefusalCases.Lines[index];
        Workbook workbook = Text.Read(expected.Text);
        Holds(expected, Assert.Single(Text.Faults(workbook)));
        Assert.Equal(expected.Text, Text.Write(workbook));
    }

    [Fact]
    public void EveryFaultOfTheFormatHasACase()
    {
        HashSet<int> elsewhere = [1004, 1005, 1006, 1037, 1063, 1064, 1065, 1105, 2010, 2011];
        IEnumerable<int> cases = RefusalCases.Refused.Concat(RefusalCases.Lines).Select(refusal => refusal.Code).Concat(elsewhere).Distinct().Order();
        Assert.Equal(FaultCodes.In(typeof(Workbook).Assembly).Select(row => row.Code).Where(code => code < 3000), cases); // those of the lexer have theirs in LexerTests
    }

    [Fact]
    public void ADoubledNameFaultsBothCells()
    {
        const string text = "screwsheet 1\nsheet A\nA1 peak = 3\nB7   peak = 4\nC1 => peak\n";
        Workbook workbook = Text.Read(text);
        Assert.Equal(
            [(3, 4, "The name peak is also given to B7 in line 4. Rename one of the two."), (4, 6, "The name peak is also given to A1 in line 3. Rename one of the two.")],
            Text.Faults(workbook).Select(Told));
        Assert.All(Text.Faults(workbook), fault => Assert.Equal(2010, fault.Code));
        Assert.Equal(text, Text.Write(workbook));
    }

    [Fact]
    public void ADoubledAddressFaultsBothLines()
    {
        const string text = "screwsheet 1\nsheet A\nA1 = 3\nA1 = 4\nA2 = 5\n";
        Workbook workbook = Text.Read(text);
        Assert.Equal(
            [(4, 1, "The address A1 is also used in line 3. Give one of the two another address."), (3, 1, "The address A1 is also used in line 4. Give one of the two another address.")],
            Text.Faults(workbook).Select(Told));
        Assert.All(Text.Faults(workbook), fault => Assert.Equal(2011, fault.Code));
        Assert.Equal(text, Text.Write(workbook));
    }

    [Fact]
    public void TheSameNameOnTwoSheetsIsNoFault() =>
        Assert.Empty(Text.Faults(Text.Read("screwsheet 1\nsheet A\nA1 peak = 3\nsheet B\nA1 peak = 4\n")));

    [Fact]
    public void ACellInFaultKeepsItsNameAndAddress()
    {
        Cell cell = Text.Cell("B3 exposed [mm] = 40m // short");
        Assert.Equal(("B3", "exposed", "short"), (cell.Address.ToString(), cell.Name, cell.Remark));
        Assert.Equal("B3 exposed [mm] = 40m // short", Assert.IsType<BrokenContent>(cell.Content).Text);
    }

    [Theory]
    [InlineData("mm"), InlineData("peakForce"), InlineData("μ"), InlineData("Δ"), InlineData("länge"), InlineData("t_1"), InlineData("abcd1"), InlineData("value"), InlineData("λ2β")]
    public void AGoodNameIsRead(string name) => Assert.Equal(name, Text.Cell($"A1 {name} = 3").Name);

    [Theory]
    [InlineData("await"), InlineData("var"), InlineData("when"), InlineData("with"), InlineData("not"), InlineData("gives"), InlineData("within"), InlineData("nint"), InlineData("class"), InlineData("string")]
    public void AWordOfTheLanguageIsNoName(string word) => Assert.Equal(2001, Assert.IsType<BrokenContent>(Text.Cell($"A1 {word} = 3").Content).Fault.Code);

    private static (int, int, string) Told(Fault fault) => (fault.Place!.Value.Line, fault.Place.Value.Column, fault.Sentence);

    private static void Holds(RefusalCase expected, Fault fault) =>
        Assert.Equal((expected.Code, expected.Sentence, expected.Line, expected.Column), (fault.Code, fault.Sentence, fault.Place!.Value.Line, fault.Place.Value.Column));
}
