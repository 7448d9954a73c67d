using ScrewSheet.Terminal.Grid.Keys;
using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Grid.Studies;

namespace ScrewSheet.Terminal.Tests.Grid.Studies;

/// <summary>A what-if table asked for, changed and removed in the grid.</summary>
public sealed class WhatIfStepsTests
{
    private const KeyName Enter = KeyName.Enter;

    private static string Text(Walk walk) => System.Text.Encoding.UTF8.GetString(ScrewSheet.Workbooks.Format.WorkbookText.Write(walk.Workbook));

    private static Walk Steps(Walk walk, params string[] answers)
    {
        foreach (string answer in answers) walk.Ctrl('u').Enter(answer);
        return walk;
    }

    [Fact]
    public void ATableInPlainSteps_IsOneChangeOfTheWorkbook()
    {
        using Walk walk = StudyBook.Open();
        string before = Text(walk);
        walk.Go("moment").Ctrl('t');
        Assert.Contains("What do you want to know about moment?", walk.Screen, StringComparison.Ordinal);
        walk.Type("t");
        Assert.Contains("What varies, for moment?", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("peak = 8 kN", walk.Screen, StringComparison.Ordinal);
        Assert.Contains("Suggested: 7 kN to 9 kN step 0.2 kN", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Down, Enter);
        Assert.Contains("Values of exposed: 0 mm to 120 mm step 20 mm", walk.Screen, StringComparison.Ordinal);
        walk.Press(Enter);
        Assert.Contains("Another given, across?", walk.Screen, StringComparison.Ordinal);
        walk.Press(Enter);
        Assert.Contains("vary exposed: 0 mm to 120 mm step 20 mm", walk.Screen, StringComparison.Ordinal);
        walk.Ctrl('u').Type("moment, strong").Press(Enter);
        Assert.Contains("It takes 8 rows and 3 columns, and hides no cell.", walk.Screen, StringComparison.Ordinal);
        walk.Press(Enter);
        Assert.Contains("Words above it: Moment, strong by exposed", walk.Screen, StringComparison.Ordinal);
        Assert.Equal(before, Text(walk));
        walk.Press(Enter).Settle();
        Assert.Equal("D19", walk.State.Open.Cursor.ToString());
        Assert.Contains("what-if D19 \"Moment, strong by exposed\"\n  vary exposed: 0 mm to 120 mm step 20 mm\n  show moment, strong\n", Text(walk), StringComparison.Ordinal);
        Assert.Equal("960.0", walk.Drawn("E26"));
        walk.Ctrl('z').Settle();
        Assert.Equal(before, Text(walk));
        Assert.Equal("", walk.Drawn("E26"));
        walk.Ctrl('y').Settle();
        Assert.Equal("960.0", walk.Drawn("E26"));
    }

    [Fact]
    public void TwoGivensAndALaterWorkbook_AreTheTableTheCommandLineMakes()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("moment").Command('9').Type("t").Press(Enter);
        Steps(walk, "4 kN, 6 kN").Press(KeyName.Down, Enter);
        Steps(walk, "10 mm, 20 mm", "moment", "J2", "");
        walk.Settle().Ctrl('s').Settle();
        Assert.Contains("what-if J2\n  vary peak: 4 kN, 6 kN\n  vary exposed: 10 mm, 20 mm\n  show moment\n", walk.Saved, StringComparison.Ordinal);
        Assert.Equal("120.0", walk.Drawn("L5"));
    }

