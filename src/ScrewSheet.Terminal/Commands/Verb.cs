using System.CommandLine;

namespace ScrewSheet.Terminal.Commands;

/// <summary>A verb of the command line with what its help says after usage and options.</summary>
internal sealed class Verb(string name, string description) : Command(name, description)
{
    /// <summary>Command lines that show how it is used.</summary>
    public IReadOnlyList<string> Examples { get; init; } = [];

    /// <summary>What its reader must know.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The argument every verb about one workbook has.</summary>
    public static Argument<string> FileArgument() => new("FILE") { Description = "A workbook file (.screwsheet)." };

    /// <summary>How a study is printed.</summary>
    public static Option<string> FormatOption()
    {
        Option<string> format = new("--format") { HelpName = "text|json|csv", Description = "How it is printed.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json", "csv");
        return format;
    }
}
