using ScrewSheet.Engine;
using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.Screen;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using GridSession = ScrewSheet.Terminal.Grid.State.Session;

namespace ScrewSheet.Terminal.Tests.Grid.Studies;

/// <summary>The what-if tables of a file, drawn on its sheets.</summary>
public sealed class TableDrawingTests
{
    [Fact]
    public void ATableOfOneGiven_IsDrawnAtItsPlace_WithHeadsUnitsAndChecksInWords()
    {
        using Walk walk = StudyBook.Open();
        Assert.Contains("Moment by length", walk.Row(1), StringComparison.Ordinal);
        Assert.Matches(@" exposed \[mm\] +moment \[N·m\] +strong", walk.Row(2));
        Assert.Matches(@"› +0 +0\.0 +✓holds", walk.Row(3));
        Assert.Matches(@"› +40 +320\.0 +✓holds", walk.Row(5));
        Assert.Matches(@"› +60 +480\.0 +✗FAILS", walk.Row(6));
    }

    [Fact]
    public void ATableOfTwoGivens_HasAPartForEachShownCell_AndAFaultStaysInItsEntry()
    {
        using Walk walk = StudyBook.Open();
        Assert.Contains("moment [N·m], exposed [mm] down, peak [kN] across", walk.Row(9), StringComparison.Ordinal);
        Assert.Matches(@"› +4 › +8", walk.Row(10));
        Assert.Matches(@"› +40 +160\.0 +320\.0", walk.Row(12));
        Assert.Contains("share, exposed [mm] down, peak [kN] across", walk.Row(13), StringComparison.Ordinal);
        Assert.Matches(@"› +20 !fault +0\.25", walk.Row(15));
    }

    [Fact]
    public void ThePlotBesideATable_HasAPointForEachRow()
    {
        using Walk walk = StudyBook.Open();
        Assert.Matches(@"0\.0 +moment \[N·m\] +480\.0", walk.Row(2));
        int[] points = [.. Enumerable.Range(3, 4).Select(row => walk.Row(row).IndexOf('•', StringComparison.Ordinal))];
        Assert.All(points, point => Assert.True(point > 90));
        Assert.Equal(points.Order().Distinct(), points);
        Assert.Equal([points[1] - points[0], points[2] - points[1], points[3] - points[2]], Enumerable.Repeat(points[1] - points[0], 3), (one, other) => Math.Abs(one - other) <= 1);
    }

    [Fact]
    public void ThePlotBesideATable_LeavesCellsThatStandThereAlone()
    {
        using Walk walk = StudyBook.Open(StudyBook.Text.Replace("B1 \"words\"", "G4 \"in the way\"", StringComparison.Ordinal));
        Assert.Contains("in the way", walk.Row(4), StringComparison.Ordinal);
        Assert.DoesNotContain("•", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void TheDetail_SaysWhichGivensLeadToWhichValue()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("F6");
        Assert.Contains("F6 · table at D2 · Moment by length", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" with     exposed = 60 mm", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" value    strong FAILS", walk.Screen, StringComparison.Ordinal);
        Assert.Matches(@" shows +moment 320\.0 N·m +strong holds", walk.Screen);
        walk.Go("E12");
        Assert.Contains(" with     exposed = 40 mm, peak = 4 kN", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" value    moment = 160.0 N·m", walk.Screen, StringComparison.Ordinal);
        walk.Go("E15");
        Assert.Contains(" fault    share: ", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("in 2 of 4 entries", walk.Screen, StringComparison.Ordinal);
        walk.Go("D4");
        Assert.Contains(" given    exposed = 20 mm", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Tab, KeyName.Enter);
        Assert.Equal("A3", walk.State.Open.Cursor.ToString());
    }

    [Fact]
    public void CautionsOfATable_AreCountedInTheDetail()
    {
        using Walk walk = new(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "workbooks", "standing-out.screwsheet")), 200, 50);
        walk.Go("E5");
        Assert.Matches(@" value    moment = \d+\.\d N·m", walk.Screen);
        Assert.Matches(@" caution  .*in \d+ of \d+ entries|in every entry", walk.Screen);
    }

