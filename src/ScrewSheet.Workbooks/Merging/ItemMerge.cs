using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Merging;

/// <summary>Merges one part of a file in three versions.</summary>
/// <param name="newLine">How lines end that are written anew.</param>
internal sealed class ItemMerge(LineEnd newLine)
{
    /// <summary>A conflict that cannot be written because a version holds an older one in its place; null while there is none.</summary>
    public Fault? Refusal { get; private set; }

    /// <summary>The part as merged; null where it is gone.</summary>
    public MergeItem? Of(MergeItem? origin, MergeItem? ours, MergeItem? theirs)
    {
        MergeItem? lines = Lines(origin, ours, theirs);
        return lines is null ? null : lines with { Above = [.. Above(origin, ours, theirs).Select(line => line with { End = EndOf(line, origin, ours, theirs) })], Lines = Ends(lines, origin, ours, theirs) };
    }

    private MergeItem? Lines(MergeItem? origin, MergeItem? ours, MergeItem? theirs)
    {
        if (IsSame(ours, theirs) || IsSame(theirs, origin)) return Needed(ours, theirs);
        if (IsSame(ours, origin)) return Needed(theirs, ours);
        string key = (ours ?? theirs)!.Key;
        if (ours?.Address is not null || theirs?.Address is not null) return Cell(origin, ours, theirs);
        if (key == MergeItems.First) return ours;
        if (key == "made") return null;
        if (key.StartsWith("widths\n", StringComparison.Ordinal)) return Larger(ours, theirs);
        FileLine conflict = Conflict(null, Texts(ours), Texts(theirs));
        return key == MergeItems.SheetLine ? (origin ?? ours)! with { Lines = [(origin ?? ours)!.Lines[0], conflict] } : new MergeItem(key, [], [conflict]);
    }

    private static bool IsSame(MergeItem? one, MergeItem? other) => one is null ? other is null : other is not null && one.ReadsLike(other);

    /// <summary>The line of a sheet stays as long as anything of the sheet does.</summary>
    private static MergeItem? Needed(MergeItem? chosen, MergeItem? other) => chosen ?? (other?.Key == MergeItems.SheetLine ? other : null);

    /// <summary>How wide columns are drawn is nothing to disagree about: the same one of the two, whichever is called ours.</summary>
    private static MergeItem? Larger(MergeItem? ours, MergeItem? theirs) =>
        ours is null ? theirs : theirs is null || string.CompareOrdinal(ours.Lines[0].Text, theirs.Lines[0].Text) >= 0 ? ours : theirs;

    /// <summary>What the cell says is merged by itself, what was kept of it by itself: a result that two versions computed from different givens is neither's.</summary>
    private MergeItem? Cell(MergeItem? origin, MergeItem? ours, MergeItem? theirs)
    {
        KeptLine was = KeptLine.Of(origin), mine = KeptLine.Of(ours), other = KeptLine.Of(theirs);
        string? kept = mine.Kept == other.Kept || other.Kept == was.Kept ? mine.Kept : mine.Kept == was.Kept ? other.Kept : null;
        bool same = mine.Core == other.Core, oursStays = same || other.Core == was.Core;
        if (oursStays || mine.Core == was.Core)
        {
            (MergeItem? chosen, KeptLine line) = oursStays ? (ours, mine) : (theirs, other);
            return chosen is null ? null : chosen with { Lines = [chosen.Lines[0] with { Text = line.With(kept) }] };
        }
        CellAddress address = (ours ?? theirs)!.Address!.Value;
        if (mine.IsConflict || other.IsConflict) Refusal ??= MergeFaults.Unresolved(mine.IsConflict ? "Ours" : "Theirs", address.ToString());
        return new MergeItem((ours ?? theirs)!.Key, [], [Conflict(address, mine.Entry, other.Entry)], address);
    }

    private FileLine Conflict(CellAddress? address, IReadOnlyList<string> ours, IReadOnlyList<string> theirs) =>
        new(ConflictText.Write(address, ours, theirs, newLine == LineEnd.CrLf ? "\r\n" : "\n"), newLine);

    private static IReadOnlyList<string> Texts(MergeItem? item) => item is null ? [] : [.. item.Lines.Select(line => line.Text)];

    /// <summary>Remarks and marks: ours, without those they removed, with those they added.</summary>
    private static ImmutableArray<FileLine> Above(MergeItem? origin, MergeItem? ours, MergeItem? theirs)
    {
        HashSet<string> was = Set(origin), mine = Set(ours), other = Set(theirs);
        if (ours is null || theirs is null) return (ours ?? theirs)!.Above;
        if (mine.SetEquals(was)) return theirs.Above;
        return [.. ours.Above.Where(line => !was.Contains(line.Text) || other.Contains(line.Text)), .. theirs.Above.Where(line => !was.Contains(line.Text) && !mine.Contains(line.Text))];
    }

    private static LineEnd EndOf(FileLine line, MergeItem? origin, MergeItem? ours, MergeItem? theirs)
    {
        LineEnd? In(MergeItem? item) => item?.Above.Where(other => other.Text == line.Text).Select(other => (LineEnd?)other.End).FirstOrDefault();
        LineEnd? mine = In(ours);
        return (mine == In(origin) ? In(theirs) : mine) ?? line.End;
    }

    private static HashSet<string> Set(MergeItem? item) => item is null ? [] : [.. item.Above.Select(line => line.Text)];

    /// <summary>How the lines end: as in ours, unless only theirs changed it.</summary>
    private static ImmutableArray<FileLine> Ends(MergeItem merged, MergeItem? origin, MergeItem? ours, MergeItem? theirs)
    {
        LineEnd? was = origin?.Lines[^1].End, mine = ours?.Lines[^1].End, other = theirs?.Lines[^1].End;
        LineEnd end = (mine == was ? other : mine) ?? merged.Lines[^1].End;
        return merged.Lines[^1].End == end ? merged.Lines : merged.Lines.SetItem(merged.Lines.Length - 1, merged.Lines[^1] with { End = end });
    }
}
