using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Output;

/// <summary>The nodes directly below a node of a bound expression; an author's function counts as below each call of it.</summary>
internal sealed class BoundChildren : BoundVisitor<IEnumerable<BoundExpression>>
{
    /// <summary>The node and all nodes below it. An author's functions cannot call each other in a circle, so there is an end.</summary>
    public static IEnumerable<BoundExpression> AllOf(BoundExpression root)
    {
        BoundChildren children = new();
        Stack<BoundExpression> open = new([root]);
        HashSet<OwnFunction> entered = [];
        while (open.TryPop(out BoundExpression? node))
        {
            yield return node;
            if (node is BoundOwnCall { Function: OwnFunction { Body: BoundExpression body } function } && entered.Add(function)) open.Push(body);
            foreach (BoundExpression child in node.Accept(children)) open.Push(child);
        }
    }

    public override IEnumerable<BoundExpression> Visit(BoundNumber node) => [];
    public override IEnumerable<BoundExpression> Visit(BoundUnitLiteral node) => [];
    public override IEnumerable<BoundExpression> Visit(BoundText node) => [];
    public override IEnumerable<BoundExpression> Visit(BoundTruth node) => [];
    public override IEnumerable<BoundExpression> Visit(BoundLibraryValue node) => [];
    public override IEnumerable<BoundExpression> Visit(BoundOption node) => [];
    public override IEnumerable<BoundExpression> Visit(BoundReference node) => [];
    public override IEnumerable<BoundExpression> Visit(BoundParameter node) => [];
    public override IEnumerable<BoundExpression> Visit(BoundUnary node) => [node.Operand];
    public override IEnumerable<BoundExpression> Visit(BoundBinary node) => [node.Left, node.Right];
    public override IEnumerable<BoundExpression> Visit(BoundPower node) => [node.Base, node.Exponent];
    public override IEnumerable<BoundExpression> Visit(BoundConditional node) => [node.Test, node.WhenTrue, node.WhenFalse];
    public override IEnumerable<BoundExpression> Visit(BoundSwitch node) => node.Arms.SelectMany(Arm).Prepend(node.Subject);
    public override IEnumerable<BoundExpression> Visit(BoundCall node) => node.Arguments;
    public override IEnumerable<BoundExpression> Visit(BoundMath node) => node.Arguments;
    public override IEnumerable<BoundExpression> Visit(BoundOwnCall node) => node.Arguments;
    public override IEnumerable<BoundExpression> Visit(BoundMember node) => [node.Target];
    public override IEnumerable<BoundExpression> Visit(BoundTextTest node) => node.Argument is null ? [node.Target] : [node.Target, node.Argument];
    public override IEnumerable<BoundExpression> Visit(BoundWith node) => node.Changes.Select(change => change.Value).Prepend(node.Target);
    public override IEnumerable<BoundExpression> Visit(BoundLambda node) => [node.Body];
    public override IEnumerable<BoundExpression> Visit(BoundSeriesOperation node) => node.Lambda is null ? [node.Series] : [node.Series, node.Lambda];
    public override IEnumerable<BoundExpression> Visit(BoundComposedText node) => node.Pieces.Where(piece => piece.Value is not null).Select(piece => piece.Value!);

    private static IEnumerable<BoundExpression> Arm(BoundArm arm) => new[] { arm.Pattern, arm.When, arm.Value }.Where(node => node is not null).Select(node => node!);
}
