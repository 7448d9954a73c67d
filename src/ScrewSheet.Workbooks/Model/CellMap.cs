using System.Collections;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace ScrewSheet.Workbooks.Model;

/// <summary>The cells of a sheet by address, unchangeable. What an edit gives shares all it leaves alone.</summary>
/// <remarks>
/// A sheet is read at once and then changed cell by cell. What was read stands in a table that nobody changes any more; what came
/// since stands in a tree over it, and is made into a table of its own when it has grown to half of it. A tree for everything costs a
/// quarter of the time a file takes to read.
/// </remarks>
public sealed class CellMap : IReadOnlyDictionary<CellAddress, Cell>
{
    private const int FewChanges = 64;

    private readonly Dictionary<CellAddress, Cell> read;
    // null for a cell that is gone
    private readonly ImmutableDictionary<CellAddress, Cell?> since;

    private CellMap(Dictionary<CellAddress, Cell> read, ImmutableDictionary<CellAddress, Cell?> since, int count)
    {
        (this.read, this.since) = (read, since);
        Count = count;
    }

    /// <summary>No cells.</summary>
    public static CellMap Empty { get; } = new([], ImmutableDictionary<CellAddress, Cell?>.Empty, 0);

    /// <inheritdoc/>
    public int Count { get; }

    /// <summary>True without cells.</summary>
    public bool IsEmpty => Count == 0;

    /// <inheritdoc/>
    public IEnumerable<CellAddress> Keys => this.Select(pair => pair.Key);

    /// <inheritdoc/>
    public IEnumerable<Cell> Values => this.Select(pair => pair.Value);

    /// <inheritdoc/>
    /// <exception cref="KeyNotFoundException">There is no cell.</exception>
    public Cell this[CellAddress key] => TryGetValue(key, out Cell? cell) ? cell : throw new KeyNotFoundException($"There is no cell {key}.");

    /// <summary>These cells.</summary>
    /// <exception cref="ArgumentException">Two have one address.</exception>
    public static CellMap Of(IEnumerable<Cell> cells) => Over(cells.ToDictionary(cell => cell.Address));

    /// <summary>These cells; the table is the map's from here on.</summary>
    internal static CellMap Over(Dictionary<CellAddress, Cell> cells) => new(cells, Empty.since, cells.Count);

    /// <summary>With that cell in its place.</summary>
    public CellMap With(Cell cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return Changed(cell.Address, cell, ContainsKey(cell.Address) ? Count : Count + 1);
    }

    /// <summary>With these cells in their places.</summary>
    public CellMap With(IEnumerable<Cell> cells)
    {
        Dictionary<CellAddress, Cell> changed = new(this);
        foreach (Cell cell in cells) changed[cell.Address] = cell;
        return Over(changed);
    }

    /// <summary>Without the cell there; the same where there is none.</summary>
    public CellMap Without(CellAddress address) => ContainsKey(address) ? Changed(address, null, Count - 1) : this;

    /// <inheritdoc/>
    public bool ContainsKey(CellAddress key) => TryGetValue(key, out _);

    /// <inheritdoc/>
    public bool TryGetValue(CellAddress key, [MaybeNullWhen(false)] out Cell value)
    {
        if (since.IsEmpty || !since.TryGetValue(key, out value)) return read.TryGetValue(key, out value);
        return value is not null;
    }

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<CellAddress, Cell>> GetEnumerator()
    {
        foreach ((CellAddress address, Cell cell) in read)
            if (since.IsEmpty || !since.ContainsKey(address)) yield return KeyValuePair.Create(address, cell);
        foreach ((CellAddress address, Cell? cell) in since)
            if (cell is not null) yield return KeyValuePair.Create(address, cell);
    }

    /// <inheritdoc/>
    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private CellMap Changed(CellAddress address, Cell? cell, int count)
    {
        // taken out first: the tree takes a cell that differs in its line alone for the same
        CellMap changed = new(read, since.Remove(address).Add(address, cell), count);
        return changed.since.Count <= Math.Max(FewChanges, read.Count / 2) ? changed : Over(new Dictionary<CellAddress, Cell>(changed));
    }
}
