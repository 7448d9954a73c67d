using System.Collections.Immutable;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Exports.Steps;

/// <summary>What stands for a node at one stage of a worked step; null where the node is written out.</summary>
internal delegate Notation? Substitute(BoundExpression node, NotationBuilder builder);

/// <summary>Writes a bound expression as notation; a stage says which nodes are replaced by symbols, numbers or values.</summary>
internal sealed class NotationBuilder(Substitute substitute) : BoundVisitor<Notation>
{
    private static readonly (string Sign, int Rank)[] Signs =
    [
        ("+", Ranks.Sum), ("−", Ranks.Sum), ("·", Ranks.Product), ("/", Ranks.Product), ("<", Ranks.Order), ("≤", Ranks.Order), (">", Ranks.Order), ("≥", Ranks.Order),
        ("=", Ranks.Equality), ("≠", Ranks.Equality), ("and", Ranks.And), ("or", Ranks.Or),
    ];

    /// <summary>True while the argument of a sine or its kin is written.</summary>
    public bool InTrigonometry { get; private set; }

    /// <summary>The notation of a node.</summary>
    public Notation Of(BoundExpression node) => substitute(node, this) ?? node.Accept(this);

    /// <summary>Something in brackets where it holds together less tightly than asked for.</summary>
    public static Notation AtLeast(int rank, Notation notation) => notation.Rank < rank ? new BracketNotation(notation) : notation;

    /// <summary>A function written with its arguments: elementary ones as mathematics writes them.</summary>
    public Notation Applied(string name, ImmutableArray<BoundExpression> arguments)
    {
        if (Elementary.Written(name, arguments.Length) is not { } written) return new CallNotation(new WordNotation(name), [.. arguments.Select(Of)]);
        bool before = InTrigonometry;
        InTrigonometry = before || Elementary.TakesAngle(name);
        ImmutableArray<Notation> parts = [.. arguments.Select(Of)];
        InTrigonometry = before;
        return written(parts);
    }

    public override Notation Visit(BoundNumber node) => node.Value switch
    {
        Math.PI => new SymbolNotation("π"),
        _ => new FigureNotation(NumberText.Exact(node.Value), ""),
    };

    public override Notation Visit(BoundUnitLiteral node) => new FigureNotation(NumberText.Exact(node.Value), node.Unit.Symbol);
    public override Notation Visit(BoundText node) => new WordNotation($"\"{node.Value}\"");
    public override Notation Visit(BoundTruth node) => new WordNotation(node.Value ? "true" : "false");
    public override Notation Visit(BoundOption node) => new WordNotation(node.Value.ToString());
    public override Notation Visit(BoundReference node) => new WordNotation("?");
    public override Notation Visit(BoundParameter node) => new SymbolNotation(node.Name);

    public override Notation Visit(BoundLibraryValue node) => node.Path is "Math.PI" or "PI" ? new SymbolNotation("π") : new WordNotation(node.Path);

    public override Notation Visit(BoundUnary node) => node.Operation == UnaryOperation.Not
        ? new SignedNotation("not", AtLeast(Ranks.Sign, Of(node.Operand)))
        : new SignedNotation("−", AtLeast(Ranks.Product, Of(node.Operand)));

    public override Notation Visit(BoundBinary node)
    {
        if (node is { Operation: BinaryOperation.Multiply, Left: BoundNumber { Value: 0 } }) return new FigureNotation("0", "");
        (string sign, int rank) = Signs[(int)node.Operation];
        Notation left = Of(node.Left), right = Of(node.Right);
        if (node.Operation == BinaryOperation.Divide) return new FractionNotation(left, right);
        int tighter = node.Operation == BinaryOperation.Subtract ? rank + 1 : rank;
        Notation second = right is FigureNotation { Rank: Ranks.Sign } or SignedNotation { Sign: "−" } ? new BracketNotation(right) : AtLeast(tighter, right);
        return new OperationNotation(AtLeast(rank, left), sign, second, rank);
    }

    public override Notation Visit(BoundPower node)
    {
        Notation inner = Of(node.Base);
        switch (node.Form)
        {
            case PowerForm.Sqrt: return new RootNotation(inner, null);
            case PowerForm.Cbrt: return new RootNotation(inner, new FigureNotation("3", ""));
            case PowerForm.Root when Degree(node.Exponent) is { } degree: return degree == 2 ? new RootNotation(inner, null) : new RootNotation(inner, new FigureNotation(NumberText.Exact(degree), ""));
            default: return new PowerNotation(AtLeast(Ranks.Atom, inner), Of(node.Exponent));
        }
    }

