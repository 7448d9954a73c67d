using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using ScrewSheet.Engine.Naming;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Lexing;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Binding;

/// <summary>An expression whose every word has a meaning: what it refers to, and the C# the compiler is shown in its place.</summary>
internal sealed class ResolvedExpression : IReferring
{
    private readonly ResolvedExpression? model;
    private ImmutableArray<Token> tokens;

    /// <summary>An expression written out in full.</summary>
    public ResolvedExpression() { }

    /// <summary>An expression that differs from a model in nothing but the addresses it names.</summary>
    /// <param name="model">The model.</param>
    /// <param name="text">The expression as written; its tokens and places are worked out when a fault asks for them.</param>
    /// <param name="references">What it refers to, by the model's slots.</param>
    [SetsRequiredMembers]
    public ResolvedExpression(ResolvedExpression model, string text, ImmutableArray<Reference> references)
    {
        this.model = model;
        Text = text;
        (References, Code, Literals, Pieces, Calls, Parameters) = (references, model.Code, model.Literals, model.Pieces, model.Calls, model.Parameters);
    }

    /// <summary>The expression whose shape this one has: its model, or itself.</summary>
    public ResolvedExpression Family => model ?? this;

    /// <summary>What the family was last bound to; kept here because a filled column asks the same again and again.</summary>
    public BoundAs? Last { get; set; }

    /// <summary>The expression as written.</summary>
    public required string Text { get; init; }

    /// <summary>The tokens it was made from; read again from its text where they were let go.</summary>
    public required ImmutableArray<Token> Tokens
    {
        get => tokens.IsDefault ? tokens = Lexer.Read(Text).Tokens : tokens;
        init => tokens = value;
    }

    /// <summary>What it refers to, each once, in the order of first mention.</summary>
    public required ImmutableArray<Reference> References { get; init; }

    /// <summary>Lets the tokens go. They are most of what an expression weighs, and once it is bound only a fault asks for them.</summary>
    public void LetTokensGo() => tokens = default;

    /// <inheritdoc/>
    public ImmutableArray<CellReference> Refers() => [.. References.Select(reference => reference.Said)];

    /// <summary>Where each reference is first mentioned.</summary>
    public required ImmutableArray<Place> ReferencePlaces
    {
        get => field.IsDefault ? field = [.. model!.ReferencePlaces.Select(InPlace)] : field;
        init;
    }

    /// <summary>C# in which references are <c>r0 r1 …</c>, unit literals <c>l0 l1 …</c>, so that a filled column has one text.</summary>
    public required string Code { get; init; }

    /// <summary>The unit literals, in order.</summary>
    public required ImmutableArray<Token> Literals { get; init; }

    /// <summary>The formats of holes in composed texts, in order; null where a hole has none.</summary>
    public required ImmutableArray<ComposedPiece> Pieces { get; init; }

    /// <summary>Which piece of the code came from which token: code start, code length, source start, source length.</summary>
    public required ImmutableArray<(int Code, int CodeLength, int Source, int SourceLength)> Map
    {
        get => field.IsDefault ? field = [.. model!.Map.Select(InPlace)] : field;
        init;
    }

    /// <summary>The author's functions it calls.</summary>
    public required ImmutableArray<OwnFunction> Calls { get; init; }

    /// <summary>The parameters it may use, when it is the body of a function.</summary>
    public ImmutableArray<BoundParameter> Parameters { get; init; } = [];

    /// <summary>The same for every expression that binds to the same tree, types of references aside.</summary>
    public string ShapeKey => model?.ShapeKey ?? (field ??= Code + "\n" + string.Join('\n', Literals.Select(literal => literal.Text))
        + string.Concat(Pieces.Select(piece => "\n" + piece.Words + "\t" + piece.Format)));

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

    private (int, int, int, int) InPlace((int Code, int CodeLength, int Source, int SourceLength) piece)
    {
        Place place = InPlace(new Place(0, piece.Source + 1, piece.SourceLength));
        return (piece.Code, piece.CodeLength, place.Column - 1, place.Length);
    }

    /// <summary>A place in the model as a place here: both have the same tokens, of other lengths.</summary>
    private Place InPlace(Place place)
    {
        int first = 0;
        while (model!.Tokens[first].Start != place.Column - 1) first++;
        int last = first;
        while (model.Tokens[last].End != place.Column - 1 + place.Length) last++;
        return new Place(0, Tokens[first].Start + 1, Tokens[last].End - Tokens[first].Start);
    }
}

/// <summary>A shape and the types of references it was bound for.</summary>
internal sealed record BoundAs(ImmutableArray<CellType> Slots, Shape Shape);
