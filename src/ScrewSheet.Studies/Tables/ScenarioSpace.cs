using System.Collections.Concurrent;
using System.Collections.Immutable;
using ScrewSheet.Studies.Scenarios;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Expressions;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Tables;

/// <summary>All combinations of the values of several axes, worked out in blocks on several threads.</summary>
/// <remarks>Values that are no numbers (materials, options) make groups: a kernel runs over the numbers of one group.</remarks>
internal sealed class ScenarioSpace
{
    private const int Block = 4096, SmallBlock = 64, MostGroups = 64, FewScenarios = 384;

    private readonly StudyTools tools;
    private readonly ImmutableArray<WhatIfAxis> axes;
    private readonly ImmutableArray<int> numeric, grouping;
    private readonly int groups, perGroup;
    private readonly StudyMethod method;

    public ScenarioSpace(StudyTools tools, ImmutableArray<WhatIfAxis> axes, Cone cone, StudyMethod method)
    {
        (this.tools, this.axes, this.method, Cone) = (tools, axes, method, cone);
        numeric = [.. Enumerable.Range(0, axes.Length).Where(i => axes[i].IsNumeric)];
        grouping = [.. Enumerable.Range(0, axes.Length).Where(i => !axes[i].IsNumeric)];
        perGroup = numeric.Aggregate(1, (product, i) => product * axes[i].Values.Length);
        groups = grouping.Aggregate(1, (product, i) => product * axes[i].Values.Length);
    }

    public Cone Cone { get; }

    /// <summary>Works everything out.</summary>
    /// <param name="room">How much it may hold of what is no number: texts, records and faults.</param>
    /// <param name="progress">Told what share is done.</param>
    /// <param name="stop">Stops it.</param>
    /// <exception cref="NoRoom">It would hold more.</exception>
    public WhatIfTable Fill(HeldEntries room, IProgress<double>? progress, CancellationToken stop)
    {
        int shown = Cone.Shown.Length, scenarios = groups * perGroup;
        double[][] numbers = [.. Cone.Shown.Select(_ => new double[scenarios])];
        ConcurrentDictionary<int, CellValue>[] others = [.. Cone.Shown.Select(_ => new ConcurrentDictionary<int, CellValue>())];
        ConcurrentDictionary<int, Fault>[] faults = [.. Cone.Shown.Select(_ => new ConcurrentDictionary<int, Fault>())];
        ConcurrentDictionary<string, long>[] cautions = [.. Cone.Shown.Select(_ => new ConcurrentDictionary<string, long>())];
        bool compile = method != StudyMethod.CellByCell && groups <= MostGroups && (method == StudyMethod.Kernel || perGroup >= FewScenarios);
        ScenarioModel[] models = [.. Enumerable.Range(0, groups).Select(group => Model(group, compile))];
        int size = models.All(model => model.IsCompiled) ? Block : SmallBlock, blocks = (perGroup + size - 1) / size;
        Workers.Run((long)groups * blocks, tools.Threads, () => new Dictionary<int, BlockEvaluator>(), Work, progress, stop);
        return new WhatIfTable { Axes = axes, Columns = [.. Enumerable.Range(0, shown).Select(Column)] };

        void Work(Dictionary<int, BlockEvaluator> known, long piece)
        {
            int group = (int)(piece / blocks), from = (int)(piece % blocks) * size, count = Math.Min(size, perGroup - from);
            if (!known.TryGetValue(group, out BlockEvaluator? evaluator)) known.Add(group, evaluator = new BlockEvaluator(models[group], tools, size, stop));
            int[] at = new int[count];
            for (int i = 0; i < count; i++) at[i] = Place(group, from + i, evaluator.Inputs, i);
            evaluator.Run(count, wordEach: true);
            foreach (int column in Enumerable.Range(0, shown).Where(column => Cone.Shown[column] >= 0))
            {
                for (int i = 0; i < count; i++) numbers[column][at[i]] = evaluator.Outputs[column][i];
                foreach (var (i, value) in evaluator.Others[column]) others[column][at[i]] = value;
                foreach (var (i, fault) in evaluator.Faults[column]) faults[column][at[i]] = fault;
                room.Take(evaluator.Others[column].Values, evaluator.Faults[column].Count);
                foreach (var (sentence, times) in evaluator.Cautions[column]) cautions[column].AddOrUpdate(sentence, times, (_, before) => before + times);
            }
        }

        WhatIfColumn Column(int column)
        {
            CellResult result = Cone.Calculation.Cells[Cone.ShownIds[column]];
            string label = CellNaming.Label(Cone.Workbook, result.Id);
            if (Cone.Shown[column] < 0) return Same(result, label, scenarios);
            CellType? type = GivenValues.TypeOf(result) ?? Cone.Known(Cone.Shown[column]).Bound?.Type ?? others[column].Values.FirstOrDefault()?.Type;
            bool compiled = models.All(model => model.Kernels[column] is not null);
            return new WhatIfColumn(result, label, type, numbers[column], others[column], faults[column]) { IsCompiled = compiled, Cautions = Counted(cautions[column]) };
        }
    }

