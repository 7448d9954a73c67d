using System.Collections.Concurrent;
using System.Collections.Immutable;
using ScrewSheet.Engine;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>What a reference of a cell in the cone is: a value that stays, a cell that changes, or a run of both.</summary>
/// <param name="Id">The cell, or the run's first one.</param>
/// <param name="Constant">The value that stays; null for a cell that changes, and for one that has none.</param>
/// <param name="Cell">The place of the cell in the cone, or -1.</param>
/// <param name="Run">The members of a run; null for one cell.</param>
internal sealed record ConeInput(CellId Id, CellValue? Constant, int Cell, ImmutableArray<ConeInput>? Run = null)
{
    /// <summary>The run or column, where it is one.</summary>
    public CellReference Reference { get; init; }
}

/// <summary>A cell that changes with what is varied.</summary>
/// <param name="Result">What the calculation of the workbook as it stands says about it.</param>
/// <param name="Varied">Its place among the varied givens, or -1 for a result.</param>
/// <param name="Inputs">What its references are, by slot.</param>
/// <param name="Cautions">Those that come with the constants it reads, so always.</param>
internal sealed record ConeCell(CellResult Result, int Varied, ImmutableArray<ConeInput> Inputs, ImmutableArray<string> Cautions)
{
    public CellId Id => Result.Id;
}

/// <summary>The cells between what is varied and what is shown, each after all it reads; everything else is a constant.</summary>
internal sealed class Cone
{
    private readonly Calculation calculation;
    private readonly ImmutableArray<CellId> varied;
    private readonly Func<int, CellValue, string?>? written;
    private readonly Dictionary<CellId, int> places = [];
    private readonly Dictionary<CellId, bool> changes = [];
    private readonly List<ConeCell> cells = [];
    private readonly List<GivenSet> behind = [];
    private readonly Dictionary<CellId, int> givens;
    private readonly Dictionary<CellReference, ConeInput> runs = [];
    private readonly HashSet<CellReference> walked = [];
    private readonly ConcurrentDictionary<int, CellResult> bound = [];

    private Cone(Calculation calculation, ImmutableArray<CellId> varied, Func<int, CellValue, string?>? written)
    {
        (this.calculation, this.varied, this.written) = (calculation, varied, written);
        givens = varied.Select((id, place) => (id, place)).ToDictionary(pair => pair.id, pair => pair.place);
    }

    public Calculation Calculation => calculation;

    public Workbook Workbook => calculation.Workbook;

    /// <summary>The varied givens, in order.</summary>
    public ImmutableArray<CellId> Varied => varied;

    /// <summary>The cells that change, in order.</summary>
    public IReadOnlyList<ConeCell> Cells => cells;

    /// <summary>The place of each shown cell among <see cref="Cells"/>; -1 for one that does not change.</summary>
    public ImmutableArray<int> Shown { get; private set; } = [];

    /// <summary>The shown cells, in order.</summary>
    public ImmutableArray<CellId> ShownIds { get; private set; } = [];

    /// <summary>The cone of these cells.</summary>
    /// <param name="calculation">The workbook as it stands.</param>
    /// <param name="varied">The varied givens.</param>
    /// <param name="shown">The shown cells.</param>
    /// <param name="written">How a value of a varied given is written, by its place, where it is no number, text or yes-or-no.</param>
    public static Cone Of(Calculation calculation, ImmutableArray<CellId> varied, IReadOnlyList<CellId> shown, Func<int, CellValue, string?>? written = null)
    {
        Cone cone = new(calculation, varied, written);
        foreach (CellId id in shown) cone.Walk(id);
        cone.ShownIds = [.. shown];
        cone.Shown = [.. shown.Select(id => cone.places.GetValueOrDefault(id, -1))];
        return cone;
    }

    /// <summary>True where a varied given reaches a shown cell.</summary>
    public bool Reaches(CellId given) => places.ContainsKey(given);

    /// <summary>The varied givens a cell of the cone depends on, by their places.</summary>
    public GivenSet Behind(int cell) => behind[cell];

    /// <summary>What is known of a cell: what the workbook as it stands gives, or what another scenario gave where the cell was first bound.</summary>
    public CellResult Known(int place) => cells[place].Result is { Bound: null } && bound.TryGetValue(place, out CellResult? later) ? later : cells[place].Result;

