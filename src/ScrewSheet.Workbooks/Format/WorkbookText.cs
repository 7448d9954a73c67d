using System.Text;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>The file format, version 1: see <c>docs/format.md</c>.</summary>
/// <remarks><c>Write(Read(bytes))</c> gives the same bytes for every file that is not refused, whatever is wrong with its lines.</remarks>
public static class WorkbookText
{
    /// <summary>The most bytes a file may have: 32 MB.</summary>
    public const int LargestFile = FileText.LargestFile;

    /// <summary>The most cells a workbook may have.</summary>
    public const int MostCells = WorkbookReader.MostCells;

    /// <summary>Why a workbook of <see cref="MostCells"/> takes no other.</summary>
    public static Fault TooManyCells => FormatFaults.TooManyCells(default) with { Place = null };

    /// <summary>Reads a file's bytes.</summary>
    public static ReadResult Read(ReadOnlySpan<byte> file) => WorkbookReader.Read(file);

    /// <summary>Reads a file's bytes.</summary>
    public static ReadResult Read(byte[] file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return WorkbookReader.Read(file);
    }

    /// <summary>Reads a file's text; a first U+FEFF is a byte-order mark.</summary>
    /// <remarks>A text with half a surrogate pair is refused, since it has no bytes.</remarks>
    public static ReadResult Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        try
        {
            return WorkbookReader.Read(Strict.GetBytes(text));
        }
        catch (EncoderFallbackException half)
        {
            int line = 1 + text.AsSpan(0, half.Index).Count('\n'), start = text.LastIndexOf('\n', Math.Max(0, half.Index - 1)) + 1;
            return new Refusal(FormatFaults.NotUtf8(new Place(line, 1 + half.Index - start)));
        }
    }

    /// <summary>The bytes of the file: lines nobody touched as they were, others in their canonical form.</summary>
    public static byte[] Write(Workbook workbook)
    {
        ArgumentNullException.ThrowIfNull(workbook);
        return WorkbookWriter.Write(workbook);
    }

    private static UTF8Encoding Strict { get; } = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);
}
