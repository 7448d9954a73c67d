using System.CommandLine;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Merging;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>merge</c>: two versions that come from a third, in one.</summary>
internal static class MergeCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> origin = new("BASE") { Description = "The version both come from; an empty file where there is none." };
        Argument<string> ours = new("OURS") { Description = "One version." };
        Argument<string> theirs = new("THEIRS") { Description = "The other version." };
        Option<string> output = new("--output", "-o") { HelpName = "OUT", Description = "The file to write: a new one, or OURS.", Required = true };
        Verb verb = new("merge", "Merge two versions of a workbook that come from a third, by cell and not by line.")
        {
            Arguments = { origin, ours, theirs },
            Options = { output },
            Examples = ["screwsheet merge monday.screwsheet mine.screwsheet yours.screwsheet -o both.screwsheet"],
            Cautions =
            [
                "Where both changed a cell differently, both versions stand in the file as a fault; no result that depends on it has a value until you choose one.",
                "Versions that do not contradict each other may still not go together, as when one renames a cell and the other uses its old name: run check afterwards.",
                "Ends with 1 when there is a conflict, with 2 when a file cannot be read; then nothing is written.",
            ],
        };
        verb.SetAction(parsed => Merge(shell, parsed.GetRequiredValue(origin), parsed.GetRequiredValue(ours), parsed.GetRequiredValue(theirs), parsed.GetRequiredValue(output)));
        return verb;
    }

    private static int Merge(Shell shell, string origin, string ours, string theirs, string output)
    {
        if (Path.GetFullPath(ours) == Path.GetFullPath(theirs)) throw new UserMistake($"OURS and THEIRS are the same file, {FileTrouble.Quoted(ours)}. Name two versions.");
        Workbook was = ReadBase(origin);
        WorkbookFile mine = WorkbookFile.Read(ours), other = WorkbookFile.Read(theirs);
        MergeResult result = WorkbookMerge.Of(was, mine.Workbook, other.Workbook);
        if (result.Workbook is not { } merged) throw new UserMistake($"{OriginText.Of(result.Refusal!)} Nothing was written.");
        if (Path.GetFullPath(output) == Path.GetFullPath(ours)) mine.Save(merged);
        else SafeWrite.Create(output, WorkbookText.Write(merged));
        StyledLine.Write(shell.Output, Lines(result, output, shell.Width), shell.Colour);
        return result.Conflicts.IsEmpty ? ExitCode.Fine : ExitCode.Bad;
    }

    /// <summary>git gives an empty file where two versions have no common one.</summary>
    private static Workbook ReadBase(string path) =>
        BoundedRead.All(path).Length == 0 ? ((WorkbookRead)WorkbookText.Read("screwsheet 1\n")).Workbook : WorkbookFile.Read(path).Workbook;

    private static IEnumerable<StyledLine> Lines(MergeResult result, string output, int width)
    {
        foreach (MergeConflict conflict in result.Conflicts)
        {
            foreach (string line in Wrapping.Hanging("conflict: ", PlainText.Of($"{conflict.Where}: {conflict.Fault.Message}"), width)) yield return new StyledLine(line, Tone.Bad);
        }
        int count = result.Conflicts.Length;
        string rest = count == 0 ? "" : $" with {count} {(count == 1 ? "conflict. It is" : "conflicts. They are")} in the file as {(count == 1 ? "a fault" : "faults")} with both versions: choose one{(count == 1 ? " of them" : " in each place")}.";
        foreach (string line in Wrapping.Lines($"Merged into {PlainText.Of(output)}{(count == 0 ? "." : rest)}", width)) yield return new StyledLine(line);
    }
}
