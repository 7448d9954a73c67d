using System.Linq.Expressions;
using System.Reflection;

namespace ScrewSheet.Studies.Kernels;

/// <summary>The code of a loop while it is written: statements one after the other, so that a fault can leave a scenario from anywhere.</summary>
internal sealed class LoopCode
{
    private const int MostCautions = 64, MostStatements = 20_000;

    private static readonly MethodInfo IsFinite = typeof(double).GetMethod(nameof(double.IsFinite))!;

    private readonly ParameterExpression inputs = Expression.Parameter(typeof(double[][])), output = Expression.Parameter(typeof(double[])), faults = Expression.Parameter(typeof(int[]));
    private readonly ParameterExpression tally = Expression.Parameter(typeof(CautionTally)), from = Expression.Parameter(typeof(int)), to = Expression.Parameter(typeof(int));
    private readonly ParameterExpression at = Expression.Variable(typeof(int)), mask = Expression.Variable(typeof(long));
    private readonly LabelTarget next = Expression.Label(), done = Expression.Label();
    private readonly List<ParameterExpression> locals = [], arrays = [];
    private readonly List<string> cautions = [];
    private readonly HashSet<Expression> finite = [];
    private List<Expression> statements = [];
    private int sites, count, depth;

    /// <summary>True while a branch is written, which some scenarios pass by.</summary>
    public bool IsInBranch => depth > 0;

    /// <summary>The cautions of every scenario, as a mask: those met outside branches whatever is varied.</summary>
    public long Always { get; private set; }

    /// <summary>The sentences of the bits of a mask.</summary>
    public IReadOnlyList<string> Cautions => cautions;

    /// <summary>How many statements there are.</summary>
    public int Count => count;

    /// <summary>Adds a statement.</summary>
    public void Add(Expression statement)
    {
        if (++count > MostStatements) throw new NoKernelException("The model is too long for a kernel.");
        statements.Add(statement);
    }

    /// <summary>A local with that value, so that it is worked out once.</summary>
    public Expression Local(Expression value)
    {
        if (value is ConstantExpression or ParameterExpression) return value;
        ParameterExpression local = Variable(value.Type);
        Add(Expression.Assign(local, value));
        return local;
    }

    /// <summary>A local without a value yet.</summary>
    public ParameterExpression Variable(Type type)
    {
        ParameterExpression local = Expression.Variable(type);
        locals.Add(local);
        return local;
    }

    /// <summary>The value of a varied given in this scenario.</summary>
    public Expression Input(int given)
    {
        while (arrays.Count <= given) arrays.Add(Expression.Variable(typeof(double[])));
        return Local(Expression.ArrayIndex(arrays[given], at));
    }

    /// <summary>Leaves the scenario with a fault.</summary>
    public Expression Fault() => Expression.Block(
        Expression.Assign(Expression.ArrayAccess(faults, at), Expression.Constant(++sites)),
        Expression.Assign(Expression.ArrayAccess(output, at), Expression.Constant(double.NaN)),
        Expression.Goto(next));

    /// <summary>Leaves the scenario unless the condition holds.</summary>
    public void Need(Expression condition)
    {
        if (condition is ConstantExpression { Value: true }) return;
        Add(Expression.IfThen(Expression.Not(condition), Fault()));
    }

    /// <summary>Leaves the scenario unless the value is finite.</summary>
    public Expression Finite(Expression value)
    {
        Expression local = Local(value);
        if (local is ConstantExpression { Value: double and > double.NegativeInfinity and < double.PositiveInfinity } || finite.Contains(local)) return local;
        Need(Expression.Call(IsFinite, local));
        if (!IsInBranch) finite.Add(local);
        return local;
    }

    /// <summary>Notes a caution where the condition holds; null for always.</summary>
    public void Caution(string sentence, Expression? condition)
    {
        int bit = cautions.IndexOf(sentence);
        if (bit < 0)
        {
            bit = cautions.Count;
            cautions.Add(sentence);
            if (bit >= MostCautions) throw new NoKernelException("The model has more cautions than a kernel counts.");
        }
        if (condition is null && !IsInBranch)
        {
            Always |= 1L << bit;
            return;
        }
        Expression note = Expression.Assign(mask, Expression.Or(mask, Expression.Constant(1L << bit)));
        Add(condition is null ? note : Expression.IfThen(condition, note));
    }

    /// <summary>Writes into a branch and hands back what was written there.</summary>
    public BlockExpression Branch(Action write)
    {
        List<Expression> outer = statements;
        statements = [];
        depth++;
        try
        {
            write();
            return Expression.Block(typeof(void), statements.Count == 0 ? [Expression.Empty()] : statements);
        }
        finally
        {
            statements = outer;
            depth--;
        }
    }

    /// <summary>The whole loop with its result, compiled.</summary>
    public KernelLoop Compile(Expression result)
    {
        Expression number = result.Type == typeof(bool) ? Expression.Condition(result, Expression.Constant(1.0), Expression.Constant(0.0)) : result;
        bool counted = cautions.Where((_, bit) => (Always & (1L << bit)) == 0).Any();
        List<Expression> scenario = [Expression.IfThen(Expression.GreaterThanOrEqual(at, to), Expression.Break(done))];
        if (counted) scenario.Add(Expression.Assign(mask, Expression.Constant(0L)));
        scenario.AddRange(statements);
        scenario.Add(Expression.Assign(Expression.ArrayAccess(output, at), number));
        if (counted) scenario.Add(Expression.IfThen(Expression.NotEqual(mask, Expression.Constant(0L)), Expression.Call(tally, nameof(CautionTally.Add), null, mask)));
        scenario.Add(Expression.Label(next));
        scenario.Add(Expression.Assign(at, Expression.Add(at, Expression.Constant(1))));
        IEnumerable<Expression> before = arrays.Select((array, i) => Expression.Assign(array, Expression.ArrayIndex(inputs, Expression.Constant(i))));
        Expression body = Expression.Block([at, mask, .. arrays, .. locals], [.. before, Expression.Assign(at, from), Expression.Loop(Expression.Block(typeof(void), scenario), done)]);
        return Expression.Lambda<KernelLoop>(body, inputs, output, faults, tally, from, to).Compile();
    }
}
