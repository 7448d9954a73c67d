using System.Diagnostics;
using System.Runtime.InteropServices;

namespace ScrewSheet.Benchmarks;

/// <summary>From nothing to a printed workbook of 20 results, against a program that prints one line. Medians of interleaved whole processes.</summary>
internal static class ColdStart
{
    private const int Repeats = 15;

    /// <summary>What <c>dotnet build</c> leaves.</summary>
    public static void BuildOutput() =>
        Compare("cold", Places.Built("ScrewSheet.Terminal", "screwsheet"), Places.Built("ScrewSheet.OneLine", "ScrewSheet.OneLine"), 25);

    /// <summary>Both published with code compiled ahead.</summary>
    public static void ReadyToRun()
    {
        DirectoryInfo folder = Directory.CreateTempSubdirectory("screwsheet-cold");
        try
        {
            string ours = Publish("src/ScrewSheet.Terminal", Path.Combine(folder.FullName, "ours"), "screwsheet");
            string theirs = Publish("tests/ScrewSheet.Benchmarks/OneLine", Path.Combine(folder.FullName, "theirs"), "ScrewSheet.OneLine");
            Compare("cold-r2r", ours, theirs, 12);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static void Compare(string name, string ours, string theirs, double target)
    {
        string workbook = Path.GetTempFileName();
        try
        {
            File.WriteAllText(workbook, Twenty.Text);
            Sample our = new(), their = new();
            for (int i = 0; i < Repeats + 2; i++)
            {
                double a = Process(ours, "run", workbook), b = Process(theirs);
                if (i < 2) continue; // files come from the disk the first times
                our.Add(a);
                their.Add(b);
            }
            Report.Ratio(name, our.Median / their.Median, $"{our.Median:F0} ms", $"{their.Median:F0} ms", target,
                $"medians of {Repeats}; least {our.Least:F0} / {their.Least:F0} ms = {our.Least / their.Least:G3}");
        }
        finally
        {
            File.Delete(workbook);
        }
    }

    internal static double Process(string program, params string[] arguments)
    {
        ProcessStartInfo info = new(program, arguments) { RedirectStandardOutput = true };
        long start = Stopwatch.GetTimestamp();
        using Process process = System.Diagnostics.Process.Start(info)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        double time = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        return process.ExitCode == 0 && output.Length > 0 ? time : throw new InvalidOperationException($"{program} ended with {process.ExitCode}:\n{output}");
    }

    internal static string Publish(string project, string to, string program)
    {
        ProcessStartInfo info = new("dotnet",
            ["publish", Path.Combine(Places.Root, project), "-c", "Release", "-r", RuntimeInformation.RuntimeIdentifier, "--self-contained", "false", "-p:PublishReadyToRun=true", "-o", to, "-v", "q", "--nologo"])
        { RedirectStandardOutput = true };
        using Process process = System.Diagnostics.Process.Start(info)!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? Path.Combine(to, Places.Executable(program)) : throw new InvalidOperationException($"publishing {project} failed:\n{output}");
    }
}
