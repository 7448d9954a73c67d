using System.Text.RegularExpressions;
using ScrewSheet.TestKit;

namespace ScrewSheet.Safety.Tests;

/// <summary>What the system is asked for when a file is saved, as strace sees it: the order on which safety in a loss of power rests.</summary>
public sealed class SavingTrace : IDisposable
{
    private static readonly string Saver = BuiltPrograms.At("ScrewSheet.Saver", "ScrewSheet.Saver");

    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-trace-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Book => Path.Combine(folder, "book");

    [Fact]
    public void Replacing_WritesBeside_Flushes_Renames_AndFlushesTheFolder()
    {
        File.WriteAllText(Book, "old");
        File.SetUnixFileMode(Book, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        Assert.Equal(["open folder", "lock folder", "create beside 600", "write beside", "mode beside 640", "fsync beside", "rename beside book", "fsync folder"], Saved());
    }

    [Fact]
    public void Creating_WritesBeside_Flushes_LinksWhereNothingIs_AndFlushesTheFolder() =>
        Assert.Equal(["open folder", "lock folder", "create beside 666", "write beside", "fsync beside", "link beside book", "unlink beside", "fsync folder"], Saved());

    private List<string> Saved()
    {
        IReadOnlyList<string> calls = Watched.Calls(folder, ["-y", "-s", "16", "-e", "trace=open,openat,flock,write,pwrite64,writev,pwritev,fchmod,chmod,fsync,fdatasync,rename,renameat,renameat2,link,linkat,unlink,unlinkat"], [Saver, "once", Book]);
        List<string> steps = [];
        foreach (string line in calls.Where(line => line.Contains(folder, StringComparison.Ordinal)))
        {
            if (Step(line) is { } step && step != steps.LastOrDefault()) steps.Add(step);
        }
        return steps;
    }

    private string? Step(string call)
    {
        string plain = Regex.Replace(call, Regex.Escape(folder) + @"/\.book\.[0-9a-f]{8}\.tmp", "BESIDE").Replace(Book, "BOOK", StringComparison.Ordinal).Replace(folder, "FOLDER", StringComparison.Ordinal);
        if (!Regex.IsMatch(plain, @"= \d") || plain.StartsWith("open", StringComparison.Ordinal) && plain.Contains("ENOENT", StringComparison.Ordinal)) return null;
        (string Pattern, string Step)[] known =
        [
            (@"^openat?\(.*""FOLDER"", O_RDONLY\|O_CLOEXEC\) ", "open folder"),
            (@"^flock\(\d+<FOLDER>, LOCK_EX", "lock folder"),
            (@"^openat?\(.*""BESIDE"", .*O_CREAT.*O_EXCL.*, 0(\d+)\)", "create beside $1"),
            (@"^p?writev?(64)?\(\d+<BESIDE", "write beside"),
            (@"^fchmod\(\d+<BESIDE>, 0(\d+)\)", "mode beside $1"),
            (@"^f(data)?sync\(\d+<BESIDE>", "fsync beside"),
            (@"^rename\w*\(.*""BESIDE"", .*""BOOK""", "rename beside book"),
            (@"^link\w*\(.*""BESIDE"", .*""BOOK""", "link beside book"),
            (@"^unlink\w*\(.*""BESIDE""", "unlink beside"),
            (@"^fsync\(\d+<FOLDER>\)", "fsync folder"),
            (@"^(p?writev?(64)?|fchmod|chmod|rename\w*|unlink\w*|link\w*)\(", "unforeseen: " + plain),
        ];
        foreach ((string pattern, string step) in known)
        {
            if (Regex.Match(plain, pattern) is { Success: true } match) return match.Groups.Count > 1 && step.EndsWith("$1", StringComparison.Ordinal) ? step.Replace("$1", match.Groups[1].Value, StringComparison.Ordinal) : step;
        }
        return null;
    }
}
