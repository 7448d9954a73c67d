using System.Security.Cryptography;
using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Grid.Recovery;

/// <summary>A journal found on the disk.</summary>
/// <param name="Id">Which.</param>
/// <param name="Path">The whole path of the workbook's file, or null.</param>
/// <param name="At">When it was written last.</param>
/// <param name="IsAlive">True while the grid that writes it runs.</param>
internal sealed record FoundJournal(string Id, string? Path, DateTimeOffset At, bool IsAlive);

/// <summary>
/// The folder of journals: one for each grid with changes that are not saved. It is the reader's own, so that a folder of workbooks that many share, or that cannot be written, stays as it is,
/// and a workbook without a file has one too. Beside each journal lies a file its grid has locked as long as it runs, however it ends.
/// </summary>
/// <param name="folder">The folder.</param>
/// <param name="disk">Where; the file system itself when null.</param>
/// <param name="small">The length of a text up to which a journal is written anew each time.</param>
internal sealed class Journals(string folder, IDisk? disk = null, int small = Journals.SmallText)
{
    /// <summary>What the system writes about as fast as a single line.</summary>
    public const int SmallText = 256 * 1024;

    private const string Ending = ".unsaved", LockEnding = ".lock";
    private const int HeadBytes = 64 * 1024, Newest = 50, IdBytes = 8;

    private readonly IDisk disk = disk ?? new Disk();

    /// <summary>Begins a journal for this process.</summary>
    /// <exception cref="UserMistake">The folder cannot be written.</exception>
    public OwnJournal Begin() => FileTrouble.Guard(folder, "written", () =>
    {
        if (OperatingSystem.IsWindows()) Directory.CreateDirectory(folder);
        else Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        string id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdBytes));
        return new OwnJournal(Lock(id, FileMode.CreateNew, FileOptions.DeleteOnClose), new JournalFile(At(id + Ending), disk, small));
    });

    /// <summary>The newest journals there are, the newest first. Trouble with the folder is passed over.</summary>
    public IReadOnlyList<FoundJournal> Found() => Try<IReadOnlyList<FoundJournal>>(() => !Directory.Exists(folder) ? []
        : [.. new DirectoryInfo(folder).EnumerateFiles("*" + Ending).OrderByDescending(file => file.LastWriteTimeUtc).Take(Newest).Select(Find).OfType<FoundJournal>()], []);

    /// <summary>Takes a journal over whose grid is gone, so that no other grid can.</summary>
    /// <returns>Null where its grid runs, another has taken it, or it is no journal.</returns>
    public LeftWork? Claim(string id) => Try(() =>
    {
        FileStream held = Lock(id, FileMode.OpenOrCreate, FileOptions.None);
        LeftWork? left = null;
        try
        {
            // a workbook, its changes and what stands around them
            if (JournalText.Read(BoundedRead.All(At(id + Ending), 2 * BoundedRead.MostBytes)) is { } read) left = new LeftWork(read, held, () => Remove(id));
        }
        finally
        {
            if (left is null) held.Dispose();
        }
        return left;
    }, null);

    private string At(string name) => Path.Combine(folder, name);

    private void Remove(string id) => Try(() =>
    {
        disk.Delete(At(id + Ending));
        disk.Delete(At(id + LockEnding));
        return true;
    }, false);

    /// <summary>The lock of a journal.</summary>
    /// <exception cref="IOException">Another holds it.</exception>
    private FileStream Lock(string id, FileMode mode, FileOptions options)
    {
        FileStreamOptions wanted = new() { Mode = mode, Access = FileAccess.ReadWrite, Share = FileShare.None, Options = options, BufferSize = 0 };
        if (!OperatingSystem.IsWindows()) wanted.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return new FileStream(At(id + LockEnding), wanted);
    }

    private FoundJournal? Find(FileInfo file)
    {
        string id = Path.GetFileNameWithoutExtension(file.Name);
        byte[] beginning = new byte[Math.Min(HeadBytes, file.Length)];
        using (FileStream open = new(file.FullName, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0)) open.ReadAtLeast(beginning, beginning.Length, throwOnEndOfStream: false);
        return JournalText.ReadHead(beginning) is { } head ? new FoundJournal(id, head.Path, file.LastWriteTimeUtc, IsAlive(id)) : null;
    }

    private bool IsAlive(string id)
    {
        try
        {
            new FileStream(At(id + LockEnding), FileMode.Open, FileAccess.ReadWrite, FileShare.None).Dispose();
            return false;
        }
        catch (FileNotFoundException)
        {
            return false;
        }
        catch (IOException)
        {
            return true;
        }
    }

    private static T Try<T>(Func<T> work, T otherwise)
    {
        try
        {
            return FileTrouble.Guard("", "read", work);
        }
        catch (UserMistake)
        {
            return otherwise;
        }
    }
}

/// <summary>The journal of this process, locked.</summary>
/// <param name="held">The lock, which goes when it is closed.</param>
/// <param name="file">The journal.</param>
internal sealed class OwnJournal(FileStream held, JournalFile file) : IDisposable
{
    /// <summary>The journal.</summary>
    public JournalFile File { get; } = file;

    /// <summary>Lets go of it; it stays where it was not removed.</summary>
    public void Dispose() => held.Dispose();
}
