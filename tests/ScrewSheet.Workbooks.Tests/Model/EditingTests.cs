using System.Collections.Immutable;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Model;

public sealed class EditingTests
{
    private const string Before = """
        screwsheet 1
        title Two screws

        sheet Placement "Leaves"
        widths A 34

        // inputs

        // measured
        B2   peak [kN]=8.5 kN   // from the fall sheet
        B4 arm [mm] = 50 mm
        what-if D2
          vary peak: 4 kN, 6 kN
        // the moment
        B5 Torque moment => peak * arm  gives 425 N·m   // checked
        B6 => moment < 500 N·m
        """;

    private static readonly Workbook Workbook = Text.Read(Before);

    [Fact]
    public void AChangedCellRewritesItsLineAlone() =>
        Edited("B2   peak [kN]=8.5 kN   // from the fall sheet", "B2 peak [kN] = 9 kN // new", Workbook.WithCell("Placement", Entry("B2", "peak [kN] = 9 kN // new")));

    [Fact]
    public void AChangedCellKeepsItsPlaceAndCountsColumnsInItsNewLine()
    {
        Cell cell = Workbook.WithCell("Placement", Entry("B5", "=> peak*2")).Sheets[0].Cells[Address("B5")];
        Assert.Equal((15, 1, 7), (cell.Place.Line, cell.Place.Column, Assert.IsType<ResultContent>(cell.Content).ExpressionColumn));
    }

    [Fact]
    public void TheSameCellGivesTheSameWorkbook()
    {
        Assert.Same(Workbook, Workbook.WithCell("Placement", Workbook.Sheets[0].Cells[Address("B2")]));
        Assert.Same(Workbook, Workbook.WithCell("Placement", Entry("B2", "peak [kN] = 8.5 kN // from the fall sheet")));
        Assert.Same(Workbook, Workbook.WithoutCell("Placement", Address("Z9")));
        Assert.Same(Workbook, Workbook.WithHead(Workbook.Head with { Title = "Two screws" }));
        Assert.Same(Workbook, Workbook.WithKept(new Dictionary<CellId, string?> { [Id("B5")] = "425 N·m" }));
        Assert.Same(Workbook, Workbook.WithSheet(Workbook.Sheets[0]));
        Assert.Same(Workbook, Workbook.WithoutSheet("Fall"));
    }

    [Fact]
    public void ANewCellGoesAfterTheNearestCellBeforeItInRowOrder()
    {
        Edited("B4 arm [mm] = 50 mm\n", "B4 arm [mm] = 50 mm\nC4 = 3\n", Workbook.WithCell("Placement", Entry("C4", "3")));
        Edited("// from the fall sheet\n", "// from the fall sheet\nA3 \"Arm\"\n", Workbook.WithCell("Placement", Entry("A3", "Arm")));
    }

    [Fact]
    public void ANewFirstCellLeavesARemarkWithTheCellBelowIt() =>
        Edited("// measured\n", "A1 \"First\"\n// measured\n", Workbook.WithCell("Placement", Entry("A1", "First")));

    [Fact]
    public void ANewLastCellFollowsALineWithoutEnd() => Assert.Equal(Before + "\nB7 = 3\n", Text.Write(Workbook.WithCell("Placement", Entry("B7", "3"))));

    [Fact]
    public void NewLinesEndAsTheFileDoes()
    {
        Workbook windows = Text.Read(Before.ReplaceLineEndings("\r\n"));
        Assert.DoesNotContain('\n', Text.Write(windows.WithCell("Placement", Entry("C4", "3"))).Replace("\r\n", "", StringComparison.Ordinal));
    }

    [Fact]
    public void ARemovedCellTakesItsRemarkAlong() => Edited("// measured\nB2   peak [kN]=8.5 kN   // from the fall sheet\n", "", Workbook.WithoutCell("Placement", Address("B2")));

    [Fact]
    public void OtherLinesAboveARemovedCellStay() =>
        Edited("// the moment\nB5 Torque moment => peak * arm  gives 425 N·m   // checked\n", "", Workbook.WithoutCell("Placement", Address("B5")));

    [Fact]
    public void KeptResultsChangeNothingElseOfTheirLines()
    {
        Workbook kept = Workbook.WithKept(new Dictionary<CellId, string?> { [Id("B5")] = "431.2 N·m", [Id("B6")] = "holds" });
        Assert.Equal(Before.Replace("  gives 425 N·m   //", " gives 431.2 N·m   //", StringComparison.Ordinal) + " gives holds", Text.Write(kept));
        Assert.Equal(Before.Replace("  gives 425 N·m   //", "   //", StringComparison.Ordinal), Text.Write(Workbook.WithKept(new Dictionary<CellId, string?> { [Id("B5")] = null })));
    }

