using ScrewSheet.TestKit;

namespace ScrewSheet.Terminal.Tests.Commands;

public sealed class KeepTests
{
    [Fact]
    public void ResultsAreWrittenAndNothingElse()
    {
        using Session session = new() { Calculator = Example.Worse };
        string path = session.File("a.screwsheet", Example.Text);
        Assert.Equal(1, session.Run("keep", path));
        Assert.Equal(
            """
            changed: Placement.B5 moment: the file says 340.0 N·m, this version computes
                     512.5 N·m.
            changed: Placement.B6 strong: the file says holds, this version computes FAILS.
            Kept 2 results.

            """, session.Output);
        string kept = File.ReadAllText(path);
        Assert.Contains("B5 Torque moment [N·m, 1 decimal] => peak * exposed gives 512.5 N·m\n", kept, StringComparison.Ordinal);
        Assert.Contains("B6 strong => moment < 500 N·m gives FAILS\n", kept, StringComparison.OrdinalIgnoreCase);
        string[] before = Example.Text.Split('\n'), after = kept.Split('\n');
        Assert.Equal(before.Where(line => !line.Contains("=>", StringComparison.Ordinal) && line.Length > 0), after.Where(line => !line.Contains("=>", StringComparison.Ordinal) && !line.StartsWith("made with ", StringComparison.Ordinal) && line.Length > 0));
    }

    [Fact]
    public void AResultInFaultKeepsWhatTheFileSays()
    {
        using Session session = new() { Calculator = Example.Faulty };
        string path = session.File("a.screwsheet", Example.Text);
        Assert.Equal(1, session.Run("keep", path));
        Assert.Contains("gives 340.0 N·m\n", File.ReadAllText(path), StringComparison.Ordinal);
        GoldenFile.Holds("tests/ScrewSheet.Terminal.Tests/Pages/keep-faulty.txt", session.Output);
    }

    [Fact]
    public void KeepingTwiceChangesNothing()
    {
        using Session session = new() { Calculator = Example.Fine };
        string path = session.File("a.screwsheet", Example.Text.Replace("\n", "\r\n", StringComparison.Ordinal));
        session.Run("keep", path);
        byte[] once = File.ReadAllBytes(path);
        session.Run("keep", path);
        Assert.Equal(once, File.ReadAllBytes(path));
    }

    [Fact]
    public void AWorkbookWithResultsOmittedStaysAsItIs()
    {
        using Session session = new() { Calculator = Example.Fine };
        string text = Example.Text.Replace("units SI\n", "units SI\nresults omitted\n", StringComparison.Ordinal);
        string path = session.File("a.screwsheet", text);
        Assert.Equal(0, session.Run("keep", path));
        Assert.Equal("a.screwsheet says results omitted, so nothing was kept.\n", session.Output);
        Assert.Equal(text, File.ReadAllText(path));
    }

    [Fact]
    public void PermissionsAndLinksStay()
    {
        using Session session = new() { Calculator = Example.Worse };
        string path = session.File("a.screwsheet", Example.Text), link = session.At("link.screwsheet");
        File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead);
        File.CreateSymbolicLink(link, path);
        session.Run("keep", link);
        Assert.Equal(path, new FileInfo(link).LinkTarget);
        Assert.Contains("512.5", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead, File.GetUnixFileMode(path));
        Assert.Equal(2, Directory.GetFileSystemEntries(session.Folder).Length);
    }
}
