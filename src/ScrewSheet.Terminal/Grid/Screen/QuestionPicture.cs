using ScrewSheet.Terminal.Grid.State;
using ScrewSheet.Terminal.Output;

namespace ScrewSheet.Terminal.Grid.Screen;

/// <summary>A question with its answers, each with its letter.</summary>
internal static class QuestionPicture
{
    /// <summary>As many lines as it takes.</summary>
    public static IReadOnlyList<ScreenLine> Lines(Confirming confirming, int width)
    {
        List<ScreenLine> lines = [.. Wrapping.Lines(confirming.Question, Math.Max(8, width - 2)).Select(line => new LineBuilder(width).Add(" " + line, Ink.Strong).Line())];
        foreach (var answer in confirming.Answers) lines.Add(new LineBuilder(width).Add($"   {char.ToUpperInvariant(answer.Letter)}", Ink.Key).Add("  " + answer.Meaning).Line());
        return lines;
    }
}
