using System.CommandLine;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Expressions;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>functions</c>: what the library answers.</summary>
internal static class FunctionsCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string?> word = new("WORD") { Description = "A function, a topic, or a word of what it answers.", Arity = ArgumentArity.ZeroOrOne };
        Verb verb = new("functions", "List the library by topic, or explain the functions that match a word.")
        {
            Arguments = { word },
            Examples = ["screwsheet functions", "screwsheet functions ImpactForce", "screwsheet functions leg"],
            Cautions = ["A formula holds inside its stated range and assumptions; outside them a cell still answers and carries a caution."],
        };
        verb.SetAction(parsed => Show(shell, parsed.GetValue(word)));
        return verb;
    }

    private static int Show(Shell shell, string? word)
    {
        IReadOnlyList<LibraryFunction> functions = shell.Calculator().Functions;
        IEnumerable<StyledLine> lines = string.IsNullOrEmpty(word) ? FunctionCatalogue.Lines(functions, shell.Width) : Help(functions, word, shell.Width);
        StyledLine.Write(shell.Output, lines, shell.Colour);
        return ExitCode.Fine;
    }

    private static IEnumerable<StyledLine> Help(IReadOnlyList<LibraryFunction> functions, string word, int width)
    {
        IReadOnlyList<LibraryFunction> found = FunctionCatalogue.Find(functions, word);
        if (found.Count == 0) throw new UserMistake($"No function has {PlainText.Of(word)} in its name, topic or question. screwsheet functions lists them all.");
        return found.SelectMany((function, at) => new FunctionHelp(function, width).Lines().Prepend(new StyledLine("")).Skip(at == 0 ? 1 : 0));
    }
}
