using ScrewSheet.TestKit;

namespace ScrewSheet.Safety.Tests;

/// <summary>Opening hostile workbooks does nothing to the world that opening harmless ones does not do.</summary>
public sealed class NoEffect : IDisposable
{
    private readonly string home = Directory.CreateTempSubdirectory("screwsheet-safety-").FullName;

    public void Dispose() => Directory.Delete(home, recursive: true);

    // the library that writes xlsx asks the system whose login this is, for honest workbooks as well; the C library looks for its cache of names on this machine first
    private static bool AsksForTheLoginName(string effect) => effect.StartsWith("socket AF_UNIX", StringComparison.Ordinal) || (effect.StartsWith("connect", StringComparison.Ordinal) && effect.Contains("/nscd/socket", StringComparison.Ordinal));

    [Fact]
    public void HostileWorkbooksOpenWhatHarmlessOnesOpenAndNothingElse()
    {
        SortedSet<string> hostile = Opened(Folders.Hostile), harmless = Opened(Folders.Harmless);
        Assert.Contains($"opens {Path.Combine(home, "books", "cells.screwsheet")}", hostile);
        Assert.DoesNotContain(hostile, effect => !AsksForTheLoginName(effect) && (effect.Contains("socket", StringComparison.Ordinal) || effect.StartsWith("connect", StringComparison.Ordinal)));
        Same(harmless, hostile);
    }

    [Fact]
    public void EvenWithoutTheGateBindingOpensNothing()
    {
        SortedSet<string> hostile = Opened(Folders.Hostile, "--without-gate"), harmless = Opened(Folders.Harmless, "--without-gate");
        Same(harmless, hostile);
    }

    [Theory]
    [InlineData("read", "opens /etc/hostname")]
    [InlineData("write", "writes …/planted")]
    [InlineData("delete", "unlink …/nothing")]
    [InlineData("socket", "connect N, {sa_family=AF_INET, sin_port=htons(9")]
    [InlineData("program", "starts /bin/true")]
    public void APlantedEffectIsSeen(string kind, string effect)
    {
        string folder = Path.Combine(home, "books");
        Directory.CreateDirectory(folder);
        File.WriteAllText(Path.Combine(folder, "expressions.txt"), "1 + 1\n");
        SortedSet<string> clean = Watched.Reader(folder, "--without-gate"), planted = Watched.Reader(folder, "--without-gate", "--plant", kind);
        Assert.Contains(planted.Except(clean), found => found.Replace(folder, "…", StringComparison.Ordinal).StartsWith(effect, StringComparison.Ordinal));
    }

    /// <summary>What opening the workbooks does; they stand in the same place whichever they are.</summary>
    private SortedSet<string> Opened(Action<string> write, params string[] options)
    {
        string folder = Path.Combine(home, "books");
        if (Directory.Exists(folder)) Directory.Delete(folder, recursive: true);
        write(folder);
        return Watched.Reader(folder, options);
    }

    private static void Same(SortedSet<string> harmless, SortedSet<string> hostile) => Assert.True(harmless.SetEquals(hostile),
        $"only with hostile workbooks:\n{string.Join('\n', hostile.Except(harmless))}\nonly with harmless ones:\n{string.Join('\n', harmless.Except(hostile))}");
}