    /// <summary>The cautions with how often each was met, in order.</summary>
    private static ImmutableArray<CautionCount> Counted(ConcurrentDictionary<string, long> cautions) =>
        [.. cautions.OrderBy(pair => pair.Key, StringComparer.Ordinal).Select(pair => new CautionCount(pair.Key, pair.Value))];

    /// <summary>A column that does not change.</summary>
    private static WhatIfColumn Same(CellResult result, string label, int scenarios)
    {
        IEnumerable<int> all = Enumerable.Range(0, scenarios);
        double number = result.Value is TruthValue truth ? truth.Value ? 1 : 0 : SiValue.Of(result.Value) ?? double.NaN;
        Dictionary<int, CellValue> others = result.Value is { } value && double.IsNaN(number) ? all.ToDictionary(i => i, _ => value) : [];
        Dictionary<int, Fault> faults = result.Fault is { } fault ? all.ToDictionary(i => i, _ => fault) : [];
        return new WhatIfColumn(result, label, result.Type, [.. all.Select(_ => number)], others, faults)
        {
            Cautions = [.. result.Cautions.Select(caution => Engine.UsualRange.WithoutValue(caution.Message)).Distinct().Order(StringComparer.Ordinal).Select(sentence => new CautionCount(sentence, scenarios))],
        };
    }

    private ScenarioModel Model(int group, bool compile)
    {
        CellValue[] values = new CellValue[axes.Length];
        foreach (int i in numeric) values[i] = axes[i].Values[0];
        int rest = group;
        foreach (int i in grouping.Reverse()) (rest, values[i]) = (rest / axes[i].Values.Length, axes[i].Values[rest % axes[i].Values.Length]);
        return ScenarioModel.Make(tools, Cone, values, compile, [.. Probes()]);
    }

    /// <summary>A few scenarios spread over the group: first, last and between.</summary>
    private IEnumerable<double[]> Probes()
    {
        const int probes = 8;
        for (int probe = 0; probe < probes; probe++)
        {
            double[][] one = [.. numeric.Select(_ => new double[1])];
            Place(0, (int)((perGroup - 1L) * probe / (probes - 1)), one, 0);
            yield return [.. one.Select(input => input[0])];
        }
    }

    /// <summary>Puts the numbers of a scenario of a group into a block and says which scenario of the table it is.</summary>
    private int Place(int group, int within, double[][] inputs, int slot)
    {
        Span<int> places = stackalloc int[axes.Length];
        for (int i = numeric.Length - 1; i >= 0; i--)
        {
            (within, places[numeric[i]]) = Math.DivRem(within, axes[numeric[i]].Values.Length);
            inputs[i][slot] = SiValue.Of(axes[numeric[i]].Values[places[numeric[i]]])!.Value;
        }
        for (int i = grouping.Length - 1; i >= 0; i--) (group, places[grouping[i]]) = Math.DivRem(group, axes[grouping[i]].Values.Length);
        int scenario = 0;
        for (int i = 0; i < axes.Length; i++) scenario = (scenario * axes[i].Values.Length) + places[i];
        return scenario;
    }
}
