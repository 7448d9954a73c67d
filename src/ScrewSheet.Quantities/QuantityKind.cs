using UnitsNet;

namespace ScrewSheet.Quantities;

/// <summary>
/// A named sort of quantity: its trade name, its dimension, the UnitsNet type that holds it and the way from and to coherent SI.
/// </summary>
/// <remarks>Two kinds may share a dimension (torque and energy); <see cref="IsDefault"/> marks the one, if any, that a bare product of that dimension is read as.</remarks>
public abstract class QuantityKind
{
    private protected QuantityKind(string name, string phrase, Dimension dimension, string siSymbol, bool isDefault)
    {
        Name = name;
        Phrase = phrase;
        Dimension = dimension;
        SiSymbol = siSymbol;
        IsDefault = isDefault;
    }

    /// <summary>The type's name as it is written in a cell, such as <c>Force</c>.</summary>
    public string Name { get; }

    /// <summary>How a sentence names one of it: <c>a force</c>.</summary>
    public string Phrase { get; }

    /// <summary>The powers of the base quantities.</summary>
    public Dimension Dimension { get; }

    /// <summary>The symbol of the coherent SI unit, such as <c>N</c>.</summary>
    public string SiSymbol { get; }

    /// <summary>True where a product or quotient of this dimension is this kind without being told.</summary>
    public bool IsDefault { get; }

    /// <summary>The UnitsNet structure that holds it.</summary>
    public abstract Type ClrType { get; }

    /// <summary>A boxed quantity from its value in coherent SI.</summary>
    public abstract IQuantity FromSi(double si);

    /// <summary>The value in coherent SI of a boxed quantity of this kind.</summary>
    public abstract double ToSi(object quantity);

    /// <inheritdoc/>
    public override string ToString() => Name;
}

/// <summary>The kind held by <typeparamref name="T"/>, with unboxed ways from and to coherent SI.</summary>
/// <typeparam name="T">A UnitsNet quantity.</typeparam>
public sealed class QuantityKind<T> : QuantityKind where T : struct, IQuantity
{
    private readonly Func<double, T> make;
    private readonly Func<T, double> read;

    internal QuantityKind(string phrase, Dimension dimension, string siSymbol, Func<double, T> make, Func<T, double> read, bool isDefault)
        : base(typeof(T).Name, phrase, dimension, siSymbol, isDefault)
    {
        this.make = make;
        this.read = read;
    }

    /// <inheritdoc/>
    public override Type ClrType => typeof(T);

    /// <summary>A quantity from its value in coherent SI.</summary>
    public T Make(double si) => make(si);

    /// <summary>The value in coherent SI.</summary>
    public double Si(T quantity) => read(quantity);

    /// <inheritdoc/>
    public override IQuantity FromSi(double si) => make(si);

    /// <inheritdoc/>
    public override double ToSi(object quantity) => read((T)quantity);
}
