using ScrewSheet.Engine;
using ScrewSheet.Studies;
using ScrewSheet.Studies.Tables;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Tests;

/// <summary>Every shipped workbook is computed with the real library; its results are those it states, and its checks hold.</summary>
public sealed class ShippedWorkbooksTests
{
    private static readonly FunctionLibrary Library = FunctionLibrary.Of(typeof(Mechanics.Falls.FallFactors).Assembly, typeof(Statistics.SampleStatistics).Assembly);

    public static TheoryData<string> Shipped => [.. Directory.GetFiles(Path.Combine(GoldenFile.Root, "workbooks"), "*.screwsheet").Select(Path.GetFileName).Order(StringComparer.Ordinal).Select(name => name!)];

    [Theory]
    [MemberData(nameof(Shipped))]
    public void ItComputesWithoutFaultToWhatItStates(string file)
    {
        Calculation calculation = Calculate(file);
        Assert.Empty(calculation.Faults.Select(fault => fault.Sentence));
        foreach (CellResult result in calculation.Cells.Values)
        {
            Assert.True(result.Fault is null, $"{result.Id}: {result.Fault?.Sentence}");
            if (result.IsCheck) Assert.True(result.Value is TruthValue { Value: true }, $"{result.Id} {result.Cell.Name} fails");
            if (result.Cell.Content is ResultContent && result.Value is not (RecordValue or SeriesValue)) Assert.True(result.Kept == KeptState.Same, $"{result.Id} {result.Cell.Name}: {result.Kept}");
        }
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void ItIsSavedByteForByte(string file)
    {
        byte[] bytes = File.ReadAllBytes(Path.Combine(GoldenFile.Root, "workbooks", file));
        Assert.Equal(bytes, WorkbookText.Write(Read(file)));
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void ItsTablesAreMade(string file)
    {
        Calculation calculation = Calculate(file);
        foreach (Sheet sheet in calculation.Workbook.Sheets)
            foreach (WhatIfBlock block in sheet.WhatIfs)
            {
                StudyOutcome<WhatIfTable> table = new StudyRunner(Library).WhatIf(calculation, WhatIfRequest.Of(block, sheet.Name).Answer!);
                Assert.True(table.IsAnswered, table.Fault?.Sentence);
                Assert.Empty(table.Answer.Notes);
                Assert.All(table.Answer.Columns, column => Assert.Equal(0, column.FaultCount));
            }
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void ItCarriesTheUsualCaution(string file) =>
        Assert.Contains("Estimates, not permission", File.ReadAllText(Path.Combine(GoldenFile.Root, "workbooks", file)), StringComparison.Ordinal);

    private static Calculation Calculate(string file) => new Calculator(Library).Calculate(Read(file));

    private static Workbook Read(string file) =>
        Assert.IsType<WorkbookRead>(WorkbookText.Read(File.ReadAllBytes(Path.Combine(GoldenFile.Root, "workbooks", file)))).Workbook;
}
