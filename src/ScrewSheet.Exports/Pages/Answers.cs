using System.Text;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Pages;

/// <summary>Keeps what was worked out from readers who are to work it out themselves.</summary>
internal sealed class Answers(StepTools tools)
{
    // what the library says whatever the numbers are
    private readonly HashSet<string> fixedSentences = tools.Blanks ? [.. tools.Library.Functions.SelectMany(function => function.Cautions.Select(caution => $"{function.Name}: {caution.Sentence}"))] : [];

    /// <summary>The words of the program about a value, with every number in them left blank where answers are hidden and the words are not the same for every number.</summary>
    public string Hidden(string sentence) => tools.Blanks && !fixedSentences.Any(known => sentence.EndsWith(known, StringComparison.Ordinal)) ? Blanked(sentence) : sentence;

    /// <summary>A figure, or as wide a blank.</summary>
    public string Figure(string figure) => tools.Blanks ? new string('_', Math.Clamp(figure.Length + 2, 5, 12)) : figure;

    /// <summary>A sentence with blanks for its numbers; figures that belong to a name stay.</summary>
    public static string Blanked(string sentence)
    {
        StringBuilder text = new();
        for (int i = 0; i < sentence.Length; i++)
        {
            bool starts = char.IsAsciiDigit(sentence[i]) && (i == 0 || !(char.IsLetterOrDigit(sentence[i - 1]) || sentence[i - 1] is '.' or '_'));
            if (!starts)
            {
                text.Append(sentence[i]);
                continue;
            }
            int end = i;
            while (end < sentence.Length && (char.IsAsciiLetterOrDigit(sentence[end]) || (sentence[end] is '.' or ',' && end + 1 < sentence.Length && char.IsAsciiDigit(sentence[end + 1])))) end++;
            text.Append("_____");
            i = end - 1;
        }
        return text.ToString();
    }
}
