using ScrewSheet.Workbooks.Merging;

namespace ScrewSheet.Workbooks.Tests.Merging;

/// <summary>Merges of single changes, case by case.</summary>
public sealed class MergeTests
{
    private const string Base = """
        screwsheet 1
        title Load
        made with 0.1.0

        function Torque M(Force f, Length l) => f * l

        sheet A "First"
        A1 "Peak"
        B1 peak [kN] = 8 kN
        // measured
        B2 exposed [mm] = 40 mm
        B3 moment => peak * B2 gives 320 N·m
        B4 half => moment / 2 gives 160 N·m

        what-if D2
          vary exposed: 10 mm, 20 mm
          show moment

        sheet B
        A1 = 3

        """;

    [Fact]
    public void AResultTwoVersionsKeptDifferentlyIsKeptByNeither()
    {
        string ours = Base.Replace("8 kN", "9 kN").Replace("320 N·m", "360 N·m").Replace("160 N·m", "180 N·m"), theirs = Base.Replace("40 mm", "50 mm").Replace("320 N·m", "400 N·m").Replace("160 N·m", "200 N·m");
        Assert.Equal(Base.Replace("8 kN", "9 kN").Replace("40 mm", "50 mm").Replace(" gives 320 N·m", "").Replace(" gives 160 N·m", ""), Merged(Base, ours, theirs));
    }

    [Fact]
    public void AResultOneVersionKeptIsKept()
    {
        string ours = Base.Replace("320 N·m", "321 N·m"), theirs = Base.Replace("A1 = 3", "A1 = 4");
        Assert.Equal(ours.Replace("A1 = 3", "A1 = 4"), Merged(Base, ours, theirs));
    }

    [Theory]
    [InlineData("B2 exposed [mm] = 40 mm", "B2 exposed [mm] = 41 mm", "B2 exposed [mm] = 42 mm", "B2 conflict\n  ours exposed [mm] = 41 mm\n  theirs exposed [mm] = 42 mm")]
    [InlineData("A1 \"Peak\"", "A1 \"Load\"", "A1 \"Force\"", "A1 conflict\n  ours \"Load\"\n  theirs \"Force\"")]
    [InlineData("B3 moment => peak * B2 gives 320 N·m", "B3 moment => M(peak, B2) gives 320 N·m", "B3 moment => B2 * peak gives 320 N·m", "B3 conflict\n  ours moment => M(peak, B2)\n  theirs moment => B2 * peak")]
    [InlineData("title Load", "title One", "title Two", "conflict\n  ours title One\n  theirs title Two")]
    [InlineData("f * l\n", "l * f\n", "2 * f * l\n", null)]
    [InlineData("sheet A \"First\"", "sheet A \"One\"", "sheet A \"Two\"", "sheet A \"First\"\nconflict\n  ours sheet A \"One\"\n  theirs sheet A \"Two\"")]
    [InlineData("  vary exposed: 10 mm, 20 mm", "  vary exposed: 10 mm, 30 mm", "  vary exposed: 10 mm", null)]
    public void WhatBothChangedDifferentlyStandsThereTwice(string was, string ours, string theirs, string? expected)
    {
        MergeResult result = Merge(Base, Base.Replace(was, ours), Base.Replace(was, theirs));
        Assert.Single(result.Conflicts);
        string text = Text.Write(result.Workbook!);
        if (expected is not null) Assert.Equal(Base.Replace(was, expected), text);
        Assert.Contains(ours.Trim(), text.Replace(" gives 320 N·m", "").Replace("  ours ", "") + ours, StringComparison.Ordinal);
        Assert.Contains("conflict\n  ours ", text, StringComparison.Ordinal);
        Assert.Contains("\n  theirs ", text, StringComparison.Ordinal);
    }

    [Fact]
    public void AFunctionInConflictIsNoFunction()
    {
        MergeResult result = Merge(Base, Base.Replace("f * l\n", "l * f\n"), Base.Replace("f * l\n", "2 * f * l\n"));
        Assert.Empty(result.Workbook!.Functions);
        Assert.Contains("conflict\n  ours function Torque M(Force f, Length l) => l * f\n  theirs function Torque M(Force f, Length l) => 2 * f * l\n", Text.Write(result.Workbook), StringComparison.Ordinal);
    }

