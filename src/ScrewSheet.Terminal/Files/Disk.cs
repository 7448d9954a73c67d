namespace ScrewSheet.Terminal.Files;

/// <summary>The file system itself.</summary>
/// <param name="patience">How long to wait for another program that saves in the same folder.</param>
internal sealed class Disk(TimeSpan patience) : IDisk
{
    /// <summary>With as much patience as a reader has.</summary>
    public Disk() : this(TimeSpan.FromSeconds(3))
    {
    }

    /// <inheritdoc/>
    public bool Exists(string path) => Path.Exists(path) || new FileInfo(path).LinkTarget is not null;

    /// <inheritdoc/>
    public string Target(string path) => FilePlace.Target(path);

    /// <inheritdoc/>
    public byte[] Read(string path) => BoundedRead.All(path);

    /// <inheritdoc/>
    public void AskToWrite(string path) => new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite | FileShare.Delete).Dispose();

    /// <inheritdoc/>
    public IHeldFolder? Hold(string folder) => OperatingSystem.IsWindows() ? new UnheldFolder() : HeldFolder.Of(folder, patience);

    /// <inheritdoc/>
    public IEnumerable<string> Names(string folder) => Directory.EnumerateFiles(folder).Select(path => Path.GetFileName(path));

    /// <inheritdoc/>
    public INewFile Create(string path, bool secret) => new NewFile(path, secret);

    /// <inheritdoc/>
    public void Append(string path, ReadOnlyMemory<byte> bytes)
    {
        using FileStream file = new(path, FileMode.Open, FileAccess.Write, FileShare.Read, bufferSize: 0);
        file.Seek(0, SeekOrigin.End);
        file.Write(bytes.Span);
        file.Flush(flushToDisk: true);
    }

    /// <inheritdoc/>
    public void Rename(string from, string to) => File.Move(from, to, overwrite: true);

    /// <inheritdoc/>
    public void Place(string from, string to)
    {
        if (OperatingSystem.IsWindows()) File.Move(from, to);
        else if (Native.Link(from, to)) File.Delete(from);
        // no second name for a file on this kind of disk, or the name is taken
        else if (Exists(to)) throw new IOException("it is there already");
        else File.Move(from, to, overwrite: true);
    }

    /// <inheritdoc/>
    public void Delete(string path) => File.Delete(path);

    private sealed class NewFile : INewFile
    {
        private readonly string path;
        private readonly FileStream file;

        public NewFile(string path, bool secret)
        {
            this.path = path;
            FileStreamOptions options = new() { Mode = FileMode.CreateNew, Access = FileAccess.Write, Share = FileShare.None, BufferSize = 0 };
            if (secret && !OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            file = new FileStream(path, options);
        }

        public void Write(ReadOnlyMemory<byte> bytes) => file.Write(bytes.Span);

        public void BeLike(string other)
        {
            if (OperatingSystem.IsWindows()) return;
            UnixFileMode mode = File.GetUnixFileMode(other);
            bool sameGroup = !OperatingSystem.IsLinux() || Native.CopyOwner(other, path, file.SafeFileHandle);
            File.SetUnixFileMode(file.SafeFileHandle, sameGroup ? mode : WithoutGroup(mode));
        }

        public void Flush() => file.Flush(flushToDisk: true);

        public void Dispose() => file.Dispose();

        // another group than before must not read or write more than everybody could
        private static UnixFileMode WithoutGroup(UnixFileMode mode)
        {
            const UnixFileMode group = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute;
            return (mode & ~group) | (UnixFileMode)(((int)mode & 0b111) << 3);
        }
    }

    /// <summary>Where folders can be neither held nor flushed.</summary>
    private sealed class UnheldFolder : IHeldFolder
    {
        public bool IsAlone => false;

        public void Flush()
        {
            // the system does it with the file
        }

        public void Dispose()
        {
            // nothing is held
        }
    }
}
