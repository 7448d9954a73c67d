using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Comparing;

/// <summary>Rows that moved together.</summary>
/// <param name="Sheet">The sheet, as the later version calls it.</param>
/// <param name="First">The first of them before, from 1.</param>
/// <param name="Last">The last of them before.</param>
/// <param name="Down">How many rows downward; negative for upward.</param>
public sealed record MovedRows(string Sheet, int First, int Last, int Down);

/// <summary>
/// Which row of one version of a sheet became which of another. Rows behind the last one that was found again are paired by place, with empty ones where either has no more:
/// an insertion moves everything below it, a row added at the end moves nothing.
/// </summary>
internal sealed class RowMap
{
    private readonly int[] forward, backward;

    private RowMap(int[] partner, int otherLength)
    {
        int last = Array.FindLastIndex(partner, to => to >= 0), lastThere = last < 0 ? -1 : partner[last];
        int tail = Math.Max(partner.Length - last, otherLength - lastThere) - 1;
        forward = [.. partner[..(last + 1)], .. Enumerable.Range(lastThere + 1, tail)];
        backward = new int[lastThere + 1 + tail];
        Array.Fill(backward, -1);
        for (int i = 0; i < forward.Length; i++)
        {
            if (forward[i] >= 0) backward[forward[i]] = i;
        }
        IsIdentity = forward.Length == backward.Length && !forward.Where((to, i) => to != i).Any();
    }

    /// <summary>True where every row stays.</summary>
    public bool IsIdentity { get; }

    /// <summary>The rows of the one, from 1, that it says something about.</summary>
    public int Rows => forward.Length;

    /// <summary>Of two versions of a sheet, either of which may be missing.</summary>
    public static RowMap Of(Sheet? one, Sheet? other)
    {
        RowKeys mine = new(one), theirs = new(other);
        SequenceAlignment alignment = new(mine.Keys(mine.Count), theirs.Keys(theirs.Count), (isOne, i) => (isOne ? mine : theirs).Words(i));
        return new RowMap(alignment.Run(), theirs.Count);
    }

    /// <summary>Where a row of the one stands in the other, both from 1; null where it is gone.</summary>
    public int? Forward(int row) => Through(forward, backward, row);

    /// <summary>Where a row of the other stood in the one; null where it is new.</summary>
    public int? Backward(int row) => Through(backward, forward, row);

    /// <summary>Rows that hold something and moved, those that moved together in one.</summary>
    public IEnumerable<MovedRows> Moves(string sheet, IEnumerable<int> occupied)
    {
        MovedRows? moving = null;
        foreach (int row in occupied.Distinct().Order())
        {
            int down = (Forward(row) ?? row) - row;
            if (moving is not null && moving.Down == down) moving = moving with { Last = row };
            else
            {
                if (moving is { Down: not 0 }) yield return moving;
                moving = new MovedRows(sheet, row, row, down);
            }
        }
        if (moving is { Down: not 0 }) yield return moving;
    }

    private static int? Through(int[] map, int[] back, int row)
    {
        if (row > map.Length) return row - map.Length + back.Length;
        return row >= 1 && map[row - 1] >= 0 ? map[row - 1] + 1 : null;
    }
}
