using System.Buffers;
using System.Collections.Immutable;
using System.Text;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Writes a workbook's lines one after the other.</summary>
internal sealed class WorkbookWriter
{
    private const int UsualLine = 48;

    private readonly ArrayBufferWriter<byte> bytes;
    private readonly LineEnd newLine;
    private bool open;

    private WorkbookWriter(LineEnd newLine, int cells) => (this.newLine, bytes) = (newLine, new(4096 + (cells * UsualLine)));

    /// <summary>The bytes of the file.</summary>
    public static byte[] Write(Workbook workbook)
    {
        WorkbookSource source = HeadText.Current(workbook);
        WorkbookWriter writer = new(source.NewLine, workbook.Sheets.Sum(sheet => sheet.Order.Count));
        if (source.HasMark) FileText.WriteMark(writer.bytes);
        foreach (HeadLine line in source.HeadLines) writer.Add(line.Line);
        foreach (Sheet sheet in workbook.Sheets) writer.Add(sheet);
        return writer.bytes.WrittenSpan.ToArray();
    }

    private void Add(Sheet sheet)
    {
        SheetSource source = SheetText.Current(sheet, newLine);
        Add(source.Opening);
        foreach (Cell cell in sheet.CellsInOrder)
        {
            CellSource? line = cell.Source.Value;
            if (line is not null) Add(line.Leading);
            Add(line is null ? new FileLine(CellTextWriter.Line(cell), newLine) : line.Says(cell) ? line.Line : line.Line with { Text = CellTextWriter.Line(cell) });
        }
        Add(source.Trailing);
    }

    private void Add(ImmutableArray<FileLine> lines)
    {
        foreach (FileLine line in lines) Add(line);
    }

    /// <summary>A line without an end that is no longer the last one gets one.</summary>
    private void Add(FileLine line)
    {
        if (open) bytes.Write(newLine == LineEnd.CrLf ? "\r\n"u8 : "\n"u8);
        Encoding.UTF8.GetBytes(line.Text, bytes);
        open = line.End == LineEnd.None;
        if (!open) bytes.Write(line.End == LineEnd.CrLf ? "\r\n"u8 : "\n"u8);
    }
}
