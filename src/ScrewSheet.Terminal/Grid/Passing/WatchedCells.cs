using ScrewSheet.Quantities.Formatting;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Grid.Passing;

/// <summary>Counts the cells that a file being made asks about, so that its share is known and it can be stopped between two of them.</summary>
/// <param name="cells">How many there are.</param>
/// <param name="progress">Told what share is done.</param>
/// <param name="stop">Stops it.</param>
internal sealed class WatchedCells(int cells, IProgress<double> progress, CancellationToken stop)
{
    private readonly HashSet<CellId> seen = [];

    /// <summary>How values are shown, watched.</summary>
    public Func<CellResult, DisplayFormat?> Over(Func<CellResult, DisplayFormat?> formatOf) => cell =>
    {
        stop.ThrowIfCancellationRequested();
        if (seen.Add(cell.Id)) progress.Report(Math.Min(1, (double)seen.Count / cells));
        return formatOf(cell);
    };
}
