using System.Collections.Immutable;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Steps;

/// <summary>Makes worked steps from the bound trees of results.</summary>
/// <param name="tools">What they are made with.</param>
public sealed class StepBuilder(StepTools tools)
{
    private const int MostCalls = 6, LargestInlined = 40;

    // the step with its numbers, by which it is decided what is worth saying: with blanks for them all numbers look alike
    private readonly StepBuilder? solved = tools.Blanks ? new StepBuilder(tools with { Blanks = false }) : null;
    private readonly Figures figures = new(tools);
    private readonly FormulaSteps formulas = new(tools);

    /// <summary>The step of a result; without a formula where it could not be bound, without a result where it is in fault.</summary>
    public WorkedStep Of(CellResult cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        WorkedStep step = Whole(cell);
        return step.WithoutRepetition(solved?.Whole(cell) ?? step);
    }

    private WorkedStep Whole(CellResult cell)
    {
        WorkedStep step = new(cell, CellNaming.Of(tools.Calculation.Workbook, cell.Id, cell.Id.Sheet));
        if (cell.Bound is not { } tree) return step;
        step = step with { Formula = new NotationBuilder((node, _) => Symbol(cell, node)).Of(tree) };
        if (cell.Value is null) return step;
        ImmutableArray<BoundExpression> calls = Explained(cell, tree);
        Notation? result = figures.OfCell(cell, isAnswer: true), numbers = IsValue(tree) ? null : new NotationBuilder((node, builder) => Number(cell, node, builder, [])).Of(tree);
        return step with
        {
            Calls = [.. calls.Take(MostCalls).Select(call => formulas.Of(cell, call, call == tree ? cell : null, node => new NotationBuilder((inner, _) => Symbol(cell, inner)).Of(node), node => Value(cell, node, null)))],
            MoreCalls = Math.Max(0, calls.Length - MostCalls),
            Numbers = numbers,
            Result = result,
        };
    }

    /// <summary>The formula of one of the author's functions, and its name with its parameters; null where it is in fault.</summary>
    internal static (Notation Head, Notation Body)? Own(OwnFunction function)
    {
        if (function.Body is null) return null;
        Notation head = new CallNotation(new WordNotation(function.Name), [.. function.Parameters.Select(parameter => new SymbolNotation(parameter.Name))]);
        return (head, new NotationBuilder((_, _) => null).Of(function.Body));
    }

    /// <summary>A cell by its name.</summary>
    private Notation? Symbol(CellResult cell, BoundExpression node) => node is BoundReference reference && reference.Slot < cell.References.Length
        ? CellNaming.Of(tools.Calculation.Workbook, cell.References[reference.Slot], cell.Id.Sheet) : null;

    /// <summary>A cell, a call or a ready value by its number.</summary>
    private Notation? Number(CellResult cell, BoundExpression node, NotationBuilder builder, ImmutableArray<Notation> arguments) => node switch
    {
        BoundUnitLiteral literal => figures.Literal(literal, convert: true),
        BoundReference reference => Cell(cell, reference) ?? Symbol(cell, node),
        BoundParameter parameter when parameter.Index < arguments.Length => arguments[parameter.Index],
        BoundOwnCall call when Inlined(call) is { } body => Inside(cell, call, body, builder),
        _ when arguments.IsEmpty && IsValue(node) => Value(cell, node, null) ?? Symbol(cell, node),
        BoundLibraryValue value => Value(cell, value, null),
        _ => null,
    };

    private Notation? Cell(CellResult cell, BoundReference reference)
    {
        if (reference.Slot >= cell.References.Length || cell.References[reference.Slot] is not { Last: null } to) return null;
        CellResult? read = tools.Calculation.Cells.GetValueOrDefault(to.First);
        return read?.Value is NumberValue or QuantityValue or TruthValue or OptionValue ? figures.OfCell(read, isAnswer: true) : null;
    }

    // the author's function with its arguments in the places of its parameters
    private Notation Inside(CellResult cell, BoundOwnCall call, BoundExpression body, NotationBuilder builder)
    {
        ImmutableArray<Notation> arguments = [.. call.Arguments.Select(argument => NotationBuilder.AtLeast(Ranks.Product, builder.Of(argument)))];
        Notation inner = new NotationBuilder((node, nested) => Number(cell, node, nested, arguments)).Of(body);
        return NotationBuilder.AtLeast(Ranks.Product, inner);
    }

    private static BoundExpression? Inlined(BoundOwnCall call) =>
        call.Function.Body is { } body && BoundChildren.All(body).Take(LargestInlined + 1).Count() <= LargestInlined
        && BoundChildren.All(body).All(node => node is BoundNumber or BoundUnitLiteral or BoundParameter or BoundUnary or BoundBinary or BoundPower or BoundConditional or BoundMath || (node is BoundCall inner && Elementary.Is(inner.Function.Name)))
            ? body : null;

    /// <summary>The value of a piece of a cell's expression; null where it cannot be written beside mathematics.</summary>
    private Notation? Value(CellResult cell, BoundExpression node, CellResult? shownAs)
    {
        if (node is BoundReference reference && Cell(cell, reference) is { } read) return read;
        if (node is BoundUnitLiteral literal) return figures.Literal(literal, convert: true);
        if (node is BoundNumber number) return new NotationBuilder((_, _) => null).Of(number);
        CellValue? value = tools.Evaluate(cell, node, []);
        return value is null ? null : figures.Of(value, shownAs is null ? null : tools.FormatOf(shownAs));
    }

    /// <summary>A node that stands for one value a reader does not work out by hand: a call of the library, a member of one, what is made of a series.</summary>
    private static bool IsValue(BoundExpression node) => node switch
    {
        BoundCall call => !Elementary.Is(call.Function.Name),
        BoundMember or BoundSeriesOperation or BoundSelection or BoundWith or BoundTextTest or BoundComposedText => true,
        BoundOwnCall own => Inlined(own) is null,
        _ => false,
    };

    /// <summary>The calls that are explained, each once, those inside others first; a call with a member after it stands there with it.</summary>
    private ImmutableArray<BoundExpression> Explained(CellResult cell, BoundExpression tree)
    {
        List<BoundExpression> found = [];
        Gather(tree, null, found);
        HashSet<string> known = [];
        return [.. found.Where(call => known.Add(Fingerprint(cell, call)))];
    }

    private static void Gather(BoundExpression node, BoundMember? after, List<BoundExpression> found)
    {
        if (node is BoundLambda) return;
        foreach (BoundExpression child in BoundChildren.Of(node)) Gather(child, node as BoundMember, found);
        if (node is BoundCall call && !Elementary.Is(call.Function.Name)) found.Add(after is null ? node : after);
    }

    private static string Fingerprint(CellResult cell, BoundExpression call) =>
        LinearText.Of(new NotationBuilder((node, _) => node is BoundReference reference ? new WordNotation($"{cell.References.ElementAtOrDefault(reference.Slot)}") : null).Of(call));
}
