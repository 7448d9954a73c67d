using ScrewSheet.Engine;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Exports.Steps;
using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Statistics;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Tests;

/// <summary>Workbooks calculated by the real engine with the real library, as exports are handed them.</summary>
internal static class Made
{
    public static FunctionLibrary Library { get; } = FunctionLibrary.Of(typeof(FallFactors).Assembly, typeof(SampleStatistics).Assembly);

    public static Calculation Calculate(string text, UnitSystem? units = null)
    {
        Workbook workbook = Assert.IsType<WorkbookRead>(WorkbookText.Read(text)).Workbook;
        if (units is { } system) workbook = workbook with { Head = workbook.Head with { Units = system } };
        return new Calculator(Library).Calculate(workbook);
    }

    public static Calculation Shipped(string name, UnitSystem? units = null) => Calculate(File.ReadAllText(Path.Combine(GoldenFile.Root, "workbooks", name + ".screwsheet")), units);

    public static StepTools Tools(Calculation calculation, bool blanks = false, bool allUnits = false)
    {
        TreeEvaluation trees = new(Library, calculation.Workbook.Head.Units);
        return new StepTools
        {
            Calculation = calculation, Library = Library, FormatOf = cell => cell.Cell.Format, Units = new UnitChoice(calculation.Workbook.Head.Units, allUnits), Blanks = blanks,
            Evaluate = (cell, tree, parameters) => trees.Run(tree, [.. (cell?.References ?? []).Select(reference => Value(calculation, reference))], null, parameters).Value,
        };
    }

    public static HandoutRequest Request(Calculation calculation, bool blanks = false, bool allUnits = false) => new() { Tools = Tools(calculation, blanks, allUnits) };

    /// <summary>The worked step of a cell as lines of text, each after its word.</summary>
    public static string[] Step(string text, string name, int width = 100)
    {
        Calculation calculation = Calculate(text);
        CellResult cell = calculation.Cells.Values.Single(each => each.Cell.Name == name);
        Assert.True(cell.Fault is null, cell.Fault?.Sentence);
        return [.. StepText.Lines(new StepBuilder(Tools(calculation)).Of(cell), width).Select(line => $"{line.Word}: {line.Text}".Replace('\u00A0', ' '))];
    }

    private static CellValue? Value(Calculation calculation, CellReference reference)
    {
        if (reference.Last is not { } last) return calculation.Cells.GetValueOrDefault(reference.First)?.Value;
        (CellId, CellValue)[] run = [.. calculation.Cells.Values.Where(cell => cell.Id.Sheet == reference.First.Sheet && cell.Value is not null && Within(cell.Id.Address, reference.First.Address, last.Address)).OrderBy(cell => cell.Id.Address).Select(cell => (cell.Id, cell.Value!))];
        return run.Length == 0 ? null : RunSeries.Of(reference, run);
    }

    private static bool Within(CellAddress at, CellAddress first, CellAddress last) => at.Column >= first.Column && at.Column <= last.Column && at.Row >= first.Row && at.Row <= last.Row;
}
