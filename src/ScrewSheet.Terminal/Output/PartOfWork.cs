namespace ScrewSheet.Terminal.Output;

/// <summary>A part of some work: its share from 0 to 1 is one between two shares of the whole.</summary>
/// <param name="whole">Told the share of the whole.</param>
/// <param name="from">Where the part begins.</param>
/// <param name="to">Where it ends.</param>
internal sealed class PartOfWork(IProgress<double> whole, double from, double to) : IProgress<double>
{
    /// <inheritdoc/>
    public void Report(double value) => whole.Report(from + (value * (to - from)));
}
