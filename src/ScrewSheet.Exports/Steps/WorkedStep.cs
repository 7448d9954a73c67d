using System.Collections.Immutable;
using ScrewSheet.Quantities.Declarations;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Steps;

/// <summary>How a result came about: its formula, the functions it calls with their own numbers, the numbers put in, and what comes out.</summary>
public sealed record WorkedStep
{
    internal WorkedStep(CellResult cell, Notation name) => (Cell, Name) = (cell, name);

    /// <summary>The cell.</summary>
    public CellResult Cell { get; }

    internal Notation Name { get; }

    /// <summary>True where it holds or fails.</summary>
    internal bool IsTruth => Cell.Value is TruthValue;

    /// <summary>Without the stages that only repeat another one.</summary>
    /// <param name="solved">The same step with its numbers.</param>
    internal WorkedStep WithoutRepetition(WorkedStep solved) => this with
    {
        Numbers = solved.Numbers == solved.Formula || solved.Numbers == solved.Result ? null : Numbers,
        Calls = [.. Calls.Zip(solved.Calls, (call, other) => call with { Lets = Thinned(call.Lets, other.Lets), Formulas = Thinned(call.Formulas, other.Formulas) })],
    };

    private static ImmutableArray<FormulaStep> Thinned(ImmutableArray<FormulaStep> formulas, ImmutableArray<FormulaStep> solved) =>
        [.. formulas.Zip(solved, (formula, other) => other.Numbers == other.Formula || other.Numbers == other.Result ? formula with { Numbers = null } : formula)];

    /// <summary>The lines of mathematics before the calls are explained: all of it where there are none.</summary>
    internal IEnumerable<ImmutableArray<Notation>> Opening(int width)
    {
        if (Formula is null) return [];
        if (IsTruth) return [Pieces.OfChain(Name, [Formula], width, ":"), .. Calls.IsEmpty ? Closing(width) : []];
        return [Pieces.OfChain(Name, Calls.IsEmpty ? [Formula, Numbers, Result] : [Formula], width)];
    }

    /// <summary>The lines after them.</summary>
    internal IEnumerable<ImmutableArray<Notation>> Closing(int width)
    {
        if (Numbers is null && Result is null) return [];
        return IsTruth ? [Pieces.OfChain(Numbers ?? Name, [Result], width, ":")] : [Pieces.OfChain(Name, [Numbers, Result], width)];
    }

    internal Notation? Formula { get; init; }

    internal ImmutableArray<CallStep> Calls { get; init; } = [];

    internal Notation? Numbers { get; init; }

    internal Notation? Result { get; init; }

    /// <summary>How many calls are not explained because there are too many.</summary>
    internal int MoreCalls { get; init; }
}

/// <summary>A formula worked out: a symbol, what it equals, the numbers put in, what comes out.</summary>
internal sealed record FormulaStep(Notation Symbol, Notation Formula, Notation? Numbers, Notation? Result);

/// <summary>What a parameter of a library function is in a call.</summary>
internal sealed record ParameterStep(Notation Symbol, Notation Argument, Notation? Value, string Meaning);

/// <summary>A call of a library function, explained by its declaration.</summary>
internal sealed record CallStep
{
    public required string Function { get; init; }

    public required string Answers { get; init; }

    public ImmutableArray<ParameterStep> Parameters { get; init; } = [];

    /// <summary>The named intermediates, in order.</summary>
    public ImmutableArray<FormulaStep> Lets { get; init; } = [];

    public ImmutableArray<FormulaStep> Formulas { get; init; } = [];

    /// <summary>The step of a handout that explains the same call already, so that only what differs is said again; 0 where none does.</summary>
    public int EarlierStep { get; init; }

    /// <summary>How it works where it has no closed formula, or null.</summary>
    public string? Method { get; init; }

    /// <summary>True where the formula holds for numbers in coherent SI units only, so that they are put in so.</summary>
    public bool IsCoherent { get; init; }

    public ImmutableArray<SourceAttribute> Sources { get; init; } = [];
}
