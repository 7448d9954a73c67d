using ScrewSheet.Studies.Tables;
using ScrewSheet.Studies.Tests.Support;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Studies.Tests.Tables;

/// <summary>What cannot be done is said in one sentence each.</summary>
public sealed class BadInputTests
{
    [Fact]
    public void ATableOfVeryManyFaults_IsRefused() => Assert.Equal(6403, StudyBook.Of("B1 a = 1", "B2 wrong => Sqrt(-a)").Table("wrong", StudyMethod.Automatic, "a: 1 to 200000 step 1").Fault?.Code);

    private const string Book = """
        screwsheet 1
        sheet S
        A1 peak [kN] = 8.5 kN ± 0.5 kN
        A2 exposed [mm] = 40 mm within 0 mm to 120 mm
        A3 Torque moment => peak * exposed
        A4 strong => moment < 400 N·m
        A5 "words"
        A6 mass = 80 kg
        A7 locked = true
        A8 weight => mass * 9.81 m/s²
        sheet Other
        A1 mass = 70 kg
        """;

    [Theory]
    [InlineData("moment", "exposed: 0 mm to 60 mm step 0 mm", 4301, "The step is zero, so the range would never end. Write a step that leads from the first value to the last.")]
    [InlineData("moment", "exposed: 0 mm to 60 mm step -5 mm", 4302, "The step -5 mm leads away from 60 mm. Change its sign, or write 60 mm to 0 mm.")]
    [InlineData("moment", "exposed: 60 mm to 0 mm step 5 mm", 4302, "The step 5 mm leads away from 0 mm. Change its sign, or write 0 mm to 60 mm.")]
    [InlineData("moment", "exposed: 0 mm to 1000 mm step 0.000000001 mm", 6401, "The table would have 1,000,000,000,000 entries; at most 1,000,000 are made. Take longer steps or vary less.")]
    [InlineData("moment", "exposed: 0 mm to 1 mm over 1000000000000 steps", 6401, "The table would have 1,000,000,000,001 entries; at most 1,000,000 are made. Take longer steps or vary less.")]
    [InlineData("moment", "exposed: 0 mm to 1 mm over 2000 steps|peak: 1 kN to 2 kN over 2000 steps", 6401, "The table would have 4,004,001 entries; at most 1,000,000 are made. Take longer steps or vary less.")]
    [InlineData("moment", "exposed: 0 kN to 60 kN step 5 kN", 3301, "0 kN is a force; exposed is a length. Write a length, with its unit.")]
    [InlineData("moment", "exposed: 0 to 60 step 5", 3301, "0 is a number; exposed is a length. Write a length, with its unit.")]
    [InlineData("moment", "exposed: 0 mm to 60 mm step 5 N", 3301, "5 N is a force; exposed is a length. Write a length, with its unit.")]
    [InlineData("moment", "exposed: 10 mm, 4 kN", 3301, "4 kN is a force; exposed is a length. Write a length, with its unit.")]
    [InlineData("moment", "exposed: 2 * 4 kN", 3301, "2 * 4 kN is a force; exposed is a length. Write a length, with its unit.")]
    [InlineData("moment", "moment: 0 N·m, 5 N·m", 2303, "moment is a result, so it cannot be varied. Vary the givens it is computed from.")]
    [InlineData("moment", "A5: 1, 2", 2304, "A5 holds no value. Name a given or a result.")]
    [InlineData("A5", "exposed: 1 mm, 2 mm", 2304, "A5 holds no value. Name a given or a result.")]
    [InlineData("moment", "exposed: 1 mm, 2 mm|A2: 3 mm", 2305, "exposed is varied twice. Put all its values into one vary line.")]
    [InlineData("moment", "nothing: 1 mm, 2 mm", 2301, "No cell is called nothing. Write the name or address of a cell, with its sheet and a dot where it stands on another.")]
    [InlineData("weight", "mass: 1 kg, 2 kg", 2302, "mass could be S.A6 or Other.A1. Write the sheet's name and a dot before it.")]
    [InlineData("moment", "exposed: -1 mm to 60 mm log over 3 steps", 4304, "A logarithmic range begins and ends above zero. Write other ends, or leave log away.")]
    [InlineData("moment", "locked: 1 to 2 step 1", 3302, "locked is a yes-or-no value, which has no values between two others. Write its values out, with commas between.")]
    [InlineData("", "exposed: 1 mm, 2 mm", 2306, "The table has no show line. Write one like show moment.")]
    [InlineData("moment", "", 2306, "The table has no vary line. Write one like vary exposed: 0 mm to 60 mm step 10 mm.")]
    [InlineData("moment", "exposed: 0 mm to 60 mm", 1041, "This range cannot be read. Write it like 0 mm to 60 mm step 10 mm, 1 kN to 9 kN over 8 steps, or 1 kN to 100 kN log over 4 steps.")]
    [InlineData("moment", "exposed", 1040, "This vary line cannot be read. Write it like vary exposed: 0 mm to 60 mm step 10 mm, or vary peak: 4 kN, 6 kN.")]
    [InlineData("moment", "exposed: 0 mm to wide step 3 mm", 1041, "This range cannot be read. Write it like 0 mm to 60 mm step 10 mm, 1 kN to 9 kN over 8 steps, or 1 kN to 100 kN log over 4 steps.")]
    [InlineData("moment, ,", "exposed: 1 mm", 1043, "This show line cannot be read. Write names of results with commas between, like show moment, strong.")]
    public void ItIsRefusedInOneSentence(string show, string vary, int code, string sentence)
    {
        StudyOutcome<WhatIfTable> table = StudyBook.Of(Book).Table(show, StudyMethod.Automatic, vary.Length == 0 ? [] : vary.Split('|'));
        Assert.Equal((code, sentence), (table.Fault?.Code ?? 0, table.Fault?.Sentence ?? "made"));
    }

