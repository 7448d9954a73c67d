namespace ScrewSheet.Terminal.Tests;

/// <summary>The engine with everything the program ships, one for each thread: what it found out about the library is the same for every workbook and takes longer than most of them.</summary>
internal static class Calculators
{
    private static readonly ThreadLocal<ICalculator> Shared = new(Composition.Calculator);

    /// <summary>That of this thread.</summary>
    public static ICalculator OfThread => Shared.Value!;
}
