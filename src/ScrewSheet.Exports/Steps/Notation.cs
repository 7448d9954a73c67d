using System.Collections.Immutable;

namespace ScrewSheet.Exports.Steps;

/// <summary>
/// A piece of mathematics as it is written down, neither text nor markup yet. A closed family. Brackets stand in the tree where every way of writing needs them;
/// those that only a line of text needs are its writer's business.
/// </summary>
/// <param name="Rank">How tightly it holds together, as <see cref="Ranks"/> says.</param>
internal abstract record Notation(int Rank)
{
    public abstract TResult Accept<TResult>(NotationVisitor<TResult> visitor);
}

/// <summary>How tightly pieces of notation hold together, loosest first.</summary>
internal static class Ranks
{
    public const int Case = 0, Or = 1, And = 2, Equality = 3, Order = 4, Sum = 5, Product = 6, Sign = 7, Power = 8, Atom = 9;
}

/// <summary>Answers something for each kind of notation; a new kind breaks the build of every writer until it is answered.</summary>
internal abstract class NotationVisitor<TResult>
{
    public abstract TResult Visit(FigureNotation node);
    public abstract TResult Visit(BlankNotation node);
    public abstract TResult Visit(SymbolNotation node);
    public abstract TResult Visit(WordNotation node);
    public abstract TResult Visit(SignNotation node);
    public abstract TResult Visit(SignedNotation node);
    public abstract TResult Visit(OperationNotation node);
    public abstract TResult Visit(FractionNotation node);
    public abstract TResult Visit(PowerNotation node);
    public abstract TResult Visit(RootNotation node);
    public abstract TResult Visit(BracketNotation node);
    public abstract TResult Visit(CallNotation node);
    public abstract TResult Visit(MemberNotation node);
    public abstract TResult Visit(CasesNotation node);
    public abstract TResult Visit(RunNotation node);
}

/// <summary>A number, perhaps with its unit.</summary>
internal sealed record FigureNotation(string Digits, string Unit) : Notation(Digits.StartsWith('-') ? Ranks.Sign : Unit.Length > 0 ? Ranks.Product : Ranks.Atom)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A number left for the reader to fill in; its unit stays.</summary>
internal sealed record BlankNotation(int Width, string Unit) : Notation(Unit.Length > 0 ? Ranks.Product : Ranks.Atom)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A quantity by its name or symbol.</summary>
internal sealed record SymbolNotation(string Name) : Notation(Ranks.Atom)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A word, an address or a text: upright.</summary>
internal sealed record WordNotation(string Text) : Notation(Ranks.Atom)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A sign that stands by itself where a long piece was broken.</summary>
internal sealed record SignNotation(string Sign) : Notation(Ranks.Atom)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A minus or a word before one operand.</summary>
internal sealed record SignedNotation(string Sign, Notation Operand) : Notation(Ranks.Sign)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>Two operands with a sign between.</summary>
internal sealed record OperationNotation(Notation Left, string Sign, Notation Right, int Rank) : Notation(Rank)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A fraction.</summary>
internal sealed record FractionNotation(Notation Top, Notation Bottom) : Notation(Ranks.Product)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A base with an exponent.</summary>
internal sealed record PowerNotation(Notation Base, Notation Exponent) : Notation(Ranks.Power)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A root; the degree is null for a square root.</summary>
internal sealed record RootNotation(Notation Inner, Notation? Degree) : Notation(Ranks.Atom)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>Something in brackets, or between the strokes of an absolute value.</summary>
internal sealed record BracketNotation(Notation Inner, string Open = "(", string Close = ")") : Notation(Ranks.Atom)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A function of arguments.</summary>
internal sealed record CallNotation(Notation Function, ImmutableArray<Notation> Arguments) : Notation(Ranks.Atom)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>A member of something.</summary>
internal sealed record MemberNotation(Notation Target, string Member) : Notation(Ranks.Atom)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>Values and when they apply; null for otherwise.</summary>
internal sealed record CasesNotation(ImmutableArray<(Notation Value, Notation? When)> Cases) : Notation(Ranks.Case)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}

/// <summary>Pieces side by side: what a broken line holds, or a symbol and a word about it.</summary>
internal sealed record RunNotation(ImmutableArray<Notation> Parts) : Notation(Ranks.Sum)
{
    public override TResult Accept<TResult>(NotationVisitor<TResult> visitor) => visitor.Visit(this);
}
