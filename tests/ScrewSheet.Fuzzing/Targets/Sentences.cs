using ScrewSheet.Workbooks.Diagnostics;

namespace ScrewSheet.Fuzzing;

/// <summary>What every fault and every refusal must be: a sentence for people, at a place that is there.</summary>
internal static class Sentences
{
    /// <summary>What shows the inside of the program or of the machine it runs on.</summary>
    private static readonly string[] Insides =
        [AppContext.BaseDirectory, Environment.CurrentDirectory, Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), "   at ", ".cs:line", ".dll", "System.", "Microsoft.", "Exception", "ScrewSheet.", "Cells.s"];

    /// <summary>A fault of a text.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="lines">The lines of the text; places count in them from 1.</param>
    public static void Check(Fault fault, IReadOnlyList<string> lines)
    {
        CheckWords(fault.Sentence, lines);
        Target.Promise(fault.Code is >= 1000 and < 9000, $"a fault has the code {fault.Code}");
        if (fault.Place is not { } place) return;
        Target.Promise(place.Line >= 1 && place.Line <= Math.Max(1, lines.Count), $"fault {fault.Code} is in line {place.Line} of {lines.Count}: {fault.Sentence}");
        int length = lines.Count == 0 ? 0 : lines[place.Line - 1].Length;
        Target.Promise(place.Column >= 1 && place.Length >= 0 && place.Column <= length + 1, $"fault {fault.Code} is in column {place.Column} of {length}: {fault.Sentence}");
        Target.Promise(place.Column - 1 + place.Length <= length, $"fault {fault.Code} ends in column {place.Column - 1 + place.Length} of {length}: {fault.Sentence}");
    }

    /// <summary>A sentence, and nothing in it that neither the reader wrote nor the program should say.</summary>
    public static void CheckWords(string sentence, IReadOnlyList<string> lines)
    {
        Target.Promise(!string.IsNullOrWhiteSpace(sentence), "a fault says nothing");
        Target.Promise(sentence[^1] is '.' or '?' or '!', $"no sentence: {sentence}");
        foreach (string inside in Insides)
        {
            if (inside.Length < 2 || !sentence.Contains(inside, StringComparison.Ordinal)) continue;
            Target.Promise(lines.Any(line => line.Contains(inside.Trim().TrimEnd('.'), StringComparison.OrdinalIgnoreCase)), $"a sentence shows {inside.Trim()}: {sentence}");
        }
    }
}
