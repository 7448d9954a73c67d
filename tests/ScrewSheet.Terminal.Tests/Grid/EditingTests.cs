using System.Text;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Terminal.Tests.Grid;

public sealed class EditingTests
{
    private static string TextOf(Walk walk) => Encoding.UTF8.GetString(WorkbookText.Write(walk.Workbook));

    public static TheoryData<string> Changes => ["entry", "clear", "paste", "cut", "fill", "rows", "columns", "remove", "rename", "format", "replace", "units", "sheet", "new sheet", "remove sheet", "move sheet", "width", "fit", "move rows", "move columns", "sort"];

    [Theory]
    [MemberData(nameof(Changes))]
    public void EveryChange_CanBeTakenBackAndDoneAgain(string change)
    {
        using Walk walk = new(Book.Text);
        string before = TextOf(walk);
        Do(walk, change);
        string after = TextOf(walk);
        Assert.NotEqual(before, after);
        Assert.True(walk.State.Open.IsUnsaved);
        walk.Ctrl('z');
        Assert.Equal(before, TextOf(walk));
        Assert.False(walk.State.Open.IsUnsaved);
        walk.Ctrl('y');
        Assert.Equal(after, TextOf(walk));
        walk.Settle();
        Assert.True(walk.State.Open.IsCalculated);
    }

    private static Walk Do(Walk walk, string change) => change switch
    {
        "entry" => walk.Go("C2").Enter("5 kN"),
        "clear" => walk.Go("B2").Shift(KeyName.Down).Press(KeyName.Delete),
        "paste" => walk.Go("B4").Ctrl('c').Go("C4").Ctrl('v'),
        "cut" => walk.Go("B2").Ctrl('x').Go("D9").Ctrl('v'),
        "fill" => walk.Go("B7").Shift(KeyName.Down, 3).Command('d'),
        "rows" => walk.Go("B3").Command('i'),
        "columns" => walk.Go("B3").Command('j'),
        "remove" => walk.Go("B3").Command('o'),
        "rename" => walk.Go("peak").Command('m').Ctrl('u').Type("load").Press(KeyName.Enter),
        "format" => walk.Go("peak").Command('u').Ctrl('u').Type("N, 0 decimals").Press(KeyName.Enter),
        "replace" => walk.Command('h').Type("8.5").Press(KeyName.Enter).Type("9").Press(KeyName.Enter),
        "units" => walk.Command('1'),
        "sheet" => walk.Command('t').Ctrl('u').Type("Drop").Press(KeyName.Enter),
        "new sheet" => walk.Command('n').Type("More").Press(KeyName.Enter),
        "remove sheet" => walk.Command('5').Type("r"),
        "move sheet" => walk.Command('>'),
        "width" => walk.Command('+'),
        "fit" => walk.Command('='),
        "move rows" => walk.Go("B3").Command('4').Press(KeyName.Down, KeyName.Enter),
        "move columns" => walk.Go("B3").Command('4').Press(KeyName.Right, KeyName.Enter),
        "sort" => walk.Go("B4").Press(KeyName.Up).Shift(KeyName.Up).Command('2').Type("w"),
        _ => throw new ArgumentOutOfRangeException(nameof(change)),
    };