    [Fact]
    public void ABoundThatIsNotFinite_IsRefused()
    {
        StudyBook sheet = StudyBook.Of(Book);
        VarySpec spec = new(StudyBook.At("exposed"), new VaryRange(new NumberLiteral(0, null), new NumberLiteral(double.PositiveInfinity, null), new NumberLiteral(1, null), 0, false), default);
        VarySpec list = new(StudyBook.At("count"), new VaryList([new VaryValue("NaN", new NumberLiteral(double.NaN, null), default)]), default);
        StudyBook counting = StudyBook.Of("A1 count = 3\nA2 twice => 2 * count");
        Assert.Equal(3301, sheet.Runner.WhatIf(sheet.Calculation, new WhatIfRequest { Vary = [spec], Show = [StudyBook.At("moment")] }).Fault!.Code);
        Fault fault = counting.Runner.WhatIf(counting.Calculation, new WhatIfRequest { Vary = [list], Show = [StudyBook.At("twice")] }).Fault!;
        Assert.Equal((4303, "A value for count is not a finite number. Write finite values."), (fault.Code, fault.Sentence));
        VarySpec endless = new(StudyBook.At("count"), new VaryRange(new NumberLiteral(0, null), new NumberLiteral(double.PositiveInfinity, null), new NumberLiteral(1, null), 0, false), default);
        Assert.Equal(4303, counting.Runner.WhatIf(counting.Calculation, new WhatIfRequest { Vary = [endless], Show = [StudyBook.At("twice")] }).Fault!.Code);
    }

    [Fact]
    public void ShownAndVariedInVain_IsSaid()
    {
        WhatIfTable table = StudyBook.Of(Book).Made("moment, weight", StudyMethod.Automatic, "exposed: 10 mm, 20 mm", "S.mass: 60 kg, 70 kg");
        Assert.Empty(table.Notes);
        WhatIfTable vain = StudyBook.Of(Book).Made("moment, weight", StudyMethod.Automatic, "exposed: 10 mm, 20 mm", "Other.mass: 60 kg, 70 kg");
        Assert.Equal(["weight does not depend on exposed or Other.mass: it is the same in every entry.", "No shown result depends on Other.mass."], vain.Notes.Select(note => note.Sentence));
        Assert.Equal([4305, 4306], vain.Notes.Select(note => note.Code));
    }

    [Fact]
    public void AFaultInAnEntry_StaysInIt()
    {
        WhatIfTable table = StudyBook.Of(Book).Made("moment, strong", StudyMethod.Automatic, "exposed: 100 mm, 130 mm, 110 mm");
        Assert.Equal("130 mm is not within 0 mm to 120 mm. Change the value or its limits.", table.Columns[1].Fault(1)!.Sentence);
        Assert.Equal("S.A2", table.Columns[1].Fault(1)!.Cause);
        Assert.Null(table.Columns[1].Fault(0));
        Assert.NotNull(table.Columns[0].Value(2));
    }

