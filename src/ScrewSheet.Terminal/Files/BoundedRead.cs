namespace ScrewSheet.Terminal.Files;

/// <summary>Reads a whole file, but no more than a workbook may hold.</summary>
internal static class BoundedRead
{
    /// <summary>The largest workbook file: 32 MB.</summary>
    public const int MostBytes = 32 * 1024 * 1024;

    /// <summary>The bytes of the file.</summary>
    /// <exception cref="UserMistake">It cannot be read, is no file or is too large.</exception>
    public static byte[] All(string path) => All(path, MostBytes);

    /// <summary>The bytes of a file that may hold so many.</summary>
    /// <exception cref="UserMistake">It cannot be read, is no file or is too large.</exception>
    public static byte[] All(string path, int most) => FileTrouble.Guard(path, "read", () => Read(path, most));

    private static byte[] Read(string path, int most)
    {
        if (Directory.Exists(path)) throw new IOException("is a directory");
        using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 0);
        using MemoryStream all = new();
        byte[] block = new byte[64 * 1024];
        for (int got = file.Read(block); got > 0; got = file.Read(block))
        {
            if (all.Length + got > most) throw new UserMistake($"{FileTrouble.Quoted(path)} is larger than {most / 1024 / 1024} MB. Split the workbook.");
            all.Write(block, 0, got);
        }
        return all.ToArray();
    }
}
