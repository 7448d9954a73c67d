using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Output;

/// <summary>What the reader of a result must not miss.</summary>
internal static class Verdict
{
    /// <summary>A check that does not hold.</summary>
    public static bool Fails(CellResult cell) => cell is { IsCheck: true, Value: TruthValue { Value: false } };

    /// <summary>A check that holds.</summary>
    public static bool Holds(CellResult cell) => cell is { IsCheck: true, Value: TruthValue { Value: true } };

    /// <summary>A result that is not what the file says it was.</summary>
    public static bool Changed(CellResult cell) => cell.Kept is KeptState.Changed or KeptState.Unreadable;

    /// <summary>A result for which the program ends with 1.</summary>
    public static bool IsBad(CellResult cell) => cell.Fault is not null || Fails(cell) || Changed(cell);
}
