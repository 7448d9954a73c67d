using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Studies.Uncertainty;

/// <summary>Whose spread is asked for.</summary>
public sealed record UncertaintyRequest
{
    /// <summary>The fewest draws: with fewer the ends of an interval are a matter of luck.</summary>
    public const long FewestSamples = 1000;

    /// <summary>The most draws.</summary>
    public const long MostSamples = 100_000_000;

    /// <summary>The result, as written: a number, a quantity or a check.</summary>
    public required PlacedText Cell { get; init; }

    /// <summary>How many draws; null for 1,000,000 where there is a kernel and 100,000 where there is none.</summary>
    public long? Samples { get; init; }

    /// <summary>The seed; null for the one in the file's head, or 1.</summary>
    public ulong? Seed { get; init; }

    /// <summary>How the draws are worked out.</summary>
    public StudyMethod Method { get; init; }
}
