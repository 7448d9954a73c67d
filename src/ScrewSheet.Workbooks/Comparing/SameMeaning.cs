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
        if (pairs.IsPlain) return before == after;
        if (!pairs.HasRenamed && AtSight(before, beforeSheet, after, afterSheet) is { } seen) return seen;
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

    /// <summary>
    /// Compares two texts character by character and addresses by where they lead, which needs no tokens where no name changed: then a name that reads the same is the same.
    /// Null where a quote, or an address behind a point or before a bracket, asks for a closer look.
    /// </summary>
    private bool? AtSight(string before, string beforeSheet, string after, string afterSheet)
    {
        int at = 0, other = 0;
        while (at < before.Length && other < after.Length)
        {
            if (before[at] == '"' || after[other] == '"') return null;
            int end = TextKey.AddressEnd(before, at), otherEnd = TextKey.AddressEnd(after, other);
            if (end > at && otherEnd > other)
            {
                if (IsUnclear(before, at, end) || IsUnclear(after, other, otherEnd)) return null;
                bool read = CellAddress.TryParse(before.AsSpan(at, end - at), out CellAddress mine) & CellAddress.TryParse(after.AsSpan(other, otherEnd - other), out CellAddress theirs);
                if (!read) return null;
                if (pairs.Forward(new CellId(beforeSheet, mine)) != new CellId(afterSheet, theirs)) return false;
                (at, other) = (end, otherEnd);
            }
            else if (before[at++] != after[other++]) return false;
        }
        return at == before.Length && other == after.Length;
    }

    private static bool IsUnclear(string text, int start, int end) => (start > 0 && text[start - 1] == '.') || (end < text.Length && text[end] is '(' or '.' or ':');

    private static ImmutableArray<WrittenReference> In(string expression, Workbook workbook) => WrittenReferences.In(expression, name => workbook.Find(name) is not null);

    private bool Lead(string before, WrittenReference mine, string beforeSheet, string after, WrittenReference theirs, string afterSheet)
    {
        CellId? from = mine.Target(pairs.Before, beforeSheet), to = theirs.Target(pairs.After, afterSheet);
        if (from is { } early && to is { } late) return pairs.Forward(early) == late;
        return from is null && to is null && before.AsSpan(mine.Start, mine.Length).SequenceEqual(after.AsSpan(theirs.Start, theirs.Length));
    }
}
