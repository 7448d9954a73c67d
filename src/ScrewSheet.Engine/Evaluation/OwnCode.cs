using System.Linq.Expressions;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Evaluation;

/// <summary>The runnable body of one of the author's functions, made on its first call.</summary>
internal sealed class OwnCode(OwnFunction function, CodeCache cache)
{
    private int? weight;
    private Func<Frame, double>? number;
    private Func<Frame, object>? other;

    /// <summary>The steps a call counts as.</summary>
    public int Weight => weight ??= Math.Max(Frame.StepsPerCall, Evaluation.Weight.Of(Body));

    /// <summary>Room for the values of lambdas in the body.</summary>
    public IEnumerable<Expression> Spare => [Expression.Constant(double.NaN), Expression.Constant(double.NaN)];

    /// <summary>The same among the other values.</summary>
    public IEnumerable<Expression> SpareOthers => [Expression.Constant(null), Expression.Constant(null)];

    public double Number(Frame frame) => (number ??= new Emitter(cache).Number(Body))(frame);

    public object Other(Frame frame) => (other ??= new Emitter(cache).Other(Body))(frame);

    private BoundExpression Body => function.Body ?? throw new InvalidOperationException($"The function {function.Name} is called without a body.");
}
