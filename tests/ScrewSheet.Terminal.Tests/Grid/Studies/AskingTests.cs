using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Tests.Grid.Studies;

/// <summary>Solving backwards, spread and sensitivity, asked for in the grid.</summary>
public sealed class AskingTests
{
    private const KeyName Enter = KeyName.Enter;

    [Fact]
    public void Backwards_ShowsWhatItFound_AndWritesNothingUnasked()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("moment").Ctrl('t').Type("b").Press(KeyName.Down, Enter).Enter("300 N·m").Press(Enter).Settle();
        Assert.Contains("exposed = 37.5000 mm makes moment 300.0 N·m.", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("residual", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("Searched from 0 mm to 120.0 mm (its limits in the file)", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("W write exposed = 37.5 mm", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape);
        Assert.False(walk.State.Open.IsUnsaved);
    }

    [Fact]
    public void TheOfferedValue_IsWrittenOnYesOnly_AndCanBeTakenBack()
    {
        using Walk walk = StudyBook.Open();
        const string given = "exposed [mm] = 40 mm ± 10 mm rectangular within 0 mm to 120 mm";
        walk.Go("moment").Ctrl('t').Type("b").Press(KeyName.Down, Enter).Enter("300 N·m").Press(Enter).Settle().Type("w");
        Assert.Contains("Write 37.5 mm into exposed? It has 40 mm.", walk.Screen, StringComparison.Ordinal);
        walk.Type("n");
        Assert.Equal(given, walk.Entry("A2"));
        walk.Ctrl('t').Type("b").Press(KeyName.Down, Enter).Enter("300 N·m").Press(Enter).Settle().Type("w").Type("y").Settle();
        Assert.Equal("exposed [mm] = 37.5 mm ± 10 mm rectangular within 0 mm to 120 mm", walk.Entry("A2"));
        Assert.Equal(" 300.0 N·m", walk.Face("A3"));
        walk.Ctrl('z').Settle();
        Assert.Equal(given, walk.Entry("A2"));
    }

    [Fact]
    public void OfACheck_TheOfferedValueHolds()
    {
        using Walk walk = StudyBook.Open(StudyBook.Text.Replace("= 8 kN", "= 8.3 kN", StringComparison.Ordinal));
        walk.Go("strong").Ctrl('t');
        Assert.Contains("backwards: for which value of a given it turns", walk.Screen, StringComparison.Ordinal);
        walk.Type("b").Press(KeyName.Down, Enter, Enter).Settle();
        Assert.Contains("strong holds up to exposed = 48.1927 mm and fails above.", walk.Screen, StringComparison.Ordinal);
        walk.Type("w").Type("y").Settle();
        Assert.Equal("exposed [mm] = 48.1927 mm ± 10 mm rectangular within 0 mm to 120 mm", walk.Entry("A2"));
        Assert.Equal("✓holds", walk.Face("A4"));
    }

    [Theory]
    [InlineData("900 N", "", "moment is a torque")]
    [InlineData("300 N·m", "0 mm", "One end of the interval is missing.")]
    [InlineData("300 N·m", "9 mm to 1 mm", "9 mm is not below 1 mm.")]
    [InlineData("", null, "Write the value it is to have, with its unit.")]
    public void WhatCannotBeSearched_IsAnsweredAndAskedForAgain(string target, string? between, string sentence)
    {
        using Walk walk = StudyBook.Open();
        walk.Go("moment").Ctrl('t').Type("b").Press(KeyName.Down, Enter).Enter(target);
        if (between is not null) walk.Enter(between).Settle();
        Assert.Contains(sentence, walk.Screen, StringComparison.Ordinal);
        Assert.IsType<Stepping>(walk.State.Mode);
        Assert.False(walk.State.Open.IsUnsaved);
    }

    [Fact]
    public void NoValue_IsSaidWithWhatWasSearched_AndNothingIsOffered()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("moment").Ctrl('t').Type("b").Press(KeyName.Down, Enter).Enter("9000 N·m").Press(Enter).Settle();
        Assert.Matches(@"No exposed from 0 mm to 120\.\d+ mm makes moment 9000", walk.Screen);
        Assert.DoesNotContain("write exposed", walk.Screen, StringComparison.Ordinal);
        walk.Type("w");
        Assert.IsType<Finding>(walk.State.Mode);
    }

    [Fact]
    public void HowSure_ShowsBothMethodsAndShares_OnAPageThatScrolls()
    {
        using Walk walk = StudyBook.Open(width: 80, height: 24);
        walk.Go("moment").Ctrl('t').Type("u").Enter("20000").Settle();
        Assert.Contains("How sure is moment?", walk.Screen, StringComparison.Ordinal);
        Assert.Matches("first order +Monte Carlo", walk.Screen);
        Assert.Matches("exposed +40 mm ± 10 rectangular", walk.Screen);
        Assert.Contains("more lines below", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.End);
        Assert.Contains("20,000 draws, seed 7.", walk.Screen, StringComparison.Ordinal);
        Assert.DoesNotContain("first order  Monte Carlo", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape);
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.False(walk.State.Open.IsUnsaved);
    }

    [Fact]
    public void HowSure_IsThePageOfTheCommandLine()
    {
        using Walk walk = StudyBook.Open(width: 102, height: 80);
        walk.Go("strong").Ctrl('t').Type("u").Enter("20000").Settle();
        StringWriter output = new(), error = new();
        Assert.Equal(0, Program.Run(["uncertainty", walk.At("book.screwsheet"), "--cell", "strong", "--samples", "20000"], new Shell { Output = output, Error = error, Width = 98, Calculator = () => new EngineCalculator(Walk.Library) }));
        foreach (string line in output.ToString().Split('\n').Skip(1)) Assert.Contains(line, walk.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("many", "many: a whole number stands there, like 100000.")]
    [InlineData("10", "The number of samples is from 1,000 to 100,000,000.")]
    public void DrawsThatCannotBe_AreAnsweredAndAskedForAgain(string draws, string sentence)
    {
        using Walk walk = StudyBook.Open();
        walk.Go("moment").Ctrl('t').Type("u").Enter(draws).Settle();
        Assert.Contains(sentence, walk.Screen, StringComparison.Ordinal);
        Assert.IsType<Stepping>(walk.State.Mode);
    }

    [Fact]
    public void WithoutTolerances_ThatIsSaid()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("doubled").Ctrl('t').Type("d").Settle();
        Assert.Contains("No given that doubled depends on has a tolerance.", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatDrivesIt_RanksTheGivens_WithABarForEach()
    {
        using Walk walk = StudyBook.Open(width: 110);
        walk.Go("moment").Ctrl('t').Type("d").Settle();
        string[] lines = walk.Screen.Split('\n');
        int exposed = Array.FindIndex(lines, line => line.StartsWith(" exposed", StringComparison.Ordinal)), peak = Array.FindIndex(lines, line => line.StartsWith(" peak", StringComparison.Ordinal));
        Assert.Equal(exposed + 1, peak);
        Assert.Matches(@" exposed +30 mm +50 mm +240\.0 +400\.0 +━+│━+", lines[exposed]);
        Assert.Matches(@" peak +7\.5 kN +8\.5 kN +300\.0 +340\.0 +━+│━+", lines[peak]);
        Assert.True(lines[exposed].Count(c => c == '━') > 3 * lines[peak].Count(c => c == '━'));
    }

    [Fact]
    public void AStudyUnderWay_ShowsHowFarItIs_AndEscapeStopsIt()
    {
        using Walk walk = StudyBook.Open();
        var workbook = walk.Workbook;
        walk.Go("moment").Ctrl('t').Type("u").Enter("100000000");
        Working working = Assert.IsType<Working>(walk.State.Mode);
        walk.Program.Handle(new StudyShare(working.Ticket, 0.42));
        Assert.Contains("42 %", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("Esc stops it; nothing is changed then.", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape);
        Assert.Contains("Stopped before the end. Nothing was changed.", walk.Screen, StringComparison.Ordinal);
        var clock = System.Diagnostics.Stopwatch.StartNew();
        walk.Settle();
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(20), $"It went on for {clock.Elapsed}.");
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.Same(workbook, walk.Workbook);
    }

    [Fact]
    public void NewsOfAStudyThatWasLeft_ChangesNothing()
    {
        using Walk walk = StudyBook.Open();
        walk.Program.Handle(new StudyDone(new StudyTicket("gone"), state => state.Say("too late")));
        walk.Program.Handle(new StudyShare(new StudyTicket("gone"), 0.5));
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.DoesNotContain("too late", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void ALongTable_KeepsNobodyWaiting_ShowsHowFarItIs_AndCanBeStopped()
    {
        using Walk walk = StudyBook.Open();
        AskForALongTable(walk);
        walk.Program.Handle(new TableShare("table Z2", 0.07));
        Assert.Contains("table Z2 7 %", walk.Screen, StringComparison.Ordinal);
        Assert.Equal("⋯", walk.Drawn("Z2"));
        walk.Go("moment");
        Assert.Equal("A3", walk.State.Open.Cursor.ToString());
        walk.Command('.');
        Assert.Contains("Stopped; a table that was not finished shows what it was before.", walk.Screen, StringComparison.Ordinal);
        var clock = System.Diagnostics.Stopwatch.StartNew();
        walk.Settle();
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(20), $"It went on for {clock.Elapsed}.");
        Assert.Equal("⋯stopped", walk.Drawn("Z2"));
        walk.Go("Z2").Press(Enter);
        Assert.Contains("work it out after all", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape).Command('.');
        Assert.Contains("Nothing is being calculated.", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void WhatTheReaderAsks_GoesBeforeALongTable_WhichGoesOnBehindIt()
    {
        using Walk walk = StudyBook.Open();
        AskForALongTable(walk);
        walk.Go("moment").Ctrl('t').Type("b").Press(KeyName.Down, Enter).Enter("300 N·m").Press(Enter);
        var clock = System.Diagnostics.Stopwatch.StartNew();
        while (walk.State.Mode is not Finding && clock.Elapsed < TimeSpan.FromSeconds(30))
        {
            Thread.Sleep(5);
            walk.Program.TakeArrived();
        }
        Assert.Contains("exposed = 37.5000 mm makes moment 300.0 N·m.", walk.Screen, StringComparison.Ordinal);
        Assert.Equal("⋯", walk.Drawn("Z2"));
        walk.Press(KeyName.Escape).Command('.').Settle();
        Assert.Equal("⋯stopped", walk.Drawn("Z2"));
    }

    /// <summary>A text has no form in a kernel, so all these entries are worked out cell by cell.</summary>
    private static void AskForALongTable(Walk walk)
    {
        walk.Go("C1").Enter("=> $\"{moment}\"").Settle();
        walk.Go("moment").Ctrl('t').Type("t").Press(Enter).Ctrl('u').Enter("1 kN to 9 kN over 89999 steps").Press(Enter).Ctrl('u').Enter("C1, moment, C1, C1, C1, C1, C1, C1").Ctrl('u').Enter("Z2").Press(Enter);
        walk.Program.Settle(TimeSpan.FromSeconds(60));
    }

    [Fact]
    public void NewsOfATableThatIsNotAskedFor_SaysNothingForEver()
    {
        using Walk walk = StudyBook.Open();
        walk.Program.Handle(new TableShare("table D2", 0.5));
        Assert.DoesNotContain("50 %", walk.Screen, StringComparison.Ordinal);
        Assert.Null(walk.State.Open.Tables.Running);
    }

    [Fact]
    public void AStoppedTable_IsWorkedOutAfterAll()
    {
        using Walk walk = StudyBook.Open();
        TableInputs inputs = walk.State.Open.Known!.Tables[0];
        GridState fresh = walk.State with { Session = walk.State.Open with { Tables = new TableResults().Stopped(walk.State.Open.Known!) } };
        Assert.Empty(fresh.Open.Tables.Missing(fresh.Open.Known!));
        GridState again = StudyState.Resume(fresh);
        Assert.Equal(2, Assert.Single(again.Effects.OfType<WorkOutTables>()).Tables.Length);
        Assert.True(fresh.Open.Tables.IsStopped(inputs));
    }
}
