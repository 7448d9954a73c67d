using System.CommandLine;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>new</c>: a workbook to begin with.</summary>
internal static class NewCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> file = new("FILE") { Description = "The file to make; it must not be there yet." };
        Option<string?> from = new("--from") { HelpName = "NAME", Description = "A shipped workbook to copy; an empty one otherwise." };
        Verb verb = new("new", "Make a workbook: an empty one, or a copy of one that comes with the program.")
        {
            Arguments = { file },
            Options = { from },
            Examples = ["screwsheet new my-anchor.screwsheet", .. ShippedWorkbooks.Names(shell.Shipped).Take(2).Select(name => $"screwsheet new mine.screwsheet --from {name}")],
            Cautions = ["A shipped workbook is a worked example with a case of its own: put your own givens in before you read its results."],
        };
        verb.SetAction(parsed => Make(shell, parsed.GetRequiredValue(file), parsed.GetValue(from)));
        return verb;
    }

    private static int Make(Shell shell, string path, string? from)
    {
        byte[] bytes = from is null ? WorkbookFile.Empty(Path.GetFileNameWithoutExtension(path)) : ShippedWorkbooks.Read(shell.Shipped, from);
        SafeWrite.Create(path, bytes);
        shell.Output.Write($"Made {PlainText.Of(path)}.\n");
        return ExitCode.Fine;
    }
}
