using System.Diagnostics;
using System.Text.RegularExpressions;
using ScrewSheet.TestKit;

namespace ScrewSheet.Safety.Tests;

/// <summary>Runs a program under strace.</summary>
internal static partial class Watched
{
    // no check of the product: it only ends a run that hangs
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(4);

    /// <summary>What the reader does to the world with the workbooks of a folder.</summary>
    public static SortedSet<string> Reader(string folder, params string[] options)
    {
        return Effects.In(Calls(folder, ["--seccomp-bpf", "-qq", "-s", "400", "-e", "trace=%file,%network,%process"], [BuiltPrograms.At("ScrewSheet.SafetyReader", "ScrewSheet.SafetyReader"), folder, .. options]));
    }

    /// <summary>The calls of a program and its threads, one after the other as they ended, each whole.</summary>
    /// <param name="folder">The folder it works in; the trace is left beside it.</param>
    /// <param name="what">What strace is told besides.</param>
    /// <param name="program">The program and its arguments.</param>
    public static IReadOnlyList<string> Calls(string folder, string[] what, string[] program)
    {
        string trace = Path.Combine(Path.GetDirectoryName(folder)!, Path.GetRandomFileName());
        ProcessStartInfo start = new("strace", ["-f", .. what, "-o", trace, .. program]) { RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = folder };
        // the door for debuggers is a socket and a pipe of the runtime's own
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        // which thread compiles again, and when, depends on timing
        start.Environment["DOTNET_TieredCompilation"] = "0";
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), error = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Patience)) process.Kill(entireProcessTree: true);
        Assert.True(process.ExitCode == 0, $"{program[0]} ended with {process.ExitCode}: {output.Result}{error.Result}");
        string[] lines = File.ReadAllLines(trace);
        File.Delete(trace);
        return [.. Whole(lines)];
    }

    /// <summary>The calls without the numbers of their threads, put together where another thread came in between.</summary>
    private static IEnumerable<string> Whole(IEnumerable<string> lines)
    {
        const string cut = "<unfinished ...>";
        Dictionary<string, string> begun = [];
        foreach (string line in lines)
        {
            string[] parts = line.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
            if (parts.Length < 2) continue;
            if (parts[1].EndsWith(cut, StringComparison.Ordinal)) begun[parts[0]] = parts[1][..^cut.Length];
            else if (Resumed().Match(parts[1]) is { Success: true } rest) yield return begun.GetValueOrDefault(parts[0]) + rest.Groups[1].Value;
            else yield return parts[1];
        }
    }

    [GeneratedRegex(@"^<\.\.\. \w+ resumed>(.*)$")]
    private static partial Regex Resumed();
}
