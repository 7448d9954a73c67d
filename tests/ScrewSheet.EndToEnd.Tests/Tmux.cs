using System.Diagnostics;

namespace ScrewSheet.EndToEnd.Tests;

/// <summary>A tmux server of its own with one pane. Nothing of the user's own settings is read.</summary>
internal sealed class Tmux : IDisposable
{
    private static int count;
    private readonly string socket = $"screwsheet-test-{Environment.ProcessId}-{Interlocked.Increment(ref count)}";

    /// <summary>With a shell in a pane of that size.</summary>
    public Tmux(int width, int height, IReadOnlyDictionary<string, string> surroundings)
    {
        string[] variables = [.. surroundings.SelectMany(pair => new[] { "-e", $"{pair.Key}={pair.Value}" })];
        Run(["new-session", "-d", "-x", $"{width}", "-y", $"{height}", .. variables, "sh"]);
        Run(["set-option", "-g", "status", "off"]);
        Run(["resize-window", "-x", $"{width}", "-y", $"{height}"]);
    }

    /// <summary>Runs one command of tmux and hands back what it printed.</summary>
    public string Run(params string[] arguments)
    {
        ProcessStartInfo info = new("tmux", ["-u", "-L", socket, "-f", "/dev/null", .. arguments]) { RedirectStandardOutput = true, RedirectStandardError = true };
        info.Environment.Remove("TMUX");
        info.Environment["LC_ALL"] = "C.UTF-8";
        using Process process = Process.Start(info)!;
        string output = process.StandardOutput.ReadToEnd(), error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? output : throw new InvalidOperationException($"tmux {string.Join(' ', arguments)}: {error}");
    }

    /// <summary>True when the server was ended.</summary>
    public bool IsClosed { get; private set; }

    public void Dispose()
    {
        if (IsClosed) return;
        IsClosed = true;
        Run("kill-server");
    }
}
