using ScrewSheet.Quantities.Formatting;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>Operations on one operand.</summary>
public enum UnaryOperation
{
    /// <summary>Minus.</summary>
    Negate,

    /// <summary>Not.</summary>
    Not,
}

/// <summary>Operations on two operands.</summary>
public enum BinaryOperation
{
    /// <summary>Sum; of texts, one after the other.</summary>
    Add,

    /// <summary>Difference.</summary>
    Subtract,

    /// <summary>Product.</summary>
    Multiply,

    /// <summary>Quotient; by zero is a fault.</summary>
    Divide,

    /// <summary>Less.</summary>
    Less,

    /// <summary>Less or equal, with 1e-12 relative allowance between quantities.</summary>
    LessOrEqual,

    /// <summary>Greater.</summary>
    Greater,

    /// <summary>Greater or equal, with 1e-12 relative allowance between quantities.</summary>
    GreaterOrEqual,

    /// <summary>Equal; never between quantities.</summary>
    Equal,

    /// <summary>Not equal; never between quantities.</summary>
    NotEqual,

    /// <summary>Both; the right one only when the left one holds.</summary>
    And,

    /// <summary>Either; the right one only when the left one fails.</summary>
    Or,
}

/// <summary>How a power was written.</summary>
public enum PowerForm
{
    /// <summary><c>Pow(x, n)</c>.</summary>
    Pow,

    /// <summary><c>Sqrt(x)</c>.</summary>
    Sqrt,

    /// <summary><c>Cbrt(x)</c>.</summary>
    Cbrt,

    /// <summary><c>Root(x, n)</c>; the exponent in the tree is 1 / n.</summary>
    Root,
}

/// <summary>The members a text has.</summary>
public enum TextOperation
{
    /// <summary>How many UTF-16 units.</summary>
    Length,

    /// <summary>Stands in it.</summary>
    Contains,

    /// <summary>It begins so.</summary>
    StartsWith,

    /// <summary>It ends so.</summary>
    EndsWith,
}

/// <summary>What can be done with a series without a library function.</summary>
public enum SeriesOperation
{
    /// <summary>How many values.</summary>
    Count,

    /// <summary>The sum; 0 of an empty one.</summary>
    Sum,

    /// <summary>A new series, each value through the lambda.</summary>
    Map,

    /// <summary>The values for which the lambda holds.</summary>
    Where,

    /// <summary>True when the lambda holds for every value.</summary>
    All,

    /// <summary>True when it holds for one.</summary>
    Any,
}

/// <summary>Which rows of a series another column picks.</summary>
public enum SelectionOperation
{
    /// <summary>Those in which the other column has one of the values, or for which the lambda holds.</summary>
    Where,

    /// <summary>Those in which the other column has another value.</summary>
    WhereNot,

    /// <summary>Those in which the other column has any value.</summary>
    Beside,
}

/// <summary>A piece of a composed text: words, or a value and how it is shown.</summary>
/// <param name="Words">The words; empty when <paramref name="Value"/> is there.</param>
/// <param name="Value">The value shown, or null.</param>
/// <param name="Format">How it is shown, or null for as its cell would.</param>
public sealed record TextPiece(string Words, BoundExpression? Value, DisplayFormat? Format);
