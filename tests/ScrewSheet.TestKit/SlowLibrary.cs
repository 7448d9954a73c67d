using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.TestKit;

/// <summary>A function that takes as long as a test wants.</summary>
public static class SlowLibrary
{
    /// <summary>Closed while the function shall go on.</summary>
    public static ManualResetEventSlim Gate { get; } = new(true);

    /// <summary>Hands back what it is given, once the gate is open.</summary>
    /// <param name="value">Anything.</param>
    [Callable("Waiting", "What does the grid do while a cell takes long?")]
    [NoFormula("Waits.")]
    [Source("Made for tests", Standing.Derived)]
    public static double Patience([Parameter("x", "", "anything")] double value)
    {
        Gate.Wait(TimeSpan.FromSeconds(60));
        return value;
    }
}
