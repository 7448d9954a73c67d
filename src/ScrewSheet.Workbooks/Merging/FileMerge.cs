using System.Text;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Merging;

/// <summary>Merges three versions whose rows speak of the same.</summary>
internal sealed class FileMerge
{
    private readonly Workbook origin, ours, theirs;
    private readonly LineEnd newLine;
    private readonly ItemMerge items;
    private readonly StringBuilder text = new();
    private bool open;

    public FileMerge(Workbook origin, Workbook ours, Workbook theirs)
    {
        (this.origin, this.ours, this.theirs) = (origin, ours, theirs);
        newLine = EndOf(ours) == EndOf(origin) ? EndOf(theirs) : EndOf(ours);
        items = new ItemMerge(newLine);
    }

    /// <summary>Why they cannot be merged, known once the text is made; or null.</summary>
    public Fault? Refusal => items.Refusal;

    /// <summary>The merged file.</summary>
    public string Text()
    {
        bool mark = HasMark(ours) == HasMark(origin) ? HasMark(theirs) : HasMark(ours);
        if (mark) text.Append('\uFEFF');
        Add(MergeItems.OfHead(origin), MergeItems.OfHead(ours), MergeItems.OfHead(theirs));
        foreach (string name in ItemOrder.Of(Names(origin), Names(ours), Names(theirs), _ => true))
        {
            List<MergeItem> was = Items(origin, name), mine = Items(ours, name), other = Items(theirs, name);
            if (!IsGone(was, mine, other) && !IsGone(was, other, mine)) Add(was, mine, other);
        }
        return text.ToString();
    }

    private static LineEnd EndOf(Workbook workbook) => workbook.Source.Value?.NewLine ?? LineEnd.Lf;

    private static bool HasMark(Workbook workbook) => workbook.Source.Value?.HasMark == true;

    private static string[] Names(Workbook workbook) => [.. workbook.Sheets.Select(sheet => sheet.Name)];

    private List<MergeItem> Items(Workbook workbook, string sheet) => MergeItems.OfSheet(workbook.Find(sheet), newLine);

    /// <summary>One version has removed the sheet and the other, if it has it at all, left it as it was.</summary>
    private static bool IsGone(List<MergeItem> was, List<MergeItem> one, List<MergeItem> other) =>
        one.Count == 0 && (other.Count == 0 || (was.Count == other.Count && was.Zip(other).All(pair => pair.First.Key == pair.Second.Key && pair.First.ReadsLike(pair.Second))));

    private void Add(List<MergeItem> was, List<MergeItem> mine, List<MergeItem> other)
    {
        Dictionary<string, MergeItem> before = ByKey(was), here = ByKey(mine), there = ByKey(other), merged = new(StringComparer.Ordinal);
        foreach (string key in before.Keys.Concat(here.Keys).Concat(there.Keys).Distinct())
        {
            if (items.Of(before.GetValueOrDefault(key), here.GetValueOrDefault(key), there.GetValueOrDefault(key)) is { } item) merged.Add(key, item);
        }
        foreach (string key in ItemOrder.Of(Keys(was), Keys(mine), Keys(other), merged.ContainsKey))
        {
            foreach (FileLine line in merged[key].Above) Add(line);
            foreach (FileLine line in merged[key].Lines) Add(line);
        }
    }

    private static Dictionary<string, MergeItem> ByKey(List<MergeItem> items) => items.ToDictionary(item => item.Key, StringComparer.Ordinal);

    private static string[] Keys(List<MergeItem> items) => [.. items.Select(item => item.Key)];

    /// <summary>A line without an end that is no longer the last one gets one.</summary>
    private void Add(FileLine line)
    {
        if (open) text.Append(newLine == LineEnd.CrLf ? "\r\n" : "\n");
        text.Append(line.Text);
        open = line.End == LineEnd.None;
        if (!open) text.Append(line.End == LineEnd.CrLf ? "\r\n" : "\n");
    }
}
