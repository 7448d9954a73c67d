using ScrewSheet.Studies.Kernels;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>Works out blocks of scenarios: shown cells with a kernel by it, the others cell by cell.</summary>
/// <remarks>For one thread. What it holds belongs to the last block.</remarks>
internal sealed class BlockEvaluator
{
    private readonly ScenarioModel model;
    private readonly StudyTools tools;
    private readonly CancellationToken stop;
    private readonly int[] codes;
    private readonly CellValue[] values;
    private ConeEvaluation? evaluation;

    public BlockEvaluator(ScenarioModel model, StudyTools tools, int size, CancellationToken stop)
    {
        (this.model, this.tools, this.stop) = (model, tools, stop);
        int shown = model.Kernels.Length;
        Inputs = [.. model.Inputs.Where(input => input >= 0).Select(_ => new double[size])];
        Outputs = [.. Enumerable.Range(0, shown).Select(_ => new double[size])];
        Others = [.. Enumerable.Range(0, shown).Select(_ => new Dictionary<int, CellValue>())];
        Faults = [.. Enumerable.Range(0, shown).Select(_ => new Dictionary<int, Fault>())];
        Cautions = [.. Enumerable.Range(0, shown).Select(_ => new Dictionary<string, long>())];
        (codes, values) = (new int[size], new CellValue[model.Values.Length]);
    }

    /// <summary>The values of the numeric varied givens, to be filled in; in coherent SI.</summary>
    public double[][] Inputs { get; }

    /// <summary>The results of each shown cell in coherent SI, a check as 1 or 0; NaN where there is a fault or another kind of value.</summary>
    public double[][] Outputs { get; }

    /// <summary>Results that are no numbers, by scenario.</summary>
    public Dictionary<int, CellValue>[] Others { get; }

    /// <summary>The faults of each shown cell, by scenario.</summary>
    public Dictionary<int, Fault>[] Faults { get; }

    /// <summary>How often each caution applied, for each shown cell.</summary>
    public Dictionary<string, long>[] Cautions { get; }

    /// <summary>Works out the first scenarios of the block.</summary>
    /// <param name="count">How many.</param>
    /// <param name="wordEach">True to word every fault by itself; false to word one of each sort.</param>
    public void Run(int count, bool wordEach)
    {
        for (int shown = 0; shown < Outputs.Length; shown++)
        {
            Others[shown].Clear();
            Faults[shown].Clear();
            Cautions[shown].Clear();
            if (model.Cone.Shown[shown] >= 0 && model.Kernels[shown] is { } kernel) ByKernel(shown, kernel, count, wordEach);
        }
        if (model.IsCompiled) return;
        for (int i = 0; i < count; i++)
        {
            if ((i & 63) == 0) stop.ThrowIfCancellationRequested();
            ConeEvaluation worked = Evaluate(i);
            for (int shown = 0; shown < Outputs.Length; shown++)
                if (model.Cone.Shown[shown] >= 0 && model.Kernels[shown] is null) Take(shown, i, worked.Results[model.Cone.Shown[shown]]);
        }
    }

    private void ByKernel(int shown, Kernel kernel, int count, bool wordEach)
    {
        Array.Clear(codes, 0, count);
        CautionTally tally = new();
        kernel.Run(Inputs, Outputs[shown], codes, tally, 0, count);
        int fine = codes.AsSpan(0, count).Count(0);
        for (int bit = 0; bit < kernel.Cautions.Count; bit++)
            if (((kernel.Always & (1L << bit)) != 0 ? fine : tally.Counts[bit]) is > 0 and var times) Cautions[shown][kernel.Cautions[bit]] = times;
        if (fine == count) return;
        Dictionary<int, Fault> worded = [];
        for (int i = 0; i < count; i++)
        {
            if (codes[i] == 0) continue;
            if (!wordEach && worded.TryGetValue(codes[i], out Fault? same)) Faults[shown].Add(i, same);
            else
            {
                Take(shown, i, Evaluate(i).Results[model.Cone.Shown[shown]]);
                if (Faults[shown].TryGetValue(i, out Fault? fault)) worded[codes[i]] = fault;
            }
        }
    }

    private ConeEvaluation Evaluate(int scenario)
    {
        evaluation ??= new ConeEvaluation(model.Cone, tools.Library, stop);
        model.Put(values, input => Inputs[input][scenario]);
        evaluation.Run(values);
        return evaluation;
    }

    private void Take(int shown, int scenario, ConeResult result)
    {
        Outputs[shown][scenario] = result.Value switch
        {
            TruthValue truth => truth.Value ? 1 : 0,
            CellValue value => SiValue.Of(value) ?? double.NaN,
            null => double.NaN,
        };
        if (result.Fault is { } fault) Faults[shown].Add(scenario, evaluation!.Root(fault));
        else if (double.IsNaN(Outputs[shown][scenario])) Others[shown].Add(scenario, result.Value!);
        foreach (string caution in result.Cautions) Cautions[shown][caution] = Cautions[shown].GetValueOrDefault(caution) + 1;
    }
}
