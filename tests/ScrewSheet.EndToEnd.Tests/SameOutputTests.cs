using System.Diagnostics;

namespace ScrewSheet.EndToEnd.Tests;

/// <summary>The same workbook gives the same bytes: in another process, with one thread or several, with and without the special instructions of the processor, whatever zone and language the surroundings name.</summary>
[Collection(Alone.Name)]
public sealed class SameOutputTests
{
    [Fact]
    public async Task EveryOutputOfEveryShippedWorkbook_IsTheSameByteForByte()
    {
        string folder = Directory.CreateTempSubdirectory("screwsheet-same-").FullName;
        try
        {
            Task one = Make(Path.Combine(folder, "one"), ("DOTNET_PROCESSOR_COUNT", "1"), ("DOTNET_EnableHWIntrinsic", "0"), ("TZ", "Asia/Kathmandu"), ("LC_ALL", "tr_TR.UTF-8"));
            Task two = Make(Path.Combine(folder, "two"), ("DOTNET_PROCESSOR_COUNT", "2"), ("TZ", "UTC"), ("LC_ALL", "C"));
            await Task.WhenAll(one, two);
            string[] names = Names(Path.Combine(folder, "one"));
            Assert.True(names.Length > 80, $"only {names.Length} outputs");
            Assert.Equal(names, Names(Path.Combine(folder, "two")));
            // refusals would be the same as well
            foreach (string made in (string[])["_run_", "--vary", "_uncertainty_", "_solve_", "_diff_"])
                Assert.Contains(names, name => name.Contains(made, StringComparison.Ordinal) && name.EndsWith(".out", StringComparison.Ordinal) && !File.ReadAllText(Path.Combine(folder, "one", name)).EndsWith("ends with 2\n", StringComparison.Ordinal));
            foreach (string ending in (string[])["*.html", "*.md", "*.xlsx", "*.csv"]) Assert.NotEmpty(Directory.GetFiles(Path.Combine(folder, "one"), ending));
            Assert.DoesNotContain(names, name => !File.ReadAllBytes(Path.Combine(folder, "one", name)).AsSpan().SequenceEqual(File.ReadAllBytes(Path.Combine(folder, "two", name))));
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static string[] Names(string folder) => [.. Directory.GetFiles(folder).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    private static async Task Make(string folder, params (string Name, string Value)[] surroundings)
    {
        ProcessStartInfo start = new(Programs.EveryOutput, [Path.Combine(Programs.Root, "workbooks"), folder]);
        foreach ((string name, string value) in surroundings) start.Environment[name] = value;
        using Process process = Process.Start(start)!;
        await process.WaitForExitAsync();
        Assert.Equal(0, process.ExitCode);
    }
}

/// <summary>Tests that take the whole machine, so that those with a clock are not disturbed.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class Alone
{
    public const string Name = "alone";
}