    [Fact]
    public void AWhatIfTableInConflictIsNoTable()
    {
        MergeResult result = Merge(Base, Base.Replace("10 mm, 20 mm", "10 mm, 30 mm"), Base.Replace("10 mm, 20 mm", "10 mm"));
        Assert.Empty(result.Workbook!.Sheets[0].WhatIfs);
        Assert.Contains("conflict\n  ours what-if D2\n  ours   vary exposed: 10 mm, 30 mm\n  ours   show moment\n  theirs what-if D2\n", Text.Write(result.Workbook), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatOneRemovedAndTheOtherChangedIsAConflict()
    {
        string ours = Base.Replace("// measured\nB2 exposed [mm] = 40 mm\n", ""), theirs = Base.Replace("40 mm", "50 mm");
        Assert.Contains("B2 conflict\n  ours\n  theirs exposed [mm] = 50 mm\n", Merged(Base, ours, theirs), StringComparison.Ordinal);
        Assert.Contains("B2 conflict\n  ours exposed [mm] = 50 mm\n  theirs\n", Merged(Base, theirs, ours), StringComparison.Ordinal);
    }

    [Fact]
    public void WhatOneRemovedAndTheOtherLeftIsGone() => Assert.DoesNotContain("B2 exposed", Merged(Base, Base.Replace("B2 exposed [mm] = 40 mm\n", ""), Base.Replace("8 kN", "9 kN")), StringComparison.Ordinal);

    [Fact]
    public void ASheetOneRemovedAndTheOtherLeftIsGone() => Assert.Equal(Base.Replace("8 kN", "9 kN")[..Base.IndexOf("sheet B", StringComparison.Ordinal)].TrimEnd(), Merged(Base, Base[..Base.IndexOf("sheet B", StringComparison.Ordinal)], Base.Replace("8 kN", "9 kN")).TrimEnd());

    [Fact]
    public void ASheetOneRemovedAndTheOtherChangedStaysAsAConflict()
    {
        string merged = Merged(Base, Base[..Base.IndexOf("sheet B", StringComparison.Ordinal)], Base.Replace("A1 = 3", "A1 = 4"));
        Assert.Contains("sheet B\nA1 conflict\n  ours\n  theirs = 4\n", merged, StringComparison.Ordinal);
    }

    [Fact]
    public void SheetsBothAddedAreMergedCellByCell()
    {
        MergeResult result = Merge(Base, Base + "sheet C\nA1 = 1\nA2 = 2\n", Base + "sheet C\nA1 = 1\nA3 = 3\n");
        Assert.Empty(result.Conflicts);
        Assert.EndsWith("sheet C\nA1 = 1\nA2 = 2\nA3 = 3\n", Text.Write(result.Workbook!), StringComparison.Ordinal);
    }

    [Fact]
    public void ARowInsertedByOneMakesRoomForTheOthersChange()
    {
        string ours = Base.Replace("B4 half => moment / 2", "B5 half => moment / 2").Replace("B3 moment => peak * B2", "B4 moment => peak * B3").Replace("// measured\nB2 exposed", "B2 \"new\"\n// measured\nB3 exposed");
        string theirs = Base.Replace("moment => peak * B2", "moment => 2 * peak * B2");
        Assert.Equal(ours.Replace("moment => peak * B3", "moment => 2 * peak * B3"), Merged(Base, ours, theirs));
    }

    [Fact]
    public void ANameBothGaveToDifferentCellsIsAConflict()
    {
        MergeResult result = Merge(Base, Base.Replace("A1 = 3", "A1 = 3\nA2 top = 1"), Base.Replace("A1 = 3", "A1 = 3\nA3 top = 2"));
        Assert.Equal(["B.A2", "B.A3"], result.Conflicts.Select(conflict => conflict.Where));
        Assert.All(result.Conflicts, conflict => Assert.Equal(2010, conflict.Fault.Code));
    }

    [Fact]
    public void MarksOfBothReviewersStay()
    {
        const string One = "reviewed AB 2026-11-25 0123456789abcdef\n", Two = "reviewed CD 2026-11-25 0123456789abcdef\n";
        Assert.Equal(Base.Replace("B4 half", One + Two + "B4 half"), Merged(Base, Base.Replace("B4 half", One + "B4 half"), Base.Replace("B4 half", Two + "B4 half")));
    }

    [Fact]
    public void AConflictNobodyResolvedIsNotBuriedUnderAnother()
    {
        string ours = Base.Replace("B2 exposed [mm] = 40 mm", "B2 conflict\n  ours = 1 mm\n  theirs = 2 mm");
        MergeResult result = Merge(Base, ours, Base.Replace("40 mm", "50 mm"));
        Assert.Null(result.Workbook);
        Assert.Equal("Ours holds a conflict at B2 that is not resolved, and the other version changes the same cell. Resolve it first, then merge.", result.Refusal!.Sentence);
    }

    [Fact]
    public void LineEndsOfTheVersionThatChangedThemStay() =>
        Assert.Equal(Base.Replace("8 kN", "9 kN").ReplaceLineEndings("\r\n"), Merged(Base, Base.ReplaceLineEndings("\r\n"), Base.Replace("8 kN", "9 kN")));

    [Fact]
    public void RowsThatDoNotFitAreRefused()
    {
        string origin = "screwsheet 1\nsheet A\nA1 \"a\"\nA2 \"b\"\nA99998 \"z\"\n";
        MergeResult result = Merge(origin, origin.Replace("A2 \"b\"\nA99998", "A2 \"new\"\nA3 \"b\"\nA99999"), origin.Replace("A2 \"b\"\nA99998", "A2 \"other\"\nA3 \"b\"\nA99999"));
        Assert.Equal("Together the versions need more room than a sheet has. Split the workbook first.", result.Refusal?.Sentence);
    }

    private static MergeResult Merge(string origin, string ours, string theirs) => WorkbookMerge.ByParts(Text.Read(origin), Text.Read(ours), Text.Read(theirs));

    private static string Merged(string origin, string ours, string theirs) => Text.Write(Merge(origin, ours, theirs).Workbook!);
}
