using System.Text.RegularExpressions;
using ScrewSheet.TestKit;
using ScrewSheet.Workbooks.Diagnostics;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Terminal.Tests.Safety;

/// <summary>What a refusal may say: a sentence for the author, nothing of the machine, the runtime or the compiler.</summary>
internal static partial class PlainSentence
{
    private const int Longest = 600;

    private static readonly string[] Places =
        [.. new[] { Path.GetTempPath(), AppContext.BaseDirectory, Environment.CurrentDirectory, GoldenFile.Root, Environment.GetFolderPath(Environment.SpecialFolder.UserProfile), Environment.MachineName }.Where(place => place.Length > 2)];

    /// <summary>What is wrong with the fault's sentence, or null.</summary>
    /// <param name="fault">The fault.</param>
    /// <param name="written">What the author wrote: those words may come back.</param>
    public static string? Problem(Fault fault, string written)
    {
        string sentence = fault.Sentence;
        if (sentence.Length is < 12 or > Longest || !sentence.Contains(' ') || sentence[^1] is not ('.' or '?')) return "it is no sentence";
        if (VisibleText.Of(sentence) != sentence) return "it holds a character no reader sees";
        if (Places.FirstOrDefault(place => sentence.Contains(place, StringComparison.Ordinal)) is { } place) return $"it names {place}";
        return Machinery().Matches(sentence).FirstOrDefault(match => !written.Contains(match.Value, StringComparison.Ordinal)) is { } match ? $"it speaks of {match.Value}" : null;
    }

    // names of the runtime, of the compiler and of what stands in for the library while binding; traces and rooted paths
    [GeneratedRegex(@"\b(System|Microsoft|UnitsNet|ScrewSheet|Roslyn|CodeAnalysis|Exception|Nullable|Int32|Double|Boolean|String|Object|IOperation|Quantity|Lib|StackTrace)\b|CS\d{4}|\bat [A-Z]\w+\.|`\d|(?<![\w.])/(usr|tmp|home|root|etc|opt|proc|var)\b|[A-Z]:\\")]
    private static partial Regex Machinery();
}