    public override Notation Visit(BoundConditional node)
    {
        var cases = ImmutableArray.CreateBuilder<(Notation, Notation?)>();
        BoundExpression rest = node;
        while (rest is BoundConditional choice)
        {
            cases.Add((Of(choice.WhenTrue), Of(choice.Test)));
            rest = choice.WhenFalse;
        }
        cases.Add((Of(rest), null));
        return new CasesNotation(cases.ToImmutable());
    }

    public override Notation Visit(BoundSwitch node) => new CasesNotation([.. node.Arms.Select(arm => (Of(arm.Value), Test(arm)))]);

    public override Notation Visit(BoundCall node) => node.Function.Name == "Near" && node.Arguments.Length == 3
        ? new OperationNotation(AtLeast(Ranks.Sum, Of(node.Arguments[0])), "≈", new RunNotation([AtLeast(Ranks.Sum, Of(node.Arguments[1])), new WordNotation("within"), Of(node.Arguments[2])]), Ranks.Equality)
        : Applied(node.Function.Name, node.Arguments);

    public override Notation Visit(BoundMath node) => Applied(node.Function.ToString(), node.Arguments);
    public override Notation Visit(BoundOwnCall node) => Applied(node.Function.Name, node.Arguments);
    public override Notation Visit(BoundMember node) => new MemberNotation(AtLeast(Ranks.Atom, Of(node.Target)), node.Member.Name);

    public override Notation Visit(BoundTextTest node) => node.Argument is null
        ? new MemberNotation(Of(node.Target), node.Operation.ToString())
        : new CallNotation(new MemberNotation(Of(node.Target), node.Operation.ToString()), [Of(node.Argument)]);

    public override Notation Visit(BoundWith node) => new RunNotation([Of(node.Target), new WordNotation("with"),
        .. node.Changes.SelectMany((change, i) => (IEnumerable<Notation>)[.. i > 0 ? (IEnumerable<Notation>)[new SignNotation(",")] : [], new OperationNotation(new WordNotation(change.Member.Name), "=", Of(change.Value), Ranks.Equality)])]);

    public override Notation Visit(BoundLambda node) => new OperationNotation(new WordNotation(string.Join(", ", node.Parameters.Select(parameter => parameter.Name))), "↦", Of(node.Body), Ranks.Case);
    public override Notation Visit(BoundSeries node) => new BracketNotation(new CallNotation(new WordNotation(""), [.. node.Values.Select(Of)]), "", "");

    public override Notation Visit(BoundSeriesOperation node) =>
        new CallNotation(new WordNotation(node.Operation.ToString()), node.Lambda is null ? [Of(node.Series)] : [Of(node.Series), Of(node.Lambda)]);

    public override Notation Visit(BoundSelection node)
    {
        ImmutableArray<Notation> values = [.. node.Values.Select(Of), .. node.Lambda is null ? (IEnumerable<Notation>)[] : [Of(node.Lambda)]];
        return new RunNotation([Of(node.Series), new WordNotation(node.Operation switch { SelectionOperation.Where => "where", SelectionOperation.WhereNot => "where not", _ => "beside" }), Of(node.By),
            .. values.SelectMany(value => (IEnumerable<Notation>)[new SignNotation(node.Lambda is null ? "=" : ":"), value])]);
    }

    public override Notation Visit(BoundComposedText node) => new RunNotation([.. node.Pieces.Select(piece => piece.Value is null ? new WordNotation($"\"{piece.Words}\"") : Of(piece.Value))]);

    private Notation? Test(BoundArm arm) => (arm.Pattern, arm.When) switch
    {
        (null, null) => null,
        ({ } pattern, null) => Of(pattern),
        (null, { } when) => Of(when),
        ({ } pattern, { } when) => new OperationNotation(AtLeast(Ranks.And, Of(pattern)), "and", AtLeast(Ranks.And, Of(when)), Ranks.And),
    };

    private static double? Degree(BoundExpression exponent) => exponent is BoundNumber number && Math.Abs(Math.Round(1 / number.Value) - (1 / number.Value)) < 1e-9 ? Math.Round(1 / number.Value) : null;
}