    [Fact]
    public void AStep_ReachesItsEndAndWritesPlainNumbers()
    {
        WhatIfTable table = StudyBook.Of("A1 x = 1\nA2 y => x * x").Made("y", StudyMethod.Automatic, "x: 0 to 1 step 0.1");
        Assert.Equal(["0", "0.1", "0.2", "0.3", "0.4", "0.5", "0.6", "0.7", "0.8", "0.9", "1"], table.Axes[0].Values.Select((_, i) => table.Axes[0].InUnit(i).ToString("R", System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Equal(4, StudyBook.Of("A1 x = 1\nA2 y => x * x").Made("y", StudyMethod.Automatic, "x: 0 to 1 step 0.3").Scenarios);
        Assert.Equal([1, 10, 100], StudyBook.Of("A1 x = 1\nA2 y => x * x").Made("y", StudyMethod.Automatic, "x: 1 to 100 log over 2 steps").Axes[0].Values.Select((_, i) => Math.Round(StudyBook.Of("A1 x = 1\nA2 y => x * x").Made("y", StudyMethod.Automatic, "x: 1 to 100 log over 2 steps").Axes[0].InUnit(i), 12)));
    }

    [Fact]
    public void ATableOfTheFile_MustNotLieOverCells()
    {
        StudyBook sheet = StudyBook.Of("A1 x = 1\nA2 y => x * x\nE4 \"in the way\"\nwhat-if D2 \"Squares\"\n  vary x: 1, 2, 3\n  show y");
        WhatIfRequest request = WhatIfRequest.Of(sheet.Workbook.Sheets[0].WhatIfs[0], "S").Answer!;
        Fault fault = sheet.Runner.WhatIf(sheet.Calculation, request).Fault!;
        Assert.Equal((2307, "E4 stands where the table at D2 is drawn. Move the cell or the table."), (fault.Code, fault.Sentence));
        Assert.Equal(new Place(7, 9, 2), fault.Place);
    }

    [Fact]
    public void FaultsOfTheFilesLines_HaveLineAndColumn()
    {
        StudyBook sheet = StudyBook.Of("A1 x = 1 mm\nA2 y => x * x\nwhat-if D2\n  vary x: 1 mm to 2 step 1 mm\n  show y, z");
        Fault kind = sheet.Runner.WhatIf(sheet.Calculation, WhatIfRequest.Of(sheet.Workbook.Sheets[0].WhatIfs[0], "S").Answer!).Fault!;
        Assert.Equal((3301, new Place(7, 11, 19)), (kind.Code, kind.Place));
        Workbook unread = Assert.IsType<WorkbookRead>(WorkbookText.Read("screwsheet 1\ncorrelate a b 3\n\nsheet S\nwhat-if D2\n  vary x: 8,5 mm to 9 mm step 1 mm\n  vary y: 1 mm to 2 mm over 0 steps\n  show a b\n")).Workbook;
        Assert.Equal([(1044, new Place(2, 1, 15)), (1101, new Place(6, 11, 3)), (1042, new Place(7, 24, 12)), (1043, new Place(8, 8, 3))], unread.Faults.Select(fault => (fault.Code, fault.Place!.Value)));
        Assert.Equal("screwsheet 1\ncorrelate a b 3\n\nsheet S\nwhat-if D2\n  vary x: 8,5 mm to 9 mm step 1 mm\n  vary y: 1 mm to 2 mm over 0 steps\n  show a b\n", System.Text.Encoding.UTF8.GetString(WorkbookText.Write(unread)));
    }

    [Fact]
    public void Cancelling_StopsAndLeavesTheWorkbookAsItWas()
    {
        StudyBook sheet = StudyBook.Of(Book);
        byte[] before = WorkbookText.Write(sheet.Workbook);
        using CancellationTokenSource stop = new();
        WhatIfRequest request = WhatIfRequest.Read([StudyBook.At("exposed: 0 mm to 120 mm over 900 steps"), StudyBook.At("peak: 1 kN to 9 kN over 900 steps")], [StudyBook.At("moment")]).Answer!;
        List<double> told = [];
        Told first = new(share =>
        {
            lock (told) told.Add(share);
            stop.Cancel();
        });
        Assert.ThrowsAny<OperationCanceledException>((Action)(() => sheet.Runner.WhatIf(sheet.Calculation, request, first, stop.Token)));
        Assert.InRange(told.Count, 1, 10);
        Assert.Equal(before, WorkbookText.Write(sheet.Workbook));
        Assert.True(sheet.Runner.WhatIf(sheet.Calculation, request).IsAnswered);
    }

    private sealed class Told(Action<double> report) : IProgress<double>
    {
        public void Report(double value) => report(value);
    }
}
