using ScrewSheet.Quantities;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>What sort of value an expression has, known before it is computed. A closed family, compared by value.</summary>
public abstract record CellType
{
    private protected CellType() { }

    /// <summary>A pure number.</summary>
    public static CellType Number { get; } = new NumberType();

    /// <summary>Holds or fails.</summary>
    public static CellType Truth { get; } = new TruthType();

    /// <summary>Words.</summary>
    public static CellType Text { get; } = new TextType();

    /// <summary>The type of a value of this dimension: a number for none, the default kind where there is one.</summary>
    public static CellType Of(Dimension dimension) =>
        dimension.IsNone ? Number : new QuantityType(dimension, QuantityKinds.DefaultOf(dimension));

    /// <summary>The type of values of this kind.</summary>
    public static CellType Of(QuantityKind kind) => new QuantityType(kind.Dimension, kind);

    /// <summary>How a sentence names one of it: <c>a force</c>, <c>a number</c>.</summary>
    public abstract string Phrase { get; }

    /// <summary>The name shown as its type: <c>Force</c>, <c>number</c>.</summary>
    public abstract string Name { get; }

    /// <inheritdoc/>
    public sealed override string ToString() => Name;
}

/// <summary>A pure number.</summary>
public sealed record NumberType : CellType
{
    /// <inheritdoc/>
    public override string Phrase => "a number";

    /// <inheritdoc/>
    public override string Name => "number";
}

/// <summary>Holds or fails.</summary>
public sealed record TruthType : CellType
{
    /// <inheritdoc/>
    public override string Phrase => "a yes-or-no value";

    /// <inheritdoc/>
    public override string Name => "bool";
}

/// <summary>Words.</summary>
public sealed record TextType : CellType
{
    /// <inheritdoc/>
    public override string Phrase => "a text";

    /// <inheritdoc/>
    public override string Name => "string";
}

/// <summary>A quantity. Held as a value in coherent SI.</summary>
/// <param name="Dimension">The powers of the base quantities.</param>
/// <param name="Kind">The named kind; null when the dimension has none, or when N·m or 1/s is undecided.</param>
public sealed record QuantityType(Dimension Dimension, QuantityKind? Kind) : CellType
{
    /// <inheritdoc/>
    public override string Phrase => Kind?.Phrase ?? (Dimension.IsNone ? "a number" : $"a quantity in {Dimension}");

    /// <inheritdoc/>
    public override string Name => Kind?.Name ?? "Quantity";
}

/// <summary>A run of values of one type.</summary>
/// <param name="Element">The type of each.</param>
public sealed record SeriesType(CellType Element) : CellType
{
    /// <inheritdoc/>
    public override string Phrase => $"a series of {Element.Name}";

    /// <inheritdoc/>
    public override string Name => $"Series<{Element.Name}>";
}

/// <summary>A library record.</summary>
/// <param name="Clr">The record's type; the open generic one when it holds values of the types <paramref name="Arguments"/>.</param>
/// <param name="Arguments">What the record's type parameters stand for, in order.</param>
public sealed record RecordType(Type Clr, CellTypes Arguments = default) : CellType
{
    /// <inheritdoc/>
    public override string Phrase => $"a {Name}";

    /// <inheritdoc/>
    public override string Name => Clr.Name.Split('`')[0];
}

/// <summary>A choice among a library enumeration's values.</summary>
/// <param name="Clr">The enumeration.</param>
public sealed record OptionType(Type Clr) : CellType
{
    /// <inheritdoc/>
    public override string Phrase => $"a {Clr.Name}";

    /// <inheritdoc/>
    public override string Name => Clr.Name;
}

/// <summary>A lambda handed to a library function; never the type of a cell.</summary>
/// <param name="Result">What its body gives.</param>
public sealed record LambdaType(CellType Result) : CellType
{
    /// <inheritdoc/>
    public override string Phrase => "a lambda";

    /// <inheritdoc/>
    public override string Name => "lambda";
}
