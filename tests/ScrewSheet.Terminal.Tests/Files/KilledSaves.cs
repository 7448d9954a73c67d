using System.Diagnostics;
using System.Globalization;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Saver;
using ScrewSheet.Terminal.Grid.Recovery;
using ScrewSheet.TestKit;
using Xunit.Abstractions;

namespace ScrewSheet.Terminal.Tests.Files;

/// <summary>
/// Processes that save without end and are really killed, at a random moment. <c>SCREWSHEET_KILLS</c> says how often; without it, as often as a test run can afford.
/// </summary>
public sealed class KilledSaves(ITestOutputHelper output) : IDisposable
{
    private const int UsualKills = 50;

    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-killed-").FullName;
    private readonly Random random = new();

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Book => Path.Combine(folder, "book");

    private static int Kills => int.TryParse(Environment.GetEnvironmentVariable("SCREWSHEET_KILLS"), NumberStyles.None, CultureInfo.InvariantCulture, out int kills) ? kills : UsualKills;

    [Fact]
    public void KilledWhileSaving_TheFileIsWhole_AndNoSaveThatWasToldIsLost()
    {
        File.WriteAllText(Book, NumberedText.Of(0));
        int last = 0, halves = 0;
        for (int kill = 0; kill < Kills; kill++)
        {
            // every fifth time two of them save the same file
            Process[] savers = [.. Enumerable.Range(0, kill % 5 == 4 ? 2 : 1).Select(i => Start("save", Book, $"{last + 1 + (i * 1_000_000)}"))];
            int told = savers.Max(Kill);
            int now = NumberOf(File.ReadAllText(Book));
            // one more than was told may have been put in place before the kill
            if (savers.Length == 1) Assert.InRange(now, told, told + 1);
            if (Directory.GetFiles(folder, ".*").Length > 0) halves++;
            last = savers.Length == 2 ? 0 : now;
        }
        SafeWrite.Replace(Book, File.ReadAllBytes(Book), "after"u8.ToArray());
        Assert.Equal([Book], Directory.GetFileSystemEntries(folder));
        output.WriteLine($"{Kills} kills, {halves} of them in the middle of a save");
    }

    [Theory]
    [InlineData("whole")]
    [InlineData("added")]
    public void KilledWhileTyping_TheJournalHoldsEveryEntryThatWasTold(string how)
    {
        int kills = Math.Max(1, Kills / 10);
        for (int kill = 0; kill < kills; kill++)
        {
            string place = Path.Combine(folder, $"journals-{kill}");
            int told = Kill(Start("journal", place, how));
            FoundJournal found = Assert.Single(new Journals(place).Found());
            Assert.False(found.IsAlive);
            using LeftWork left = new Journals(place).Claim(found.Id)!;
            int entries = left.Workbook!.Sheets[0].Cells.Count;
            Assert.InRange(entries, told, told + 1);
            Assert.Equal([.. Enumerable.Range(1, entries).Select(number => $"entry {number}")], left.Workbook.Sheets[0].CellsInOrder.Select(cell => ((Workbooks.Model.NoteContent)cell.Content).Text));
        }
    }

    [Fact]
    public void ADiskThatTakesNoMore_LeavesTheOldFile_ASentence_AndNothingBeside()
    {
        File.WriteAllText(Book, NumberedText.Of(0));
        // the system refuses what would make a file longer than 8 blocks of 512 bytes (POSIX, ulimit -f; from memory); the runtime itself must not need more for its code
        using Process shell = Start(new ProcessStartInfo("sh", ["-c", "trap '' XFSZ; ulimit -f 8; export DOTNET_EnableWriteXorExecute=0; exec \"$0\" once \"$1\"", Saver, Book]));
        string error = shell.StandardError.ReadToEnd();
        shell.WaitForExit();
        Assert.Equal(2, shell.ExitCode);
        Assert.Matches("book cannot be written: .*the disk", error);
        Assert.Equal(NumberedText.Of(0), File.ReadAllText(Book));
        Assert.Single(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void AFullDisk_LeavesTheOldFile_ASentence_AndNothingBeside()
    {
        // a disk of 128 kB in a room of its own, where the system allows that; the limit above does where it does not
        const string script = "mount -t tmpfs -o size=128k none \"$1\" || exit 77; echo made; cp \"$2\" \"$1/book\"; head -c 64k /dev/zero > \"$1/fill\"; \"$0\" once \"$1/book\"; status=$?; cmp \"$2\" \"$1/book\" && ls -A \"$1\" && exit $status";
        string disk = Directory.CreateDirectory(Path.Combine(folder, "disk")).FullName;
        File.WriteAllText(Book, NumberedText.Of(0));
        using Process shell = Start(new ProcessStartInfo("unshare", ["-rm", "sh", "-c", script, Saver, disk, Book]));
        string said = shell.StandardError.ReadToEnd(), listed = shell.StandardOutput.ReadToEnd();
        shell.WaitForExit();
        bool isMade = listed.StartsWith("made\n", StringComparison.Ordinal);
        output.WriteLine(isMade ? "on a disk that was full" : $"no such disk could be made here: {said}");
        if (!isMade) return;
        Assert.Equal(2, shell.ExitCode);
        Assert.Contains("book cannot be written: no space left on device.", said, StringComparison.Ordinal);
        Assert.Equal("made\nbook\nfill\n", listed);
    }

    private static string Saver { get; } = BuiltPrograms.At("ScrewSheet.Saver", "ScrewSheet.Saver");

    private static int NumberOf(string text)
    {
        int number = int.Parse(text[7..text.IndexOf('\n', StringComparison.Ordinal)], CultureInfo.InvariantCulture);
        Assert.Equal(NumberedText.Of(number), text);
        return number;
    }

    private static Process Start(params string[] arguments) => Start(new ProcessStartInfo(Saver, arguments));

    private static Process Start(ProcessStartInfo info)
    {
        info.RedirectStandardOutput = info.RedirectStandardError = true;
        info.Environment["DOTNET_EnableDiagnostics"] = "0";
        return Process.Start(info) ?? throw new InvalidOperationException("no process");
    }

    /// <summary>Kills it at a random moment after it began, and gives the last number it told.</summary>
    private int Kill(Process process)
    {
        using (process)
        {
            int told = 0;
            while (process.StandardOutput.ReadLine() is { } line)
            {
                if (!int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out told)) continue;
                break;
            }
            Assert.True(told > 0, process.HasExited ? process.StandardError.ReadToEnd() : "it told nothing");
            Thread.SpinWait(random.Next(200_000));
            Thread.Sleep(random.Next(12));
            process.Kill();
            while (process.StandardOutput.ReadLine() is { } line)
            {
                if (int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out int number)) told = number;
            }
            process.WaitForExit();
            return told;
        }
    }
}
