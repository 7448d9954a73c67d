using System.Text;
using ScrewSheet.Terminal.Files;
using Xunit.Abstractions;

namespace ScrewSheet.Terminal.Tests.Files;

/// <summary>Saving, cut short at every step it takes in the file system, in every way: the whole old file or the whole new one, a sentence, and nothing left lying about by the next save.</summary>
public sealed class CutSaves(ITestOutputHelper output) : IDisposable
{
    private const int LeastCuts = 1000;

    private static readonly byte[] Old = Text("old", 3000), New = Text("new", 5000), Third = Text("third", 4000);

    private static readonly Func<Exception>[] Errors =
    [
        () => new IOException("No space left on device"),
        () => new UnauthorizedAccessException("Permission denied"),
        () => new DirectoryNotFoundException("Could not find a part of the path"),
        () => new IOException("Input/output error"),
        () => new ArgumentOutOfRangeException("value"),
        () => new IOException("Disk quota exceeded"),
        () => new IOException("Read-only file system"),
        () => new IOException("Stale file handle"),
    ];

    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-cut-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Book => Path.Combine(folder, "book");

    [Fact]
    public void AThousandCuts_LeaveTheWholeOldOrTheWholeNewFile_AndASentence()
    {
        int cuts = 0;
        foreach (Scenario scenario in Scenarios())
        {
            List<string> steps = Steps(scenario);
            for (int step = 0; step < steps.Count; step++)
            {
                foreach ((Cut cut, Func<Exception> error, double share) in Ways(isWrite: steps[step] == "write"))
                {
                    CutDisk disk = new(step, cut, error, share) { IsQuick = true };
                    Try(scenario, disk, $"{scenario.Name}, step {step}, {cut}, {share}");
                    Assert.True(disk.IsCut);
                    cuts++;
                }
            }
        }
        output.WriteLine($"{cuts} cuts");
        Assert.True(cuts >= LeastCuts, $"{cuts} cuts");
    }

    [Fact]
    public void TwoPrograms_TheOtherSavingBetweenAnyTwoSteps_OneOfThemWins_AndTheOtherIsTold()
    {
        for (int step = 0, steps = Steps(Scenarios().First()).Count; step < steps; step++)
        {
            File.WriteAllBytes(Book, Old);
            string? other = null;
            CutDisk disk = new(step, Cut.Between, () => new IOException(), between: () => other = Said(() => SafeWrite.Replace(Book, Old, Third, new Disk(TimeSpan.Zero))));
            string? own = Said(() => SafeWrite.Replace(Book, Old, New, disk));
            byte[] now = File.ReadAllBytes(Book);
            Assert.True(own is null ^ other is null, $"step {step}: {own}; {other}");
            Assert.Equal(own is null ? New : Third, now);
            Assert.Contains((string[])["changed by somebody else", "another program has been saving in its folder"], sentence => (own ?? other!).Contains(sentence, StringComparison.Ordinal));
            Assert.Single(Directory.GetFileSystemEntries(folder));
        }
    }

    [Fact]
    public void TwoPrograms_TheOtherCreatingTheFileBetweenAnyTwoSteps_OneOfThemWins()
    {
        for (int step = 0, steps = Steps(Scenarios().Single(scenario => scenario.Name == "create")).Count; step < steps; step++)
        {
            File.Delete(Book);
            CutDisk disk = new(step, Cut.Between, () => new IOException(), between: () =>
            {
                if (!File.Exists(Book)) File.WriteAllBytes(Book, Third);
            });
            string? own = Said(() => SafeWrite.Create(Book, New, disk));
            Assert.Equal(own is null ? New : Third, File.ReadAllBytes(Book));
            if (own is not null) Assert.Contains("is there already and was left as it is", own, StringComparison.Ordinal);
        }
    }

    private static byte[] Text(string word, int lines) => Encoding.UTF8.GetBytes(string.Concat(Enumerable.Range(0, lines).Select(i => $"{word} {i}\n")) + "end\n");

    private static IEnumerable<(Cut, Func<Exception>, double)> Ways(bool isWrite)
    {
        foreach (Func<Exception> error in Errors)
        {
            yield return (Cut.Fails, error, 0);
            yield return (Cut.FailsAfter, error, 0);
        }
        // only a write can be done in part
        foreach (double share in (double[])(isWrite ? [0.0001, 0.5, 0.9999] : []))
        {
            yield return (Cut.Fails, Errors[0], share);
            yield return (Cut.DiesBefore, Errors[0], share);
        }
        yield return (Cut.DiesBefore, Errors[0], 0);
        yield return (Cut.DiesAfter, Errors[0], 0);
    }

