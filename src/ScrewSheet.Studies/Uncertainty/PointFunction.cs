using ScrewSheet.Studies.Scenarios;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>A shown cell as a function of the varied givens, one point at a time.</summary>
internal sealed class PointFunction(ScenarioModel model, StudyTools tools, int shown, CancellationToken stop)
{
    private readonly BlockEvaluator evaluator = new(model, tools, 1, stop);

    /// <summary>The value in coherent SI, a check as 1 or 0; NaN for a fault.</summary>
    public double At(ReadOnlySpan<double> si)
    {
        for (int i = 0; i < si.Length; i++) evaluator.Inputs[i][0] = si[i];
        evaluator.Run(1, wordEach: true);
        return evaluator.Outputs[shown][0];
    }

    /// <summary>The fault of the last point, or null.</summary>
    public Workbooks.Diagnostics.Fault? Fault => evaluator.Faults[shown].GetValueOrDefault(0);
}
