using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Terminal.Tests.Grid;

/// <summary>The shape of sheets: widths, words that flow, whole rows, columns and sheets on their way.</summary>
public sealed class ShapeTests
{
    private static string TextOf(Walk walk) => System.Text.Encoding.UTF8.GetString(WorkbookText.Write(walk.Workbook));

    private static string Line(Walk walk, int line) => walk.Screen.Split('\n')[line];

    [Fact]
    public void Columns_GrowAndShrinkByKeys_AllThatAreSelected()
    {
        using Walk walk = new(Book.Text);
        walk.Go("B2").Shift(KeyName.Right).Command('+').Command('+').Command('-');
        Assert.Contains("widths A 30, B 16, C 16\n", TextOf(walk), StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_FitWhatStandsInThem()
    {
        using Walk walk = new(Book.Text);
        walk.Go("A1").Shift(KeyName.Right).Command('=');
        // the mark, the text, a blank; the figure with the longest unit in B
        Assert.Contains($"widths A {"Peak force at the hanger".Length + 2}, B {"moment 340.0 N·m".Length + 2}\n", TextOf(walk), StringComparison.Ordinal);
        Assert.Contains("340.0 N·m", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void ANameIsShownBesideItsValue_AsFarAsItHasRoom()
    {
        using Walk walk = new(Book.Text);
        Assert.Contains("›peak  8.5 kN", Line(walk, 3), StringComparison.Ordinal);
        Assert.Contains("✓holds strong", Line(walk, 6), StringComparison.Ordinal);
        walk.Go("B2").Command('-');
        Assert.Contains("›exp… 40 mm", Line(walk, 4), StringComparison.Ordinal);
        walk.Command('-');
        Assert.Contains("›   40 mm", Line(walk, 4), StringComparison.Ordinal);
        walk.Command('+');
        Assert.Contains("›peak  8.5 kN", walk.Command('+').Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void AHeadDrawnByItsEnd_WidensTheColumn_InOneChange()
    {
        using Walk walk = new(Book.Text);
        walk.Program.Handle(new Click(6 + 30 - 1, 1));
        foreach (int x in new[] { 37, 40, 45 }) walk.Program.Handle(new Click(x, 1, IsDrag: true));
        Assert.Contains("widths A 40\n", TextOf(walk), StringComparison.Ordinal);
        walk.Program.Handle(new Click(45, 1));
        walk.Program.Handle(new Click(46, 1, IsDrag: true));
        Assert.Contains("widths A 41\n", TextOf(walk), StringComparison.Ordinal);
        walk.Ctrl('z');
        Assert.Contains("widths A 40\n", TextOf(walk), StringComparison.Ordinal);
        walk.Ctrl('z');
        Assert.Equal(Book.Text, TextOf(walk));
    }

    [Fact]
    public void LongWords_FlowOverEmptyNeighbours_AndStopAtFilledOnes()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nwidths A 10\nA1 \"words that are much longer than their column\"\nA2 \"words that are much longer than their column\"\nC2 = 1 kN\n");
        walk.Go("E9");
        Assert.StartsWith("    1  words that are much longer than their column", Line(walk, 2), StringComparison.Ordinal);
        Assert.StartsWith("    2  words that are much l… ›", Line(walk, 3), StringComparison.Ordinal);
        walk.Go("B1");
        Assert.StartsWith("    1▸ words t…", Line(walk, 2), StringComparison.Ordinal);
    }

    [Fact]
    public void LongWords_FlowIntoTheScreen_FromColumnsLeftOfIt()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nwidths A 10, B 10\nA1 \"0123456789abcdefghijklmnopqrstuvwxyz\"\nC1 = 1\nA2 \"0123456789abcdefghijklmnopqrstuvwxyz\"\nA3 \"表表表表表表表表表表\"\n", width: 50);
        walk.Go("D9");
        Assert.Equal(2, walk.State.Open.Corner.Column);
        Assert.StartsWith("    1 9abcdefg… ›", Line(walk, 2), StringComparison.Ordinal);
        Assert.StartsWith("    2 9abcdefghijklmnopqrstuvwxyz", Line(walk, 3), StringComparison.Ordinal);
        // nine columns are gone: four wide characters and half of the fifth
        Assert.StartsWith("    3  表表表表表", Line(walk, 4), StringComparison.Ordinal);
    }

    [Fact]
    public void Rows_MoveWithTheArrows_AndReferencesFollow_InOtherSheetsToo()
    {
        using Walk walk = new(Book.Text);
        walk.Go("B2").Command('4').Press(KeyName.Down, KeyName.Down).Press(KeyName.Enter).Settle();
        Assert.Equal("peak [kN] = 8.5 kN ± 0.5 kN // from the fall sheet", walk.Entry("B4"));
        Assert.Equal("exposed [mm] = 40 mm ± 10 mm rectangular within 0 mm to 120 mm", walk.Entry("B2"));
        Assert.Contains("A2 => Fall.B3 / Fall.B2\n", TextOf(walk), StringComparison.Ordinal);
        Assert.Equal("B4", walk.State.Open.Cursor.ToString());
        Assert.Equal(" 340.0 N·m", walk.Face("B3"));
        walk.Ctrl('z').Ctrl('z');
        Assert.Equal(Book.Text, TextOf(walk));
    }

    [Fact]
    public void Columns_MoveWithTheArrows_WithTheirWidthsAndNames()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nwidths A 20\ncolumn A force [kN]\nA1 \"force\"\nA2 = 3 kN\nB2 => A2 * 2\nC2 => force.Count\n");
        walk.Go("A1").Command('4').Press(KeyName.Right, KeyName.Escape).Settle();
        Assert.Contains("widths B 20\ncolumn B force [kN]\n", TextOf(walk), StringComparison.Ordinal);
        Assert.Equal("=> B2 * 2", walk.Entry("A2"));
        Assert.Equal(" 1", walk.Face("C2"));
    }