    [Fact]
    public void OnAGiven_ItVaries_AndWhatReadsItIsShown()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("exposed").Ctrl('t').Press(Enter).Press(Enter);
        Assert.Contains("Show: moment", walk.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0 mm to 60 mm step 0 mm")]
    [InlineData("0 mm to 60 mm step -10 mm")]
    [InlineData("0 mm to 60 mm step 10 N")]
    [InlineData("0 mm to 1000000000 mm step 0.001 mm")]
    [InlineData("0 mm to 60 mm log over 5 steps")]
    [InlineData("0 mm to 1e999 mm step 1 mm")]
    [InlineData("40 N")]
    [InlineData("40 mm,")]
    [InlineData("")]
    [InlineData("0 mm to 60 mm over no steps")]
    [InlineData("peak")]
    public void ValuesThatCannotBeTaken_AreAnsweredInTheWordsOfTheCommandLine_AndAskedForAgain(string values)
    {
        using Walk walk = StudyBook.Open(width: 250);
        string before = Text(walk);
        walk.Go("moment").Ctrl('t').Type("t").Press(KeyName.Down, Enter);
        Steps(walk, values);
        Assert.Contains(CommandLine(walk, $"exposed: {values}", "moment"), walk.Screen, StringComparison.Ordinal);
        Assert.Contains($"Values of exposed: {values}".TrimEnd(), walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape);
        Assert.Equal(before, Text(walk));
    }

    [Theory]
    [InlineData("nowhere")]
    [InlineData("B1")]
    [InlineData("moment;strong")]
    public void WhatCannotBeShown_IsAnsweredInTheWordsOfTheCommandLine(string show)
    {
        using Walk walk = StudyBook.Open(width: 250);
        walk.Go("moment").Ctrl('t').Type("t").Press(KeyName.Down, Enter, Enter, Enter);
        Steps(walk, show);
        Assert.Contains(CommandLine(walk, "exposed: 10 mm, 20 mm", show), walk.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("here", "here is no address. Write one like D2.")]
    [InlineData("A1", "A1 stands where the table at A1 is drawn. Move the cell or the table.")]
    [InlineData("E3", "The table at D2 is drawn where the table at E3 would be. Move one of them.")]
    [InlineData("ZZZ2", "From ZZZ2 on the sheet has no room for it.")]
    public void APlaceThatIsTaken_IsAskedForAgain(string place, string sentence)
    {
        using Walk walk = StudyBook.Open();
        walk.Go("moment").Ctrl('t').Type("t").Press(KeyName.Down, Enter, Enter, Enter, Enter);
        Steps(walk, place);
        Assert.Contains(sentence, walk.Screen, StringComparison.Ordinal);
        Assert.Contains($"Top left cell: {place}", walk.Screen, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void EscapeAtAnyStep_ChangesNothing(int steps)
    {
        using Walk walk = StudyBook.Open();
        var workbook = walk.Workbook;
        walk.Go("moment").Ctrl('t').Type("t").Press([.. Enumerable.Repeat(Enter, steps)]).Press(KeyName.Escape);
        Assert.IsType<Browsing>(walk.State.Mode);
        Assert.Same(workbook, walk.Workbook);
    }

    [Fact]
    public void ATable_IsChangedLineByLine()
    {
        using Walk walk = StudyBook.Open();
        string before = Text(walk);
        walk.Go("E5").Press(Enter);
        Assert.Contains("The table at D2: Moment by length", walk.Screen, StringComparison.Ordinal);
        walk.Type("c").Press(Enter);
        Steps(walk, "exposed: 0 mm to 60 mm step 30 mm").Settle();
        Assert.Equal("480.0", walk.Drawn("E5"));
        walk.Go("E5").Press(Enter).Type("c").Press(KeyName.Down, KeyName.Down, Enter);
        Steps(walk, "strong, moment").Settle();
        Assert.Equal("✗FAILS", walk.Drawn("E5"));
        walk.Go("E5").Press(Enter).Type("c").Press(KeyName.Down, KeyName.Down, KeyName.Down, Enter);
        Steps(walk, "h2").Settle();
        Assert.Equal(("H2", "480.0"), (walk.State.Open.Cursor.ToString(), walk.Drawn("J5")));
        walk.Press(Enter).Type("c").Press(KeyName.End, Enter);
        Steps(walk, "Other words").Settle();
        Assert.Contains("what-if H2 \"Other words\"\n  vary exposed: 0 mm to 60 mm step 30 mm\n  show strong, moment\n", Text(walk), StringComparison.Ordinal);
        walk.Press(Enter).Type("c").Press(KeyName.Down, Enter, Enter, Enter).Settle();
        Assert.Contains("  vary exposed: 0 mm to 60 mm step 30 mm\n  vary peak: 7 kN to 9 kN step 0.2 kN\n", Text(walk), StringComparison.Ordinal);
        walk.Press(Enter).Type("c").Press(Enter);
        Steps(walk, "").Settle();
        Assert.Contains("what-if H2 \"Other words\"\n  vary peak: 7 kN to 9 kN step 0.2 kN\n  show", Text(walk), StringComparison.Ordinal);
        for (int i = 0; i < 6; i++) walk.Ctrl('z');
        Assert.Equal(before, Text(walk));
    }

    [Fact]
    public void AChangeThatCannotBe_IsAnsweredAndLeavesTheTable()
    {
        using Walk walk = StudyBook.Open();
        string before = Text(walk);
        walk.Go("D2").Press(Enter).Type("c").Press(Enter);
        Steps(walk, "");
        Assert.Contains("The table has no vary line.", walk.Screen, StringComparison.Ordinal);
        Steps(walk, "exposed: 1 mm to 90 mm step 1 mm");
        Assert.Contains("The table at D9 is drawn where the table at D2 would be.", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape);
        Assert.Equal(before, Text(walk));
    }

    [Fact]
    public void AnAnswerThatChangesNothing_IsNoChange()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("D2").Press(Enter).Type("c").Press(Enter, Enter);
        Assert.False(walk.State.Open.IsUnsaved);
        Assert.True(walk.State.Open.Done.IsEmpty);
    }

    [Fact]
    public void ARemovedTable_IsGone_AndComesBack()
    {
        using Walk walk = StudyBook.Open();
        string before = Text(walk);
        walk.Go("E5").Press(Enter).Type("r").Settle();
        Assert.DoesNotContain("Moment by length", Text(walk), StringComparison.Ordinal);
        Assert.Equal(("", "160.0"), (walk.Drawn("E6"), walk.Drawn("E12")));
        walk.Ctrl('z').Settle();
        Assert.Equal(before, Text(walk));
        Assert.Equal("480.0", walk.Drawn("E6"));
    }

    [Theory]
    [InlineData("C20", "Nothing stands here.")]
    [InlineData("B1", "B1 holds no value.")]
    [InlineData("lonely", "lonely is computed from no given")]
    [InlineData("unread", "Nothing is computed from unread")]
    public void WhereThereIsNothingToAsk_ThatIsSaid(string at, string sentence)
    {
        using Walk walk = StudyBook.Open(StudyBook.Text.Replace("B1 \"words\"", "B1 \"words\"\nB2 lonely => 1 + 2\nB3 unread = 3", StringComparison.Ordinal));
        walk.Go(at).Ctrl('t');
        Assert.Contains(sentence, walk.Screen, StringComparison.Ordinal);
        Assert.IsType<Browsing>(walk.State.Mode);
    }

    [Fact]
    public void ThePlotView_DrawsATableOfOneGiven_AndOneColumnOfATableOfTwo()
    {
        using Walk walk = StudyBook.Open();
        walk.Go("E5").Command('p');
        Assert.Contains("moment [N·m] over exposed [mm]", walk.Screen, StringComparison.Ordinal);
        Assert.Contains(" 4 points", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape).Go("F12").Press(Enter).Type("p");
        Assert.Contains("moment [N·m] over exposed [mm], peak = 8 kN", walk.Screen, StringComparison.Ordinal);
        walk.Press(KeyName.Escape).Go("F5").Command('p');
        Assert.Contains("strong holds no figures; put the cursor on one.", walk.Screen, StringComparison.Ordinal);
    }

    [Fact]
    public void TheHelp_ListsTheKeys_AndEveryCommandHasItsOwn()
    {
        using Walk walk = StudyBook.Open(height: 90);
        walk.Type("?");
        foreach (string line in new[] { "Asking about a cell", "Ctrl+T, or Space and 9", "T  what if", "B  backwards", "U  how sure", "D  what drives it", "Enter on a table" }) Assert.Contains(line, walk.Screen, StringComparison.Ordinal);
        Assert.Equal(GridCommands.All.Count, GridCommands.All.Select(command => command.Letter).Distinct().Count());
        char[] ctrl = [.. GridCommands.All.Select(command => command.Ctrl).OfType<char>()];
        Assert.Equal(ctrl.Distinct(), ctrl);
    }

    [Theory]
    [InlineData("= 8.5 kN", "5 kN to 12 kN step 1 kN")]
    [InlineData("= 40 mm ± 10 mm", "20 mm to 60 mm step 5 mm")]
    [InlineData("= 40 mm ± 10 %", "32 mm to 48 mm step 2 mm")]
    [InlineData("= 10 mm within 0 mm to 55 mm", "0 mm to 55 mm step 5 mm")]
    [InlineData("= 0", "0 to 1 step 0.1")]
    [InlineData("= -20 °C", "-30 °C to -10 °C over 8 steps")]
    [InlineData("= true", "true, false")]
    public void SuggestedValues_AreRoundAndWithinLimits(string given, string values)
    {
        using Walk walk = new($"screwsheet 1\nsheet S\nA1 x {given}\nA2 y => x == x\n");
        Assert.Equal(values, SuggestedValues.Of(walk.State.Open.Known!.Calculation.Cells.Values.Single(cell => cell.Cell.Name == "x")));
    }

    /// <summary>The sentence the command line refuses the same table with.</summary>
    private static string CommandLine(Walk walk, string vary, string show)
    {
        StringWriter output = new(), error = new();
        Assert.Equal(2, Program.Run(["what-if", walk.At("book.screwsheet"), "--vary", vary, "--show", show], new Shell { Output = output, Error = error, Calculator = () => new EngineCalculator(Walk.Library) }));
        return error.ToString()["screwsheet: ".Length..].TrimEnd();
    }
}
