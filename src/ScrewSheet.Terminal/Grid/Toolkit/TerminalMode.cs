using System.Runtime.InteropServices;

namespace ScrewSheet.Terminal.Grid.Toolkit;

/// <summary>How the terminal hands over what is typed, kept so that it can be put back where the process ends without the library having done it.</summary>
internal sealed class TerminalMode
{
    // larger than the structure of any system; nothing looks inside
    private readonly byte[] kept = new byte[256];
    private bool isKnown;

    /// <summary>Remembers how it is now.</summary>
    public void Remember() => isKnown = !OperatingSystem.IsWindows() && Get(0, kept) == 0;

    /// <summary>Puts it back.</summary>
    public void Restore()
    {
        if (isKnown) _ = Set(0, 0, kept);
    }

    [DllImport("libc", EntryPoint = "tcgetattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Get(int file, byte[] mode);

    [DllImport("libc", EntryPoint = "tcsetattr")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Set(int file, int when, byte[] mode);
}
