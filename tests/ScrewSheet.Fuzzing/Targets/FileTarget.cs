using System.Text;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Fuzzing;

/// <summary>A workbook file: read and written back, read again, each of its cells written anew.</summary>
internal sealed class FileTarget : Target
{
    /// <summary>The most cells that are written anew.</summary>
    private const int MostCells = 40;

    /// <inheritdoc/>
    public override string Name => "file";

    /// <inheritdoc/>
    protected override void Run(byte[] input)
    {
        string[] lines = Lines(input);
        switch (WorkbookText.Read(input))
        {
            case Refusal refusal:
                Sentences.Check(refusal.Fault, lines);
                Promise(WorkbookText.Read(input) is Refusal again && again.Fault == refusal.Fault, "reading twice refuses in two ways");
                break;
            case WorkbookRead read:
                Check(read.Workbook, input, lines);
                break;
        }
    }

    private static string[] Lines(byte[] input)
    {
        string text = Encoding.UTF8.GetString(input);
        if (text.StartsWith('\uFEFF')) text = text[1..];
        return text.Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n');
    }

    private static void Check(Workbook workbook, byte[] input, string[] lines)
    {
        Promise(WorkbookText.Write(workbook).AsSpan().SequenceEqual(input), "writing what was read gives other bytes");
        Workbook again = (WorkbookText.Read(input) as WorkbookRead)?.Workbook ?? throw new BrokenPromiseException("what was read is refused the second time");
        Promise(Same(workbook, again), "reading twice gives two workbooks");
        Workbook ofText = (WorkbookText.Read(Encoding.UTF8.GetString(input)) as WorkbookRead)?.Workbook ?? throw new BrokenPromiseException("the text is refused where the bytes are read");
        Promise(Same(workbook, ofText), "text and bytes give two workbooks");
        foreach (Fault fault in workbook.Faults) Sentences.Check(fault, lines);
        int left = MostCells;
        foreach (Sheet sheet in workbook.Sheets)
        {
            Promise(sheet.Order.Count == sheet.Cells.Count && sheet.Order.Distinct().Count() == sheet.Order.Count, "the order of a sheet is not that of its cells");
            foreach (Cell cell in sheet.CellsInOrder)
            {
                Promise(cell.Address.IsValid, $"{cell.Address} is no address");
                if (cell.Content is BrokenContent broken) Sentences.Check(broken.Fault, lines);
                else if (left-- > 0) WrittenAnew(workbook, sheet, cell);
            }
        }
    }

    /// <summary>The line a cell would be written as reads back as that cell, and in its place changes nothing else.</summary>
    private static void WrittenAnew(Workbook workbook, Sheet sheet, Cell cell)
    {
        string line = CellText.Write(cell);
        if (CellText.ReadLine(line) is not EntryRead { Cell: var read }) throw new BrokenPromiseException($"{line} is written and cannot be read");
        Promise(CellText.Write(read) == line, $"{line} is written as {CellText.Write(read)} the second time");
        Promise((read.Address, read.Name, read.DeclaredType, read.Format, read.Remark) == (cell.Address, cell.Name, cell.DeclaredType, cell.Format, cell.Remark) && Text(read) == Text(cell), $"{line} reads back as another cell");
        Workbook with = workbook.WithCell(sheet.Name, cell with { Remark = "other" });
        Promise(WorkbookText.Read(WorkbookText.Write(with)) is WorkbookRead back && back.Workbook.Sheets.Sum(each => each.Cells.Count) == workbook.Sheets.Sum(each => each.Cells.Count), $"{line} with another remark changes more than itself");
    }

    private static string Text(Cell cell) => cell.Content switch
    {
        NoteContent note => note.Text,
        GivenContent given => $"{given.Text} {given.Literal} {given.Source}",
        ResultContent result => $"{result.Expression} {result.Kept}",
        _ => "",
    };

    private static bool Same(Workbook one, Workbook other) =>
        one.Head == other.Head && one.Faults.SequenceEqual(other.Faults) && one.Functions.Length == other.Functions.Length && one.Sheets.Length == other.Sheets.Length
        && one.Sheets.Zip(other.Sheets).All(pair => pair.First.Name == pair.Second.Name && pair.First.Title == pair.Second.Title && pair.First.Order.SequenceEqual(pair.Second.Order)
            && pair.First.CellsInOrder.SequenceEqual(pair.Second.CellsInOrder) && pair.First.WhatIfs.Length == pair.Second.WhatIfs.Length && pair.First.Columns.Length == pair.Second.Columns.Length);
}
