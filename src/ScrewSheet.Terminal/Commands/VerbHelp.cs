using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Commands;

/// <summary>The help of a verb: usage and options as the command-line library writes them, then examples and cautions.</summary>
internal sealed class VerbHelp(int width) : SynchronousCommandLineAction
{
    private readonly HelpAction usage = new() { MaxWidth = width };

    /// <summary>Help is shown even where required arguments are missing.</summary>
    public override bool ClearsParseErrors => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        int status = usage.Invoke(parseResult);
        if (parseResult.CommandResult.Command is not Verb verb) return status;
        TextWriter output = parseResult.InvocationConfiguration.Output;
        Write(output, "Examples:", verb.Examples.Select(example => "  " + example));
        Write(output, "Cautions:", verb.Cautions.SelectMany(caution => Wrapping.Hanging("  ", caution, width)));
        return status;
    }

    private static void Write(TextWriter output, string title, IEnumerable<string> lines)
    {
        string[] all = [.. lines];
        if (all.Length == 0) return;
        output.Write(title + "\n");
        foreach (string line in all) output.Write(line + "\n");
        output.Write("\n");
    }
}
