using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Workbooks.Lexing;

/// <summary>What sort of token it is.</summary>
public enum TokenKind
{
    /// <summary>A number.</summary>
    Number,

    /// <summary>A number with its unit, in either form: <c>40 mm</c>, <c>40.mm</c>.</summary>
    UnitLiteral,

    /// <summary>A name, address, keyword, function or member.</summary>
    Word,

    /// <summary>A text in quotes.</summary>
    Text,

    /// <summary>A text with holes.</summary>
    ComposedText,

    /// <summary>An operator or bracket.</summary>
    Sign,
}

/// <summary>A piece of an expression's text.</summary>
/// <param name="Kind">What sort.</param>
/// <param name="Start">Where it begins, from 0.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Text">The word or sign; the unescaped text of a text; as written otherwise.</param>
public sealed record Token(TokenKind Kind, int Start, int Length, string Text)
{
    /// <summary>The number of a number or unit literal.</summary>
    public double Value { get; init; }

    /// <summary>The unit of a unit literal.</summary>
    public Unit? Unit { get; init; }

    /// <summary>The pieces of a composed text.</summary>
    public ImmutableArray<ComposedPiece> Pieces { get; init; } = [];

    /// <summary>Just after it.</summary>
    public int End => Start + Length;

    /// <summary>Where it stands in the expression: line 0, column from 1.</summary>
    public Place Place => new(0, Start + 1, Length);

    /// <summary>True for that sign.</summary>
    public bool Is(string sign) => Kind == TokenKind.Sign && Text == sign;

    /// <summary>True for that word.</summary>
    public bool IsWord(string word) => Kind == TokenKind.Word && Text == word;
}

/// <summary>A piece of a composed text: words, or the tokens of a hole and its format.</summary>
/// <param name="Words">The words, unescaped; empty for a hole.</param>
/// <param name="Hole">The tokens of a hole; empty for words.</param>
/// <param name="Format">How the hole is shown, or null.</param>
public sealed record ComposedPiece(string Words, ImmutableArray<Token> Hole, DisplayFormat? Format);

/// <summary>The tokens of an expression, or why it has none.</summary>
/// <param name="Tokens">In order.</param>
/// <param name="Fault">Null when all went well.</param>
public sealed record LexResult(ImmutableArray<Token> Tokens, Fault? Fault);
