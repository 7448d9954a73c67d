using ScrewSheet.Engine;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Studies.Tables;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tests.Support;

/// <summary>A calculated workbook to study.</summary>
internal sealed class StudyBook
{
    public static FunctionLibrary Library { get; } = FunctionLibrary.Of(typeof(Mechanics.Falls.FallFactors).Assembly, typeof(Statistics.SampleStatistics).Assembly);

    // one of each for each thread: what they found out about the library is the same for every workbook
    private static readonly ThreadLocal<(Calculator Calculator, StudyRunner Runner)> Shared = new(() => (new Calculator(Library), new StudyRunner(Library, 2)));

    private StudyBook(Calculation calculation) => Calculation = calculation;

    public Calculation Calculation { get; }

    public Workbook Workbook => Calculation.Workbook;

    public StudyRunner Runner => Shared.Value.Runner;

    /// <summary>A workbook of one sheet S (or with its own lines from <c>screwsheet 1</c> on), cells one a line.</summary>
    public static StudyBook Of(params string[] lines)
    {
        string text = string.Join('\n', lines) + "\n";
        if (!text.StartsWith("screwsheet", StringComparison.Ordinal)) text = "screwsheet 1\n\nsheet S\n" + text;
        return new StudyBook(Shared.Value.Calculator.Calculate(Assert.IsType<WorkbookRead>(WorkbookText.Read(text)).Workbook));
    }

    public CellResult this[string name] => Calculation.Cells[CellNaming.Find(Workbook, At(name), null, out _)!.Value];

    /// <summary>A table, varied and shown as written on a command line.</summary>
    public StudyOutcome<WhatIfTable> Table(string show, StudyMethod method, params string[] vary)
    {
        StudyOutcome<WhatIfRequest> request = WhatIfRequest.Read(vary.Select(At), show.Length == 0 ? [] : [At(show)]);
        return request.IsAnswered ? Runner.WhatIf(Calculation, request.Answer with { Method = method }) : request.Fault;
    }

    /// <summary>A table that must be made.</summary>
    public WhatIfTable Made(string show, StudyMethod method, params string[] vary)
    {
        StudyOutcome<WhatIfTable> table = Table(show, method, vary);
        Assert.True(table.IsAnswered, table.Fault?.Sentence);
        return table.Answer;
    }

    /// <summary>The engine's own answer for a scenario of a table: the workbook opened with those givens.</summary>
    public Calculation Opened(WhatIfTable table, int scenario, Calculator calculator)
    {
        int[] places = table.Places(scenario);
        Workbook workbook = Workbook;
        for (int i = 0; i < places.Length; i++) workbook = ScenarioWorkbook.With(workbook, table.Axes[i].Cell, table.Axes[i].Values[places[i]], table.Axes[i].Words.ElementAtOrDefault(places[i]));
        return calculator.Calculate(workbook);
    }

    /// <summary>Fails unless every entry, value or fault, is what opening the workbook gives, to 1e-12.</summary>
    public void IsWhatOpeningGives(WhatIfTable table, int step = 1)
    {
        Calculator calculator = new(Library);
        for (int scenario = 0; scenario < table.Scenarios; scenario += step)
        {
            Calculation opened = Opened(table, scenario, calculator);
            foreach (WhatIfColumn column in table.Columns)
            {
                CellResult expected = opened.Cells[column.Cell];
                string where = $"{column.Label} at {string.Join(", ", table.Places(scenario).Select((at, i) => $"{table.Axes[i].Label} = {table.Axes[i].Words.ElementAtOrDefault(at) ?? table.Axes[i].Values[at].ToString()}"))}";
                if (expected.Value is null) Assert.True(column.Fault(scenario) is not null, $"{where}: {column.Value(scenario)} instead of the fault: {expected.Fault!.Sentence}");
                else Assert.True(Same(expected.Value, column.Value(scenario)), $"{where}: {column.Value(scenario)} {column.Fault(scenario)?.Sentence} instead of {expected.Value}");
            }
        }
    }

    public static PlacedText At(string text) => new(text, new Place(0, 1));

    private static bool Same(CellValue expected, CellValue? ours)
    {
        if (SiValue.Of(expected) is not { } a || SiValue.Of(ours) is not { } b) return expected.Equals(ours);
        return Math.Abs(a - b) <= 1e-12 * Math.Max(Math.Abs(a), Math.Abs(b)) && expected.Type == ours!.Type;
    }
}
