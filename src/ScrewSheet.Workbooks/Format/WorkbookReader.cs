using System.Collections.Immutable;
using System.Globalization;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Reads the lines of a file one after the other.</summary>
internal sealed class WorkbookReader
{
    /// <summary>The cells a workbook may have.</summary>
    public const int MostCells = 500_000;

    private readonly HeadReader head = new();
    private readonly ImmutableArray<BrokenLine>.Builder broken = ImmutableArray.CreateBuilder<BrokenLine>();
    private readonly List<SheetBuilder> sheets = [];
    private readonly CellsAhead ahead;
    private BlockReader? block;
    private ConflictLines? conflict;
    private bool sheetSeen, skipping;
    private int cellsBefore, studies;
    private Fault? refusal;

    private WorkbookReader(CellsAhead ahead) => this.ahead = ahead;

    private SheetBuilder? Current => sheets.Count == 0 ? null : sheets[^1];

    /// <summary>Reads the file.</summary>
    public static ReadResult Read(ReadOnlySpan<byte> bytes)
    {
        Fault? fault = FileText.Split(bytes, out List<FileLine> lines, out bool hasMark);
        fault ??= FirstLine(lines);
        return fault is null ? new WorkbookReader(CellsAhead.Of(lines)).Read(lines, hasMark) : new Refusal(fault);
    }

