namespace ScrewSheet.EndToEnd.Tests.Walks;

/// <summary>What a person looks at.</summary>
public sealed class LookingWalks
{
    [Fact]
    public void StartPage_NewWorkbook_GivenResultCheck_SavedUnderAName()
    {
        using Desk desk = new(cautionsRead: false);
        desk.Start().Sees("People can be hurt").Press("Enter").Sees("An empty workbook").Press("Enter").Sees("no file yet");
        desk.Line("load [kN] = 6 kN").Line("arm = 30 mm").Line("moment [N·m] => load * arm").Sees("180 N·m").Press("Up").Sees("numbers  6 kN · 30 mm");
        desk.Press("C-q").Sees("changes that are not saved").Type("s").Sees("Save as").Line("mine").Left(0);
        Assert.Contains("A3 moment [N·m] => load * arm gives 180 N·m\n", desk.Read("mine.screwsheet"), StringComparison.Ordinal);
        desk.Start().Sees("mine.screwsheet").Press("Down", "Enter").Sees("180 N·m").Leave();
    }

    [Fact]
    public void StartPage_AShippedWorkbook_OpensAsACopy()
    {
        using Desk desk = new(200, 50);
        desk.Start().Sees("short-screw").Type("short-sc").Press("Enter").Sees("‹Screws›").Sees("no file yet").Sees("186.9 N·m").Leave();
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void Attention_LeadsToTheFault_AndTheDetailToItsCause(int width, int height)
    {
        using Desk desk = new(width, height);
        desk.Open("fall.screwsheet", Books.Fall).Press("C-a").Sees("What needs attention").Press("Enter").Sees("B6 broken").Sees("A force and a length cannot be added");
        desk.Go("B7").Sees("waits").Press("Tab").Sees("▸broken").Press("Enter").Sees("B6 broken").Press("C-b").Sees("── B7").Leave();
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void Catalogue_PutsACallIn_AndExplainsItsParameters(int width, int height)
    {
        using Desk desk = new(width, height);
        desk.Open("fall.screwsheet", Books.Fall).Go("C2").Press("C-l").Sees("Functions of the library").Type("FallFactor").Press("Enter").Sees("» => FallFactor(");
        desk.Press("C-u").Type("=> FallFactor(4 m, ").Sees("in m").Type("2 m)").Sees("gives    2").Press("Enter").Sees("not saved").Press("C-q").Type("d").Left(0);
        Assert.Equal(Books.Fall, desk.Read("fall.screwsheet"));
    }

    [Theory]
    [InlineData(80, 24)]
    [InlineData(200, 50)]
    public void Plot_OfTwoColumns(int width, int height)
    {
        using Desk desk = new(width, height);
        desk.Open("rows.screwsheet", Books.Rows).Go("A1").Press("S-Down", "S-Down", "S-Down", "S-Right").Command("p").Sees("force [kN] over length [mm]").Sees("3 points");
        desk.Press("Escape").Sees("A1 to B4").Leave();
    }

    [Fact]
    public void Help_ListsTheKeys_AndUnitsSwitch()
    {
        using Desk desk = new(120, 40);
        desk.Open("rows.screwsheet", "screwsheet 1\n\nsheet S\nA1 = 4448.2216152605 N\n").Type("?").Sees("In the grid").Press("Escape").Sees("‹S›").Command("1").Sees("1000 lbf").Press("C-z").Sees("Took back").Leave();
    }

    [Fact]
    public void ResizedWhileRunning_TheLineBeingTypedStays()
    {
        using Desk desk = new();
        desk.Open("fall.screwsheet", Books.Fall).Go("C2").Type("=> peak * 2 + 1 kN").Sees("gives    18 kN");
        desk.Resize(200, 50).Until(50).Sees("» => peak * 2 + 1 kN").Resize(60, 18).Until(18).Sees("» => peak * 2 + 1 kN");
        desk.Resize(40, 10).Sees("This needs 44 × 14 characters").Resize(80, 24).Until(24).Sees("» => peak * 2 + 1 kN").Press("Enter").Sees("18 kN").Resize(120, 40).Until(40).Sees("‹Fall›");
        desk.Press("C-s").Sees("Saved").Leave();
        Assert.Contains("C2 => peak * 2 + 1 kN gives 18 kN\n", desk.Read("fall.screwsheet"), StringComparison.Ordinal);
    }

    [Fact]
    public void Mouse_GoesToACell_AndDragsASelection()
    {
        using Desk desk = new();
        desk.Open("fall.screwsheet", Books.Fall).Bytes("\e[<0;40;4M\e[<0;40;4m").Sees("── B2 peak");
        desk.Bytes("\e[<0;40;4M\e[<32;40;6M\e[<0;40;6m").Sees("── B2 to B4").Leave();
    }

    [Fact]
    public void WithoutColours_NoCodeOfAColourIsSent()
    {
        using Desk desk = new(colour: false);
        desk.Open("fall.screwsheet", Books.Fall);
        Assert.DoesNotMatch(@"\e\[[0-9;]*\b(3[0-8]|4[0-8]|9[0-7]|10[0-7])\b[0-9;]*m", desk.Styled);
        Assert.Contains("!fault", desk.Screen, StringComparison.Ordinal);
        desk.Leave();
    }

    [Fact]
    public void WideCombiningAndRightToLeftCharacters_KeepTheColumns()
    {
        using Desk desk = new();
        desk.Open("wide.screwsheet", "screwsheet 1\n\nsheet S\nwidths A 10, B 10\nA1 \"表計算の本\"\nB1 = 1 kN\nA2 \"e\u0301te\u0301 été\"\nB2 = 2 kN\nA3 \"עברית ab\"\nB3 = 3 kN\n");
        string[] lines = desk.Screen.Split('\n');
        // columns of characters before the value: wide ones count two, combining ones none
        Assert.Equal("    1▸ 表計算…  ›    1 kN", Before(lines[2], "1 kN"));
        Assert.EndsWith("2 kN", lines[3].TrimEnd(), StringComparison.Ordinal);
        Assert.EndsWith("3 kN", lines[4].TrimEnd(), StringComparison.Ordinal);
        desk.Go("A4").Type("表e\u0301x").Sees("» 表e\u0301x").Press("BSpace", "BSpace").Sees("» 表").SeesNot("e\u0301x").Press("Enter", "C-s").Sees("Saved").Leave();
        Assert.Contains("A4 \"表\"\n", desk.Read("wide.screwsheet"), StringComparison.Ordinal);
    }

    private static string Before(string line, string end) => line[..(line.IndexOf(end, StringComparison.Ordinal) + end.Length)];
}
