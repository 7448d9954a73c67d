using System.Text;

namespace ScrewSheet.Exports.Pages;

/// <summary>Keeps what was worked out from readers who are to work it out themselves.</summary>
internal static class Answers
{
    /// <summary>The words of the program about a value, with every number in them left blank where answers are hidden.</summary>
    public static string Hidden(string sentence, bool blanks)
    {
        if (!blanks) return sentence;
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

    /// <summary>A figure, or as wide a blank.</summary>
    public static string Figure(string figure, bool blanks) => blanks ? new string('_', Math.Clamp(figure.Length + 2, 5, 12)) : figure;
}