    [Fact]
    public void WhereTheHeadOmitsResultsNoneAreKept()
    {
        Workbook omitted = Workbook.WithHead(Workbook.Head with { ResultsOmitted = true }).WithKept(new Dictionary<CellId, string?> { [Id("B6")] = "holds" });
        Assert.DoesNotContain("gives", Text.Write(omitted), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("3 // x"), InlineData("a gives b"), InlineData("two\nlines"), InlineData(" 3 ")]
    public void AKeptTextThatDoesNotReadBackThrows(string kept) =>
        Assert.Throws<ArgumentException>(() => Workbook.WithKept(new Dictionary<CellId, string?> { [Id("B6")] = kept }));

    [Fact]
    public void HeadLinesAreChangedAddedAndRemoved()
    {
        Head head = Workbook.Head with { Title = "Three", Units = UnitSystem.US, MadeWith = "0.1.0", Seed = 7 };
        Workbook changed = Workbook.WithHead(head);
        Edited("title Two screws\n", "title Three\nunits US\nseed 7\nmade with 0.1.0\n", changed);
        Assert.Equal(head, Text.Read(Text.Write(changed)).Head);
        Edited("title Two screws\n", "units SI\n", changed.WithHead(new Head()));
    }

    [Fact]
    public void ANameTakenTwiceFaultsBothAndRenamingClearsBoth()
    {
        Workbook doubled = Workbook.WithCell("Placement", Entry("C4", "peak = 3"));
        Assert.Equal(["B2", "C4"], Broken(doubled));
        Assert.Empty(Broken(doubled.WithCell("Placement", Entry("C4", "peak_2 = 3"))));
        Assert.Empty(Broken(doubled.WithoutCell("Placement", Address("C4"))));
    }

    [Fact]
    public void RemovingADoubledAddressGivesItToTheOtherLine()
    {
        Workbook doubled = Text.Read("screwsheet 1\nsheet A\nA1 = 3\nA1 = 4\n");
        Assert.Equal("screwsheet 1\nsheet A\nA1 = 4\n", Text.Write(doubled.WithoutCell("A", Address("A1"))));
        Assert.Empty(Text.Faults(doubled.WithoutCell("A", Address("A1"))));
    }

    [Fact]
    public void ASheetIsAddedChangedAndRemoved()
    {
        Cell cell = Entry("A1", "=> Placement.peak");
        Sheet sheet = new() { Name = "Fall", Title = "Falls", Cells = CellMap.Of([cell]), Order = [cell.Address] };
        Workbook added = Workbook.WithSheet(sheet);
        Assert.Equal(Before + "\n\nsheet Fall \"Falls\"\n\nA1 => Placement.peak\n", Text.Write(added));
        Edited("sheet Placement \"Leaves\"\nwidths A 34\n", "sheet Placement\nwidths A 34, B 9\n", Workbook.WithSheet(Workbook.Sheets[0] with { Title = null, Widths = Workbook.Sheets[0].Widths.Add(2, 9) }));
        Assert.Equal(Before, Text.Write(added.WithoutSheet("Fall")).TrimEnd('\n'));
    }

    [Fact]
    public void ACellChangedByHandIsWrittenAnew()
    {
        Sheet sheet = Workbook.Sheets[0];
        Cell changed = sheet.Cells[Address("B2")] with { Name = "pull" };
        Edited("B2   peak [kN]=8.5 kN   // from the fall sheet", "B2 pull [kN] = 8.5 kN // from the fall sheet", Workbook.WithSheet(sheet with { Cells = sheet.Cells.With(changed) }));
    }

    [Fact]
    public void ASheetMadeInMemoryTakesTheLinesOfTheOneItReplaces()
    {
        Cell cell = Entry("B2", "peak [kN] = 8.5 kN // from the fall sheet");
        Sheet sheet = new() { Name = "Placement", Title = "Leaves", Widths = Workbook.Sheets[0].Widths, Cells = CellMap.Of([cell]), Order = [cell.Address] };
        Assert.Equal(Before[..Before.IndexOf("B4 arm", StringComparison.Ordinal)], Text.Write(Workbook.WithSheet(sheet)));
    }

    [Theory]
    [InlineData("screwsheet 1\n"), InlineData("screwsheet 1\n\nsheet Other\nA1 = 1\n")]
    public void RemovingADoubledSheetGivesItsNameToTheOther(string before)
    {
        Workbook doubled = Text.Read($"{before}sheet A\nA1 = 3\nsheet A\nA1 = 4\n");
        Workbook removed = doubled.WithoutSheet("A");
        Assert.Equal($"{before}sheet A\nA1 = 4\n", Text.Write(removed));
        Assert.Empty(Text.Faults(removed));
        Assert.Equal("4", Assert.IsType<GivenContent>(removed.Find("A")!.Cells[Address("A1")].Content).Text);
    }

    [Fact]
    public void NamesFollowEdits()
    {
        Workbook renamed = Workbook.WithCell("Placement", Entry("B2", "pull [kN] = 9 kN")).WithoutCell("Placement", Address("B4")).WithCell("Placement", Entry("C9", "last = 3"));
        Assert.Equal(["last", "moment", "pull"], renamed.Sheets[0].Names.Keys.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void AnUnknownSheetThrows() => Assert.Throws<ArgumentException>(() => Workbook.WithCell("Fall", Entry("A1", "3")));

    private static void Edited(string old, string now, Workbook workbook)
    {
        Assert.Contains(old, Before, StringComparison.Ordinal);
        Assert.Equal(Before.Replace(old, now, StringComparison.Ordinal), Text.Write(workbook));
    }

    private static IEnumerable<string> Broken(Workbook workbook) =>
        workbook.Sheets[0].CellsInOrder.Where(cell => cell.Content is BrokenContent).Select(cell => cell.Address.ToString());

    private static Cell Entry(string address, string entry) => Assert.IsType<EntryRead>(CellText.ReadEntry(entry, Address(address))).Cell;

    private static CellAddress Address(string text) => CellAddress.TryParse(text, out CellAddress address) ? address : throw new ArgumentException(text);

    private static CellId Id(string address) => new("Placement", Address(address));
}
