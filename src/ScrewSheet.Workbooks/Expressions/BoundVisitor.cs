namespace ScrewSheet.Workbooks.Expressions;

/// <summary>Answers something for each kind of node; a new kind breaks the build of every reader until it is answered.</summary>
/// <typeparam name="TResult">The answer.</typeparam>
public abstract class BoundVisitor<TResult>
{
#pragma warning disable CS1591 // one member for each kind of node; the kinds are documented where they are
    public abstract TResult Visit(BoundNumber node);
    public abstract TResult Visit(BoundUnitLiteral node);
    public abstract TResult Visit(BoundText node);
    public abstract TResult Visit(BoundTruth node);
    public abstract TResult Visit(BoundLibraryValue node);
    public abstract TResult Visit(BoundOption node);
    public abstract TResult Visit(BoundReference node);
    public abstract TResult Visit(BoundParameter node);
    public abstract TResult Visit(BoundUnary node);
    public abstract TResult Visit(BoundBinary node);
    public abstract TResult Visit(BoundPower node);
    public abstract TResult Visit(BoundConditional node);
    public abstract TResult Visit(BoundSwitch node);
    public abstract TResult Visit(BoundCall node);
    public abstract TResult Visit(BoundMath node);
    public abstract TResult Visit(BoundOwnCall node);
    public abstract TResult Visit(BoundMember node);
    public abstract TResult Visit(BoundTextTest node);
    public abstract TResult Visit(BoundWith node);
    public abstract TResult Visit(BoundLambda node);
    public abstract TResult Visit(BoundSeries node);
    public abstract TResult Visit(BoundSeriesOperation node);
    public abstract TResult Visit(BoundSelection node);
    public abstract TResult Visit(BoundComposedText node);
#pragma warning restore CS1591
}
