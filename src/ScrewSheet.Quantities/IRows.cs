using System.Collections.Immutable;

namespace ScrewSheet.Quantities;

/// <summary>Values read one below the other, which know the rows they stand in, so that those of two columns of one sheet are never paired wrongly.</summary>
public interface IRows
{
    /// <summary>How many values there are.</summary>
    int Count { get; }

    /// <summary>The sheet's row of each value, from 1 and rising; empty where the values stand in no rows.</summary>
    ImmutableArray<int> Rows { get; }

    /// <summary>The values at those places, counted from 0, with their rows.</summary>
    /// <param name="places">The places, rising.</param>
    IRows Take(IReadOnlyList<int> places);
}

/// <summary>A run of texts, such as the failure modes of a batch.</summary>
/// <param name="texts">The texts in order.</param>
/// <param name="rows">The row of each, or none at all.</param>
public sealed class TextSeries(ImmutableArray<string> texts, ImmutableArray<int> rows) : IRows
{
    /// <summary>The texts in order.</summary>
    public ImmutableArray<string> Texts { get; } = texts;

    /// <inheritdoc/>
    public int Count => Texts.Length;

    /// <inheritdoc/>
    public ImmutableArray<int> Rows { get; } = rows;

    /// <inheritdoc/>
    public IRows Take(IReadOnlyList<int> places)
    {
        ArgumentNullException.ThrowIfNull(places);
        return new TextSeries([.. places.Select(place => Texts[place])], Rows.IsEmpty ? [] : [.. places.Select(place => Rows[place])]);
    }
}
