using System.CommandLine;
using System.Globalization;
using ScrewSheet.Studies.Uncertainty;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Terminal.Commands;

/// <summary><c>uncertainty</c>: the spread of a result and what drives it.</summary>
internal static class UncertaintyCommand
{
    /// <summary>The verb.</summary>
    public static Verb Make(Shell shell)
    {
        Argument<string> file = Verb.FileArgument();
        Option<string> cell = new("--cell") { HelpName = "NAME", Description = "The result: a number, a quantity or a check.", Required = true };
        Option<string?> samples = new("--samples") { HelpName = "N", Description = "How many draws, 1000 to 100000000; otherwise a million, or a hundred thousand where the workbook must be worked out cell by cell." };
        Option<string?> seed = new("--seed") { HelpName = "S", Description = "The seed of the draws; otherwise the one in the file's head, or 1." };
        Option<string> format = Verb.FormatOption();
        Verb verb = new("uncertainty", "Print how a result spreads with the tolerances of the givens, and what drives it.")
        {
            Arguments = { file },
            Options = { cell, samples, seed, format },
            Examples = ["screwsheet uncertainty short-screw.screwsheet --cell moment", "screwsheet uncertainty short-screw.screwsheet --cell foldsNow --samples 100000 --seed 7"],
            Cautions =
            [
                "It spreads what the tolerances say and nothing else: a formula that leaves something out leaves it out in every draw.",
                "Tails are where distributions are least known. A small chance of failing is an estimate with an interval, not a permission.",
                "The same file and seed give the same digits on any number of threads. Ends with 1 when draws end in a fault, with 2 when what was asked for cannot be done or was stopped.",
            ],
        };
        verb.SetAction(parsed => Run(shell, parsed.GetRequiredValue(file), parsed.GetRequiredValue(format), new UncertaintyRequest
        {
            Cell = AskedStudy.At(parsed.GetRequiredValue(cell)), Samples = Whole<long>(parsed.GetValue(samples), "--samples"), Seed = Whole<ulong>(parsed.GetValue(seed), "--seed"),
        }));
        return verb;
    }

    private static int Run(Shell shell, string path, string format, UncertaintyRequest request)
    {
        AskedStudy<UncertaintyReport> studied = AskedStudy.Of(shell, path, (studies, calculation) => studies.Uncertainty(calculation, request, null, shell.Stop));
        Head head = studied.Calculation.Workbook.Head;
        switch (format)
        {
            case "json": UncertaintyData.WriteJson(studied.Answer, head, shell.Output); break;
            case "csv": UncertaintyData.WriteCsv(studied.Answer, head, shell.Output); break;
            default: StyledLine.Write(shell.Output, UncertaintyText.Lines(studied.Answer, head, shell.Width), shell.Colour); break;
        }
        shell.Output.Flush();
        return studied.Exit(studied.Answer.Faulted > 0);
    }

    private static T? Whole<T>(string? text, string option) where T : struct, System.Numerics.INumber<T>
    {
        if (text is null) return null;
        if (T.TryParse(text.Replace("_", "", StringComparison.Ordinal), NumberStyles.None, CultureInfo.InvariantCulture, out T value)) return value;
        throw new UserMistake($"{option} {PlainText.Of(text)}: a whole number stands there, like {option} 100000.");
    }
}
