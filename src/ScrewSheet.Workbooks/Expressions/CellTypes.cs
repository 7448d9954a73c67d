using System.Collections;
using System.Collections.Immutable;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>Several types in order, compared one by one.</summary>
public readonly struct CellTypes : IEquatable<CellTypes>, IReadOnlyList<CellType>
{
    private readonly ImmutableArray<CellType> types;

    /// <summary>These types.</summary>
    public CellTypes(ImmutableArray<CellType> types) => this.types = types;

    private ImmutableArray<CellType> Types => types.IsDefault ? [] : types;

    /// <inheritdoc/>
    public int Count => Types.Length;

    /// <inheritdoc/>
    public CellType this[int index] => Types[index];

    /// <summary>The same types in the same order.</summary>
    public static bool operator ==(CellTypes left, CellTypes right) => left.Equals(right);

    /// <summary>Other types or another order.</summary>
    public static bool operator !=(CellTypes left, CellTypes right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(CellTypes other) => Types.SequenceEqual(other.Types);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CellTypes other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => Types.Aggregate(17, (hash, type) => unchecked((hash * 31) + type.GetHashCode()));

    /// <inheritdoc/>
    public IEnumerator<CellType> GetEnumerator() => ((IEnumerable<CellType>)Types).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
