using System.CommandLine;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>check</c>: what a reviewer must look at.</summary>
internal static class CheckCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string[]> files = new("FILE") { Description = "Workbook files.", Arity = ArgumentArity.OneOrMore };
        Verb verb = new("check", "List faults, failing checks, changed results, cautions and values from memory, and say how much is reviewed.")
        {
            Arguments = { files },
            Examples = ["screwsheet check short-screw.screwsheet", "screwsheet check workbooks/*.screwsheet"],
            Cautions =
            [
                "A workbook without findings is a workbook whose own checks hold; whether they ask the right thing is for a person to say.",
                "Ends with 1 when a fault, a failing check or a changed result is listed, with 2 when a file cannot be read; cautions alone do not count.",
            ],
        };
        verb.SetAction(parsed => parsed.GetRequiredValue(files).Select(path => Check(shell, path)).ToArray().Max());
        return verb;
    }

    private static int Check(Shell shell, string path)
    {
        try
        {
            var workbook = WorkbookFile.Read(path).Workbook;
            Selection selection = Selection.Of(shell.Calculator().Calculate(workbook), workbook.Sheets);
            StyledLine.Write(shell.Output, CheckReport.Lines(path, selection, shell.Width), shell.Colour);
            foreach (string sentence in NotComputed.Sentences(workbook)) shell.Say($"{path}: {sentence}");
            return CheckReport.IsBad(selection) ? ExitCode.Bad : ExitCode.Fine;
        }
        catch (UserMistake mistake)
        {
            shell.Output.Flush();
            shell.Say(mistake.Message);
            return ExitCode.Refused;
        }
    }
}
