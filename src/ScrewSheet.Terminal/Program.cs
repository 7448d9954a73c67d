using System.CommandLine;
using System.Text;
using ScrewSheet.Terminal.Commands;
using ScrewSheet.Terminal.Grid;

namespace ScrewSheet.Terminal;

/// <summary>Where the program begins and ends.</summary>
internal static class Program
{
    private static int Main(string[] args)
    {
        if (args is ["run" or "check" or "keep" or "diff" or "review", _, ..]) Composition.WarmUp();
        if (args.Length == 0 || IsFile(args)) GridStart.WarmUp();
        bool isStudy = args is ["what-if" or "solve" or "uncertainty" or "export" or "handout", ..];
        if (isStudy && args.Length > 1) Composition.WarmUpStudies();
        UTF8Encoding encoding = new(encoderShouldEmitUTF8Identifier: false);
        using StreamWriter output = new(Console.OpenStandardOutput(), encoding, 16 * 1024);
        using StreamWriter error = new(Console.OpenStandardError(), encoding) { AutoFlush = true };
        using CancellationTokenSource stop = new();
        // other commands end at once; a study may run for minutes and ends with a sentence
        if (isStudy) Console.CancelKeyPress += (_, pressed) =>
        {
            pressed.Cancel = true;
            stop.Cancel();
        };
        return Run(args, Shell.OfProcess(output, error, Composition.Calculator) with { Stop = stop.Token });
    }

    /// <summary>True for one argument that can be no verb and no option, and so is a file for the grid.</summary>
    private static bool IsFile(IReadOnlyList<string> args) =>
        args is [var only] && only.Length > 0 && only[0] is not ('-' or '?') && (only.Contains('.', StringComparison.Ordinal) || only.Contains('/', StringComparison.Ordinal));

    /// <summary>Runs one command line. A user's mistake is a sentence on the error stream and a status; only a mistake of the program itself throws.</summary>
    /// <returns>0, 1 or 2, as <see cref="ExitCode"/> says.</returns>
    public static int Run(IReadOnlyList<string> args, Shell shell)
    {
        try
        {
            if (IsFile(args) && shell.Grid is not null)
            {
                // the grid is there sooner without the verbs and their options
                CommandTree.OpenGrid(shell, args[0]);
                return ExitCode.Fine;
            }
            // a file name may begin with @, so nothing after @ is read as a file of arguments
            ParseResult parsed = CommandTree.Build(shell).Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count > 0 && parsed.Action is not VerbHelp) throw new UserMistake(UsageText.Of(parsed));
            return parsed.Invoke(new InvocationConfiguration { Output = shell.Output, Error = shell.Error, EnableDefaultExceptionHandler = false });
        }
        catch (OperationCanceledException)
        {
            shell.Output.Flush();
            shell.Say("Stopped before the end. No file was changed.");
            return ExitCode.Refused;
        }
        catch (UserMistake mistake)
        {
            shell.Output.Flush();
            shell.Say(mistake.Message);
            return ExitCode.Refused;
        }
    }
}
