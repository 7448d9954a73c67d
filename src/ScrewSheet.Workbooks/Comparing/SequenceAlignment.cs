namespace ScrewSheet.Workbooks.Comparing;

/// <summary>
/// Finds which element of one sequence became which of another. Equal elements at both ends go together; between them, those that occur once in either are held fast
/// as long as they stand in the same order, and so on between those. Where nothing is equal any more, elements that share a rare word go together; what is left is paired by place.
/// </summary>
/// <param name="one">A key for each element of the one; 0 for an empty element, which holds nothing fast.</param>
/// <param name="other">The same for the other.</param>
/// <param name="words">The words of an element: of the one where the first argument is true, else of the other.</param>
internal sealed class SequenceAlignment(ulong[] one, ulong[] other, Func<bool, int, IEnumerable<string>> words)
{
    private readonly int[] partner = new int[one.Length];
    private readonly Stack<Gap> gaps = new();

    private readonly record struct Gap(int Start, int End, int OtherStart, int OtherEnd)
    {
        public bool IsOneSided => Start >= End || OtherStart >= OtherEnd;
    }

    /// <summary>For each element of the one, the index in the other, or -1 where it is gone.</summary>
    public int[] Run()
    {
        Array.Fill(partner, -1);
        gaps.Push(new Gap(0, one.Length, 0, other.Length));
        while (gaps.TryPop(out Gap gap))
        {
            gap = Trimmed(gap);
            if (gap.IsOneSided) continue;
            List<(int, int)> fast = Increasing(Unique(gap, (isOne, i) => Key(isOne, i)));
            if (fast.Count == 0) fast = Increasing(Unique(gap, words));
            if (fast.Count == 0) Positional(gap);
            else Split(gap, fast);
        }
        return partner;
    }

    private IEnumerable<ulong> Key(bool isOne, int i)
    {
        ulong key = isOne ? one[i] : other[i];
        if (key != 0) yield return key;
    }

    private Gap Trimmed(Gap gap)
    {
        (int start, int end, int otherStart, int otherEnd) = gap;
        for (; start < end && otherStart < otherEnd && one[start] == other[otherStart]; start++, otherStart++) partner[start] = otherStart;
        for (; start < end && otherStart < otherEnd && one[end - 1] == other[otherEnd - 1]; end--, otherEnd--) partner[end - 1] = otherEnd - 1;
        return new Gap(start, end, otherStart, otherEnd);
    }

    /// <summary>Pairs of elements that have something nothing else has in either part, in the order of the one.</summary>
    private static List<(int One, int Other)> Unique<T>(Gap gap, Func<bool, int, IEnumerable<T>> marks) where T : notnull
    {
        Dictionary<T, int> mine = Once(gap.Start, gap.End, i => marks(true, i)), theirs = Once(gap.OtherStart, gap.OtherEnd, i => marks(false, i));
        List<(int One, int Other)> pairs = [.. mine.Where(entry => entry.Value >= 0 && theirs.GetValueOrDefault(entry.Key, -1) >= 0).Select(entry => (entry.Value, theirs[entry.Key])).Distinct()];
        pairs.Sort();
        return pairs;
    }

    private static Dictionary<T, int> Once<T>(int start, int end, Func<int, IEnumerable<T>> marks) where T : notnull
    {
        Dictionary<T, int> places = [];
        for (int i = start; i < end; i++)
        {
            foreach (T mark in marks(i))
            {
                if (!places.TryAdd(mark, i) && places[mark] != i) places[mark] = -1;
            }
        }
        return places;
    }

    /// <summary>The longest run of pairs that stand in one order in both; each element is in one pair at most.</summary>
    private static List<(int One, int Other)> Increasing(List<(int One, int Other)> found)
    {
        List<(int One, int Other)> pairs = [.. found.DistinctBy(pair => pair.One)];
        List<int> tails = [];
        int[] before = new int[pairs.Count];
        for (int i = 0; i < pairs.Count; i++)
        {
            int low = 0, high = tails.Count;
            while (low < high)
            {
                int middle = (low + high) / 2;
                if (pairs[tails[middle]].Other < pairs[i].Other) low = middle + 1;
                else high = middle;
            }
            before[i] = low > 0 ? tails[low - 1] : -1;
            if (low == tails.Count) tails.Add(i);
            else tails[low] = i;
        }
        List<(int, int)> run = [];
        for (int i = tails.Count > 0 ? tails[^1] : -1; i >= 0; i = before[i]) run.Add(pairs[i]);
        run.Reverse();
        return run;
    }

    private void Split(Gap gap, List<(int One, int Other)> fast)
    {
        (int start, int otherStart) = (gap.Start, gap.OtherStart);
        foreach ((int mine, int theirs) in fast)
        {
            partner[mine] = theirs;
            gaps.Push(new Gap(start, mine, otherStart, theirs));
            (start, otherStart) = (mine + 1, theirs + 1);
        }
        gaps.Push(new Gap(start, gap.End, otherStart, gap.OtherEnd));
    }

    private void Positional(Gap gap)
    {
        for (int i = 0; gap.Start + i < gap.End && gap.OtherStart + i < gap.OtherEnd; i++) partner[gap.Start + i] = gap.OtherStart + i;
    }
}
