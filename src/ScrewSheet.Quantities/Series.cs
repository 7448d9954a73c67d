using System.Collections.Immutable;

namespace ScrewSheet.Quantities;

/// <summary>A run of values of one kind, held in coherent SI; what a library function takes for test records and sampled curves.</summary>
public abstract class Series : IRows
{
    private protected Series(ImmutableArray<double> si, Dimension dimension, ImmutableArray<int> rows)
    {
        Si = si;
        Dimension = dimension;
        Rows = rows;
    }

    /// <summary>The values in coherent SI, in order; all finite.</summary>
    public ImmutableArray<double> Si { get; }

    /// <summary>The dimension of every value.</summary>
    public Dimension Dimension { get; }

    /// <summary>How many values there are.</summary>
    public int Count => Si.Length;

    /// <inheritdoc/>
    public ImmutableArray<int> Rows { get; }

    /// <summary>The same values, said to stand in those rows of a sheet, one for each value.</summary>
    /// <exception cref="ArgumentException">There are not as many rows as values.</exception>
    public Series InRows(ImmutableArray<int> rows) => rows.Length == Count ? Copy(Si, rows) : throw new ArgumentException("Each value stands in one row.", nameof(rows));

    /// <inheritdoc/>
    public IRows Take(IReadOnlyList<int> places)
    {
        ArgumentNullException.ThrowIfNull(places);
        return Copy([.. places.Select(place => Si[place])], Rows.IsEmpty ? [] : [.. places.Select(place => Rows[place])]);
    }

    private protected abstract Series Copy(ImmutableArray<double> si, ImmutableArray<int> rows);

    /// <summary>The type of one value: <see cref="double"/>, a UnitsNet quantity or <see cref="Quantity"/>.</summary>
    public abstract Type ElementType { get; }

    /// <summary>A series of pure numbers.</summary>
    public static Series<double> OfNumbers(IEnumerable<double> values) => new([.. values], Dimension.None, si => si);

    /// <summary>A series of a named kind of quantity, from values in coherent SI.</summary>
    /// <exception cref="ArgumentException"><typeparamref name="T"/> is no kind in <see cref="QuantityKinds"/>.</exception>
    public static Series<T> Of<T>(IEnumerable<double> si) where T : struct, UnitsNet.IQuantity
    {
        var kind = QuantityKinds.ByType(typeof(T)) as QuantityKind<T> ?? throw new ArgumentException($"{typeof(T).Name} is no kind of quantity here.");
        return new Series<T>([.. si], kind.Dimension, kind.Make);
    }

    /// <summary>A series of quantities without a name of their own, from values in coherent SI.</summary>
    public static Series<Quantity> Of(IEnumerable<double> si, Dimension dimension) => new([.. si], dimension, value => Quantity.FromSi(value, dimension));
}

/// <summary>A run of values of type <typeparamref name="T"/>.</summary>
/// <remarks>A series made from new values stands in no rows.</remarks>
/// <typeparam name="T"><see cref="double"/>, a UnitsNet quantity or <see cref="Quantity"/>.</typeparam>
public sealed class Series<T> : Series where T : struct
{
    private readonly Func<double, T> make;

    internal Series(ImmutableArray<double> si, Dimension dimension, Func<double, T> make) : this(si, dimension, make, []) { }

    private Series(ImmutableArray<double> si, Dimension dimension, Func<double, T> make, ImmutableArray<int> rows) : base(si, dimension, rows) => this.make = make;

    private protected override Series Copy(ImmutableArray<double> si, ImmutableArray<int> rows) => new Series<T>(si, Dimension, make, rows);

    /// <inheritdoc/>
    public override Type ElementType => typeof(T);

    /// <summary>The value at a place counted from 0.</summary>
    public T this[int index] => make(Si[index]);

    /// <summary>A value of this series' type from coherent SI: how a mean or a quantile gets its unit back.</summary>
    public T Make(double si) => make(si);

    /// <summary>A series of the same type with other values in coherent SI.</summary>
    public Series<T> With(IEnumerable<double> si) => new([.. si], Dimension, make);
}
