using System.Globalization;
using System.Runtime.InteropServices;
using ScrewSheet.Benchmarks.Grid;

namespace ScrewSheet.Benchmarks;

/// <summary>Runs the named measurements, or all: one line each, <c>NAME ratio R | ours … | theirs … | target … met</c>.</summary>
internal static class Program
{
    private static readonly (string Name, Action Run)[] All =
    [
        ("cold", ColdStart.BuildOutput),
        ("cold-r2r", ColdStart.ReadyToRun),
        ("open", OpenWorkbook.Run),
        ("edit", EditGiven.Run),
        ("rebind", Rebind.Run),
        ("steady", SteadyMemory.Run),
        ("mechanics", MechanicsCost.Run),
        ("what-if", WhatIfSpeed.Run),
        ("export", ExportSpeed.Run),
        ("diff", DiffSpeed.Run),
        ("grid", GridSpeed.Moving),
        ("typing", GridSpeed.Typing),
        ("journal", JournalSpeed.Run),
        ("first-frame", FirstFrame.Run),
    ];

    private static int Main(string[] args)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        if (args is [SteadyMemory.ChildVerb]) return SteadyMemory.Child();
        string[] unknown = [.. args.Where(arg => All.All(entry => entry.Name != arg))];
        if (unknown.Length > 0)
        {
            Console.Error.WriteLine($"There is no measurement {unknown[0]}. Known are {string.Join(", ", All.Select(entry => entry.Name))}.");
            return 2;
        }
        Console.WriteLine($"# {Environment.ProcessorCount} cores, {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.RuntimeIdentifier}, {DateTime.UtcNow:yyyy-MM-dd}");
        foreach ((string name, Action run) in All)
            if (args.Length == 0 || args.Contains(name)) run();
        return Report.AllMet ? 0 : 1;
    }
}
