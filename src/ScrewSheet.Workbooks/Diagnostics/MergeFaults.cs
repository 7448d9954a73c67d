using ScrewSheet.Workbooks.Format;

namespace ScrewSheet.Workbooks.Diagnostics;

/// <summary>The wording of faults that a merge leaves behind and of review marks; codes 1060 to 1079.</summary>
internal static class MergeFaults
{
    /// <summary>The codes of what a merge leaves behind: in a cell, and in other lines.</summary>
    public const int ConflictCode = 1060, LinesCode = 1061;

    private const int Longest = 120;

    [FaultCode(ConflictCode, "Two versions of a cell were merged and contradict each other: both are in the file, neither counts. Write one of them after the address and remove the indented lines.")]
    public static Fault Conflict(Place place, string ours, string theirs) =>
        Of(ConflictCode, place, $"Two versions of this cell meet here: ours is {Short(ours)}, theirs is {Short(theirs)}.", "Write the one that shall count after the address, in place of conflict, and remove the lines beneath.");

    [FaultCode(LinesCode, "Two versions of lines that are no cells were merged and contradict each other: neither counts. Keep the lines of one of them, without `ours` or `theirs`, and remove the others.")]
    public static Fault LinesInConflict(Place place, string ours, string theirs) =>
        Of(LinesCode, place, $"Two versions of these lines meet here: ours is {Short(ours)}, theirs is {Short(theirs)}.", "Keep the lines that shall count, without the word before them, and remove the others.");

    [FaultCode(1062, "A review mark cannot be read; it is kept and holds for nothing.")]
    public static Fault Reviewed(Place place) =>
        Of(1062, place, "This reviewed line cannot be read.", "Have the program write it: screwsheet review FILE --cell NAME --by INITIALS --date DATE.");

    [FaultCode(1063, "A result cannot be marked as reviewed.")]
    public static Fault NotReviewable(string what) => new(1063, FaultKind.Format, $"{what} cannot be marked as reviewed.", "Mark a result that has a value.");

    [FaultCode(1064, "Versions cannot be merged while one of them holds a conflict that nobody has resolved.")]
    public static Fault Unresolved(string whose, string where) =>
        new(1064, FaultKind.Format, $"{whose} holds a conflict at {where} that is not resolved, and the other version changes the same cell.", "Resolve it first, then merge.");

    [FaultCode(1065, "Versions cannot be merged because the rows they add do not fit on a sheet, or the cells into a file.")]
    public static Fault NoRoom(string what) => new(1065, FaultKind.Budget, $"Together the versions need more room than {what} has.", "Split the workbook first.");

    private static Fault Of(int code, Place place, string message, string remedy) => new(code, FaultKind.Format, message, remedy, place);

    private static string Short(string text)
    {
        string line = CellTextWriter.OneLine(text);
        return line.Length <= Longest ? line : line[..(char.IsHighSurrogate(line[Longest - 1]) ? Longest - 1 : Longest)] + "…";
    }
}
