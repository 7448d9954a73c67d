using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.Terminal.Tests.Grid;

/// <summary>A function that takes as long as a test wants.</summary>
public static class SlowLibrary
{
    internal static ManualResetEventSlim Gate { get; } = new(true);

    [Callable("Waiting", "What does the grid do while a cell takes long?")]
    [NoFormula("Waits.")]
    [Source("Made for tests", Standing.Derived)]
    public static double Patience([Parameter("x", "", "anything")] double value)
    {
        Gate.Wait(TimeSpan.FromSeconds(60));
        return value;
    }
}
