using System.Runtime.InteropServices;
using System.Runtime.Versioning;
using Microsoft.Win32.SafeHandles;

namespace ScrewSheet.Terminal.Files;

/// <summary>Calls of a Unix system that .NET has no words for: folders as files, owners, second names.</summary>
[UnsupportedOSPlatform("windows")]
internal static class Native
{
    // the same on every Unix
    private const int ReadOnly = 0, LockAlone = 2, LockAtOnce = 4, InputOutputError = 5, DiskFull = 28;

    // Linux: one structure on all machines, unlike that of the older call
    private const int HereFolder = -100, OwnerAndGroup = 0x18, StatxBytes = 256, OwnerAt = 20, GroupAt = 24, QuotaFull = 122, HeldOnLinux = 11, HeldElsewhere = 35;

    private static int CloseOnStart => OperatingSystem.IsLinux() ? 0x80000 : OperatingSystem.IsMacOS() ? 0x1000000 : 0;

    /// <summary>Opens a folder, or gives null.</summary>
    public static SafeFileHandle? OpenFolder(string path)
    {
        int handle = open(path, ReadOnly | CloseOnStart);
        return handle < 0 ? null : new SafeFileHandle(handle, ownsHandle: true);
    }

    /// <summary>Locks an open folder until it is closed.</summary>
    /// <returns>True when locked; false where the file system has no such locks; null where another program has it locked.</returns>
    public static bool? Lock(SafeFileHandle folder)
    {
        if (flock(folder, LockAlone | LockAtOnce) == 0) return true;
        return Marshal.GetLastPInvokeError() == (OperatingSystem.IsLinux() ? HeldOnLinux : HeldElsewhere) ? null : false;
    }

    /// <summary>Has the names in a folder on the disk; where a file system knows no such thing, that is passed over.</summary>
    /// <exception cref="IOException">The disk failed or is full.</exception>
    public static void Flush(SafeFileHandle folder)
    {
        if (fsync(folder) != 0 && Marshal.GetLastPInvokeError() is InputOutputError or DiskFull or QuotaFull) throw new IOException(Marshal.GetLastPInvokeErrorMessage());
    }

    /// <summary>Gives a file a second name.</summary>
    /// <returns>False where that name is taken or the file system has no second names.</returns>
    public static bool Link(string path, string second) => link(path, second) == 0;

    /// <summary>Gives a file the owner and the group of another, or the group alone, as far as the system allows.</summary>
    /// <returns>True where the groups are the same then.</returns>
    [SupportedOSPlatform("linux")]
    public static bool CopyOwner(string from, string to, SafeFileHandle open)
    {
        try
        {
            if (OwnerOf(from) is not { } wanted || OwnerOf(to) is not { } present) return false;
            if (wanted == present || fchown(open, wanted.Owner, wanted.Group) == 0) return true;
            return wanted.Group == present.Group || fchown(open, uint.MaxValue, wanted.Group) == 0;
        }
        catch (EntryPointNotFoundException)
        {
            return false;
        }
    }

    private static (uint Owner, uint Group)? OwnerOf(string path)
    {
        byte[] facts = new byte[StatxBytes];
        return statx(HereFolder, path, 0, OwnerAndGroup, facts) == 0 ? (BitConverter.ToUInt32(facts, OwnerAt), BitConverter.ToUInt32(facts, GroupAt)) : null;
    }

    [DllImport("libc", SetLastError = true)]
    private static extern int open([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc", SetLastError = true)]
    private static extern int flock(SafeFileHandle file, int operation);

    [DllImport("libc", SetLastError = true)]
    private static extern int fsync(SafeFileHandle file);

    [DllImport("libc", SetLastError = true)]
    private static extern int link([MarshalAs(UnmanagedType.LPUTF8Str)] string path, [MarshalAs(UnmanagedType.LPUTF8Str)] string second);

    [DllImport("libc", SetLastError = true)]
    private static extern int statx(int folder, [MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags, uint mask, [Out] byte[] facts);

    [DllImport("libc", SetLastError = true)]
    private static extern int fchown(SafeFileHandle file, uint owner, uint group);
}
