using System.CommandLine;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Commands;

/// <summary>What is wrong with a command line, in one sentence with what to do.</summary>
internal static class UsageText
{
    /// <summary>The first mistake.</summary>
    public static string Of(ParseResult parsed)
    {
        string verb = parsed.CommandResult.Command.Name;
        string help = verb == "screwsheet" ? "screwsheet --help" : $"screwsheet {verb} --help";
        string[] words = parsed.Errors[0].Message.Split((char[])['\n', '\r', '\t', ' '], StringSplitOptions.RemoveEmptyEntries);
        return PlainText.Of($"{string.Join(' ', words).TrimEnd('.')}. See: {help}");
    }
}