    [Fact]
    public void Rows_AtTheEdge_SayThatThereIsNoRoom()
    {
        using Walk walk = new(Book.Text);
        walk.Go("B1").Command('4').Press(KeyName.Up);
        Assert.Contains("There is no room further on", walk.Screen, StringComparison.Ordinal);
        Assert.Equal(Book.Text, TextOf(walk));
    }

    [Fact]
    public void Sorting_WholeRows_TakesEverythingBesideAlong()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 = 3\nB1 \"three\"\nC1 => A1 * 10\nA2 = 1\nB2 \"one\"\nA3 = 2\nB3 \"two\"\n");
        walk.Go("A1").Shift(KeyName.Down, 2).Command('2').Type("w").Settle();
        Assert.Equal(("\"one\"", "\"two\"", "\"three\""), (walk.Entry("B1"), walk.Entry("B2"), walk.Entry("B3")));
        Assert.Equal("=> A3 * 10", walk.Entry("C3"));
    }

    [Fact]
    public void Sorting_Columns_IsByTheCursorsRow()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 \"three\"\nB1 \"one\"\nC1 \"two\"\nA2 = 3\nB2 = 1\nC2 = 2\nA3 = 30\nB3 = 10\nC3 = 20\nE1 => A2 + B3\n");
        walk.Go("A2").Shift(KeyName.Right, 2).Command('3').Type("h").Settle();
        Assert.Equal(("\"three\"", "\"two\"", "\"one\""), (walk.Entry("A1"), walk.Entry("B1"), walk.Entry("C1")));
        Assert.Equal(("= 30", "= 10"), (walk.Entry("A3"), walk.Entry("C3")));
        Assert.Equal("=> A2 + C3", walk.Entry("E1"));
        walk.Go("A2").Shift(KeyName.Right, 2).Command('2').Type("c").Settle();
        Assert.Equal(("= 1", "= 30"), (walk.Entry("A2"), walk.Entry("A3")));
    }

    [Fact]
    public void Sheets_AreAddedMovedRenamedAndRemoved()
    {
        using Walk walk = new(Book.Text);
        walk.Command('n').Type("Extra").Press(KeyName.Enter).Enter("=> Fall.peak * 3").Settle();
        Assert.Contains(" Fall  Other ‹Extra›", walk.Screen, StringComparison.Ordinal);
        walk.Command('<').Command('<');
        Assert.Contains("‹Extra› Fall  Other ", walk.Screen, StringComparison.Ordinal);
        walk.Command('<');
        Assert.Contains("This is the first sheet already", walk.Screen, StringComparison.Ordinal);
        Assert.True(TextOf(walk).IndexOf("sheet Extra", StringComparison.Ordinal) < TextOf(walk).IndexOf("sheet Fall", StringComparison.Ordinal));
        walk.Settle();
        Assert.Equal(" 25.5 kN", walk.Face("A1"));
        walk.Go("Fall").Command('5');
        Assert.Contains("holds 10 cells", walk.Screen, StringComparison.Ordinal);
        walk.Type("r").Settle();
        Assert.Contains("Removed the sheet Fall", walk.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("sheet Fall", TextOf(walk), StringComparison.Ordinal);
        walk.Go("Extra.A1");
        Assert.Equal("!fault", walk.Face("A1"));
        walk.Ctrl('z').Settle();
        walk.Go("Extra.A1");
        Assert.Equal(" 25.5 kN", walk.Face("A1"));
    }

    [Fact]
    public void TheOnlySheet_Stays()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\nA1 = 1\n");
        walk.Command('5');
        Assert.Contains("this is the only one", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void AColumnThatIsASeries_IsNamedInItsHead_AndRenamedEverywhere()
    {
        using Walk walk = new("screwsheet 1\n\nsheet S\ncolumn A force [kN]\nA1 \"force\"\nA2 = 3 kN\nB1 => Sum(force)\n");
        Assert.Contains("▾A force", Line(walk, 1), StringComparison.Ordinal);
        walk.Command('m').Ctrl('u').Type("load").Press(KeyName.Enter).Settle();
        Assert.Contains("column A load [kN]\n", TextOf(walk), StringComparison.Ordinal);
        Assert.Equal(("=> Sum(load)", " 3 kN"), (walk.Entry("B1"), walk.Face("B1")));
    }
}
