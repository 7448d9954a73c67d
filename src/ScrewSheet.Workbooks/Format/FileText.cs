using System.Buffers;
using System.Text;
using System.Text.Unicode;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Splits the bytes of a file into lines.</summary>
internal static class FileText
{
    /// <summary>The bytes a file may have: 32 MB.</summary>
    public const int LargestFile = 32 * 1024 * 1024;

    private static ReadOnlySpan<byte> Mark => [0xEF, 0xBB, 0xBF];

    /// <summary>The lines; a final newline makes no line of its own.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="lines">The lines in order.</param>
    /// <param name="hasMark">True for a byte-order mark, which belongs to no line.</param>
    /// <returns>The fault of a file that is too large or not UTF-8, or null.</returns>
    public static Fault? Split(ReadOnlySpan<byte> bytes, out List<FileLine> lines, out bool hasMark)
    {
        lines = [];
        hasMark = bytes.StartsWith(Mark);
        if (bytes.Length > LargestFile) return FormatFaults.TooLarge(bytes.Length);
        if (bytes.Count((byte)'\n') > FormatBudget.Lines) return FormatFaults.TooManyLines();
        if (!Utf8.IsValid(bytes)) return FormatFaults.NotUtf8(PlaceOfInvalid(hasMark ? bytes[Mark.Length..] : bytes));
        for (ReadOnlySpan<byte> rest = hasMark ? bytes[Mark.Length..] : bytes; !rest.IsEmpty;)
        {
            int feed = rest.IndexOf((byte)'\n');
            int end = feed < 0 ? rest.Length : feed;
            bool carriage = feed > 0 && rest[feed - 1] == '\r';
            lines.Add(new FileLine(Encoding.UTF8.GetString(rest[..(carriage ? end - 1 : end)]), feed < 0 ? LineEnd.None : carriage ? LineEnd.CrLf : LineEnd.Lf));
            rest = feed < 0 ? [] : rest[(feed + 1)..];
        }
        return null;
    }

    /// <summary>Writes a byte-order mark.</summary>
    public static void WriteMark(IBufferWriter<byte> bytes) => bytes.Write(Mark);

    private static Place PlaceOfInvalid(ReadOnlySpan<byte> bytes)
    {
        int good = FirstInvalid(bytes), line = 1 + bytes[..good].Count((byte)'\n'), start = bytes[..good].LastIndexOf((byte)'\n') + 1;
        return new Place(line, 1 + Encoding.UTF8.GetCharCount(bytes[start..good]));
    }

    private static int FirstInvalid(ReadOnlySpan<byte> bytes)
    {
        int at = 0;
        while (at < bytes.Length && Rune.DecodeFromUtf8(bytes[at..], out _, out int length) == OperationStatus.Done) at += length;
        return at;
    }
}
