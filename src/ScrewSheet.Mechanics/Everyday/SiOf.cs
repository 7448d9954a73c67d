using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Mechanics;

/// <summary>The way from a value of any kind to coherent SI and back, found once for each type.</summary>
/// <typeparam name="T"><see cref="double"/>, <see cref="Quantity"/> or a UnitsNet quantity of <see cref="QuantityKinds"/>.</typeparam>
internal static class SiOf<T> where T : struct
{
    private static readonly Func<T, double>? Reader = FindReader();
    private static readonly Func<double, T, T>? Maker = FindMaker();

    /// <summary>The finite value in coherent SI.</summary>
    public static double Read(T value, string parameter) =>
        Require.Finite(Reader is null ? throw Unknown(parameter) : Reader(value), parameter);

    /// <summary>A value in coherent SI, of the kind (and, for a <see cref="Quantity"/>, the dimension) of <paramref name="like"/>.</summary>
    public static T Make(double si, T like) =>
        Maker is null ? throw Unknown(null) : Maker(Require.Finite(si, "the result"), like);

    /// <summary>Refuses two values that cannot be compared or added.</summary>
    public static void RequireSameDimension(T a, T b, string parameter)
    {
        if (typeof(T) != typeof(Quantity)) return;
        Dimension first = ((Quantity)(object)a).Dimension, second = ((Quantity)(object)b).Dimension;
        if (first != second) throw new DomainException($"{parameter} is {Name(second)} and cannot be compared with {Name(first)}.", parameter);
    }

    /// <summary>Refuses temperatures where a length on a scale is meant: their zero is a convention.</summary>
    public static void RequireNoScale(string function, string parameter)
    {
        if (typeof(T) == typeof(UnitsNet.Temperature))
            throw new DomainException($"{function} is not for temperatures, whose zero depends on the scale: use a temperature difference in K.", parameter);
    }

    private static string Name(Dimension dimension) => dimension.IsNone ? "a pure number" : $"a value in {dimension}";

    private static DomainException Unknown(string? parameter) => new($"A {typeof(T).Name} is neither a number nor a quantity.", parameter);

    private static Func<T, double>? FindReader()
    {
        if (typeof(T) == typeof(double)) return (Func<T, double>)(object)(Func<double, double>)(value => value);
        if (typeof(T) == typeof(Quantity)) return (Func<T, double>)(object)(Func<Quantity, double>)(value => value.Si);
        return QuantityKinds.ByType(typeof(T)) is { } kind ? Read(kind) : null;
    }

    private static Func<double, T, T>? FindMaker()
    {
        if (typeof(T) == typeof(double)) return (Func<double, T, T>)(object)(Func<double, double, double>)((si, _) => si);
        if (typeof(T) == typeof(Quantity)) return (Func<double, T, T>)(object)(Func<double, Quantity, Quantity>)((si, like) => Quantity.FromSi(si, like.Dimension));
        return QuantityKinds.ByType(typeof(T)) is { } kind ? Make(kind) : null;
    }

    // QuantityKind<T> asks for an IQuantity, which a struct of unknown type cannot promise: its typed methods are found by name, once.
    private static Func<T, double> Read(QuantityKind kind) => kind.GetType().GetMethod("Si")!.CreateDelegate<Func<T, double>>(kind);

    private static Func<double, T, T> Make(QuantityKind kind)
    {
        Func<double, T> make = kind.GetType().GetMethod("Make")!.CreateDelegate<Func<double, T>>(kind);
        return (si, _) => make(si);
    }
}
