namespace ScrewSheet.Terminal.Files;

/// <summary>Writes files so that a loss of power or a full disk leaves the old file or the new one, never half of it.</summary>
internal static class SafeWrite
{
    /// <summary>
    /// Puts new bytes in the place of an existing file: a temporary file beside it, flushed to the disk, then renamed over it.
    /// Permissions stay as they were; a symbolic link stays a link and its target is replaced.
    /// </summary>
    /// <param name="path">The file.</param>
    /// <param name="expected">What it held when it was read: if somebody has changed it since, nothing is written.</param>
    /// <param name="bytes">What it shall hold.</param>
    /// <exception cref="UserMistake">It cannot be written, or has changed.</exception>
    public static void Replace(string path, ReadOnlyMemory<byte> expected, ReadOnlyMemory<byte> bytes) => FileTrouble.Guard(path, "written", () =>
    {
        string target = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? Path.GetFullPath(path);
        RefuseIfProtected(target);
        string temporary = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Environment.ProcessId}.tmp");
        try
        {
            WriteNew(temporary, bytes);
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
            if (!BoundedRead.All(path).AsSpan().SequenceEqual(expected.Span)) throw new UserMistake($"{FileTrouble.Quoted(path)} was changed by somebody else meanwhile, so nothing was written. Run the command again.");
            File.Move(temporary, target, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
        return true;
    });

    /// <summary>Writes a file that must not be there yet.</summary>
    /// <exception cref="UserMistake">It is there already, or cannot be written.</exception>
    public static void Create(string path, ReadOnlyMemory<byte> bytes) => FileTrouble.Guard(path, "written", () =>
    {
        if (Path.Exists(path) && !Directory.Exists(path)) throw new UserMistake($"{FileTrouble.Quoted(path)} is there already and was left as it is. Choose another name.");
        WriteNew(path, bytes);
        return true;
    });

    // exclusive: fails when anything of that name is there, a dangling link included
    private static void WriteNew(string path, ReadOnlyMemory<byte> bytes)
    {
        FileStream file = new(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        bool done = false;
        try
        {
            file.Write(bytes.Span);
            file.Flush(flushToDisk: true);
            done = true;
        }
        finally
        {
            file.Dispose();
            if (!done) File.Delete(path);
        }
    }

    // renaming over a file asks only for permission on its folder; its owner's wish not to have it written counts all the same
    private static void RefuseIfProtected(string target)
    {
        using FileStream probe = new(target, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete);
        probe.Close();
    }
}
