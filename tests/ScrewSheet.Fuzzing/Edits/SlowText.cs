using System.Text.RegularExpressions;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Fuzzing.Edits;

/// <summary>A reference as it stands in an expression of the walk.</summary>
/// <param name="Start">Where it begins.</param>
/// <param name="Length">How long it is, the sheet's name included.</param>
/// <param name="Sheet">The sheet written before it, or null.</param>
/// <param name="Name">Name or address.</param>
/// <param name="Corner">1 or 2 for a corner of a run, else 0.</param>
internal readonly record struct SlowReference(int Start, int Length, string? Sheet, string Name, int Corner)
{
    /// <summary>The address, where it is one.</summary>
    public CellAddress? Address => CellAddress.TryParse(Name, out CellAddress address) && address.IsValid ? address : null;

    /// <summary>With the sheet before it, as the text has it.</summary>
    public string Prefix => Sheet is null ? "" : Sheet + ".";
}

/// <summary>Finds references by a pattern, without the program's lexer. It knows only what expressions of the walk consist of.</summary>
internal static partial class SlowText
{
    private static readonly string[] OtherWords = ["true", "false"];

    /// <summary>The references of an expression, in order.</summary>
    /// <param name="text">The expression.</param>
    /// <param name="sheets">The names of the sheets there are.</param>
    public static List<SlowReference> References(string text, IReadOnlyCollection<string> sheets)
    {
        List<SlowReference> found = [];
        foreach (Match match in Pieces().Matches(text))
        {
            if (!match.Groups["name"].Success || OtherWords.Contains(match.Value)) continue;
            string? sheet = match.Groups["sheet"].Success ? match.Groups["sheet"].Value : null;
            bool known = sheet is null || sheets.Contains(sheet);
            int corner = text[..match.Index].EndsWith("Series(", StringComparison.Ordinal) ? 1 : found is [.., { Corner: 1 } before] && text[(before.Start + before.Length)..match.Index] == ", " ? 2 : 0;
            // a sheet that is not there is a name nobody has, and what follows its point belongs to it
            found.Add(known ? new SlowReference(match.Index, match.Length, sheet, match.Groups["name"].Value, corner) : new SlowReference(match.Index, sheet!.Length, null, sheet, 0));
        }
        return found;
    }

    /// <summary>The text with each reference written anew; null leaves one as it is.</summary>
    public static string Rewrite(string text, IReadOnlyCollection<string> sheets, Func<List<SlowReference>, int, string?> write)
    {
        List<SlowReference> references = References(text, sheets);
        for (int i = references.Count - 1; i >= 0; i--)
            if (write(references, i) is { } instead) text = text[..references[i].Start] + instead + text[(references[i].Start + references[i].Length)..];
        return text;
    }

    /// <summary>The form of an expression: every reference is a <c>#</c>.</summary>
    public static string Form(string text, List<SlowReference> references)
    {
        for (int i = references.Count - 1; i >= 0; i--) text = string.Concat(text.AsSpan(0, references[i].Start), "#", text.AsSpan(references[i].Start + references[i].Length));
        return text;
    }

    // a text in quotes; a number with its unit; a function's name; a name or address, perhaps with its sheet
    [GeneratedRegex("""("[^"]*")|(\d+(\.\d+)?( kN)?)|(\w+\()|((?<sheet>[A-Z]\w*)\.)?(?<name>[A-Za-z]\w*)""")]
    private static partial Regex Pieces();
}
