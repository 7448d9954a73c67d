namespace ScrewSheet.Engine.Evaluation;

/// <summary>Counts steps over one cell and one calculation, and listens for a stop.</summary>
internal sealed class Budget(CancellationToken stop)
{
    /// <summary>The most steps of one cell.</summary>
    public const long PerCell = 10_000_000;

    /// <summary>The most steps of one calculation.</summary>
    public const long PerCalculation = 1_000_000_000;

    private long cell, all;

    /// <summary>Begins a cell.</summary>
    public void BeginCell()
    {
        all += cell + 1;
        cell = 0;
        if (all > PerCalculation) throw new EvaluationException(EvaluationFaults.AllSteps(PerCalculation));
        stop.ThrowIfCancellationRequested();
    }

    /// <summary>Counts the reading of a series from its cells: ten steps a cell, which is how much longer it takes.</summary>
    /// <returns>False where the calculation has taken all its steps.</returns>
    public bool MayRead(int cells)
    {
        all += 10L * cells;
        stop.ThrowIfCancellationRequested();
        return all <= PerCalculation;
    }

    /// <summary>Counts steps; a function call is ten, a series as many as it has values.</summary>
    public void Step(long steps = 1)
    {
        long before = cell;
        cell += steps;
        if (cell > PerCell) throw new EvaluationException(EvaluationFaults.CellSteps(PerCell));
        if (before >> 12 != cell >> 12) stop.ThrowIfCancellationRequested();
    }
}
