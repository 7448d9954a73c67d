namespace ScrewSheet.Quantities.Declarations;

/// <summary>Marks a record whose marked members work in expressions; one with <c>init</c> members works with <c>with</c>.</summary>
/// <param name="meaning">What it is, in one line.</param>
[AttributeUsage(AttributeTargets.Class | AttributeTargets.Struct)]
public sealed class SheetRecordAttribute(string meaning) : Attribute
{
    /// <summary>What it is.</summary>
    public string Meaning { get; } = meaning;
}

/// <summary>
/// Marks a static class of ready values, written in a cell as <c>Materials.Steel4130</c> or, for a nested one, <c>Standards.En568.Radial</c>:
/// its marked static properties and its marked nested classes.
/// </summary>
/// <param name="meaning">What it holds, in one line.</param>
[AttributeUsage(AttributeTargets.Class)]
public sealed class SheetValuesAttribute(string meaning) : Attribute
{
    /// <summary>What it holds.</summary>
    public string Meaning { get; } = meaning;
}

/// <summary>Marks an enumeration whose values may be written in a cell.</summary>
/// <param name="meaning">What it chooses, in one line.</param>
[AttributeUsage(AttributeTargets.Enum)]
public sealed class SheetOptionAttribute(string meaning) : Attribute
{
    /// <summary>What it chooses.</summary>
    public string Meaning { get; } = meaning;
}

/// <summary>A member of a <see cref="SheetRecordAttribute"/> or <see cref="SheetValuesAttribute"/> type that a cell may read.</summary>
/// <param name="symbol">The trade's symbol, or empty.</param>
/// <param name="unit">Its unit, or empty for numbers, texts and records. Gives the dimension of a member of type <see cref="Quantity"/>.</param>
/// <param name="meaning">What it is.</param>
[AttributeUsage(AttributeTargets.Property)]
public sealed class MemberAttribute(string symbol, string unit, string meaning) : Attribute
{
    /// <summary>The trade's symbol.</summary>
    public string Symbol { get; } = symbol;

    /// <summary>Its unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>What it is.</summary>
    public string Meaning { get; } = meaning;
}

/// <summary>On a return value of type <see cref="Quantity"/>: the unit that gives its dimension.</summary>
/// <param name="unit">The unit's symbol.</param>
[AttributeUsage(AttributeTargets.ReturnValue)]
public sealed class InUnitAttribute(string unit) : Attribute
{
    /// <summary>The unit's symbol.</summary>
    public string Unit { get; } = unit;
}

/// <summary>A result that brings its own cautions, worked out while it was computed.</summary>
public interface ICautioned
{
    /// <summary>Plain sentences; empty when there is nothing to say.</summary>
    IReadOnlyList<string> Cautions { get; }
}
