using ScrewSheet.Studies;
using ScrewSheet.Terminal.Files;
using ScrewSheet.Terminal.Output;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Commands;

/// <summary>A study of a file that the command line asks for.</summary>
/// <typeparam name="T">Its answer.</typeparam>
/// <param name="Calculation">The file, calculated.</param>
/// <param name="Answer">The answer.</param>
internal sealed record AskedStudy<T>(Calculation Calculation, T Answer) where T : class
{
    /// <summary>The status: bad where the answer is, or the file has faults of its own.</summary>
    public int Exit(bool isBad) => isBad || !Calculation.Faults.IsEmpty ? ExitCode.Bad : ExitCode.Fine;
}

/// <summary>Reads, calculates and asks.</summary>
internal static class AskedStudy
{
    /// <summary>The answer; faults of the file are reported.</summary>
    /// <exception cref="UserMistake">The file cannot be read, or the study cannot be done.</exception>
    public static AskedStudy<T> Of<T>(Shell shell, string path, Func<StudyRunner, Calculation, StudyOutcome<T>> ask) where T : class
    {
        Workbook workbook = WorkbookFile.Read(path).Workbook;
        ICalculator calculator = shell.Calculator();
        Calculation calculation = calculator.Calculate(workbook);
        StudyOutcome<T> outcome = ask(calculator.Studies, calculation);
        WorkbookFile.ReportFaults(shell, path, calculation);
        return outcome.IsAnswered ? new AskedStudy<T>(calculation, outcome.Answer) : throw new UserMistake(PlainText.Of(outcome.Fault.Sentence));
    }

    /// <summary>A word of the command line as a study takes it: it stands in no file.</summary>
    public static PlacedText At(string text) => new(text.Trim(), new Place(0, 1));
}
