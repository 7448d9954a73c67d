using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using UnitsNet;

namespace ScrewSheet.Quantities;

public readonly partial record struct Quantity
{
    /// <summary>From a UnitsNet quantity of a kind in <see cref="QuantityKinds"/> or of one of the <see cref="UnnamedTypes"/>.</summary>
    /// <exception cref="InvalidOperationException">A temperature (a point on a scale has no products) or a type of neither list.</exception>
    public static Quantity From(IQuantity value)
    {
        ArgumentNullException.ThrowIfNull(value);
        if (value is Temperature) throw new InvalidOperationException("A temperature has no products; the difference of two, in K, has.");
        if (QuantityKinds.ByType(value.GetType()) is { } kind) return Held(kind.ToSi(value), kind.Dimension);
        return UnnamedTypes.TryFind(value.GetType(), out Dimension dimension)
            ? Held(UnnamedTypes.ToSi(value), dimension)
            : throw new InvalidOperationException($"{value.QuantityInfo.Name} is no kind of quantity here.");
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

    /// <summary>The value in coherent SI, in every culture alike: <c>0.5 N/m^0.5</c>.</summary>
    public override string ToString() => $"{NumberText.Exact(Si)} {DisplayUnits.Coherent(Dimension).Symbol}".TrimEnd();

    private static Quantity OfNamed<T>(T value) where T : struct, IQuantity => Held(Named<T>.Kind!.Si(value), Named<T>.Kind.Dimension);

    /// <summary>The kind of a UnitsNet type, found once.</summary>
    private static class Named<T> where T : struct, IQuantity
    {
        public static readonly QuantityKind<T>? Kind = QuantityKinds.ByType(typeof(T)) as QuantityKind<T>;
    }
}
