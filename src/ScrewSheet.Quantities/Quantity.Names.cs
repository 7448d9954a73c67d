using UnitsNet;

namespace ScrewSheet.Quantities;

public readonly partial record struct Quantity
{
    /// <summary>From a UnitsNet quantity of any sort, named here or not.</summary>
    /// <exception cref="InvalidOperationException">A temperature (a point on a scale has no products), a logarithmic quantity, or one without a coherent SI unit.</exception>
    public static Quantity From(IQuantity value)
    {
        ArgumentNullException.ThrowIfNull(value);
        if (value is Temperature) throw new InvalidOperationException("A temperature has no products; the difference of two, in K, has.");
        if (QuantityKinds.ByType(value.GetType()) is { } kind) return Held(kind.ToSi(value), kind.Dimension);
        if (value.GetType().GetInterfaces().Any(face => face.Name.StartsWith("ILogarithmicQuantity", StringComparison.Ordinal)))
            throw new InvalidOperationException("A quantity on a logarithmic scale has no products.");
        return Held(CoherentValue(value), DimensionOf(value.QuantityInfo.BaseDimensions));
    }

    /// <summary>As the UnitsNet type <typeparamref name="T"/>.</summary>
    /// <exception cref="InvalidCastException">The dimension differs.</exception>
    public T To<T>() where T : struct, IQuantity
    {
        QuantityKind<T> kind = Named<T>.Kind ?? throw new InvalidCastException($"{typeof(T).Name} is no kind of quantity here.");
        return Dimension == kind.Dimension ? kind.Make(Si) : throw new InvalidCastException($"{Name(Dimension)} is not {kind.Phrase}.");
    }

    /// <summary>The plain number behind a ratio.</summary>
    /// <exception cref="InvalidCastException">The value has a dimension.</exception>
    public double ToNumber() => Dimension.IsNone ? Si : throw new InvalidCastException($"{Name(Dimension)} is not a number.");

    private static Quantity OfNamed<T>(T value) where T : struct, IQuantity => Held(Named<T>.Kind!.Si(value), Named<T>.Kind.Dimension);

    private static double CoherentValue(IQuantity value)
    {
        try
        {
            return (double)value.As(UnitsNet.UnitSystem.SI);
        }
        catch (ArgumentException) // what UnitsNet answers for the few quantities none of whose units is built of SI base units
        {
            throw new InvalidOperationException($"{value.QuantityInfo.Name} has no coherent SI unit.");
        }
    }

    private static Dimension DimensionOf(BaseDimensions powers) =>
        Dimension.Of(powers.Length, powers.Mass, powers.Time, powers.Current, powers.Temperature, powers.Amount, powers.LuminousIntensity);

    /// <summary>The kind of a UnitsNet type, found once.</summary>
    private static class Named<T> where T : struct, IQuantity
    {
        public static readonly QuantityKind<T>? Kind = QuantityKinds.ByType(typeof(T)) as QuantityKind<T>;
    }
}
