using System.Collections.Immutable;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Tests;

/// <summary>
/// Results made by hand: a given has its literal's value, a result what the test says for its expression.
/// What is printed is tested here; that it is right is the engine's own matter.
/// </summary>
internal sealed class FakeCalculator : ICalculator
{
    private readonly Dictionary<string, Func<FakeCalculator, Outcome>> outcomes = [];
    private readonly Dictionary<string, Caution[]> cautions = [];
    private readonly Dictionary<string, KeptState> kept = [];
    private Dictionary<string, CellValue> named = [];

    public ImmutableArray<LibraryFunction> Functions { get; init; } = [];

    public FunctionLibrary Library => FunctionLibrary.Of();

    public Studies.StudyRunner Studies => new(FunctionLibrary.Of());

    /// <summary>What a result with that expression gives.</summary>
    public FakeCalculator Gives(string expression, Outcome outcome)
    {
        outcomes[expression] = _ => outcome;
        return this;
    }

    /// <summary>What it gives from a given's value in coherent SI.</summary>
    public FakeCalculator Gives(string expression, string given, Func<double, Outcome> outcome)
    {
        outcomes[expression] = self => outcome(((QuantityValue)self.named[given]).Si);
        return this;
    }

    public FakeCalculator Cautions(string expression, params Caution[] sentences)
    {
        cautions[expression] = sentences;
        return this;
    }

    public FakeCalculator Kept(string expression, KeptState state)
    {
        kept[expression] = state;
        return this;
    }

    /// <summary>A quantity of a kind, from a value in a unit.</summary>
    public static Computed Quantity(double value, string unit, string kind)
    {
        Assert.True(UnitText.TryParse(unit, out Unit? parsed, out string? problem), problem);
        QuantityKind named = QuantityKinds.ByName(kind)!;
        return new Computed(new QuantityValue(parsed.ToSi(value), new QuantityType(named.Dimension, named)));
    }

    public static Computed Truth(bool value) => new(new TruthValue(value));

    public static Computed Number(double value) => new(new NumberValue(value));

    public static Computed Text(string value) => new(new TextValue(value));

    public static Faulted Fault(FaultKind kind, string message, string? remedy = null, string? cause = null) => new(new Fault(4001, kind, message, remedy) { Cause = cause });

    public Calculation Calculate(Workbook workbook)
    {
        Cell[] givens = [.. workbook.Sheets.SelectMany(sheet => sheet.CellsInOrder).Where(cell => cell is { Name: not null, Content: GivenContent })];
        named = givens.ToDictionary(cell => cell.Name!, cell => ((Computed)Given((GivenContent)cell.Content)).Value);
        return new Calculation(workbook, CellResults.Of(workbook.Sheets.SelectMany(sheet => sheet.CellsInOrder.Select(cell => Result(new CellId(sheet.Name, cell.Address), cell)))), workbook.Faults);
    }

    private CellResult Result(CellId id, Cell cell)
    {
        Outcome? outcome = cell.Content switch
        {
            GivenContent given => Given(given),
            ResultContent result => outcomes[result.Expression](this),
            BrokenContent broken => new Faulted(broken.Fault),
            _ => null,
        };
        string expression = (cell.Content as ResultContent)?.Expression ?? "";
        CellType? type = (outcome as Computed)?.Value.Type;
        return new CellResult
        {
            Id = id, Cell = cell, Outcome = outcome, Type = type, IsCheck = type is TruthType && cell.DeclaredType is null && cell.Content is ResultContent,
            Cautions = [.. cautions.GetValueOrDefault(expression, [])], Kept = kept.GetValueOrDefault(expression),
        };
    }

    private static Outcome Given(GivenContent given) => given.Literal switch
    {
        NumberLiteral { Unit: { Kind: QuantityKind kind } unit } number => new Computed(new QuantityValue(number.Si, new QuantityType(unit.Dimension, kind))),
        NumberLiteral number => new Computed(new NumberValue(number.Si)),
        TextLiteral text => new Computed(new TextValue(text.Value)),
        TruthLiteral truth => new Computed(new TruthValue(truth.Value)),
        _ => throw new InvalidOperationException("This stand-in computes literals only."),
    };
}
