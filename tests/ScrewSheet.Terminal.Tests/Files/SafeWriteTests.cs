using System.Diagnostics;
using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Tests.Files;

public sealed class SafeWriteTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("screwsheet-save-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private string Book => At("book");

    private string At(string name) => Path.Combine(folder, name);

    [Theory]
    [InlineData(UnixFileMode.UserRead | UnixFileMode.UserWrite)]
    [InlineData(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.GroupRead | UnixFileMode.GroupWrite)]
    [InlineData(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute | UnixFileMode.GroupRead | UnixFileMode.OtherRead | UnixFileMode.OtherWrite)]
    public void Replace_KeepsPermissions(UnixFileMode mode)
    {
        File.WriteAllText(Book, "old");
        File.SetUnixFileMode(Book, mode);
        SafeWrite.Replace(Book, "old"u8.ToArray(), "new"u8.ToArray());
        Assert.Equal("new", File.ReadAllText(Book));
        Assert.Equal(mode, File.GetUnixFileMode(Book));
    }

    [Fact]
    public void Replace_KeepsOwnerAndGroup_WhereItMay()
    {
        File.WriteAllText(Book, "old");
        // only root may give a file away
        if (Environment.IsPrivilegedProcess) Run("chown", "12345:23456", Book);
        string before = Run("stat", "-c", "%u:%g", Book);
        SafeWrite.Replace(Book, "old"u8.ToArray(), "new"u8.ToArray());
        Assert.Equal(before, Run("stat", "-c", "%u:%g", Book));
    }

    [Fact]
    public void WhileItIsWritten_NobodyElseMayReadIt()
    {
        File.WriteAllText(Book, "old");
        File.SetUnixFileMode(Book, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        using INewFile file = new Disk().Create(At("beside"), secret: true);
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(At("beside")));
    }

    [Theory]
    [InlineData(".book.0123abcd.tmp", true)]
    [InlineData(".book.0123abcd.tmp2", false)]
    [InlineData(".book.0123ABCD.tmp", false)]
    [InlineData(".bookmark.0123abcd.tmp", false)]
    [InlineData(".other.0123abcd.tmp", false)]
    [InlineData("book.0123abcd.tmp", false)]
    [InlineData(".book.tmp", false)]
    public void Replace_RemovesWhatKilledSavesOfTheSameFileLeft_AndNothingElse(string name, bool goes)
    {
        File.WriteAllText(Book, "old");
        File.WriteAllText(At(name), "half");
        SafeWrite.Replace(Book, "old"u8.ToArray(), "new"u8.ToArray());
        Assert.Equal(!goes, File.Exists(At(name)));
    }

    [Fact]
    public void WhileAnotherProgramSavesInTheFolder_NothingIsWrittenOrRemoved()
    {
        File.WriteAllText(Book, "old");
        File.WriteAllText(At(".book.0123abcd.tmp"), "being written");
        using (Assert.IsType<HeldFolder>(HeldFolder.Of(folder, TimeSpan.Zero)))
        {
            UserMistake mistake = Assert.Throws<UserMistake>(() => SafeWrite.Replace(Book, "old"u8.ToArray(), "new"u8.ToArray(), new Disk(TimeSpan.FromMilliseconds(30))));
            Assert.EndsWith("book was not written: another program has been saving in its folder for some seconds. Try again.", mistake.Message, StringComparison.Ordinal);
        }
        Assert.Equal("old", File.ReadAllText(Book));
        Assert.True(File.Exists(At(".book.0123abcd.tmp")));
    }

    [Fact]
    public void ANameAsLongAsTheSystemAllows_CanBeSavedAgain()
    {
        // 254 bytes; Linux takes 255 (NAME_MAX in limits.h), from memory
        string path = At(new string('ä', 127));
        SafeWrite.Create(path, "old"u8.ToArray());
        SafeWrite.Replace(path, "old"u8.ToArray(), "new"u8.ToArray());
        Assert.Equal("new", File.ReadAllText(path));
        Assert.Single(Directory.GetFileSystemEntries(folder));
    }

    [Theory]
    [InlineData("a*b?.[x]")]
    [InlineData("line\nend")]
    [InlineData("-rf")]
    public void AnOddName_CanBeSavedAgain(string name)
    {
        SafeWrite.Create(At(name), "old"u8.ToArray());
        SafeWrite.Replace(At(name), "old"u8.ToArray(), "new"u8.ToArray());
        Assert.Equal("new", File.ReadAllText(At(name)));
    }

    [Fact]
    public void Create_NeverWritesThroughALink_EvenToNothing()
    {
        File.CreateSymbolicLink(Book, At("nothing"));
        Assert.Contains("is there already", Assert.Throws<UserMistake>(() => SafeWrite.Create(Book, "new"u8.ToArray())).Message, StringComparison.Ordinal);
        Assert.Single(Directory.GetFileSystemEntries(folder));
    }

    [Fact]
    public void AFolderThatCannotBeFlushed_IsASentence_AndTheFileIsNew()
    {
        File.WriteAllText(Book, "old");
        CutDisk whole = CutDisk.Whole();
        SafeWrite.Replace(Book, "old"u8.ToArray(), "old"u8.ToArray(), whole);
        CutDisk disk = new(whole.Steps.IndexOf("flush folder"), Cut.Fails, () => new IOException("Input/output error"));
        WrittenNotFlushed trouble = Assert.Throws<WrittenNotFlushed>(() => SafeWrite.Replace(Book, "old"u8.ToArray(), "new"u8.ToArray(), disk));
        Assert.Equal("flush folder", disk.Steps[^1]);
        Assert.EndsWith("book is written, but a power cut now may bring back what was there before: input/output error. Check the disk, and save again.", trouble.Message, StringComparison.Ordinal);
        Assert.Equal("new", File.ReadAllText(Book));
    }

    [Fact]
    public void AFolderThatMayBeWrittenButNotListed_IsWrittenInto()
    {
        string inner = At("inner");
        Directory.CreateDirectory(inner);
        File.WriteAllText(Path.Combine(inner, "book"), "old");
        File.SetUnixFileMode(inner, UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        SafeWrite.Replace(Path.Combine(inner, "book"), "old"u8.ToArray(), "new"u8.ToArray());
        Assert.Equal("new", File.ReadAllText(Path.Combine(inner, "book")));
        File.SetUnixFileMode(inner, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
    }

    private static string Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        string output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(0, process.ExitCode);
        return output.Trim();
    }
}