    private IEnumerable<Scenario> Scenarios()
    {
        yield return new Scenario("replace", Old, () => File.WriteAllBytes(Book, Old), disk => SafeWrite.Replace(Book, Old, New, disk));
        yield return new Scenario("create", null, () => { }, disk => SafeWrite.Create(Book, New, disk));
        yield return new Scenario("link", Old, () =>
        {
            Directory.CreateDirectory(Path.Combine(folder, "there"));
            File.WriteAllBytes(Path.Combine(folder, "there", "real"), Old);
            File.CreateSymbolicLink(Path.Combine(folder, "between"), "there/real");
            File.CreateSymbolicLink(Book, "between");
        }, disk => SafeWrite.Replace(Book, Old, New, disk));
        yield return new Scenario("leftover", Old, () =>
        {
            File.WriteAllBytes(Book, Old);
            File.WriteAllBytes(Path.Combine(folder, ".book.0123abcd.tmp"), Third);
        }, disk => SafeWrite.Replace(Book, Old, New, disk));
        yield return new Scenario("secret", Old, () => File.WriteAllBytes(Book, Old), disk => SafeWrite.Put(Book, New, disk));
        yield return new Scenario("refused in the end", Old, () => File.WriteAllBytes(Book, Old), disk => SafeWrite.Replace(Book, Third, New, disk), IsRefused: true);
    }

    private List<string> Steps(Scenario scenario)
    {
        Clear();
        scenario.Arrange();
        CutDisk disk = CutDisk.Whole();
        Said(() => scenario.Save(disk));
        return disk.Steps;
    }

    private void Try(Scenario scenario, CutDisk disk, string where)
    {
        Clear();
        scenario.Arrange();
        UnixFileMode mode = scenario.Before is null ? UnixFileMode.None : UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.OtherRead;
        if (scenario.Before is not null && scenario.Name != "secret") File.SetUnixFileMode(Book, mode);
        string? said = null;
        bool killed = false;
        try
        {
            said = Said(() => scenario.Save(disk));
        }
        catch (Killed)
        {
            killed = true;
        }
        byte[]? now = File.Exists(Book) ? File.ReadAllBytes(Book) : null;
        bool isOld = Same(now, scenario.Before), isNew = Same(now, New);
        Assert.True(isOld || isNew, $"{where}: neither the old file nor the new one");
        // every error is told, except where tidying up failed
        if (!killed && !scenario.IsRefused) Assert.True(said is not null || isNew, $"{where}: nothing said, and nothing saved");
        if (said is not null) Assert.True(said.EndsWith('.') && said.Contains("book", StringComparison.Ordinal) && !said.Contains("Exception", StringComparison.Ordinal), $"{where}: {said}");
        if (scenario.IsRefused) Assert.True(isOld && (killed || said is not null), where);
        if (isNew && scenario.Before is not null && scenario.Name != "secret") Assert.Equal(mode, File.GetUnixFileMode(Book));
        if (scenario.Name == "link") Assert.NotNull(new FileInfo(Book).LinkTarget);
        NextSaveTidiesUp(scenario, now, where);
    }

    private void NextSaveTidiesUp(Scenario scenario, byte[]? now, string where)
    {
        if (now is null) SafeWrite.Create(Book, Third, CutDisk.Whole());
        else SafeWrite.Replace(Book, now, Third, CutDisk.Whole());
        Assert.True(Same(File.ReadAllBytes(Book), Third), where);
        string[] left = Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Where(file => file.EndsWith(".tmp", StringComparison.Ordinal)).ToArray();
        Assert.True(left.Length == 0, $"{where}: {string.Join(", ", left)}");
        Assert.True(scenario.Name != "link" || new FileInfo(Book).LinkTarget is not null, where);
    }

    private void Clear()
    {
        foreach (string file in Directory.GetFileSystemEntries(folder))
        {
            if (Directory.Exists(file) && new DirectoryInfo(file).LinkTarget is null) Directory.Delete(file, recursive: true);
            else File.Delete(file);
        }
    }

    private static bool Same(byte[]? one, byte[]? other) => one is null ? other is null : other is not null && one.AsSpan().SequenceEqual(other);

    private static string? Said(Action work)
    {
        try
        {
            work();
            return null;
        }
        catch (UserMistake mistake)
        {
            return mistake.Message;
        }
    }

    private sealed record Scenario(string Name, byte[]? Before, Action Arrange, Action<IDisk> Save, bool IsRefused = false);
}
