using System.Collections.Immutable;

namespace ScrewSheet.Workbooks.Expressions;

/// <summary>The nodes directly below a node, in the order they are worked out.</summary>
public sealed class BoundChildren : BoundVisitor<ImmutableArray<BoundExpression>>
{
    private static readonly BoundChildren Walker = new();

    /// <summary>The nodes directly below.</summary>
    public static ImmutableArray<BoundExpression> Of(BoundExpression tree) => tree.Accept(Walker);

    /// <summary>The node and all below it, parents first.</summary>
    public static IEnumerable<BoundExpression> All(BoundExpression tree)
    {
        Stack<BoundExpression> rest = new([tree]);
        while (rest.TryPop(out BoundExpression? node))
        {
            yield return node;
            foreach (BoundExpression child in Of(node).Reverse()) rest.Push(child);
        }
    }

#pragma warning disable CS1591 // one member for each kind of node; the kinds are documented where they are
    public override ImmutableArray<BoundExpression> Visit(BoundNumber node) => [];
    public override ImmutableArray<BoundExpression> Visit(BoundUnitLiteral node) => [];
    public override ImmutableArray<BoundExpression> Visit(BoundText node) => [];
    public override ImmutableArray<BoundExpression> Visit(BoundTruth node) => [];
    public override ImmutableArray<BoundExpression> Visit(BoundLibraryValue node) => [];
    public override ImmutableArray<BoundExpression> Visit(BoundOption node) => [];
    public override ImmutableArray<BoundExpression> Visit(BoundReference node) => [];
    public override ImmutableArray<BoundExpression> Visit(BoundParameter node) => [];
    public override ImmutableArray<BoundExpression> Visit(BoundUnary node) => [node.Operand];
    public override ImmutableArray<BoundExpression> Visit(BoundBinary node) => [node.Left, node.Right];
    public override ImmutableArray<BoundExpression> Visit(BoundPower node) => [node.Base, node.Exponent];
    public override ImmutableArray<BoundExpression> Visit(BoundConditional node) => [node.Test, node.WhenTrue, node.WhenFalse];
    public override ImmutableArray<BoundExpression> Visit(BoundCall node) => node.Arguments;
    public override ImmutableArray<BoundExpression> Visit(BoundMath node) => node.Arguments;
    public override ImmutableArray<BoundExpression> Visit(BoundOwnCall node) => node.Arguments;
    public override ImmutableArray<BoundExpression> Visit(BoundMember node) => [node.Target];
    public override ImmutableArray<BoundExpression> Visit(BoundTextTest node) => node.Argument is null ? [node.Target] : [node.Target, node.Argument];
    public override ImmutableArray<BoundExpression> Visit(BoundWith node) => [node.Target, .. node.Changes.Select(change => change.Value)];
    public override ImmutableArray<BoundExpression> Visit(BoundLambda node) => [node.Body];
    public override ImmutableArray<BoundExpression> Visit(BoundSeries node) => node.Values;
    public override ImmutableArray<BoundExpression> Visit(BoundSeriesOperation node) => node.Lambda is null ? [node.Series] : [node.Series, node.Lambda];
    public override ImmutableArray<BoundExpression> Visit(BoundSelection node) => [node.Series, node.By, .. node.Values, .. Maybe(node.Lambda)];
    public override ImmutableArray<BoundExpression> Visit(BoundComposedText node) => [.. node.Pieces.Where(piece => piece.Value is not null).Select(piece => piece.Value!)];

    public override ImmutableArray<BoundExpression> Visit(BoundSwitch node) =>
        [node.Subject, .. node.Arms.SelectMany(arm => (IEnumerable<BoundExpression>)[.. Maybe(arm.Pattern), .. Maybe(arm.When), arm.Value])];
#pragma warning restore CS1591

    private static ImmutableArray<BoundExpression> Maybe(BoundExpression? node) => node is null ? [] : [node];
}
