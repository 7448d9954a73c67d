using System.Collections.Immutable;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Format;

/// <summary>Puts what-if tables among the lines of a sheet that belong to no cell, changes them there and takes them away. Every other line stays as it is.</summary>
internal static class TableEditing
{
    private const string Word = "what-if";

    // where a run of lines stands: before all cells, behind all cells, or above the cell of that place in the order
    private const int Opening = -1;

    /// <summary>With that table behind the last one, or in place of the one at <paramref name="replaced"/>.</summary>
    /// <exception cref="ArgumentException">Its text does not read back.</exception>
    public static Sheet With(Sheet sheet, WhatIfBlock block, int? replaced, LineEnd newLine)
    {
        string[] texts = [.. SheetText.WhatIf(block).Skip(1)];
        WhatIfBlock read = Read(texts);
        Sheet sourced = sheet with { Source = new(SheetText.Current(sheet, newLine)) };
        if (replaced is not { } index) return Append(sourced, texts, newLine) with { WhatIfs = sheet.WhatIfs.Add(read) };
        (int part, int from, int to) = Find(sourced, index);
        ImmutableArray<FileLine> lines = LinesOf(sourced, part), old = lines[from..to];
        FileLine[] changed = [.. texts.Select((text, i) => i == 0 ? Head(old[0], text) : old.FirstOrDefault(line => Says(line) == text.Trim()) is { Text: not null } same ? same : new FileLine(text, newLine))];
        return Put(sourced, part, [.. lines[..from], .. changed, .. lines[to..]]) with { WhatIfs = sheet.WhatIfs.SetItem(index, read) };
    }

    /// <summary>Without the table at that place, the remarks directly above it and one blank line.</summary>
    public static Sheet Without(Sheet sheet, int index, LineEnd newLine)
    {
        Sheet sourced = sheet with { Source = new(SheetText.Current(sheet, newLine)) };
        (int part, int from, int to) = Find(sourced, index);
        ImmutableArray<FileLine> lines = LinesOf(sourced, part);
        while (from > 0 && lines[from - 1].IsRemark) from--;
        if (from > 0 && IsBlank(lines[from - 1]) && (to == lines.Length || IsBlank(lines[to]))) from--;
        return Put(sourced, part, [.. lines[..from], .. lines[to..]]) with { WhatIfs = sheet.WhatIfs.RemoveAt(index) };
    }

    private static WhatIfBlock Read(string[] texts)
    {
        BlockReader? reader = BlockReader.StartWhatIf(new LineText(texts[0], 0), Word.Length, out var fault);
        foreach (string text in texts.Skip(1)) fault ??= reader!.Take(new LineText(text, 0));
        return fault is null ? reader!.WhatIf! : throw new ArgumentException(fault.Sentence, nameof(texts));
    }

    private static Sheet Append(Sheet sheet, string[] texts, LineEnd newLine)
    {
        int last = sheet.Order.Count;
        ImmutableArray<FileLine> trailing = LinesOf(sheet, last);
        int at = Tables(sheet).Where(table => table.Part == last).Select(table => table.To).DefaultIfEmpty(0).Last();
        bool blank = at > 0 ? IsBlank(trailing[at - 1]) : last == 0 && LinesOf(sheet, Opening) is [.., var above] && IsBlank(above);
        IEnumerable<string> before = blank ? [] : [""], after = at < trailing.Length && !IsBlank(trailing[at]) ? [""] : [];
        return Put(sheet, last, trailing.InsertRange(at, before.Concat(texts).Concat(after).Select(text => new FileLine(text, newLine))));
    }

    private static FileLine Head(FileLine old, string text) => Says(old) == text ? old : SheetText.Replace(old, text);

    /// <summary>What a line says without the blanks around it and its remark.</summary>
    private static string Says(FileLine line) => line.Text[..LineScan.Of(line.Text, 0).Remark].Trim();

    private static (int Part, int From, int To) Find(Sheet sheet, int index) => Tables(sheet).ElementAt(index);

    /// <summary>Where the lines of each readable table stand, in order.</summary>
    private static IEnumerable<(int Part, int From, int To)> Tables(Sheet sheet)
    {
        for (int part = Opening; part <= sheet.Order.Count; part++)
        {
            ImmutableArray<FileLine> lines = LinesOf(sheet, part);
            int end = part == sheet.Order.Count ? lines.Length - SheetText.UnreadSheets(sheet).Length : lines.Length;
            for (int i = 0; i < end;)
            {
                int to = EndOfBlock(lines, i, end);
                if (IsTable(lines[i])) yield return (part, i, to);
                i = to;
            }
        }
    }

    /// <summary>Behind a line and, where it begins a block, behind the indented lines after it.</summary>
    private static int EndOfBlock(ImmutableArray<FileLine> lines, int at, int end)
    {
        int to = at + 1;
        if (!IsTable(lines[at]) && !BeginsOther(lines[at].Text)) return to;
        while (to < end && lines[to].Text.Length > 0 && Blank.Is(lines[to].Text[0]) && !IsBlank(lines[to])) to++;
        return to;
    }

    private static bool IsTable(FileLine file)
    {
        LineText line = new(file.Text, 0);
        int start = line.SkipBlanks(0, file.Text.Length), end = line.WordEnd(start, file.Text.Length);
        return line.Span(start, end).SequenceEqual(Word) && BlockReader.StartWhatIf(line, end, out _) is not null;
    }

    /// <summary>True for the other lines that take indented ones.</summary>
    private static bool BeginsOther(string text)
    {
        string[] words = text.Split([' ', '\t'], 3, StringSplitOptions.RemoveEmptyEntries);
        return words is ["plot" or "reviewed" or "correlate", ..] or [_, "conflict"];
    }

    private static bool IsBlank(FileLine line) => line.Text.All(Blank.Is);

    private static ImmutableArray<FileLine> LinesOf(Sheet sheet, int part)
    {
        if (part == Opening) return sheet.Source.Value!.Opening;
        return part == sheet.Order.Count ? sheet.Source.Value!.Trailing : sheet.Cells[sheet.Order[part]].Source.Value?.Leading ?? [];
    }

    private static Sheet Put(Sheet sheet, int part, ImmutableArray<FileLine> lines)
    {
        SheetSource source = sheet.Source.Value!;
        if (part == Opening) return sheet with { Source = new(source with { Opening = lines }) };
        if (part == sheet.Order.Count) return sheet with { Source = new(source with { Trailing = lines }) };
        Cell cell = sheet.Cells[sheet.Order[part]];
        return SheetEditing.Set(sheet, cell, cell with { Source = new(cell.Source.Value!.With(lines)) });
    }
}
