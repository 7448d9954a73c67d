using System.Reflection;
using ScrewSheet.Engine;
using ScrewSheet.Mechanics.Falls;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Statistics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Documents.Tests;

/// <summary>The library as it ships, and every worked number of it computed by the engine in one workbook.</summary>
internal static class TheLibrary
{
    private static readonly Lazy<IReadOnlyDictionary<(LibraryFunction Function, ExampleAttribute Example), CellResult>> Computed = new(Compute);

    public static FunctionLibrary Functions { get; } = FunctionLibrary.Of(typeof(FallFactors).Assembly, typeof(SampleStatistics).Assembly);

    /// <summary>The test assemblies that hold checks against the world.</summary>
    public static IReadOnlyList<Assembly> Tests { get; } =
        [typeof(Quantities.Tests.PublishedChecks).Assembly, typeof(Mechanics.Tests.PublishedChecks).Assembly, typeof(Statistics.Tests.PublishedChecks).Assembly, typeof(Studies.Tests.Checks.PublishedChecks).Assembly];

    /// <summary>Each worked number with what the engine gives for it.</summary>
    public static IReadOnlyDictionary<(LibraryFunction Function, ExampleAttribute Example), CellResult> Examples => Computed.Value;

    public static LibraryFunction Named(string name) => Functions.Function(name) ?? throw new ArgumentException($"There is no function {name}.", nameof(name));

    private static Dictionary<(LibraryFunction, ExampleAttribute), CellResult> Compute()
    {
        (LibraryFunction, ExampleAttribute Example)[] all = [.. Functions.Functions.SelectMany(function => function.Examples.Select(example => (function, example)))];
        string text = "screwsheet 1\n\nsheet Examples\n" + string.Concat(all.Select((each, i) => $"A{i + 1} => {each.Example.Expression}\n"));
        Workbook workbook = Assert.IsType<WorkbookRead>(WorkbookText.Read(text)).Workbook;
        Calculation calculation = new Calculator(Functions).Calculate(workbook);
        Assert.Empty(calculation.Faults);
        CellResult[] results = [.. calculation.Of(workbook.Sheets[0])];
        return all.Zip(results).ToDictionary(pair => pair.First, pair => pair.Second);
    }
}
