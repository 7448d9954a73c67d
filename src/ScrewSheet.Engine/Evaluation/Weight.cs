using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>How many steps one run of a tree counts as.</summary>
internal static class Weight
{
    private const int NodesOfStep = 4;

    /// <summary>One step for every four nodes, and one at least.</summary>
    /// <param name="tree">The body of a lambda or of one of the author's functions.</param>
    public static int Of(BoundExpression tree) => Math.Max(1, BoundChildren.All(tree).Count() / NodesOfStep);
}
