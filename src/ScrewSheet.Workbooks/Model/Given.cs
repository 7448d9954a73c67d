using ScrewSheet.Quantities.Units;

namespace ScrewSheet.Workbooks.Model;

/// <summary>A constant written out. A closed family.</summary>
public abstract record Literal
{
    private protected Literal() { }
}

/// <summary>A number with or without a unit.</summary>
/// <param name="Value">The number as written, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit, or null for a pure number.</param>
public sealed record NumberLiteral(double Value, Unit? Unit) : Literal
{
    /// <summary>In coherent SI.</summary>
    public double Si => Unit is null ? Value : Unit.ToSi(Value);
}

/// <summary><c>true</c> or <c>false</c>.</summary>
/// <param name="Value">Which.</param>
public sealed record TruthLiteral(bool Value) : Literal;

/// <summary>A text in quotes after <c>=</c>.</summary>
/// <param name="Value">The text, unescaped.</param>
public sealed record TextLiteral(string Value) : Literal;

/// <summary>What the number after ± means.</summary>
public enum ToleranceShape
{
    /// <summary>Normal; the half-width of a 95 % interval, k = 2, so u is half of it.</summary>
    Normal,

    /// <summary>Anything within the half-width equally likely; u is half-width / √3.</summary>
    Rectangular,

    /// <summary>Triangular over the half-width; u is half-width / √6.</summary>
    Triangular,

    /// <summary>The number is the standard uncertainty itself (<c>k=1</c>).</summary>
    Standard,
}

/// <summary>How well a given is known.</summary>
/// <param name="HalfWidthSi">The half-width in coherent SI (a difference, never offset), or as a fraction when <paramref name="Relative"/>.</param>
/// <param name="Relative">True for <c>± 5 %</c> on a value that is not itself shown in %.</param>
/// <param name="Shape">What the half-width means.</param>
/// <param name="DegreesOfFreedom">After <c>dof</c>, or null.</param>
/// <param name="Text">As written after ±, with unit and words.</param>
public sealed record Tolerance(double HalfWidthSi, bool Relative, ToleranceShape Shape, double? DegreesOfFreedom, string Text)
{
    /// <summary>The unit the half-width is written in, or null; what is left to compare when the given is a constant expression.</summary>
    public Unit? Unit { get; init; }
}

/// <summary>The range a given must stay in; both ends included.</summary>
/// <param name="FromSi">Lower end in coherent SI.</param>
/// <param name="ToSi">Upper end in coherent SI.</param>
/// <param name="Text">As written after within.</param>
public sealed record Limits(double FromSi, double ToSi, string Text)
{
    /// <summary>The unit of the lower end, or null; what is left to compare when the given is a constant expression.</summary>
    public Unit? Unit { get; init; }
}
