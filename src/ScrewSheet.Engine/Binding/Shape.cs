using System.Collections.Immutable;
using ScrewSheet.Engine.Evaluation;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Engine.Binding;

/// <summary>What all cells with the same expression, references aside, share: one bound tree and its code, or one fault.</summary>
internal sealed class Shape
{
    /// <summary>The expression it was first bound from; places in the tree are places in its text.</summary>
    public required ResolvedExpression Origin { get; init; }

    /// <summary>The bound tree, or null when it could not be bound.</summary>
    public BoundExpression? Tree { get; init; }

    /// <summary>Why it could not be bound.</summary>
    public Fault? Fault { get; init; }

    /// <summary>True when it writes values into a text, and so needs to know how their cells show them.</summary>
    public bool ShowsValues => showsValues ??= Tree is not null && BoundChildren.All(Tree).Any(node => node is BoundComposedText);

    private bool? showsValues;
    private Func<Frame, double>? number;
    private Func<Frame, object>? other;
    private PlainArithmetic? plain;
    private bool looked;

    /// <summary>True when running it needs neither interpreter nor library, and no more stack than any call.</summary>
    public bool IsPlain
    {
        get
        {
            if (!looked) (plain, looked) = (Tree is null ? null : PlainArithmetic.Of(Tree), true);
            return Tree is null || plain is not null;
        }
    }

    /// <summary>Runs the tree.</summary>
    public CellValue Run(Frame frame, CodeCache cache)
    {
        if (IsPlain) return Values.Wrap(Tree!.Type, plain!.Run(frame.Si));
        if (Emitter.IsNumeric(Tree!.Type)) return Values.Wrap(Tree.Type, (number ??= new Emitter(cache).Number(Tree))(frame));
        return Values.Wrap(Tree.Type, (other ??= new Emitter(cache).Other(Tree))(frame));
    }

    /// <summary>A place of the tree as a place in the text of another expression of the same shape.</summary>
    public Fault In(ResolvedExpression expression, Fault fault)
    {
        if (fault.Place is not { } place || ReferenceEquals(expression, Origin)) return fault;
        ImmutableArray<(int Code, int CodeLength, int Source, int SourceLength)> from = Origin.Map, to = expression.Map;
        int first = -1, last = -1;
        for (int i = 0; i < Math.Min(from.Length, to.Length); i++)
        {
            if (from[i].Source + from[i].SourceLength <= place.Column - 1 || (place.Length > 0 && from[i].Source >= place.Column - 1 + place.Length)) continue;
            if (first < 0) first = i;
            last = i;
        }
        return first < 0 ? fault with { Place = null } : fault with { Place = new Place(0, to[first].Source + 1, to[last].Source + to[last].SourceLength - to[first].Source) };
    }
}
