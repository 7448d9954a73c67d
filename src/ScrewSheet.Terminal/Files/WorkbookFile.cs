using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Files;

/// <summary>A workbook and the file it was read from.</summary>
/// <param name="Path">As the user wrote it.</param>
/// <param name="Bytes">What the file held.</param>
/// <param name="Workbook">What it says.</param>
internal sealed record WorkbookFile(string Path, ReadOnlyMemory<byte> Bytes, Workbook Workbook)
{
    /// <summary>Reads a file.</summary>
    /// <exception cref="UserMistake">It cannot be read, or is no workbook.</exception>
    public static WorkbookFile Read(string path)
    {
        byte[] bytes = BoundedRead.All(path);
        return WorkbookText.Read(bytes) switch
        {
            WorkbookRead read => new WorkbookFile(path, bytes, read.Workbook),
            Refusal refused => throw new UserMistake($"{FileTrouble.Quoted(path)}: {OriginText.Of(refused.Fault)}"),
            ReadResult other => throw new InvalidOperationException($"{other.GetType().Name} is no known result of reading."),
        };
    }

    /// <summary>The bytes of an empty workbook of that title.</summary>
    public static byte[] Empty(string title) => WorkbookText.Write(NewWorkbook.Empty(title));

    /// <summary>Writes another version in its place, unless that is the same to the byte.</summary>
    /// <exception cref="UserMistake">It cannot be written.</exception>
    public void Save(Workbook workbook)
    {
        byte[] bytes = WorkbookText.Write(workbook);
        if (!Bytes.Span.SequenceEqual(bytes)) SafeWrite.Replace(Path, Bytes, bytes);
    }

    /// <summary>Says on the error stream which faults belong to no cell: lines that cannot be read, the author's functions, names that hide the library's.</summary>
    public static void ReportFaults(Shell shell, string path, Calculation calculation)
    {
        foreach (Fault fault in calculation.Faults) shell.Error.Write($"{FileTrouble.Quoted(path)}: {OriginText.Of(fault)}\n");
    }
}
