using System.Collections.Immutable;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>
/// A node of a bound expression: names resolved, types and dimensions known, nothing of the compiler left in it.
/// A closed family; what has no node cannot run. Values inside are in coherent SI.
/// </summary>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where it stands in the text of the expression: line 0, column from 1.</param>
public abstract record BoundExpression(CellType Type, Place Place)
{
    /// <summary>Hands the node to the member of the visitor that is made for its kind.</summary>
    public abstract TResult Accept<TResult>(BoundVisitor<TResult> visitor);
}

/// <summary>A number written out.</summary>
/// <param name="Value">The number.</param>
/// <param name="Place">Where.</param>
public sealed record BoundNumber(double Value, Place Place) : BoundExpression(CellType.Number, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A number with a unit written out.</summary>
/// <param name="Value">The number as written, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundUnitLiteral(double Value, Unit Unit, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A text written out.</summary>
/// <param name="Value">The text.</param>
/// <param name="Place">Where.</param>
public sealed record BoundText(string Value, Place Place) : BoundExpression(CellType.Text, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary><c>true</c> or <c>false</c> written out.</summary>
/// <param name="Value">Which.</param>
/// <param name="Place">Where.</param>
public sealed record BoundTruth(bool Value, Place Place) : BoundExpression(CellType.Truth, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A ready value of the library: an option, a material, a standard's requirement, π.</summary>
/// <param name="Path">As written, such as <c>Standards.En568.Radial</c>.</param>
/// <param name="Member">What is read.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundLibraryValue(string Path, LibraryMember Member, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>An option of the library written out, such as <c>RopeUse.Twin</c>.</summary>
/// <param name="Value">The enumeration value.</param>
/// <param name="Place">Where.</param>
public sealed record BoundOption(Enum Value, Place Place) : BoundExpression(new OptionType(Value.GetType()), Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>The cell's n-th reference: another cell or a run of cells. Which one stands with the cell, so that a filled column shares one tree.</summary>
/// <param name="Slot">From 0.</param>
/// <param name="Type">The type of what is referred to.</param>
/// <param name="Place">Where.</param>
public sealed record BoundReference(int Slot, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A parameter of the author's function or of a lambda.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Index">Its place: function parameters from 0, lambda parameters after them, innermost last.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundParameter(string Name, int Index, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>Minus or not.</summary>
/// <param name="Operation">Which.</param>
/// <param name="Operand">On what.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundUnary(UnaryOperation Operation, BoundExpression Operand, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>Two operands.</summary>
/// <param name="Operation">Which.</param>
/// <param name="Left">Left of the sign.</param>
/// <param name="Right">Right of it.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundBinary(BinaryOperation Operation, BoundExpression Left, BoundExpression Right, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A base to an exponent; a root is a fraction of one.</summary>
/// <param name="Base">The base, of any dimension.</param>
/// <param name="Exponent">The exponent; a constant when the base has a dimension.</param>
/// <param name="Form">How it was written.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundPower(BoundExpression Base, BoundExpression Exponent, PowerForm Form, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary><c>test ? one : other</c>.</summary>
/// <param name="Test">The test.</param>
/// <param name="WhenTrue">The value when it holds.</param>
/// <param name="WhenFalse">The value when it does not.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundConditional(BoundExpression Test, BoundExpression WhenTrue, BoundExpression WhenFalse, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>One arm of a <c>switch</c>: a pattern, perhaps a <c>when</c>, and a value.</summary>
/// <param name="Pattern">The comparison the subject must pass; null for <c>_</c>. Its left operand is the subject.</param>
/// <param name="When">What must hold besides, or null.</param>
/// <param name="Value">The arm's value.</param>
public sealed record BoundArm(BoundExpression? Pattern, BoundExpression? When, BoundExpression Value);

/// <summary>A <c>switch</c>; no match is a fault.</summary>
/// <param name="Subject">What is looked at.</param>
/// <param name="Arms">At most 32, tried in order; patterns repeat the subject's tree as their left operand.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundSwitch(BoundExpression Subject, ImmutableArray<BoundArm> Arms, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A call of a library function, arguments in the order of its parameters, defaults filled in.</summary>
/// <param name="Function">The function.</param>
/// <param name="Arguments">One for each parameter.</param>
/// <param name="TypeArguments">What the function's type parameters stand for, in order; empty when it has none.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundCall(LibraryFunction Function, ImmutableArray<BoundExpression> Arguments, ImmutableArray<CellType> TypeArguments, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A function of mathematics over pure numbers (an angle counts as its radians).</summary>
/// <param name="Function">Which.</param>
/// <param name="Arguments">One or two.</param>
/// <param name="Place">Where.</param>
public sealed record BoundMath(MathFunction Function, ImmutableArray<BoundExpression> Arguments, Place Place) : BoundExpression(CellType.Number, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A call of one of the author's functions.</summary>
/// <param name="Function">The function.</param>
/// <param name="Arguments">One for each parameter.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundOwnCall(OwnFunction Function, ImmutableArray<BoundExpression> Arguments, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A member of a library record, or one of the few of a text or a series.</summary>
/// <param name="Target">The record.</param>
/// <param name="Member">The member.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundMember(BoundExpression Target, LibraryMember Member, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A test of a text: <c>Contains</c>, <c>StartsWith</c>, <c>EndsWith</c> or its <c>Length</c>; ordinal.</summary>
/// <param name="Operation">Which.</param>
/// <param name="Target">The text.</param>
/// <param name="Argument">What is looked for; null for the length.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundTextTest(TextOperation Operation, BoundExpression Target, BoundExpression? Argument, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary><c>record with { Member = value }</c>.</summary>
/// <param name="Target">The record.</param>
/// <param name="Changes">The members set, in the order written.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundWith(BoundExpression Target, ImmutableArray<(LibraryMember Member, BoundExpression Value)> Changes, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A lambda handed to a function over a series.</summary>
/// <param name="Parameters">Its parameters.</param>
/// <param name="Body">Its body.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundLambda(ImmutableArray<BoundParameter> Parameters, BoundExpression Body, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A series written out: <c>Values(5 m, 15 m)</c>.</summary>
/// <param name="Values">At least one, of one kind.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundSeries(ImmutableArray<BoundExpression> Values, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>An operation over a series, with the lambda it applies where it takes one.</summary>
/// <param name="Operation">Which.</param>
/// <param name="Series">The series.</param>
/// <param name="Lambda">What is done with each value, or null.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundSeriesOperation(SeriesOperation Operation, BoundExpression Series, BoundLambda? Lambda, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>
/// The values of a series in the rows that another column picks: <c>force.Where(mode, "pull-out")</c>, <c>force.Where(depth, d => d > 100 mm)</c>, <c>force.Beside(mode)</c>.
/// Values are paired by the rows they stand in, so that a blank in one column shifts nothing.
/// </summary>
/// <param name="Operation">Which rows stay.</param>
/// <param name="Series">The values.</param>
/// <param name="By">The column that picks.</param>
/// <param name="Values">What it is compared with: texts or pure numbers; empty where a lambda says, or for <see cref="SelectionOperation.Beside"/>.</param>
/// <param name="Lambda">What must hold in the picking column, or null.</param>
/// <param name="Type">Its type.</param>
/// <param name="Place">Where.</param>
public sealed record BoundSelection(
    SelectionOperation Operation, BoundExpression Series, BoundExpression By, ImmutableArray<BoundExpression> Values, BoundLambda? Lambda, CellType Type, Place Place) : BoundExpression(Type, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A text put together from pieces and values: <c>$"peak {peak:kN, 1 decimal}"</c>.</summary>
/// <param name="Pieces">In order.</param>
/// <param name="Place">Where.</param>
public sealed record BoundComposedText(ImmutableArray<TextPiece> Pieces, Place Place) : BoundExpression(CellType.Text, Place)
{
    /// <inheritdoc/>
    public override TResult Accept<TResult>(BoundVisitor<TResult> visitor) => visitor.Visit(this);
}
