using ScrewSheet.Quantities.Declarations;

namespace ScrewSheet.FailingGrid;

/// <summary>A library with a mistake in it.</summary>
public static class Broken
{
    /// <summary>Throws, whatever it is given.</summary>
    /// <param name="value">Anything.</param>
    [Callable("Mistakes", "What does the grid do when a function throws what it never should?")]
    [NoFormula("Throws.")]
    [Source("Made for tests", Standing.Derived)]
    public static double Mistaken([Parameter("x", "", "anything")] double value) => throw new InvalidOperationException($"a mistake put in on purpose, at {value}");
}