    [Fact]
    public void CopyAndPaste_MovesAddresses_LeavesNamesOfCells()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 one = 1\nA2 = 2\nB1 sum => A1 + A2 * one\n");
        walk.Go("B1").Ctrl('c').Press(KeyName.Down, KeyName.Right).Ctrl('v');
        Assert.Equal("=> B2 + B3 * one", walk.Entry("C2"));
    }

    [Fact]
    public void CopiedBlock_IsGivenToOtherPrograms_AsTabSeparatedValues()
    {
        using Walk walk = new(Book.Text);
        walk.Go("A2").Shift(KeyName.Down).Shift(KeyName.Right).Ctrl('c');
        Assert.Equal("Peak force at the hanger\t8.5 kN\nExposed length\t40 mm", walk.Clipboard);
    }

    [Fact]
    public void TextFromOtherPrograms_IsPutIntoCells_AsIfTyped()
    {
        using Walk walk = new(Book.Text);
        walk.Go("C10");
        walk.Program.Handle(new Paste("5 kN\twords\r\n=> peak * 2\t1.2.3\n"));
        Assert.Equal(("= 5 kN", "\"words\"", "=> peak * 2", "\"1.2.3\""), (walk.Entry("C10"), walk.Entry("D10"), walk.Entry("C11"), walk.Entry("D11")));
        Assert.Contains("1 piece could not be read", walk.Screen, StringComparison.Ordinal);
        walk.Ctrl('z');
        Assert.Null(walk.Entry("C10"));
    }

    [Fact]
    public void CutAndPaste_MovesTheCells_AndEveryReferenceFollows_InOtherSheetsToo()
    {
        using Walk walk = new(Book.Text);
        walk.Go("B3").Shift(KeyName.Down).Ctrl('x').Go("D3").Ctrl('v').Settle();
        Assert.Equal(" 340.0 N·m", walk.Face("D4"));
        Assert.Null(walk.Entry("B4"));
        Assert.Contains("A2 => Fall.D4 / Fall.D3", TextOf(walk), StringComparison.Ordinal);
    }

    [Fact]
    public void CutToAnotherSheet_EveryReferenceFollows()
    {
        using Walk walk = new(Book.Text);
        walk.Go("moment").Ctrl('x').Go("Other.B9").Ctrl('v').Settle();
        Assert.Contains("moment [N·m, 1 decimal] => Fall.peak * Fall.exposed", walk.Entry("B9"), StringComparison.Ordinal);
        Assert.Equal(" 340.0 N·m", walk.Face("B9"));
        walk.Go("Fall.B5").Settle();
        Assert.Equal("strong => Other.moment < 500 N·m", walk.Entry("B5"));
        Assert.Equal("✓holds", walk.Face("B5"));
    }

    [Fact]
    public void FillRight_AndDown_AgreeWithTypingEachCell()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 = 1\nA2 = 2\nA3 = 3\nB1 => A1 * 2\n");
        walk.Go("B1").Shift(KeyName.Down, 2).Command('d').Settle();
        Assert.Equal(("=> A3 * 2", " 6"), (walk.Entry("B3"), walk.Face("B3")));
        walk.Go("B3").Shift(KeyName.Right, 2).Command('r').Settle();
        Assert.Equal(("=> C3 * 2", " 24"), (walk.Entry("D3"), walk.Face("D3")));
    }

    [Fact]
    public void RemovedRow_LeavesItsReadersInFault_NotReadingAStranger()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 = 1\nA2 = 2\nA3 = 3\nB1 => A2 * 2\n");
        walk.Go("A2").Command('o').Settle();
        Assert.Equal("=> lost_A2 * 2", walk.Entry("B1"));
        Assert.Equal("!fault", walk.Face("B1"));
    }

    [Fact]
    public void Replace_LeavesWhatWouldNotReadAnyMore()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 = 1 kN\nA2 = 2 mm\n");
        walk.Command('h').Type("kN").Press(KeyName.Enter).Type("qq").Press(KeyName.Enter);
        Assert.Equal("= 1 kN", walk.Entry("A1"));
        Assert.Contains("would not read any more", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void Find_LooksIntoNamesWordsExpressionsAndValues_OfAllSheets()
    {
        using Walk walk = new(Book.Text);
        walk.Ctrl('f').Type("peak").Press(KeyName.Enter);
        Listing found = Assert.IsType<Listing>(walk.State.Mode);
        Assert.Equal(["Fall.A2", "Fall.B2", "Fall.B4", "Fall.B6", "Other.A1"], found.Items.Select(item => item.Word));
        walk.Press(KeyName.End, KeyName.Enter);
        Assert.Equal("Other", walk.State.Open.SheetName);
    }

    [Fact]
    public void SwitchingUnits_ShowsOthers_WhereACellDoesNotSayItsOwn()
    {
        using Walk walk = new("screwsheet 1\nunits SI\n\nsheet S\nA1 = 4448.2216152605 N\nA2 [kN] = 1 kN\n");
        Assert.Matches(@"^›4\.44822\d* kN$", walk.Face("A1"));
        walk.Command('1').Settle();
        Assert.Equal("›1000 lbf", walk.Face("A1"));
        Assert.Equal("›1 kN", walk.Face("A2"));
        Assert.Contains("units US", TextOf(walk), StringComparison.Ordinal);
    }
}
