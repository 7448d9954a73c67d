using System.Collections;
using System.Diagnostics.CodeAnalysis;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Workbooks.Results;

/// <summary>One result for each cell, unchangeable. The next calculation's results share what did not change.</summary>
/// <remarks>Results stand in pieces of an array, found by an index that calculations share as long as no cell is added: a change copies the pieces it touches.</remarks>
public sealed class CellResults : IReadOnlyDictionary<CellId, CellResult>
{
    private const int PieceBits = 8, PieceSize = 1 << PieceBits, Within = PieceSize - 1;

    private readonly Dictionary<CellId, int> index;
    private readonly CellResult?[][] pieces;

    private CellResults(Dictionary<CellId, int> index, CellResult?[][] pieces, int count)
    {
        (this.index, this.pieces) = (index, pieces);
        Count = count;
    }

    /// <summary>No results.</summary>
    public static CellResults Empty { get; } = new([], [], 0);

    /// <inheritdoc/>
    public int Count { get; }

    /// <inheritdoc/>
    public IEnumerable<CellId> Keys => Values.Select(result => result.Id);

    /// <inheritdoc/>
    public IEnumerable<CellResult> Values => pieces.SelectMany(piece => piece).OfType<CellResult>();

    /// <summary>The result of a cell.</summary>
    /// <exception cref="KeyNotFoundException">There is none.</exception>
    public CellResult this[CellId key] => TryGetValue(key, out CellResult? result) ? result : throw new KeyNotFoundException($"{key} has no result.");

    /// <summary>These results, found by the cell each is of; of two for one cell, the later.</summary>
    public static CellResults Of(IEnumerable<CellResult> results) => Empty.With(results);

    /// <summary>The same with these in place of others or besides.</summary>
    public CellResults With(IEnumerable<CellResult> results)
    {
        Builder builder = new(this);
        foreach (CellResult result in results) builder.Set(result);
        return builder.Build();
    }

    /// <inheritdoc/>
    public bool ContainsKey(CellId key) => TryGetValue(key, out _);

    /// <inheritdoc/>
    public bool TryGetValue(CellId key, [MaybeNullWhen(false)] out CellResult value)
    {
        value = index.TryGetValue(key, out int at) && at >> PieceBits < pieces.Length ? pieces[at >> PieceBits][at & Within] : null;
        return value is not null;
    }

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<CellId, CellResult>> GetEnumerator() => Values.Select(result => KeyValuePair.Create(result.Id, result)).GetEnumerator();

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Results in the making. What was built before is never touched again.</summary>
    public sealed class Builder
    {
        private Dictionary<CellId, int> index;
        private readonly List<CellResult?[]> pieces;
        private readonly List<bool> isOwn;
        private bool ownIndex;
        private int count, places;

        /// <summary>From nothing.</summary>
        public Builder() : this(Empty) { }

        /// <summary>From earlier results.</summary>
        public Builder(CellResults from)
        {
            index = from.index;
            pieces = [.. from.pieces];
            isOwn = [.. from.pieces.Select(_ => false)];
            (count, places) = (from.Count, from.index.Count);
        }

        /// <summary>Makes room for that many cells, so that none of it is moved while they come.</summary>
        public void MakeRoom(int cells)
        {
            if (!ownIndex) (index, ownIndex) = (new Dictionary<CellId, int>(index), true);
            index.EnsureCapacity(cells);
        }

        /// <summary>Puts a result in the place of its cell.</summary>
        public void Set(CellResult result)
        {
            if (!index.TryGetValue(result.Id, out int at))
            {
                if (!ownIndex) (index, ownIndex) = (new Dictionary<CellId, int>(index), true);
                index.Add(result.Id, at = places++);
            }
            CellResult?[] piece = Own(at >> PieceBits);
            if (piece[at & Within] is null) count++;
            piece[at & Within] = result;
        }

        /// <summary>Takes a cell's result away, if there is one.</summary>
        public void Remove(CellId id)
        {
            if (!index.TryGetValue(id, out int at) || at >> PieceBits >= pieces.Count || pieces[at >> PieceBits][at & Within] is null) return;
            Own(at >> PieceBits)[at & Within] = null;
            count--;
        }

        /// <summary>The results as they are now.</summary>
        public CellResults Build()
        {
            if (places > 2 * count + PieceSize) Tidy();
            for (int i = 0; i < isOwn.Count; i++) isOwn[i] = false;
            ownIndex = false;
            return new CellResults(index, [.. pieces], count);
        }

        /// <summary>Leaves out the places of cells that are gone.</summary>
        private void Tidy()
        {
            CellResult[] kept = [.. pieces.SelectMany(piece => piece).OfType<CellResult>()];
            pieces.Clear();
            isOwn.Clear();
            (index, ownIndex, count, places) = ([], true, 0, 0);
            foreach (CellResult result in kept) Set(result);
        }

        private CellResult?[] Own(int piece)
        {
            while (pieces.Count <= piece)
            {
                pieces.Add(new CellResult?[PieceSize]);
                isOwn.Add(true);
            }
            if (!isOwn[piece]) (pieces[piece], isOwn[piece]) = ((CellResult?[])pieces[piece].Clone(), true);
            return pieces[piece];
        }
    }
}
