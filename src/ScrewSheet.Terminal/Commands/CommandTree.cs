using System.CommandLine;
using System.CommandLine.Help;
using ScrewSheet.Exports;
using ScrewSheet.Terminal.Files;

namespace ScrewSheet.Terminal.Commands;

/// <summary>The verbs of the command line.</summary>
internal static class CommandTree
{
    /// <summary>The root, which answers <c>--help</c> and <c>--version</c> itself.</summary>
    public static Command Build(Shell shell)
    {
        Argument<string?> file = new("FILE") { Description = "A workbook to open in the terminal; without one, a page to begin with.", Arity = ArgumentArity.ZeroOrOne };
        Option<bool> version = new("--version") { Description = "Print the version and end." };
        Verb root = new("screwsheet", "A calculation workbook with units for people who test climbing anchors.")
        {
            Examples = ["screwsheet short-screw.screwsheet", "screwsheet run workbooks/standard-drop.screwsheet", "screwsheet functions fall", "screwsheet run --help"],
            Cautions = [.. StandingCaution.Usual],
        };
        root.Arguments.Add(file);
        root.Options.Add(new HelpOption { Action = new VerbHelp(shell.Width), Recursive = true });
        root.Options.Add(version);
        foreach (Verb verb in (Verb[])[RunCommand.Make(shell), CheckCommand.Make(shell), KeepCommand.Make(shell), WhatIfCommand.Make(shell), SolveCommand.Make(shell), UncertaintyCommand.Make(shell), HandoutCommand.Make(shell), FunctionsCommand.Make(shell), NewCommand.Make(shell), ImportCommand.Make(shell), ExportCommand.Make(shell), DiffCommand.Make(shell), MergeCommand.Make(shell), ReviewCommand.Make(shell)]) root.Subcommands.Add(verb);
        root.SetAction(parsed =>
        {
            if (parsed.GetValue(version)) shell.Output.Write($"screwsheet {ProductVersion.Text}\n");
            else OpenGrid(shell, parsed.GetValue(file));
            return ExitCode.Fine;
        });
        return root;
    }

    /// <summary>Opens the grid with a file or without.</summary>
    /// <exception cref="UserMistake">The file cannot be read, or there is no grid here.</exception>
    public static void OpenGrid(Shell shell, string? path)
    {
        WorkbookFile? file = path is null ? null : WorkbookFile.Read(path);
        if (shell.Grid is null) throw new UserMistake("Say what to do: screwsheet run FILE computes a workbook; screwsheet --help lists the rest.");
        shell.Grid(file);
    }
}
