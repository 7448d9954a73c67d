using System.Collections.Immutable;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Lexing;

namespace ScrewSheet.Engine.Binding;

/// <summary>An expression whose every word has a meaning: what it refers to, and the C# the compiler is shown in its place.</summary>
internal sealed record ResolvedExpression
{
    /// <summary>The tokens it was made from.</summary>
    public required ImmutableArray<Token> Tokens { get; init; }

    /// <summary>What it refers to, each once, in the order of first mention.</summary>
    public required ImmutableArray<Reference> References { get; init; }

    /// <summary>Where each reference is first mentioned.</summary>
    public required ImmutableArray<Place> ReferencePlaces { get; init; }

    /// <summary>C# in which references are <c>r0 r1 …</c>, unit literals <c>l0 l1 …</c>, so that a filled column has one text.</summary>
    public required string Code { get; init; }

    /// <summary>The unit literals, in order.</summary>
    public required ImmutableArray<Token> Literals { get; init; }

    /// <summary>The formats of holes in composed texts, in order; null where a hole has none.</summary>
    public required ImmutableArray<ComposedPiece> Pieces { get; init; }

    /// <summary>Which piece of the code came from which token: code start, code length, source start, source length.</summary>
    public required ImmutableArray<(int Code, int CodeLength, int Source, int SourceLength)> Map { get; init; }

    /// <summary>The author's functions it calls.</summary>
    public required ImmutableArray<OwnFunction> Calls { get; init; }

    /// <summary>The parameters it may use, when it is the body of a function.</summary>
    public ImmutableArray<BoundParameter> Parameters { get; init; } = [];

    /// <summary>The same for every expression that binds to the same tree, types of references aside.</summary>
    public string ShapeKey => field ??= Code + "\n" + string.Join('\n', Literals.Select(literal => literal.Text))
        + string.Concat(Pieces.Select(piece => "\n" + piece.Words + "\t" + piece.Format));

    /// <summary>Where in the source a place in the code came from.</summary>
    public Place SourceOf(int codeStart, int codeLength)
    {
        int first = -1, last = -1;
        foreach (var (code, length, source, sourceLength) in Map)
        {
            if (code + length <= codeStart) continue;
            if (code >= codeStart + Math.Max(codeLength, 1) && first >= 0) break;
            if (first < 0) first = source;
            last = source + sourceLength;
        }
        if (first < 0 && Map.Length > 0) (first, last) = (Map[^1].Source, Map[^1].Source + Map[^1].SourceLength);
        return new Place(0, Math.Max(first, 0) + 1, Math.Max(last - first, 0));
    }
}
