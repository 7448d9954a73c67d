using System.Collections;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>A set of varied givens by their places, one bit each: a cone may have half a million cells, and each knows on which it depends.</summary>
internal sealed class GivenSet : IEnumerable<int>
{
    private const int Bits = 64;

    private readonly ulong[] words;

    private GivenSet(ulong[] words) => this.words = words;

    /// <summary>One given alone.</summary>
    public static GivenSet Of(int given)
    {
        ulong[] words = new ulong[(given / Bits) + 1];
        words[^1] = 1UL << (given % Bits);
        return new GivenSet(words);
    }

    /// <summary>All that stand in one of the sets; the set itself where one holds all.</summary>
    public static GivenSet Union(IEnumerable<GivenSet> sets)
    {
        GivenSet? all = null;
        foreach (GivenSet set in sets) all = all is null ? set : all.With(set);
        return all ?? new GivenSet([]);
    }

    /// <summary>True for a given in the set.</summary>
    public bool Contains(int given) => given / Bits < words.Length && (words[given / Bits] & (1UL << (given % Bits))) != 0;

    /// <inheritdoc/>
    public IEnumerator<int> GetEnumerator() => Enumerable.Range(0, words.Length * Bits).Where(Contains).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private GivenSet With(GivenSet other)
    {
        if (ReferenceEquals(this, other) || Holds(other)) return this;
        if (other.Holds(this)) return other;
        ulong[] both = new ulong[Math.Max(words.Length, other.words.Length)];
        words.CopyTo(both, 0);
        for (int i = 0; i < other.words.Length; i++) both[i] |= other.words[i];
        return new GivenSet(both);
    }

    private bool Holds(GivenSet other)
    {
        for (int i = 0; i < other.words.Length; i++)
            if ((other.words[i] & ~(i < words.Length ? words[i] : 0)) != 0) return false;
        return true;
    }
}
