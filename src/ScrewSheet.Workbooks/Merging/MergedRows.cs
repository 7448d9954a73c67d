using ScrewSheet.Workbooks.Comparing;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Merging;

/// <summary>
/// Rows of a sheet in which three versions have room: each row of the base, and in their places the rows that either version inserted.
/// Rows that both inserted alike are one.
/// </summary>
internal sealed class MergedRows
{
    private readonly Dictionary<int, int> ofBase = [], ofOurs = [], ofTheirs = [];
    private readonly RowMap ours, theirs;
    private readonly ulong[] ourKeys, theirKeys;
    private readonly int rows, ourRows, theirRows;
    private int count;

    private MergedRows(Sheet? origin, Sheet? ourSheet, Sheet? theirSheet)
    {
        (ours, theirs) = (RowMap.Of(origin, ourSheet), RowMap.Of(origin, theirSheet));
        rows = Math.Max(ours.Rows, theirs.Rows);
        (ourRows, theirRows) = (ours.Forward(rows) ?? 0, theirs.Forward(rows) ?? 0);
        (ourKeys, theirKeys) = (KeysOf(ourSheet, ourRows), KeysOf(theirSheet, theirRows));
        IsIdentity = ours.IsIdentity && theirs.IsIdentity;
    }

    /// <summary>True where no version inserted or removed a row.</summary>
    public bool IsIdentity { get; }

    /// <summary>Rows of the base that one of the versions has removed.</summary>
    public HashSet<int> Removed { get; } = [];

    /// <summary>Lays out the rows of a sheet; a version that lacks the sheet keeps those of the base.</summary>
    public static MergedRows Of(Sheet origin, Sheet? ours, Sheet? theirs)
    {
        MergedRows merged = new(origin, ours ?? origin, theirs ?? origin);
        if (!merged.IsIdentity) merged.LayOut();
        return merged;
    }

    /// <summary>The merged row of a row of the base.</summary>
    public int OfBase(int row) => Of(ofBase, row, rows);

    /// <summary>The merged row of a row of ours.</summary>
    public int OfOurs(int row) => Of(ofOurs, row, ourRows);

    /// <summary>The merged row of a row of theirs.</summary>
    public int OfTheirs(int row) => Of(ofTheirs, row, theirRows);

    private static ulong[] KeysOf(Sheet? sheet, int rows)
    {
        RowKeys keys = new(sheet);
        return keys.Keys(Math.Max(rows, keys.Count));
    }

    private int Of(Dictionary<int, int> map, int row, int length) => IsIdentity ? row : map.TryGetValue(row, out int merged) ? merged : row - length + count;

    private void LayOut()
    {
        ILookup<int, int> mine = Inserted(ours, ourRows), other = Inserted(theirs, theirRows);
        for (int row = 1; row <= rows + 1; row++)
        {
            Insert([.. mine[row]], [.. other[row]]);
            if (row > rows) break;
            count++;
            ofBase.Add(row, count);
            Keep(ours, ofOurs, row);
            Keep(theirs, ofTheirs, row);
        }
    }

    private void Keep(RowMap map, Dictionary<int, int> rowsOf, int row)
    {
        if (map.Forward(row) is { } there) rowsOf.Add(there, count);
        else Removed.Add(count);
    }

    /// <summary>The rows a version inserted, by the row of the base they stand before.</summary>
    private static ILookup<int, int> Inserted(RowMap map, int length)
    {
        List<(int Before, int Row)> inserted = [];
        int after = 0;
        for (int row = 1; row <= length; row++)
        {
            if (map.Backward(row) is { } origin) after = origin;
            else inserted.Add((after + 1, row));
        }
        return inserted.ToLookup(pair => pair.Before, pair => pair.Row);
    }

    private void Insert(int[] mine, int[] other)
    {
        int alike = 0;
        for (; alike < mine.Length && alike < other.Length && ourKeys[mine[alike] - 1] == theirKeys[other[alike] - 1]; alike++)
        {
            count++;
            ofOurs.Add(mine[alike], count);
            ofTheirs.Add(other[alike], count);
        }
        bool first = alike >= mine.Length || alike >= other.Length || ourKeys[mine[alike] - 1] < theirKeys[other[alike] - 1];
        if (first) Append(ofOurs, mine[alike..]);
        Append(ofTheirs, other[alike..]);
        if (!first) Append(ofOurs, mine[alike..]);
    }

    private void Append(Dictionary<int, int> map, int[] inserted)
    {
        foreach (int row in inserted) map.Add(row, ++count);
    }
}
