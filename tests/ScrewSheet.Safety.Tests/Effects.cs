using System.Text.RegularExpressions;

namespace ScrewSheet.Safety.Tests;

/// <summary>What a process did to the world outside it: each effect once, told from the lines of strace.</summary>
internal static partial class Effects
{
    private static readonly HashSet<string> Opening = ["open", "openat", "openat2", "creat"];
    private static readonly HashSet<string> Looking = ["stat", "lstat", "newfstatat", "statx", "access", "faccessat", "faccessat2", "readlink", "readlinkat", "statfs", "getcwd", "chdir"];
    private static readonly HashSet<string> Starting = ["execve", "execveat"];
    private static readonly HashSet<string> Forking = ["fork", "vfork", "clone", "clone3"];
    private static readonly HashSet<string> Ending = ["exit", "exit_group", "wait4", "waitid", "tgkill"];

    /// <summary>The effects of calls.</summary>
    public static SortedSet<string> In(IEnumerable<string> calls)
    {
        SortedSet<string> effects = new(StringComparer.Ordinal);
        foreach (string line in calls)
            if (Call().Match(line) is { Success: true } call && Of(call.Groups[1].Value, call.Groups[2].Value) is { } effect) effects.Add(Normal(effect));
        return effects;
    }

    private static string? Of(string call, string arguments)
    {
        string path = Quoted().Match(arguments) is { Success: true } quoted ? quoted.Groups[1].Value : "";
        if (Opening.Contains(call)) return $"{(Writing().IsMatch(arguments) ? "writes" : "opens")} {path}";
        if (Starting.Contains(call)) return $"starts {path}";
        // a thread is no program
        if (Forking.Contains(call)) return arguments.Contains("CLONE_THREAD", StringComparison.Ordinal) ? null : "starts a process";
        // to look whether a path is there is no effect, and the runtime does so in an order that depends on timing
        if (Looking.Contains(call) || Ending.Contains(call)) return null;
        // of what goes through a socket, the call and where it goes; of what happens to a file, its path
        return path.Length > 0 && !Talking().IsMatch(call) ? $"{call} {path}" : $"{call} {arguments.Split(") =")[0]}";
    }

    /// <summary>
    /// Numbers that differ from run to run: of the process and its threads in paths below /proc, and of descriptors in socket calls.
    /// </summary>
    private static string Normal(string effect) => Temporary().Replace(Descriptor().Replace(Process().Replace(effect, "/proc/N"), "$1N"), ".N.tmp");

    // a file is written beside its place under a name by lot
    [GeneratedRegex("\\.[0-9a-f]{8}\\.tmp")]
    private static partial Regex Temporary();

    [GeneratedRegex("^(\\w+)\\((.*)$")]
    private static partial Regex Call();

    [GeneratedRegex("\"((?:[^\"\\\\]|\\\\.)*)\"")]
    private static partial Regex Quoted();

    [GeneratedRegex("^(socket|connect|bind|listen|accept|send|recv|shutdown|getsock|setsock|getpeer)")]
    private static partial Regex Talking();

    [GeneratedRegex("O_WRONLY|O_RDWR|O_CREAT|O_TRUNC|O_APPEND")]
    private static partial Regex Writing();

    [GeneratedRegex("/proc/(self|\\d+)(/task/\\d+)?")]
    private static partial Regex Process();

    [GeneratedRegex("^(\\w+ )\\d+(?=,)")]
    private static partial Regex Descriptor();
}