    [Fact]
    public void AChangedGiven_LeavesTheOldEntriesDimmed_AndAsksForTheTablesThatDependOnIt()
    {
        using Walk walk = StudyBook.Open();
        (GridState state, string[] asked) = After(walk, "A1 peak [kN] = 6 kN");
        Assert.Equal(["D2"], asked);
        Assert.Equal("480.0", StudyBook.Drawn(state.Open, "E6"));
        Assert.Contains("⋯exposed [mm]", Painter.Of(state).ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("⋯exposed [mm]", walk.Screen, StringComparison.Ordinal);
        Assert.Equal((Ink.Plain, Ink.Faint), (InkAt(walk.State, 6, "480.0"), InkAt(state, 6, "480.0")));
        Assert.Equal((Ink.Plain, Ink.Plain), (InkAt(walk.State, 12, "320.0"), InkAt(state, 12, "320.0")));
        Assert.Contains("being worked out again", Painter.Of(state with { Session = Moves.To(state.Open, new CellAddress(5, 6)) }).ToString(), StringComparison.Ordinal);
        walk.Go("A1").Enter("peak [kN] = 6 kN").Settle();
        Assert.Equal("360.0", walk.Drawn("E6"));
        Assert.Equal("✓holds", walk.Drawn("F6"));
    }

    [Theory]
    [InlineData("A6 other = 4")]
    [InlineData("B1 \"other words\"")]
    [InlineData("C9 = 4")]
    public void AChangeOfSomethingElse_WorksNothingOut(string line)
    {
        using Walk walk = StudyBook.Open();
        Assert.Empty(After(walk, line).Asked);
    }

    [Theory]
    [InlineData("A2 exposed [mm] = 30 mm within 0 mm to 120 mm", "")]
    [InlineData("A3 Torque moment [kN·m, 3 decimals] => peak * exposed", "D2 D9")]
    [InlineData("A3 Torque moment [N·m, 1 decimal] => 2 * peak * exposed", "D2 D9")]
    [InlineData("A4 strong => moment < 300 N·m", "D2")]
    [InlineData("A5 share => 1 kN / (peak - 5 kN)", "D9")]
    public void OnlyTheTablesThatDependOnAChange_AreWorkedOutAgain(string line, string tables)
    {
        using Walk walk = StudyBook.Open();
        Assert.Equal(tables.Split(' ', StringSplitOptions.RemoveEmptyEntries), After(walk, line).Asked);
    }

    [Fact]
    public void ACellBeneathATable_PutsTheTableInFault_AndIsShown()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("A6").Ctrl('c').Go("E4").Ctrl('v').Settle();
        const string sentence = "E4 stands where the table at D2 is drawn. Move the cell or the table.";
        Assert.Equal("!fault", walk.Drawn("D2"));
        Assert.Equal("", walk.Drawn("E3"));
        Assert.Contains("3", walk.Row(4), StringComparison.Ordinal);
        walk.Go("D2");
        Assert.Contains(sentence, walk.Screen, StringComparison.Ordinal);
        walk.Ctrl('a');
        Assert.Contains(sentence, walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape).Ctrl('z').Settle();
        Assert.Equal("480.0", walk.Drawn("E6"));
    }

    [Fact]
    public void ACellAtTheTablesOwnPlace_SaysSoInItsDetail()
    {
        using Walk walk = StudyBook.Open(StudyBook.Text.Replace("B1 \"words\"", "D2 \"words\"", StringComparison.Ordinal));
        walk.Go("D2");
        Assert.Contains(" table    D2 stands where the table at D2 is drawn.", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void TwoTablesInOnePlace_TheSecondSaysSo()
    {
        using Walk walk = StudyBook.Open(StudyBook.Text.Replace("what-if D9", "what-if E4", StringComparison.Ordinal));
        Assert.Equal("480.0", walk.Drawn("E6"));
        walk.Ctrl('a');
        Assert.Contains("The table at D2 is drawn where the table at E4 would be. Move one of them.", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void ATableThatCannotBeMade_SaysWhyInTheWordsOfTheCommandLine()
    {
        using Walk walk = StudyBook.Open(StudyBook.Text.Replace("step 20 mm", "step 0 mm", StringComparison.Ordinal));
        walk.Go("D2");
        Assert.Contains("The step is zero, so the range would never end.", walk.Screen, StringComparison.Ordinal);
        Assert.Equal("!fault", walk.Drawn("D2"));
    }

    [Fact]
    public void MovedRows_MoveTheTable_WithoutWorkingItOut()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("A8").Command('i').Settle();
        Assert.Equal("160.0", walk.Drawn("E13"));
        Assert.Equal("480.0", walk.Drawn("E6"));
    }

    [Fact]
    public void TypingAndClearing_OnATable_ChangeNothing()
    {
        using Walk walk = StudyBook.Open();
        string before = walk.Saved;
        walk.Go("E5").Type("7");
        Assert.Contains("nothing can be typed into it", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Delete);
        Assert.Contains("A what-if table is computed here.", walk.Screen, StringComparison.Ordinal);
        Assert.False(walk.State.Open.IsUnsaved);
        Assert.Equal(before, walk.Saved);
    }

    [Fact]
    public void ACopiedTable_GoesToOtherProgramsAsItIsShown()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("D2").Shift(KeyName.Down, 2).Shift(KeyName.Right, 2).Ctrl('c');
        Assert.Equal("exposed [mm]\tmoment [N·m]\tstrong\n0\t0.0\tholds\n20\t160.0\tholds", walk.Clipboard);
    }

    /// <summary>The state after a change has been calculated and before any table is worked out again, and the tables that are asked for.</summary>
    private static (GridState State, string[] Asked) After(Walk walk, string line)
    {
        Cell cell = Assert.IsType<EntryRead>(CellText.ReadLine(line)).Cell;
        GridSession changed = walk.State.Open.Changed(walk.Workbook.WithCell("Fall", cell), "a change");
        GridState next = Dispatch.Next(walk.State with { Session = changed }, new Calculated(Known.Of(new Calculator(Walk.Library).Calculate(changed.Workbook), Walk.Library)));
        return (next, [.. next.Effects.OfType<WorkOutTables>().Single().Tables.Select(table => table.Block.Anchor.ToString())]);
    }

    private static Ink InkAt(GridState state, int row, string text) => Painter.Of(state).Lines[1 + row].Segments.First(segment => segment.Text.Contains(text, StringComparison.Ordinal)).Ink;
}
