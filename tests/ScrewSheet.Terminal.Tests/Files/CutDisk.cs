using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Tests.Files;

/// <summary>How a step is cut short.</summary>
internal enum Cut
{
    /// <summary>Not done, and an error says so.</summary>
    Fails,

    /// <summary>Done, and an error says it was not.</summary>
    FailsAfter,

    /// <summary>The process is killed before it.</summary>
    DiesBefore,

    /// <summary>The process is killed after it.</summary>
    DiesAfter,

    /// <summary>Nothing of it is cut; another program does something in between.</summary>
    Between,
}

/// <summary>The process was killed: nothing that stands behind it may run.</summary>
internal sealed class Killed : Exception;

/// <summary>The file system, cut short at one step. After a kill no step does anything any more, whatever still calls it on its way out.</summary>
/// <param name="at">The step, from 0.</param>
/// <param name="cut">How.</param>
/// <param name="error">What the system says.</param>
/// <param name="share">How much of a write is done before it is cut.</param>
/// <param name="between">What another program does right before the step.</param>
internal sealed class CutDisk(int at, Cut cut, Func<Exception> error, double share = 0, Action? between = null) : IDisk
{
    private readonly Disk disk = new();
    private readonly List<IDisposable> open = [];

    /// <summary>True where nothing need be on the disk for good, which takes most of the time.</summary>
    public bool IsQuick { get; init; }

    /// <summary>The steps taken so far.</summary>
    public List<string> Steps { get; } = [];

    /// <summary>True once the process was killed.</summary>
    public bool IsDead { get; private set; }

    /// <summary>True once the step was reached.</summary>
    public bool IsCut { get; private set; }

    public bool Exists(string path) => Step("exists", () => disk.Exists(path));

    public string Target(string path) => Step("target", () => disk.Target(path));

    public byte[] Read(string path) => Step("read", () => disk.Read(path));

    public void AskToWrite(string path) => Step("ask", () => disk.AskToWrite(path));

    public IHeldFolder? Hold(string folder) => Step("hold", () => disk.Hold(folder) is { } held ? new Folder(this, Opened(held)) : null);

    public IEnumerable<string> Names(string folder) => Step("names", () => disk.Names(folder).ToList());

    public INewFile Create(string path, bool secret) => Step("create", () => new NewFile(this, Opened(disk.Create(path, secret))));

    public void Append(string path, ReadOnlyMemory<byte> bytes) => Step("append", () => Add(path, bytes), () => Add(path, Part(bytes)));

    public void Rename(string from, string to) => Step("rename", () => disk.Rename(from, to));

    public void Place(string from, string to) => Step("place", () => disk.Place(from, to));

    public void Delete(string path) => Step("delete", () => disk.Delete(path));

    private void Add(string path, ReadOnlyMemory<byte> bytes)
    {
        if (IsQuick) File.AppendAllBytes(path, bytes.ToArray());
        else disk.Append(path, bytes);
    }

    private T Opened<T>(T thing) where T : IDisposable
    {
        open.Add(thing);
        return thing;
    }

    private ReadOnlyMemory<byte> Part(ReadOnlyMemory<byte> bytes) => bytes[..(int)(bytes.Length * share)];

    private void Step(string name, Action work, Action? part = null) => Step(name, () =>
    {
        work();
        return true;
    }, part);

    private T Step<T>(string name, Func<T> work, Action? part = null)
    {
        if (IsDead) throw new Killed();
        bool here = Steps.Count == at;
        Steps.Add(name);
        if (!here) return work();
        IsCut = true;
        if (cut == Cut.Between) between!();
        if (cut is Cut.Fails or Cut.DiesBefore && share > 0) part?.Invoke();
        // what was opened and never handed over is closed
        if (cut is Cut.FailsAfter or Cut.DiesAfter) (work() as IDisposable)?.Dispose();
        if (cut is Cut.Fails or Cut.FailsAfter) throw error();
        if (cut is Cut.DiesBefore or Cut.DiesAfter) Die();
        return work();
    }

    /// <summary>One that is never cut, and quick.</summary>
    public static CutDisk Whole() => new(-1, Cut.Fails, () => new IOException()) { IsQuick = true };

    /// <summary>What a system does with a process that is gone: its files are closed, its locks are free.</summary>
    private void Die()
    {
        IsDead = true;
        foreach (IDisposable thing in open) thing.Dispose();
        throw new Killed();
    }

    private sealed class Folder(CutDisk disk, IHeldFolder held) : IHeldFolder
    {
        public bool IsAlone => held.IsAlone;

        public void Flush() => disk.Step("flush folder", disk.IsQuick ? () => { } : held.Flush);

        public void Dispose()
        {
            if (!disk.IsDead) held.Dispose();
        }
    }

    private sealed class NewFile(CutDisk disk, INewFile file) : INewFile
    {
        public void Write(ReadOnlyMemory<byte> bytes) => disk.Step("write", () => file.Write(bytes), () => file.Write(disk.Part(bytes)));

        public void BeLike(string path) => disk.Step("be like", () => file.BeLike(path));

        public void Flush() => disk.Step("flush", disk.IsQuick ? () => { } : file.Flush);

        public void Dispose()
        {
            if (!disk.IsDead) file.Dispose();
        }
    }
}
