using System.Collections.Immutable;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Exports.Xlsx.Formulas;

/// <summary>Calls: the author's functions are put in; a library function is its declared formula where that may stand for it, kept inside the function's limits.</summary>
internal sealed partial class FormulaWriter
{
#pragma warning disable CS1591 // one member for each kind of node; the kinds are documented where they are
    public override FormulaText Visit(BoundOwnCall node)
    {
        BoundExpression body = node.Function.Body ?? throw new NoForm($"{node.Function.Name} is in fault");
        int[] lazy = [.. LazyReads.Parameters(body, node.Arguments.Length)];
        // every argument is worked out first here, needed or not
        ImmutableArray<Meaning> parameters = Parameters(node.Function.Name, [.. node.Function.Parameters.Select(parameter => parameter.Name)], node.Arguments, index => Uses(body, index) + (lazy.Contains(index) ? 1 : 0));
        FormulaText value = Within(scope.Inside(parameters), () => Emit(body));
        return Needing(lazy.Where(index => parameters[index].Tree is null && !IsSure(node.Arguments[index])).Select(index => parameters[index].Text), value);
    }

    /// <summary>True for what cannot fail by itself.</summary>
    private static bool IsSure(BoundExpression tree) => tree is BoundNumber or BoundUnitLiteral or BoundText or BoundTruth or BoundReference or BoundOption;

    public override FormulaText Visit(BoundCall node) => node.Function.Formulas is [{ Member: null } formula] && math.Stands(node, null, formula)
        ? Formula(node, formula)
        : Otherwise(node, Why(node.Function));

    public override FormulaText Visit(BoundMember node)
    {
        (BoundExpression target, Scope seen) = Origin(node.Target, scope);
        if (target is BoundCall call && call.Function.Formulas.FirstOrDefault(formula => formula.Member == node.Member.Name) is { } formula && math.Stands(call, node with { Target = call }, formula))
            return Within(seen, () => Formula(call, formula));
        return Otherwise(node with { Target = target }, target is BoundCall { Function: var function } ? Why(function) : $"{node.Target.Type.Phrase} does not fit a cell");
    }
#pragma warning restore CS1591

    /// <summary>Why a call is no formula.</summary>
    private static string Why(LibraryFunction function) => function.NoFormula is { } none
        ? $"{function.Name} has no closed formula: {none.Method.TrimEnd('.')}"
        : $"{function.Name} computes more than a formula says";

    /// <summary>The tree a record comes from: through parameters and cells to the call that makes it.</summary>
    private (BoundExpression Tree, Scope Scope) Origin(BoundExpression tree, Scope seen)
    {
        while (true)
        {
            if (tree is BoundParameter parameter && parameter.Index < seen.Parameters.Length && seen.Parameters[parameter.Index] is { Tree: { } handed, Scope: { } theirs }) (tree, seen) = (handed, theirs);
            else if (tree is BoundReference { Slot: var slot } && seen.References[slot] is { Last: null, First: var cell } && cells.Record(cell) is { Bound: { } bound } result) (tree, seen) = (bound, Scope.Of(result) with { Cell = seen.Cell });
            else if (tree is BoundOwnCall { Function.Body: { } body } own) (tree, seen) = (body, seen.Inside(Inside(seen, own, body)));
            else return (tree, seen);
        }
    }

    private ImmutableArray<Meaning> Inside(Scope seen, BoundOwnCall own, BoundExpression body)
    {
        Scope outer = scope;
        scope = seen;
        ImmutableArray<Meaning> parameters = Parameters(own.Function.Name, [.. own.Function.Parameters.Select(parameter => parameter.Name)], own.Arguments, index => Uses(body, index));
        scope = outer;
        return parameters;
    }

    private ImmutableArray<Meaning> Parameters(string function, ImmutableArray<string> names, ImmutableArray<BoundExpression> arguments, Func<int, int> uses) =>
        [.. arguments.Select((argument, i) => IsPlain(argument.Type) ? new Meaning(Shared(Emit(argument), uses(i), $"{function}: {names[i]}")) : new Meaning(default, argument, scope))];

    private static int Uses(BoundExpression tree, int index) => BoundChildren.All(tree).Count(node => node is BoundParameter parameter && parameter.Index == index);

    /// <summary>A declared formula with the arguments put in; outside the limits of the function there is no number.</summary>
    private FormulaText Formula(BoundCall call, FormulaAttribute formula)
    {
        DeclaredFormula declared = DeclaredFormula.Read(call.Function, formula.Text, library);
        BoundExpression[] conditions = [.. call.Function.Needs.Select(needs => DeclaredFormula.Read(call.Function, needs.Condition, library).Value)];
        ImmutableArray<LibraryParameter> parameters = call.Function.Parameters;
        ImmutableArray<Meaning> known = Parameters(call.Function.Name, [.. parameters.Select(parameter => parameter.Name)], call.Arguments, index => Uses(declared, conditions, index) + FunctionLimits.Count(parameters[index]));
        FormulaText[] limits = [.. parameters.SelectMany((parameter, i) => FunctionLimits.Of(parameter, known[i].Text))];
        FormulaText[] needs = [];
        FormulaText value = Within(scope.Inside(known), () =>
        {
            foreach ((string name, BoundExpression let) in declared.Lets)
                scope = scope.Inside(scope.Parameters.Add(new Meaning(Shared(Emit(let), Uses(declared, conditions, scope.Parameters.Length), $"{call.Function.Name}: {name}"))));
            needs = [.. conditions.Select(Emit)];
            return Emit(declared.Value);
        });
        limits = [.. limits, .. needs.Where(need => !IsDecided(need))];
        if (limits.Length == 0) return value;
        FormulaText inside = limits.Length == 1 ? limits[0] : FormulaText.Call("AND", limits);
        return FormulaText.Call("IF", inside, value, FormulaText.Call("NA"));
    }

    /// <summary>A condition between numbers written out has been judged by the engine already.</summary>
    private static bool IsDecided(FormulaText condition) => condition.Text.All(c => char.IsAsciiDigit(c) || c is '.' or '<' or '>' or '=' or '*' or '+' or '-' or '/' or '(' or ')' or 'E');

    private static int Uses(DeclaredFormula declared, BoundExpression[] conditions, int index) =>
        Uses(declared.Value, index) + declared.Lets.Sum(let => Uses(let.Value, index)) + conditions.Sum(condition => Uses(condition, index));
}
