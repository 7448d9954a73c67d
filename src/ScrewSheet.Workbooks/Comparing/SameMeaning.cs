using System.Collections.Immutable;
using ScrewSheet.Workbooks.Editing;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Comparing;

/// <summary>Tells whether an expression says in one version what another says in another: the same text but for references, and references that lead to the same cells.</summary>
internal sealed class SameMeaning(WorkbookPairs pairs)
{
    /// <summary>True where they say the same.</summary>
    public bool Of(string before, string beforeSheet, string after, string afterSheet)
    {
        bool same = before == after;
        if (pairs.IsPlain) return same;
        if (same && !pairs.HasRenamed && !TextKey.HasAddress(before)) return true;
        ImmutableArray<WrittenReference> mine = In(before, pairs.Before), theirs = In(after, pairs.After);
        if (mine.Length != theirs.Length) return false;
        (int at, int other) = (0, 0);
        for (int i = 0; i < mine.Length; i++)
        {
            bool alike = before.AsSpan(at, mine[i].Start - at).SequenceEqual(after.AsSpan(other, theirs[i].Start - other)) && Lead(before, mine[i], beforeSheet, after, theirs[i], afterSheet);
            if (!alike) return false;
            (at, other) = (mine[i].Start + mine[i].Length, theirs[i].Start + theirs[i].Length);
        }
        return before.AsSpan(at).SequenceEqual(after.AsSpan(other));
    }

    private static ImmutableArray<WrittenReference> In(string expression, Workbook workbook) => WrittenReferences.In(expression, name => workbook.Find(name) is not null);

    private bool Lead(string before, WrittenReference mine, string beforeSheet, string after, WrittenReference theirs, string afterSheet)
    {
        CellId? from = mine.Target(pairs.Before, beforeSheet), to = theirs.Target(pairs.After, afterSheet);
        if (from is { } early && to is { } late) return pairs.Forward(early) == late;
        return from is null && to is null && before.AsSpan(mine.Start, mine.Length).SequenceEqual(after.AsSpan(theirs.Start, theirs.Length));
    }
}
