using System.CommandLine;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Comparing;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>diff</c>: what differs between two versions of a workbook.</summary>
internal static class DiffCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string[]> files = new("FILES") { HelpName = "A B", Description = "The earlier version and the later one.", Arity = new ArgumentArity(2, GitArguments.Most) };
        Option<string> format = new("--format") { HelpName = "text|md|json", Description = "How it is printed.", DefaultValueFactory = _ => "text" };
        Option<bool> git = new("--git") { Description = "Read the arguments git gives to an external diff driver." };
        format.AcceptOnlyFromAmong("text", "md", "json");
        Verb verb = new("diff", "Say what differs between two versions of a workbook, by cell and not by line: what the author changed, what follows from it, and what differs in the library.")
        {
            Arguments = { files },
            Options = { format, git },
            Examples = ["screwsheet diff yesterday.screwsheet today.screwsheet", "screwsheet diff yesterday.screwsheet today.screwsheet --format md"],
            Cautions =
            [
                "Both versions are computed by this version of the program; what either file kept is shown only where it alone differs.",
                "Ends with 0 whether they differ or not, with 2 when one of them cannot be read.",
            ],
        };
        verb.SetAction(parsed => Diff(shell, parsed.GetRequiredValue(files), parsed.GetRequiredValue(format), parsed.GetValue(git)));
        return verb;
    }

    private static int Diff(Shell shell, string[] files, string format, bool git)
    {
        if (git) return OfGit(shell, GitArguments.Of(files), format);
        if (files.Length != 2) throw new UserMistake("Name two files: screwsheet diff A B.");
        if (Path.GetFullPath(files[0]) == Path.GetFullPath(files[1])) throw new UserMistake($"Both names mean the same file, {FileTrouble.Quoted(files[0])}. Name two versions of it.");
        Print(shell, WorkbookFile.Read(files[0]).Workbook, WorkbookFile.Read(files[1]).Workbook, new DiffNames(files[0], files[1]), format);
        return ExitCode.Fine;
    }

    /// <summary>git stops showing anything more when a driver fails, so a version that is no workbook is said to be none and the rest goes on.</summary>
    private static int OfGit(Shell shell, GitArguments git, string format)
    {
        try
        {
            Print(shell, Read(git.Old), Read(git.New), new DiffNames(git.OldName, git.NewName), format);
        }
        catch (UserMistake mistake)
        {
            shell.Output.Write(PlainText.Of($"{git.NewName}: {mistake.Message}") + "\n");
        }
        return ExitCode.Fine;
    }

    private static Workbook Read(string path) => path == GitArguments.Nothing ? ((WorkbookRead)WorkbookText.Read("screwsheet 1\n")).Workbook : WorkbookFile.Read(path).Workbook;

    private static void Print(Shell shell, Workbook before, Workbook after, DiffNames names, string format)
    {
        ICalculator calculator = shell.Calculator();
        Comparison comparison = Comparison.Of(calculator.Calculate(before), calculator.Calculate(after));
        switch (format)
        {
            case "json": DiffJson.Write(comparison, names, shell.Output); break;
            case "md": DiffMarkdown.Write(comparison, names, shell.Output); break;
            default: StyledLine.Write(shell.Output, DiffText.Lines(comparison, names, shell.Width), shell.Colour); break;
        }
        shell.Output.Flush();
    }
}

/// <summary>What git gives to an external diff driver: path, old file, old hash, old mode, new file, new hash, new mode; of a renamed file also its new path and a description.</summary>
/// <param name="OldName">The path before.</param>
/// <param name="NewName">The path after.</param>
/// <param name="Old">The file that holds the old version.</param>
/// <param name="New">The file that holds the new version.</param>
internal sealed record GitArguments(string OldName, string NewName, string Old, string New)
{
    /// <summary>The most arguments git gives.</summary>
    public const int Most = 9;

    /// <summary>What git names in place of a version that is not there.</summary>
    public const string Nothing = "/dev/null";

    /// <summary>From the arguments.</summary>
    /// <exception cref="UserMistake">There are not seven or nine.</exception>
    public static GitArguments Of(string[] arguments) => arguments switch
    {
        [var path, var old, _, _, var late, _, _] => new GitArguments(path, path, old, late),
        [var path, var old, _, _, var late, _, _, var newPath, _] => new GitArguments(path, newPath, old, late),
        _ => throw new UserMistake("--git is for git, which gives seven arguments; docs/versions.md says how to set it up. To compare two files, leave it out."),
    };
}
