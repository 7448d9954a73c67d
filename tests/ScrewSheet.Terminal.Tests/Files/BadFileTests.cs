using System.Text;
using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Tests.Files;

public sealed class BadFileTests
{
    [Theory]
    [InlineData("run")]
    [InlineData("check")]
    [InlineData("keep")]
    public void AMissingFile(string verb) => Refused(verb, "none.screwsheet", "There is no file none.screwsheet. Check the spelling and the folder.");

    [Theory]
    [InlineData("run")]
    [InlineData("check")]
    [InlineData("keep")]
    public void AFolder(string verb) => Refused(verb, "folder", "folder is a folder, not a workbook. Name a file inside it.", session => Directory.CreateDirectory(session.At("folder")));

    [Theory]
    [InlineData("run")]
    [InlineData("keep")]
    public void AFileInAFolderThatIsAFile(string verb)
    {
        using Session session = new();
        session.File("a", "x");
        Assert.Equal(2, session.Run(verb, session.At("a/b")));
        Assert.StartsWith("screwsheet: ", session.Error, StringComparison.Ordinal);
        Assert.Single(session.Error.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("run")]
    [InlineData("check")]
    public void NoFileName(string verb)
    {
        using Session session = new();
        Assert.Equal(2, session.Run(verb, ""));
        Assert.Equal("screwsheet: \"\" is no file name. Name a workbook file.\n", session.Error);
    }

    [Fact]
    public void AFileNameWithAHiddenCharacter()
    {
        using Session session = new();
        Assert.Equal(2, session.Run("run", session.At("a\u202eb")));
        Assert.Equal("screwsheet: There is no file a‹U+202E›b. Check the spelling and the folder.\n", session.Error);
    }

    [Fact]
    public void BytesThatAreNoText() => Refused("run", "a.screwsheet", null, session => File.WriteAllBytes(session.At("a.screwsheet"), [.. Encoding.UTF8.GetBytes("screwsheet 1\ntitle "), 0xFF, 0xFE, (byte)'\n']));

    [Theory]
    [InlineData("")]
    [InlineData("hello\n")]
    [InlineData("screwsheet 2\nunits SI\n")]
    [InlineData("screwsheet 1\nnonsense here\n")]
    public void AFileThatIsNoWorkbook(string text) => Refused("run", "a.screwsheet", null, session => session.File("a.screwsheet", text));

    [Fact]
    public void AFileThatIsTooLarge()
    {
        using Session session = new();
        using (FileStream file = File.Create(session.At("a.screwsheet"))) file.SetLength(BoundedRead.MostBytes + 1L);
        Assert.Equal(2, session.Run("run", session.At("a.screwsheet")));
        Assert.Equal("screwsheet: a.screwsheet is larger than 32 MB. Split the workbook.\n", session.Error);
    }

    [Fact]
    public void AnEndlessDevice()
    {
        using Session session = new();
        Assert.Equal(2, session.Run("run", "/dev/zero"));
        Assert.Equal("screwsheet: /dev/zero is larger than 32 MB. Split the workbook.\n", session.Error);
    }

    [Fact]
    public void NoPermissionToRead()
    {
        using Session session = new() { Calculator = Example.Fine };
        string path = session.File("a.screwsheet", Example.Text);
        File.SetUnixFileMode(path, UnixFileMode.None);
        // whoever may read everything is not stopped by permissions; the sentence is then tested below only
        Assert.Equal(Environment.IsPrivilegedProcess ? 0 : 2, session.Run("run", path));
        Assert.Equal("screwsheet: a cannot be read: you have no permission. Ask its owner, or change its permissions.\n", $"screwsheet: {FileTrouble.Sentence("a", "read", new UnauthorizedAccessException())}\n");
    }

    [Theory]
    [InlineData("keep")]
    [InlineData("new")]
    public void NoPermissionToWrite(string verb)
    {
        using Session session = new() { Calculator = Example.Worse };
        string path = session.File("a.screwsheet", Example.Text);
        File.SetUnixFileMode(path, UnixFileMode.UserRead);
        int status = session.Run(verb, path);
        Assert.Equal(verb == "keep" && Environment.IsPrivilegedProcess ? 1 : 2, status);
        Assert.Equal("a cannot be written: you have no permission. Choose another folder, or change the permissions of the file or its folder.", FileTrouble.Sentence("a", "written", new UnauthorizedAccessException()));
    }

    [Fact]
    public void AFolderThatIsNotThere()
    {
        using Session session = new();
        Assert.Equal(2, session.Run("new", session.At("none/a.screwsheet")));
        Assert.Equal("screwsheet: none/a.screwsheet cannot be written: there is no folder none. Create the folder first.\n", session.Error);
    }

    [Fact]
    public void AFullDisk()
    {
        using Session session = new();
        Assert.Equal(2, session.Run("new", "/dev/full/a"));
        Assert.StartsWith("screwsheet: /dev/full/a cannot be written: ", session.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void AFileSomebodyElseChangedMeanwhile()
    {
        using Session session = new();
        string path = session.File("a", "new");
        UserMistake mistake = Assert.Throws<UserMistake>(() => SafeWrite.Replace(path, "old"u8.ToArray(), "mine"u8.ToArray()));
        Assert.EndsWith("a was changed by somebody else meanwhile, so nothing was written. Run the command again.", mistake.Message, StringComparison.Ordinal);
        Assert.Equal("new", File.ReadAllText(path));
        Assert.Single(Directory.GetFileSystemEntries(session.Folder));
    }

    private static void Refused(string verb, string name, string? sentence, Action<Session>? arrange = null)
    {
        using Session session = new();
        arrange?.Invoke(session);
        Assert.Equal(2, session.Run(verb, session.At(name)));
        if (sentence is not null) Assert.Equal($"screwsheet: {sentence}\n", session.Error);
        Assert.StartsWith($"screwsheet: ", session.Error, StringComparison.Ordinal);
        Assert.Single(session.Error.TrimEnd('\n').Split('\n'));
        Assert.DoesNotContain("   at ", session.Error, StringComparison.Ordinal);
        Assert.Equal("", session.Output);
    }
}
