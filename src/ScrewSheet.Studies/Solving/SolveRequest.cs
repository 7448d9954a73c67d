using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Studies.Solving;

/// <summary>What is to be solved: which value of a given makes a result so.</summary>
public sealed record SolveRequest
{
    /// <summary>The result, as written: a number, a quantity or a check.</summary>
    public required PlacedText Cell { get; init; }

    /// <summary>What the result is to be: a value with its unit; for a check <c>holds</c> or <c>fails</c>, which both ask where it turns.</summary>
    public required PlacedText Equal { get; init; }

    /// <summary>The given that may change.</summary>
    public required PlacedText By { get; init; }

    /// <summary>The lower end of the interval that is searched; null to let it be found.</summary>
    public PlacedText? From { get; init; }

    /// <summary>The upper end.</summary>
    public PlacedText? To { get; init; }
}
