using System.Diagnostics;
using System.Runtime.CompilerServices;

namespace ScrewSheet.Safety.Tests;

/// <summary>Runs a program under strace.</summary>
internal static class Watched
{
    // no check of the product: it only ends a run that hangs
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(4);

    /// <summary>The root of the repository.</summary>
    public static string Root => Path.GetFullPath(Path.Combine(Path.GetDirectoryName(ThisFile())!, "..", ".."));

    /// <summary>The program.</summary>
    public static string Product { get; } = Built("ScrewSheet.Terminal", "screwsheet");

    /// <summary>What the reader does to the world with the workbooks of a folder.</summary>
    public static SortedSet<string> Reader(string folder, params string[] options)
    {
        string trace = Path.Combine(Path.GetDirectoryName(folder)!, Path.GetRandomFileName());
        ProcessStartInfo start = new("strace", ["-f", "--seccomp-bpf", "-qq", "-s", "400", "-e", "trace=%file,%network,%process", "-o", trace, Built("ScrewSheet.SafetyReader", "ScrewSheet.SafetyReader"), folder, .. options])
        {
            RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = folder,
        };
        // the door for debuggers is a socket and a pipe of the runtime's own
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        // which thread compiles again, and when, depends on timing
        start.Environment["DOTNET_TieredCompilation"] = "0";
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), error = process.StandardError.ReadToEndAsync();
        if (!process.WaitForExit(Patience)) process.Kill(entireProcessTree: true);
        Assert.True(process.ExitCode == 0, $"The reader ended with {process.ExitCode}: {output.Result}{error.Result}");
        return Effects.In(File.ReadLines(trace));
    }

    private static string Built(string project, string program) =>
        Path.Combine(Root, ".artifacts", "bin", project, Path.GetFileName(Path.TrimEndingDirectorySeparator(AppContext.BaseDirectory)), program);

    private static string ThisFile([CallerFilePath] string path = "") => path;
}
