using ScrewSheet.Studies.Kernels;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Studies.Scenarios;

/// <summary>A cone ready to be worked out for many scenarios: a kernel for each shown cell where there is one.</summary>
/// <remarks>Every kernel was compared with the engine's own code at a few scenarios of the study; one that differed is not here.</remarks>
internal sealed class ScenarioModel
{
    private const double Agreement = 1e-12;

    private ScenarioModel(Cone cone, CellValue[] values, int[] inputs, Kernel?[] kernels) => (Cone, Values, Inputs, Kernels) = (cone, values, inputs, kernels);

    public Cone Cone { get; }

    /// <summary>The values of the varied givens that stay while a kernel runs; those of the others are only of the right type.</summary>
    public CellValue[] Values { get; }

    /// <summary>The place of each varied given among the inputs of a kernel; -1 for one that stays.</summary>
    public int[] Inputs { get; }

    /// <summary>The kernel of each shown cell, or null.</summary>
    public Kernel?[] Kernels { get; }

    /// <summary>True where every shown cell that changes has a kernel.</summary>
    public bool IsCompiled => Kernels.Zip(Cone.Shown).All(pair => pair.First is not null || pair.Second < 0);

    /// <summary>Makes it.</summary>
    /// <param name="tools">The tools.</param>
    /// <param name="cone">The cone.</param>
    /// <param name="values">A value of each varied given.</param>
    /// <param name="compile">Whether kernels are wanted.</param>
    /// <param name="probes">A few scenarios of the study, as values of the numeric varied givens, at which kernels are compared with the engine.</param>
    public static ScenarioModel Make(StudyTools tools, Cone cone, CellValue[] values, bool compile, IReadOnlyList<double[]> probes)
    {
        int[] inputs = new int[values.Length];
        int numeric = 0;
        for (int i = 0; i < inputs.Length; i++) inputs[i] = values[i] is NumberValue or QuantityValue ? numeric++ : -1;
        ScenarioModel model = new(cone, values, inputs, new Kernel?[cone.Shown.Length]);
        if (!compile) return model;
        ConeEvaluation evaluation = new(cone, tools.Library, CancellationToken.None);
        // a cell that could not be bound as the workbook stands is bound at the first of these where it can
        if (Enumerable.Range(0, cone.Cells.Count).Any(place => cone.Cells[place] is { Varied: < 0, Result.Bound: null }))
            foreach (double[] probe in probes) evaluation.Run(model.Put(new CellValue[values.Length], input => probe[input]));
        evaluation.Run(values);
        ConeResult[] now = [.. evaluation.Results];
        for (int shown = 0; shown < model.Kernels.Length; shown++)
        {
            if (cone.Shown[shown] < 0) continue;
            Kernel? kernel = KernelBuilder.Build(cone, cone.Shown[shown], inputs, now, tools.Library, tools.Trials);
            if (kernel is not null && probes.All(probe => Agrees(model, kernel, cone.Shown[shown], evaluation, probe))) model.Kernels[shown] = kernel;
        }
        return model;
    }

    /// <summary>The values of all varied givens where the numeric ones are these.</summary>
    public CellValue[] Put(CellValue[] into, Func<int, double> numbers)
    {
        for (int i = 0; i < into.Length; i++) into[i] = Inputs[i] < 0 ? Values[i] : GivenValues.Number(Values[i].Type, numbers(Inputs[i]));
        return into;
    }

    private static bool Agrees(ScenarioModel model, Kernel kernel, int shown, ConeEvaluation evaluation, double[] probe)
    {
        double[] output = [0];
        int[] faults = [0];
        kernel.Run([.. probe.Select(value => new[] { value })], output, faults, new CautionTally(), 0, 1);
        evaluation.Run(model.Put(new CellValue[model.Values.Length], input => probe[input]));
        // where the kernel stops the engine decides
        if (faults[0] != 0) return true;
        return evaluation.Results[shown].Value switch
        {
            null => false,
            TruthValue truth => truth.Value == (output[0] != 0),
            CellValue value => SiValue.Of(value) is { } si && Math.Abs(si - output[0]) <= Agreement * Math.Max(Math.Abs(si), Math.Abs(output[0])),
        };
    }
}
