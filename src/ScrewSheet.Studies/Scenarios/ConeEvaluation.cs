using ScrewSheet.Engine;
using ScrewSheet.Quantities;
using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>What became of one shown cell in one scenario.</summary>
/// <param name="Value">Its value, or null with a fault.</param>
/// <param name="Fault">Why it has none.</param>
/// <param name="Cautions">The cautions that ride with it, without values.</param>
internal readonly record struct ConeResult(CellValue? Value, Fault? Fault, string[] Cautions);

/// <summary>Evaluates a cone cell by cell, with the engine's own code: what a calculation of the workbook with those givens gives.</summary>
/// <remarks>For one thread at a time.</remarks>
internal sealed class ConeEvaluation
{
    private static readonly string[] None = [];

    private readonly Dictionary<CellReference, CellValue> constantRuns = [];
    private readonly Cone cone;
    private readonly FunctionLibrary library;
    private readonly CancellationToken stop;
    private readonly TreeEvaluation trees;
    private readonly ConeResult[] results;
    private readonly DisplayFormat?[]?[] formats;
    private readonly CellValue?[][] inputs;

    public ConeEvaluation(Cone cone, FunctionLibrary library, CancellationToken stop)
    {
        (this.cone, this.library, this.stop) = (cone, library, stop);
        trees = new TreeEvaluation(library, cone.Workbook.Head.Units, stop);
        results = new ConeResult[cone.Cells.Count];
        inputs = [.. cone.Cells.Select(cell => new CellValue?[cell.Inputs.Length])];
        formats = [.. cone.Cells.Select(cell => (DisplayFormat?[]?)[.. cell.Inputs.Select(input => cone.Calculation.Cells.GetValueOrDefault(input.Id)?.Cell.Format)])];
    }

    /// <summary>The results of the cone's cells after <see cref="Run"/>, by their place.</summary>
    public IReadOnlyList<ConeResult> Results => results;

    /// <summary>Puts values in for the varied givens and works everything out.</summary>
    public void Run(IReadOnlyList<CellValue> values)
    {
        for (int i = 0; i < results.Length; i++)
        {
            ConeCell cell = cone.Cells[i];
            results[i] = cell.Varied >= 0 ? Given(cell, values[cell.Varied]) : Result(cell, i, values);
        }
    }

    /// <summary>The fault another one waits for, with the cell it arose in; the fault itself where it waits for none here.</summary>
    public Fault Root(Fault fault)
    {
        if (fault.Kind != FaultKind.Waiting) return fault;
        for (int i = 0; i < results.Length; i++)
            if (results[i].Fault is { Kind: not FaultKind.Waiting } root && cone.Cells[i].Id.ToString() == fault.Cause) return root;
        return fault;
    }

    private ConeResult Given(ConeCell cell, CellValue value)
    {
        bool outside = cell.Result.Cell.Content is GivenContent { Within: { } limits } && SiValue.Of(value) is { } si && (si < limits.FromSi || si > limits.ToSi);
        if (!outside) return new ConeResult(value, null, None);
        string shown = ValueText.Format(value, cell.Result.Cell.Format, cone.Workbook.Head.Units).Joined;
        return new ConeResult(null, TreeEvaluation.OutsideLimits(shown, ((GivenContent)cell.Result.Cell.Content).Within!.Text) with { Cause = cell.Id.ToString() }, None);
    }

    private ConeResult Result(ConeCell cell, int at, IReadOnlyList<CellValue> values)
    {
        foreach (ConeInput input in cell.Inputs)
            if (Failed(input) is { } failed) return new ConeResult(null, Waits(cell, failed), None);
        CellResult known = cell.Result.Bound is null ? cone.Bound(at, values, library, stop) : cell.Result;
        if (known.Bound is not { } tree) return new ConeResult(null, known.Fault! with { Place = null, Cause = known.Fault!.Cause ?? cell.Id.ToString() }, None);
        HashSet<string>? cautions = cell.Cautions.IsEmpty ? null : [.. cell.Cautions];
        CellValue?[] read = inputs[at];
        for (int slot = 0; slot < read.Length; slot++) read[slot] = ValueOf(cell, slot, ref cautions);
        Evaluated evaluated = trees.Run(tree, read, formats[at]);
        if (evaluated.Value is null) return new ConeResult(null, evaluated.Fault! with { Place = null, Cause = cell.Id.ToString() }, None);
        foreach (string caution in evaluated.Cautions) (cautions ??= []).Add(UsualRange.WithoutValue(caution));
        return new ConeResult(AsDeclared(cell, evaluated.Value), null, cautions is null ? None : [.. cautions]);
    }

    private CellValue ValueOf(ConeCell cell, int slot, ref HashSet<string>? cautions)
    {
        ConeInput input = cell.Inputs[slot];
        if (input.Run is not { } run) return Take(input, ref cautions);
        bool stays = run.All(member => member.Cell < 0);
        if (stays && constantRuns.TryGetValue(input.Reference, out CellValue? known)) return known;
        List<(CellId, CellValue)> values = [];
        foreach (ConeInput member in run) values.Add((member.Id, Take(member, ref cautions)));
        CellValue series = RunSeries.Of(input.Reference, values);
        if (stays) constantRuns.Add(input.Reference, series);
        return series;
    }

    private CellValue Take(ConeInput input, ref HashSet<string>? cautions)
    {
        if (input.Cell < 0) return input.Constant!;
        foreach (string caution in results[input.Cell].Cautions) (cautions ??= []).Add(caution);
        return results[input.Cell].Value!;
    }

    /// <summary>The first member of an input without a value, or null.</summary>
    private ConeInput? Failed(ConeInput input)
    {
        if (input.Run is { } run) return run.FirstOrDefault(member => Failed(member) is not null);
        return (input.Cell < 0 ? input.Constant : results[input.Cell].Value) is null ? input : null;
    }

    private Fault Waits(ConeCell cell, ConeInput failed)
    {
        string own = cone.Workbook.Find(failed.Id.Sheet)?.Cells.GetValueOrDefault(failed.Id.Address)?.Name ?? failed.Id.Address.ToString();
        Fault? why = failed.Cell >= 0 ? results[failed.Cell].Fault : cone.Calculation.Cells.GetValueOrDefault(failed.Id)?.Fault;
        return TreeEvaluation.Waits(failed.Id.Sheet == cell.Id.Sheet ? own : $"{failed.Id.Sheet}.{own}", why?.Cause ?? failed.Id.ToString());
    }

    /// <summary>A value as the type its cell is declared with: a bare product in N·m as the torque it is.</summary>
    private static CellValue AsDeclared(ConeCell cell, CellValue value)
    {
        if (value is not QuantityValue quantity || cell.Result.Cell.DeclaredType is not { } name || QuantityKinds.ByName(name) is not { } kind) return value;
        return new QuantityValue(quantity.Si, new QuantityType(quantity.Quantity.Dimension, kind));
    }
}
