using System.Collections.Immutable;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Engine.Binding;

/// <summary>Binds shapes, each once; many together where many are new.</summary>
/// <remarks>Safe for one thread at a time.</remarks>
internal sealed class Binder(FunctionLibrary library)
{
    /// <summary>Beyond this many the shapes nobody asked for lately are forgotten; cells keep their own.</summary>
    private const int MaximumShapes = 2048;

    private const int PerTree = 400;

    /// <summary>How much is bound in one calculation, in characters of code; a shape counts as <see cref="LeastCost"/> at least, and one with an error as <see cref="ErrorCost"/> more, since it is bound again alone.</summary>
    private const long MostCost = 2_000_000;

    private const int LeastCost = 100, ErrorCost = 500;

    private static readonly Fault TooMany = BindingFaults.TooManyShapes();

    private readonly CompilerDoor door = new(library);
    private readonly Dictionary<(string Key, TypeList Slots), Shape> known = [];
    private int generation;
    private long cost;

    public FunctionLibrary Library => library;

    /// <summary>Begins a calculation, which has a budget of its own for what is bound in it.</summary>
    public void BeginCalculation() => cost = 0;

    /// <summary>Forgets what depends on the author's functions.</summary>
    public void OwnFunctionsChanged() => generation++;

    /// <summary>The shape an expression has with these types of references, where it was bound before; else null.</summary>
    public BoundAs? Known(ResolvedExpression expression, ReadOnlySpan<CellType> slots)
    {
        ResolvedExpression family = expression.Family;
        if (family.Last is { } last && slots.SequenceEqual(last.Slots.AsSpan())) return last;
        ImmutableArray<CellType> types = ImmutableArray.Create(slots);
        return known.TryGetValue(KeyOf(family, types), out Shape? shape) ? family.Last = new BoundAs(types, shape) : null;
    }

    /// <summary>The shapes of the expressions with these types of references, in order.</summary>
    public IReadOnlyList<Shape> Bind(IReadOnlyList<(ResolvedExpression Expression, ImmutableArray<CellType> Slots)> wanted, IReadOnlyDictionary<string, OwnFunction> own)
    {
        if (known.Count > MaximumShapes) known.Clear();
        HashSet<(string, TypeList)> missing = [];
        List<(ResolvedExpression, ImmutableArray<CellType>)> toBind = [];
        foreach (var (expression, slots) in wanted)
        {
            var key = KeyOf(expression, slots);
            if (known.ContainsKey(key) || missing.Contains(key) || !MayBind(expression)) continue;
            missing.Add(key);
            toBind.Add((expression, slots));
        }
        for (int from = 0; from < toBind.Count; from += PerTree) BindTogether(toBind.GetRange(from, Math.Min(PerTree, toBind.Count - from)), own);
        return [.. wanted.Select(item => known.GetValueOrDefault(KeyOf(item.Expression, item.Slots)) ?? new Shape { Origin = item.Expression, Fault = TooMany })];
    }

    private bool MayBind(ResolvedExpression expression)
    {
        int more = Math.Max(LeastCost, expression.Code.Length);
        if (cost + more > MostCost) return false;
        cost += more;
        return true;
    }

    private void BindTogether(List<(ResolvedExpression Expression, ImmutableArray<CellType> Slots)> batch, IReadOnlyDictionary<string, OwnFunction> own)
    {
        OwnFunction[] called = [.. batch.SelectMany(item => item.Expression.Calls).Distinct()];
        IReadOnlyList<BoundShape> bound = door.Bind(batch, called);
        for (int i = 0; i < batch.Count; i++)
        {
            // one expression that the parser cannot close spoils its neighbours; alone it spoils nobody
            if (!bound[i].Errors.IsEmpty) cost += ErrorCost;
            BoundShape shape = bound[i].Errors.IsEmpty || batch.Count == 1 ? bound[i] : door.Bind([batch[i]], called)[0];
            (BoundExpression? tree, Fault? fault) = Translator.Translate(batch[i].Expression, batch[i].Slots, shape, library, own);
            if (fault is null) batch[i].Expression.Family.LetTokensGo();
            known[KeyOf(batch[i].Expression, batch[i].Slots)] = new Shape { Origin = batch[i].Expression, Tree = tree, Fault = fault };
        }
    }

    private (string, TypeList) KeyOf(ResolvedExpression expression, ImmutableArray<CellType> slots) =>
        (expression.Calls.IsEmpty && expression.Parameters.IsEmpty ? expression.ShapeKey : $"{generation}\n{expression.ShapeKey}\n{string.Join(',', expression.Parameters.Select(p => p.Type.Name + p.Name))}", new TypeList(slots));

    /// <summary>Types of references, compared one by one.</summary>
    private readonly record struct TypeList(ImmutableArray<CellType> Types)
    {
        public bool Equals(TypeList other) => Types.SequenceEqual(other.Types);

        public override int GetHashCode() => Types.Aggregate(17, (hash, type) => unchecked((hash * 31) + type.GetHashCode()));
    }
}