    private static Fault? FirstLine(List<FileLine> lines)
    {
        string first = lines.Count == 0 ? "" : lines[0].Text.TrimEnd(' ', '\t');
        if (first == "screwsheet 1") return null;
        string version = first.StartsWith("screwsheet ", StringComparison.Ordinal) ? first["screwsheet ".Length..].Trim(' ') : "";
        bool later = int.TryParse(version, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number > 1;
        return later ? FormatFaults.LaterVersion(new Place(1, 1, first.Length), version) : FormatFaults.FirstLine();
    }

    private ReadResult Read(List<FileLine> lines, bool hasMark)
    {
        head.Keep(lines[0]);
        for (int i = 1; i < lines.Count && refusal is null; i++) Take(lines[i], new LineText(lines[i].Text, i + 1));
        if (refusal is not null) return new Refusal(refusal);
        EndBlock();
        ImmutableArray<Sheet> built = [.. sheets.Select(sheet => sheet.Build(broken))];
        LineEnd newLine = lines[0].End == LineEnd.CrLf ? LineEnd.CrLf : LineEnd.Lf;
        ImmutableArray<BrokenLine> brokenLines = broken.ToImmutable();
        return new WorkbookRead(new Workbook
        {
            Head = head.Head, Functions = head.Functions, Sheets = built, Reserved = head.Reserved,
            BrokenLines = brokenLines, Faults = [.. brokenLines.Select(line => line.Fault)],
            Source = new(new WorkbookSource(hasMark, newLine, head.Lines, head.Head, head.Functions)),
        });
    }

    private void Take(FileLine file, LineText line)
    {
        int start = line.SkipBlanks(0, line.Text.Length);
        bool blank = start == line.Text.Length;
        if (conflict is not null && start > 0 && !blank)
        {
            conflict.Add(file);
            return;
        }
        if (block is not null && start > 0 && !blank)
        {
            Keep(file);
            Report(file, block.Take(line));
            return;
        }
        EndBlock();
        if (blank || file.IsRemark) Keep(file);
        else if (!skipping && (ConflictText.IsLines(file.Text) || (sheetSeen && ConflictText.IsCell(file.Text)))) conflict = new ConflictLines(file, line.Number);
        else if (IsWord(line, start, "sheet", out int end)) StartSheet(file, line, end);
        else if (!sheetSeen) TakeHead(file, line);
        else if (skipping) Keep(file);
        else TakeInSheet(file, line, start);
    }

    private void TakeHead(FileLine file, LineText line)
    {
        Fault? fault = head.Read(file, line);
        if (fault?.Code is FormatFaults.HeadWordCode or FormatFaults.TooManyCode) refusal = fault;
        else Report(file, fault);
    }

    private void StartSheet(FileLine file, LineText line, int start)
    {
        sheetSeen = true;
        (string Name, string? Title, Place Place)? read = SheetLine.ReadSheet(line, start, out Fault? fault);
        SheetBuilder? same = read is null ? null : sheets.Find(sheet => sheet.Name == read.Value.Name);
        if (same is not null) fault = NameFaults.DoubledSheet(read!.Value.Place, same.Name, same.FirstLine);
        skipping = fault is not null;
        Report(file, fault);
        if (skipping)
        {
            Keep(file);
            return;
        }
        if (sheets.Count >= FormatBudget.Sheets) refusal = FormatFaults.TooMany(read!.Value.Place, FormatBudget.Sheets, "sheets");
        cellsBefore += Current?.Count ?? 0;
        sheets.Add(new SheetBuilder(read!.Value.Name, read.Value.Title, line.Number, file));
    }

    private void TakeInSheet(FileLine file, LineText line, int start)
    {
        int end = line.WordEnd(start, line.Text.Length);
        string word = end - start > 12 ? "" : line.Piece(start, end);
        if (word is "what-if" or "plot" or "correlate" && ++studies > FormatBudget.Studies) refusal = FormatFaults.TooMany(line.At(start, end), FormatBudget.Studies, "what-if tables, plots and correlated pairs");
        switch (word)
        {
            case "widths":
                Report(file, Current!.ReadWidths(file, line, end));
                break;
            case "what-if":
                Keep(file);
                block = BlockReader.StartWhatIf(line, end, out Fault? fault);
                Report(file, fault);
                break;
            case ColumnLine.Word:
                Report(file, Current!.ReadColumn(file, line, end));
                break;
            case "correlate" or "plot" or "reviewed":
                Keep(file);
                block = BlockReader.Reserve(line, start, word);
                Report(file, BlockReader.FaultOf(line, start, word));
                break;
            default:
                if (HeadReader.Words.Contains(word)) KeepBroken(file, FormatFaults.HeadPlace(line.At(start, end), word));
                else TakeCell(file, line);
                break;
        }
    }

    private void TakeCell(FileLine file, LineText line)
    {
        // a conflict has more lines than the one that was read ahead
        CellReading reading = line.Text.Contains('\n', StringComparison.Ordinal) ? CellLine.Read(line) : ahead.Read(line);
        if (reading.Cell is null) KeepBroken(file, reading.Fault!);
        else Report(file, Current!.Add(reading.Cell, reading.NamePlace, file));
        if (cellsBefore + Current!.Count > MostCells) refusal = FormatFaults.TooManyCells(new Place(line.Number, 1));
    }

    private void KeepBroken(FileLine file, Fault fault)
    {
        Keep(file);
        Report(file, fault);
    }

    private void Keep(FileLine file)
    {
        if (Current is { } sheet) sheet.Keep(file);
        else head.Keep(file);
    }

    private void Report(FileLine file, Fault? fault)
    {
        if (fault is null) return;
        broken.Add(new BrokenLine(file.Text, fault));
        if (broken.Count > FormatBudget.BrokenLines) refusal ??= FormatFaults.TooManyBroken(new Place(fault.Place?.Line ?? 1, 1));
    }

    private void EndBlock()
    {
        if (block is not null) Current?.Add(block);
        block = null;
        if (conflict is not { Whole: var whole, Number: int number }) return;
        conflict = null;
        if (ConflictText.IsCell(whole.Text)) TakeCell(whole, new LineText(whole.Text, number));
        else KeepBroken(whole, ConflictText.LinesFault(whole.Text, number));
    }

    private static bool IsWord(LineText line, int start, string word, out int end)
    {
        end = start + word.Length;
        return line.Text.AsSpan(start).StartsWith(word, StringComparison.Ordinal) && (end == line.Text.Length || Blank.Is(line.Text[end]));
    }
}
