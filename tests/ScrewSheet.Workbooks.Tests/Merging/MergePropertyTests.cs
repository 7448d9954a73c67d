using CsCheck;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Merging;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Tests.Merging;

/// <summary>What holds for merges of any versions. They go through the parts even where the versions are alike as a whole.</summary>
public sealed class MergePropertyTests
{
    private static readonly Gen<(Draft Origin, Draft One, Draft Other)> Versions = Gen.Select(Draft.Any, Gen.Int[0, 10000], Gen.Int[0, 10000], Gen.Int[0, 5], (origin, one, other, head) =>
    (
        origin,
        origin.Changed(one, null, 1) with { Title = head == 0 ? "One" : "T", Function = head is 1 or 2 ? "f * 3" : "f * 2" },
        origin.Changed(other, null, 2) with { Title = head is 0 or 3 ? "Other" : "T", Function = head == 2 ? "f * 4" : "f * 2" }
    ));

    [Fact]
    public void WithoutOurChangesItIsTheirs() => Versions.Sample(v => Assert.Equal(v.Other.Text, Merge(v.Origin, v.Origin, v.Other)));

    [Fact]
    public void WithoutTheirChangesItIsOurs() => Versions.Sample(v => Assert.Equal(v.One.Text, Merge(v.Origin, v.One, v.Origin)));

    [Fact]
    public void ChangesBothMadeAlikeAreMadeOnce() => Versions.Sample(v => Assert.Equal(v.One.Text, Merge(v.Origin, v.One, v.One)));

    [Fact]
    public void ChangesInDifferentRowsAllSurvive() => Gen.Select(Draft.Any, Gen.Int[0, 10000], Gen.Int[0, 10000]).Sample((origin, one, other) =>
    {
        Draft ours = origin.Changed(one, 0, 1), theirs = origin.Changed(other, 1, 2), both = ours.Changed(other, 1, 2, origin);
        MergeResult merged = Result(origin, ours, theirs);
        Assert.Empty(merged.Conflicts);
        Assert.Equal(both.Text, Text.Write(merged.Workbook!));
    }, iter: 1000);

    [Fact]
    public void WhoIsOursDecidesNothing() => Versions.Sample(v =>
    {
        Workbook one = Result(v.Origin, v.One, v.Other).Workbook!, other = Result(v.Origin, v.Other, v.One).Workbook!;
        Assert.Equal(Cells(one, swap: false), Cells(other, swap: true));
        Assert.Equal(one.Head, other.Head);
        Assert.Equal(one.Functions.Select(function => function.Body), other.Functions.Select(function => function.Body));
        Assert.Equal(one.Faults.Length, other.Faults.Length);
    });

    [Fact]
    public void WhatIsMergedReadsBackAsItIs() => Versions.Sample(v =>
    {
        string merged = Merge(v.Origin, v.One, v.Other);
        Assert.Equal(merged, Text.Write(Text.Read(merged)));
    });

    [Fact]
    public void EveryConflictIsAFaultAndNoOtherCellIsMadeUp() => Versions.Sample(v =>
    {
        MergeResult merged = Result(v.Origin, v.One, v.Other);
        Cell[] broken = [.. merged.Workbook!.Sheets[0].CellsInOrder.Where(cell => cell.Content is BrokenContent)];
        Assert.Equal(broken.Length + merged.Workbook.Faults.Length, merged.Conflicts.Length);
        HashSet<string> known = [.. Contents(v.One), .. Contents(v.Other)];
        Assert.All(Contents(merged.Workbook.Sheets[0].CellsInOrder), content => Assert.Contains(content, known));
    });

    /// <summary>What cells say without the addresses in it, which moves change.</summary>
    private static IEnumerable<string> Contents(IEnumerable<Cell> cells) => cells.Where(cell => cell.Content is not BrokenContent)
        .Select(cell => System.Text.RegularExpressions.Regex.Replace(CellText.WriteEntry(cell), "B[0-9]+", "B"));

    private static IEnumerable<string> Contents(Draft draft) => Contents(Text.Read(draft.Text).Sheets[0].CellsInOrder);

    private static string[] Cells(Workbook workbook, bool swap) =>
        [.. workbook.Sheets[0].CellsInOrder.Select(cell => CellText.Write(cell)).Select(text => swap && text.Contains(" conflict", StringComparison.Ordinal) ? Swapped(text) : text).Order(StringComparer.Ordinal)];

    private static string Swapped(string conflict)
    {
        string[] lines = conflict.Split('\n');
        return string.Join('\n', lines[0], lines[2].Replace("  theirs", "  ours", StringComparison.Ordinal), lines[1].Replace("  ours", "  theirs", StringComparison.Ordinal));
    }

    private static MergeResult Result(Draft origin, Draft ours, Draft theirs) => WorkbookMerge.ByParts(Text.Read(origin.Text), Text.Read(ours.Text), Text.Read(theirs.Text));

    private static string Merge(Draft origin, Draft ours, Draft theirs) => Text.Write(Result(origin, ours, theirs).Workbook!);
}
