using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Studies.Solving;

/// <summary>What must be said about a search; codes 434x.</summary>
internal static class SolveNotes
{
    [FaultCode(4340, "A search found no value; what the result reaches is named.")]
    public static Fault NoRoot(string cell, string target, string by, string interval, string reached) =>
        new(4340, FaultKind.Value, $"No {by} from {interval} makes {cell} {target}: there it reaches {reached}.", "Ask for a value it reaches, or search another interval.");

    [FaultCode(4341, "A search found a check that does not turn.")]
    public static Fault NoTurn(string cell, bool holds, string by, string interval) =>
        new(4341, FaultKind.Value, $"{cell} {(holds ? "holds" : "fails")} for every {by} tried from {interval}.", "Search another interval.");

    [FaultCode(4342, "A search found several values; the one nearest to the file's own is the answer.")]
    public static Fault Several(string by, string others) =>
        new(4342, FaultKind.Value, $"There are several: {others}. The answer is the one nearest to the {by} of the file.", "Search a smaller interval for another one.");

    [FaultCode(4343, "A result jumps over the value that was asked for.")]
    public static Fault Jump(string cell, string target, string by, string at) =>
        new(4343, FaultKind.Value, $"At {by} = {at} {cell} jumps over {target} without taking it.", null);

    [FaultCode(4344, "A result touches the value without passing through it.")]
    public static Fault Touching(string cell, string by, string at) =>
        new(4344, FaultKind.Value, $"At {by} = {at} {cell} touches the value and turns back; a little less or more of anything, and there is no answer.", null);

    [FaultCode(4345, "A result is in fault for some of the values a search tried.")]
    public static Fault Faults(string cell, string count, string tried, string sentence) =>
        new(4345, FaultKind.Value, $"{cell} was in fault for {count} of {tried} values tried, such as: {sentence}", null);
}
