using System.Diagnostics;
using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests.Versions;

/// <summary>The lines of <c>docs/versions.md</c> for git, put into a repository and used.</summary>
public sealed class GitTests : IDisposable
{
    private const string Base = "screwsheet 1\nsheet A\nA1 \"Peak\"\nB1 peak [kN] = 8 kN\nB2 exposed [mm] = 40 mm\nB3 Torque moment => peak * B2\n";

    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-git-").FullName;

    public GitTests()
    {
        Git("init", "-q", "-b", "main");
        string page = File.ReadAllText(Path.Combine(GoldenFile.Root, "docs/versions.md")).ReplaceLineEndings("\n");
        string program = $"dotnet '{typeof(Program).Assembly.Location}'";
        string config = Block(page, "gitconfig").Replace("= screwsheet ", $"= \"{program}\" ", StringComparison.Ordinal).Replace("\"dotnet", "dotnet", StringComparison.Ordinal).Replace("dll'\" ", "dll' ", StringComparison.Ordinal);
        File.AppendAllText(Path.Combine(folder, ".git/config"), config);
        Write(".gitattributes", Block(page, "gitattributes"));
        Write("w.screwsheet", Base);
        Commit("base");
    }

    [Fact]
    public void GitDiffSpeaksOfCells()
    {
        Write("w.screwsheet", Base.Replace("8 kN", "9 kN"));
        string said = Git("diff");
        Assert.Contains("What the author changed\n  A.B1 peak: given 8 kN → 9 kN\n", said, StringComparison.Ordinal);
        Assert.Contains("What follows from it\n  A.B3 moment: 320 N·m → 360 N·m (+12.5 %)\n", said, StringComparison.Ordinal);
        Assert.DoesNotContain("@@", said, StringComparison.Ordinal);
    }

    [Fact]
    public void GitLogSpeaksOfCellsFromTheFirstVersionOn()
    {
        Write("w.screwsheet", "no workbook\n");
        Commit("spoilt");
        Write("w.screwsheet", Base.Replace("40 mm", "41 mm"));
        Commit("mended");
        string said = Git("log", "-p", "--ext-diff");
        Assert.Contains("A.B1 peak: given added: peak [kN] = 8 kN\n", said, StringComparison.Ordinal);
        Assert.Contains("The first line does not read screwsheet 1, so this is no workbook.", said, StringComparison.Ordinal);
    }

    [Fact]
    public void GitMergesByCell()
    {
        Branch("other", Base.Replace("8 kN", "9 kN"));
        Write("w.screwsheet", Base.Replace("A1 \"Peak\"\nB1 peak", "A1 \"New\"\nA2 \"Peak\"\nB2 peak").Replace("B2 exposed", "B3 exposed").Replace("B3 Torque moment => peak * B2", "B4 Torque moment => peak * B3"));
        Commit("inserted");
        Git("merge", "-q", "--no-edit", "other");
        Assert.Equal("screwsheet 1\nsheet A\nA1 \"New\"\nA2 \"Peak\"\nB2 peak [kN] = 9 kN\nB3 exposed [mm] = 40 mm\nB4 Torque moment => peak * B3\n", File.ReadAllText(Path.Combine(folder, "w.screwsheet")));
        Assert.Equal("", Git("status", "--porcelain"));
    }

    [Fact]
    public void GitStopsAtAConflictThatStandsInTheFile()
    {
        Branch("other", Base.Replace("40 mm", "45 mm"));
        Write("w.screwsheet", Base.Replace("40 mm", "50 mm"));
        Commit("changed");
        (int status, string said) = Run("merge", "-q", "--no-edit", "other");
        Assert.Equal(1, status);
        Assert.Contains("CONFLICT", said, StringComparison.Ordinal);
        Assert.Equal(Base.Replace("B2 exposed [mm] = 40 mm", "B2 conflict\n  ours exposed [mm] = 50 mm\n  theirs exposed [mm] = 45 mm"), File.ReadAllText(Path.Combine(folder, "w.screwsheet")));
        Write("w.screwsheet", Base.Replace("40 mm", "45 mm"));
        Commit("resolved");
        Assert.Equal("", Git("status", "--porcelain"));
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static string Block(string page, string kind)
    {
        string fence = $"```{kind}\n";
        int start = page.IndexOf(fence, StringComparison.Ordinal) + fence.Length;
        return page[start..page.IndexOf("```", start, StringComparison.Ordinal)];
    }

    private void Branch(string name, string text)
    {
        Git("checkout", "-q", "-b", name);
        Write("w.screwsheet", text);
        Commit(name);
        Git("checkout", "-q", "main");
    }

    private void Write(string name, string text) => File.WriteAllText(Path.Combine(folder, name), text);

    private void Commit(string message)
    {
        Git("add", "-A");
        Git("commit", "-q", "-m", message);
    }

    private string Git(params string[] args)
    {
        (int status, string said) = Run(args);
        Assert.True(status == 0, $"git {string.Join(' ', args)} ended with {status}:\n{said}");
        return said;
    }

    /// <summary>git without anybody's own configuration.</summary>
    private (int Status, string Said) Run(params string[] args)
    {
        ProcessStartInfo start = new("git", ["-c", "user.name=Test", "-c", "user.email=test@example.invalid", "-c", "core.pager=cat", .. args]) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["GIT_CONFIG_NOSYSTEM"] = "1";
        start.Environment["GIT_CONFIG_GLOBAL"] = "/dev/null";
        start.Environment["COLUMNS"] = "80";
        foreach (string name in (string[])["GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE", "GIT_EXTERNAL_DIFF", "LANG", "LC_ALL"]) start.Environment.Remove(name);
        using Process git = Process.Start(start)!;
        Task<string> output = git.StandardOutput.ReadToEndAsync(), error = git.StandardError.ReadToEndAsync();
        Assert.True(git.WaitForExit(TimeSpan.FromMinutes(3)), "git did not end.");
        return (git.ExitCode, output.Result + error.Result);
    }
}
