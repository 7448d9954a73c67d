using System.Security.Cryptography;

namespace ScrewSheet.Terminal.Files;

/// <summary>
/// Writes files so that whatever cuts it short leaves the whole old file or the whole new one: written beside, flushed, renamed, the folder flushed.
/// Saving programs wait for each other, by a hold on the folder.
/// </summary>
internal static class SafeWrite
{
    private const string Ending = ".tmp";
    private const int MarkBytes = 4, LongestStem = 60;

    /// <summary>
    /// Puts new bytes in the place of an existing file. Permissions stay as they were, owner and group where the system allows; a symbolic link stays a link and its target is replaced.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="expected">What it held when it was read: if somebody has changed it since, nothing is written.</param>
    /// <param name="bytes">What it shall hold.</param>
    /// <param name="disk">Where; the file system itself when null.</param>
    /// <exception cref="WrittenNotFlushed">It is written, but a loss of power may undo that.</exception>
    /// <exception cref="UserMistake">It cannot be written, or has changed.</exception>
    public static void Replace(string path, ReadOnlyMemory<byte> expected, ReadOnlyMemory<byte> bytes, IDisk? disk = null)
    {
        disk ??= new Disk();
        InFolder(path, disk, () => disk.Target(path), (target, folder) =>
        {
            // renaming over a file asks only for permission on its folder; its owner's wish not to have it written counts all the same
            disk.AskToWrite(target);
            ClearLeftovers(disk, folder, target);
            Beside(disk, target, bytes, target, beside =>
            {
                if (!disk.Read(path).AsSpan().SequenceEqual(expected.Span)) throw new UserMistake($"{FileTrouble.Quoted(path)} was changed by somebody else meanwhile, so nothing was written. Run the command again.");
                disk.Rename(beside, target);
            });
        });
    }

    /// <summary>Writes a file that must not be there yet.</summary>
    /// <param name="path">The file.</param>
    /// <param name="bytes">What it shall hold.</param>
    /// <param name="disk">Where; the file system itself when null.</param>
    /// <exception cref="WrittenNotFlushed">It is written, but a loss of power may undo that.</exception>
    /// <exception cref="UserMistake">It is there already, or cannot be written.</exception>
    public static void Create(string path, ReadOnlyMemory<byte> bytes, IDisk? disk = null)
    {
        disk ??= new Disk();
        InFolder(path, disk, () => Path.GetFullPath(path), (target, folder) =>
        {
            RefuseIfThere(disk, path);
            ClearLeftovers(disk, folder, target);
            Beside(disk, target, bytes, null, beside =>
            {
                try
                {
                    disk.Place(beside, target);
                }
                catch (IOException)
                {
                    RefuseIfThere(disk, path);
                    throw;
                }
            });
        });
    }

    /// <summary>Writes a file nobody but its owner may read, whatever was there.</summary>
    /// <exception cref="UserMistake">It cannot be written.</exception>
    public static void Put(string path, ReadOnlyMemory<byte> bytes, IDisk disk) => InFolder(path, disk, () => Path.GetFullPath(path), (target, folder) =>
    {
        ClearLeftovers(disk, folder, target);
        Beside(disk, target, bytes, null, beside => disk.Rename(beside, target), secret: true);
    });

    /// <summary>Does the work on a file while its folder is held, then has the folder flushed.</summary>
    private static void InFolder(string path, IDisk disk, Func<string> find, Action<string, IHeldFolder> work) => FileTrouble.Guard(path, "written", () =>
    {
        string target = find();
        using IHeldFolder folder = disk.Hold(Path.GetDirectoryName(target) ?? target)
            ?? throw new UserMistake($"{FileTrouble.Quoted(path)} was not written: another program has been saving in its folder for some seconds. Try again.");
        work(target, folder);
        try
        {
            folder.Flush();
        }
        catch (IOException trouble)
        {
            throw new WrittenNotFlushed($"{FileTrouble.Quoted(path)} is written, but a power cut now may bring back what was there before: {FileTrouble.Reason(trouble)} Check the disk, and save again.");
        }
        return true;
    });

    private static void RefuseIfThere(IDisk disk, string path)
    {
        if (disk.Exists(path) && !Directory.Exists(path)) throw new UserMistake($"{FileTrouble.Quoted(path)} is there already and was left as it is. Choose another name.");
    }

    /// <summary>Writes the bytes beside the file, on the disk to the last, and removes them again where they do not come into its place.</summary>
    private static void Beside(IDisk disk, string target, ReadOnlyMemory<byte> bytes, string? like, Action<string> take, bool secret = false)
    {
        string beside = Path.Combine(Path.GetDirectoryName(target) ?? "", $"{Stem(target)}{Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(MarkBytes))}{Ending}");
        INewFile file = disk.Create(beside, secret || like is not null);
        try
        {
            using (file)
            {
                file.Write(bytes);
                if (like is not null) file.BeLike(like);
                file.Flush();
            }
            take(beside);
        }
        catch
        {
            Try(() => disk.Delete(beside));
            throw;
        }
    }

    /// <summary>Removes what saves of the same file left that were killed. Only while the folder is held: then none of them is still being written.</summary>
    private static void ClearLeftovers(IDisk disk, IHeldFolder folder, string target)
    {
        if (!folder.IsAlone) return;
        string place = Path.GetDirectoryName(target)!, stem = Stem(target);
        Try(() =>
        {
            foreach (string name in disk.Names(place).Where(name => IsLeftover(name, stem)).ToList()) disk.Delete(Path.Combine(place, name));
        });
    }

    private static bool IsLeftover(string name, string stem) => name.Length == stem.Length + (2 * MarkBytes) + Ending.Length
        && name.StartsWith(stem, StringComparison.Ordinal) && name.EndsWith(Ending, StringComparison.Ordinal) && name.AsSpan(stem.Length, 2 * MarkBytes).IndexOfAnyExcept("0123456789abcdef") < 0;

    // cut, so that a name as long as the system allows can still be saved
    private static string Stem(string target)
    {
        string name = Path.GetFileName(target);
        return $".{(name.Length <= LongestStem ? name : name[..(char.IsHighSurrogate(name[LongestStem - 1]) ? LongestStem - 1 : LongestStem)])}.";
    }

    /// <summary>Tidying up; where it does not work, the next save does it.</summary>
    private static void Try(Action work)
    {
        try
        {
            work();
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            // what matters more is told already
        }
    }
}
