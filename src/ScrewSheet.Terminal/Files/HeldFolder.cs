using System.Diagnostics;
using System.Runtime.Versioning;
using Microsoft.Win32.SafeHandles;

namespace ScrewSheet.Terminal.Files;

/// <summary>A folder held by the system's own lock, which ends with the process, however that ends; so what another save left behind there while it is held, nobody is still writing.</summary>
[UnsupportedOSPlatform("windows")]
internal sealed class HeldFolder : IHeldFolder
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(10);

    // the folder, or null where it cannot be opened; then it can be neither held nor flushed
    private readonly SafeFileHandle? handle;

    private HeldFolder(SafeFileHandle? handle, bool isAlone) => (this.handle, IsAlone) = (handle, isAlone);

    /// <inheritdoc/>
    public bool IsAlone { get; }

    /// <summary>Waits for the folder.</summary>
    /// <returns>Null where another program held it all the while.</returns>
    public static HeldFolder? Of(string folder, TimeSpan patience)
    {
        // opening something else than a folder may wait for ever
        if (!Directory.Exists(folder) || Native.OpenFolder(folder) is not { } handle) return new HeldFolder(null, false);
        long began = Stopwatch.GetTimestamp();
        while (true)
        {
            if (Native.Lock(handle) is { } isAlone) return new HeldFolder(handle, isAlone);
            if (Stopwatch.GetElapsedTime(began) > patience) break;
            Thread.Sleep(Pause);
        }
        handle.Dispose();
        return null;
    }

    /// <inheritdoc/>
    public void Flush()
    {
        if (handle is not null) Native.Flush(handle);
    }

    /// <inheritdoc/>
    public void Dispose() => handle?.Dispose();
}