    /// <summary>
    /// What is known of a cell whose inputs all have values in a scenario. Where one of them is in fault as the workbook stands, the cell waits and is not bound;
    /// it is then looked up once in the workbook with the scenario's givens. Safe for several threads.
    /// </summary>
    /// <param name="place">The cell.</param>
    /// <param name="values">The values of the varied givens in the scenario.</param>
    /// <param name="library">The library.</param>
    /// <param name="stop">Stops it.</param>
    public CellResult Bound(int place, IReadOnlyList<CellValue> values, FunctionLibrary library, CancellationToken stop)
    {
        if (Known(place) is not { Bound: null, Fault.Kind: FaultKind.Waiting } || bound.ContainsKey(place)) return Known(place);
        lock (bound)
        {
            if (!bound.ContainsKey(place)) BindAll(place, new Calculator(library).Calculate(Scenario(values), stop));
        }
        return Known(place);
    }

    private void BindAll(int place, Calculation scenario)
    {
        for (int i = 0; i < cells.Count; i++)
            if (cells[i] is { Varied: < 0, Result.Bound: null } cell && scenario.Cells[cell.Id] is var there && (i == place || there.Bound is not null)) bound.TryAdd(i, there);
    }

    private Workbook Scenario(IReadOnlyList<CellValue> values)
    {
        Workbook workbook = Workbook;
        for (int i = 0; i < values.Count; i++) workbook = ScenarioWorkbook.With(workbook, varied[i], values[i], written?.Invoke(i, values[i]));
        return workbook;
    }

    private static IEnumerable<int> Members(ConeInput input) => input.Run is { } run ? run.Select(member => member.Cell) : [input.Cell];

    /// <summary>Takes in a cell and all it reads, without recursion: a chain may be as long as a sheet.</summary>
    private void Walk(CellId start)
    {
        Stack<(CellId Id, bool Entered)> open = new([(start, false)]);
        while (open.TryPop(out var top))
        {
            if (changes.ContainsKey(top.Id)) continue;
            CellResult? result = calculation.Cells.GetValueOrDefault(top.Id);
            if (top.Entered || givens.ContainsKey(top.Id) || result is null || result.Cell.Content is GivenContent) Settle(top.Id, result);
            else
            {
                open.Push((top.Id, true));
                // what is in a run is settled once, however many cells read the run
                foreach (CellId read in result.References.Where(reference => reference.Last is null || walked.Add(reference)).SelectMany(reference => ReadCells.Of(Workbook, reference)))
                    if (!changes.ContainsKey(read)) open.Push((read, false));
            }
        }
    }

    private void Settle(CellId id, CellResult? result)
    {
        int given = givens.GetValueOrDefault(id, -1);
        ImmutableArray<ConeInput> inputs = given < 0 && result is { Cell.Content: ResultContent } ? [.. result.References.Select(Input)] : [];
        changes[id] = given >= 0 || inputs.SelectMany(Members).Any(at => at >= 0);
        if (!changes[id]) return;
        places.Add(id, cells.Count);
        behind.Add(given >= 0 ? GivenSet.Of(given) : GivenSet.Union(inputs.SelectMany(Members).Where(at => at >= 0).Select(at => behind[at])));
        cells.Add(new ConeCell(result!, given, inputs, [.. inputs.SelectMany(input => input.Run ?? [input]).Where(input => input.Cell < 0).SelectMany(CautionsOf).Distinct()]));
    }

    private IEnumerable<string> CautionsOf(ConeInput input) =>
        (calculation.Cells.GetValueOrDefault(input.Id)?.Cautions ?? []).Select(caution => UsualRange.WithoutValue(caution.Message));

    /// <summary>Cells that read the same run share what is known of it.</summary>
    private ConeInput Input(CellReference reference)
    {
        if (reference.Last is null) return Input(reference.First);
        if (!runs.TryGetValue(reference, out ConeInput? run))
            runs.Add(reference, run = new ConeInput(reference.First, null, -1, [.. ReadCells.Of(Workbook, reference).Select(Input)]) { Reference = reference });
        return run;
    }

    private ConeInput Input(CellId id) => places.TryGetValue(id, out int place) ? new ConeInput(id, null, place) : new ConeInput(id, calculation.Cells.GetValueOrDefault(id)?.Value, -1);
}
