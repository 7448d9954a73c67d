using System.Collections.Immutable;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Merging;

/// <summary>A part of a file that is merged as one: a cell with the remarks and marks directly above it, a line of the head, a function, a what-if table, any other line.</summary>
/// <param name="Key">What makes it the same thing in every version.</param>
/// <param name="Above">Remarks and marks that belong to it.</param>
/// <param name="Lines">Its own lines.</param>
/// <param name="Address">Of a cell; else null.</param>
internal sealed record MergeItem(string Key, ImmutableArray<FileLine> Above, ImmutableArray<FileLine> Lines, CellAddress? Address = null)
{
    /// <summary>True where the own lines read the same.</summary>
    public bool ReadsLike(MergeItem other) => Lines.Length == other.Lines.Length && Lines.Zip(other.Lines).All(pair => pair.First.Text == pair.Second.Text);
}

/// <summary>Takes the lines of a workbook apart.</summary>
internal static class MergeItems
{
    /// <summary>The keys of the lines that every file, and every sheet, has.</summary>
    public const string First = "first", SheetLine = "sheet";

    private const string CellKey = "cell ";

    /// <summary>The address in the key of a cell; null for anything else.</summary>
    public static CellAddress? AddressIn(string key) => key.StartsWith(CellKey, StringComparison.Ordinal) && CellAddress.TryParse(key.AsSpan(CellKey.Length), out CellAddress address) ? address : null;

    /// <summary>The head.</summary>
    public static List<MergeItem> OfHead(Workbook workbook)
    {
        List<MergeItem> items = [];
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        foreach (HeadLine line in HeadText.Current(workbook).HeadLines)
        {
            string key = items.Count == 0 ? First : line.Function is { } function ? $"function {function.Name}" : line.Word.Length > 0 ? line.Word : Nth(seen, line.Line.Text);
            items.Add(new MergeItem(key, [], [line.Line]));
        }
        return items;
    }

    /// <summary>A sheet; nothing where it is missing.</summary>
    public static List<MergeItem> OfSheet(Sheet? sheet, LineEnd newLine)
    {
        if (sheet is null) return [];
        SheetSource source = SheetText.Current(sheet, newLine);
        List<MergeItem> items = [];
        Dictionary<string, int> seen = new(StringComparer.Ordinal);
        AddLines(items, seen, source.Opening);
        foreach (Cell cell in sheet.CellsInOrder)
        {
            ImmutableArray<FileLine> leading = cell.Source.Value?.Leading ?? [];
            int from = SheetEditing.RemarksFrom(leading);
            AddLines(items, seen, leading[..from]);
            FileLine line = cell.Source.Value is { } own && own.Says(cell) ? own.Line : new FileLine(CellTextWriter.Line(cell), cell.Source.Value?.Line.End ?? newLine);
            items.Add(new MergeItem($"{CellKey}{cell.Address}", leading[from..], [line], cell.Address));
        }
        AddLines(items, seen, source.Trailing);
        return items;
    }

    private static void AddLines(List<MergeItem> items, Dictionary<string, int> seen, ImmutableArray<FileLine> lines)
    {
        for (int i = 0; i < lines.Length;)
        {
            int end = i + 1;
            string[] words = lines[i].Text.Split([' ', '\t'], 3, StringSplitOptions.RemoveEmptyEntries);
            bool isTable = words is ["what-if", _, ..];
            while (isTable && end < lines.Length && lines[end].Text.Length > 0 && Blank.Is(lines[end].Text[0]) && !string.IsNullOrWhiteSpace(lines[end].Text)) end++;
            string key = words switch
            {
                ["sheet", ..] when items.Count == 0 || items.TrueForAll(item => item.Key != SheetLine) => SheetLine,
                ["what-if" or "column", var what, ..] => Nth(seen, $"{words[0]} {what}"),
                ["widths", ..] => Nth(seen, "widths"),
                _ => Nth(seen, lines[i].Text),
            };
            items.Add(new MergeItem(key, [], lines[i..end]));
            i = end;
        }
    }

    /// <summary>Lines that read the same are told apart by their number.</summary>
    private static string Nth(Dictionary<string, int> seen, string text)
    {
        int number = seen.GetValueOrDefault(text) + 1;
        seen[text] = number;
        return $"{text}\n{number.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
    }
}
