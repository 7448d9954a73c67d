using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Model;

/// <summary>One value of a list: <c>8 kN</c>, <c>true</c>, <c>Materials.Steel4130</c>.</summary>
/// <param name="Text">As written.</param>
/// <param name="Literal">The literal it is, or null for a constant expression, which the engine works out.</param>
/// <param name="Place">Where it stands.</param>
public sealed record VaryValue(string Text, Literal? Literal, Place Place);

/// <summary>The values a given takes one after the other. A closed family.</summary>
public abstract record VaryValues
{
    private protected VaryValues() { }
}

/// <summary>Values written out.</summary>
/// <param name="Values">At least one, in order.</param>
public sealed record VaryList(ImmutableArray<VaryValue> Values) : VaryValues;

/// <summary>Values from one to another: <c>0 mm to 60 mm step 10 mm</c>, <c>1 kN to 9 kN over 8 steps</c>, <c>1 kN to 100 kN log over 4 steps</c>.</summary>
/// <param name="From">The first value.</param>
/// <param name="To">The last value, or what the steps stop before.</param>
/// <param name="Step">What follows <c>step</c>, a difference; null where the steps are counted.</param>
/// <param name="Steps">What follows <c>over</c>: one less than there are values; 0 where a step is written.</param>
/// <param name="Logarithmic">True for <c>log</c>: equal ratios, not equal differences.</param>
public sealed record VaryRange(NumberLiteral From, NumberLiteral To, NumberLiteral? Step, long Steps, bool Logarithmic) : VaryValues;

/// <summary>What follows <c>vary</c>, read: a given and the values it takes.</summary>
/// <param name="Name">The given, as written: a name or address, perhaps with its sheet and a dot.</param>
/// <param name="Values">Its values.</param>
/// <param name="Place">Where the values stand.</param>
public sealed record VarySpec(PlacedText Name, VaryValues Values, Place Place);

/// <summary>A <c>correlate</c> line, read: how the uncertainties of two givens go together.</summary>
/// <param name="First">One given, as written.</param>
/// <param name="Second">The other.</param>
/// <param name="Coefficient">The correlation coefficient, from -1 to 1.</param>
/// <param name="Place">Where the coefficient stands.</param>
public sealed record Correlation(PlacedText First, PlacedText Second, double Coefficient, Place Place);
