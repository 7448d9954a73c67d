using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Format;

/// <summary>Two versions of a cell in a file: a fault that names both, with the name both give it, and easily resolved.</summary>
public sealed class ConflictTests
{
    private const string Text = "screwsheet 1\nsheet A\nB2 x = 3 kN\nB3 conflict\n  ours exposed [mm] = 40 mm // tape\n  theirs exposed [mm] = 45 mm\nB4 => B3 * 2\n";

    private static readonly CellAddress B3 = new(2, 3);

    [Fact]
    public void AConflictIsACellInFaultThatNamesBothVersions()
    {
        Cell cell = Tests.Text.Read(Text).Sheets[0].Cells[B3];
        Fault fault = Assert.IsType<BrokenContent>(cell.Content).Fault;
        Assert.Equal("exposed", cell.Name);
        Assert.Equal(
            "Two versions of this cell meet here: ours is exposed [mm] = 40 mm // tape, theirs is exposed [mm] = 45 mm. Write the one that shall count after the address, in place of conflict, and remove the lines beneath.",
            fault.Sentence);
        Assert.Equal(new Place(4, 1, 11), fault.Place);
    }

    [Theory]
    [InlineData("\n"), InlineData("\r\n")]
    public void ItIsSavedBackAsItStands(string end)
    {
        string text = Text.ReplaceLineEndings(end);
        Assert.Equal(text, Tests.Text.Write(Tests.Text.Read(text)));
        Assert.Equal(text.Replace("B2 x = 3 kN", "B2 x = 4 kN", StringComparison.Ordinal), Tests.Text.Write(With(Tests.Text.Read(text), "B2 x = 4 kN")));
    }

    [Fact]
    public void AConflictFarDownALongFileIsReadAlike()
    {
        string text = "screwsheet 1\nsheet A\n" + string.Concat(Enumerable.Range(1, 3000).Select(row => $"A{row} = {row}\n")) + "B3 conflict\n  ours x = 40 mm\n  theirs x = 45 mm\n";
        Workbook workbook = Tests.Text.Read(text);
        Assert.StartsWith("Two versions of this cell meet here: ours is x = 40 mm, theirs is x = 45 mm.", Assert.Single(Tests.Text.Faults(workbook)).Message, StringComparison.Ordinal);
        Assert.Equal("x", workbook.Sheets[0].Cells[B3].Name);
        Assert.Equal(text, Tests.Text.Write(workbook));
    }

    [Fact]
    public void WritingTheCellResolvesIt() =>
        Assert.Equal("screwsheet 1\nsheet A\nB2 x = 3 kN\nB3 exposed [mm] = 45 mm\nB4 => B3 * 2\n", Tests.Text.Write(With(Tests.Text.Read(Text), "B3 exposed [mm] = 45 mm")));

    [Fact]
    public void RemovingTheCellRemovesAllItsLines() =>
        Assert.Equal("screwsheet 1\nsheet A\nB2 x = 3 kN\nB4 => B3 * 2\n", Tests.Text.Write(Tests.Text.Read(Text).WithoutCell("A", B3)));

    [Fact]
    public void BothVersionsFollowWhatTheyRead()
    {
        Workbook read = Tests.Text.Read("screwsheet 1\nsheet A\nB2 = 3 kN\nB3 conflict\n  ours y => B2 * 2 // B2\n  theirs y => 3 * B2\n");
        Assert.Equal("screwsheet 1\nsheet A\nB4 = 3 kN\nB5 conflict\n  ours y => B4 * 2 // B2\n  theirs y => 3 * B4\n", Tests.Text.Write(RowsAndColumns.InsertRows(read, "A", 1, 2)));
    }

    [Fact]
    public void AVersionWithoutTheCellIsSaidToHaveNothing() =>
        Assert.StartsWith("Two versions of this cell meet here: ours is nothing, theirs is = 4.", Assert.Single(Tests.Text.Faults(Tests.Text.Read("screwsheet 1\nsheet A\nB3 conflict\n  ours\n  theirs = 4\n"))).Sentence, StringComparison.Ordinal);

    [Theory]
    [InlineData("screwsheet 1\nconflict\n  ours title O\n  theirs title X\nsheet A\n", 2)]
    [InlineData("screwsheet 1\nsheet A\nconflict\n  ours title O\n  theirs title X\nB2 = 3\n", 3)]
    public void LinesInConflictAreAFaultAndHaveNoEffect(string text, int line)
    {
        Workbook workbook = Tests.Text.Read(text);
        Fault fault = Assert.Single(workbook.Faults);
        Assert.Equal("Two versions of these lines meet here: ours is title O, theirs is title X. Keep the lines that shall count, without the word before them, and remove the others.", fault.Sentence);
        Assert.Equal(line, fault.Place!.Value.Line);
        Assert.Equal("", workbook.Head.Title);
        Assert.Equal(text, Tests.Text.Write(workbook));
    }

    [Theory]
    [InlineData("B3 conflict // remark"), InlineData("B3 conflicting"), InlineData("3B conflict"), InlineData("B3conflict")]
    public void OtherLinesAreNoConflict(string line) => Assert.DoesNotContain(Tests.Text.Faults(Tests.Text.Read($"screwsheet 1\nsheet A\n{line}\n")), fault => fault.Code is 1060 or 1061);

    private static Workbook With(Workbook workbook, string line) => workbook.WithCell("A", Assert.IsType<EntryRead>(CellText.ReadLine(line)).Cell);
}
