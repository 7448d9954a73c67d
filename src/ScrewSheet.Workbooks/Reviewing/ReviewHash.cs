using System.Security.Cryptography;
using System.Text;

namespace ScrewSheet.Workbooks.Reviewing;

/// <summary>
/// What a mark is bound to: sixteen hexadecimal digits over everything a result depends on, which decide whether the mark holds, a hyphen, and four times four digits
/// over its parts, which only say what was changed when it does not.
/// </summary>
/// <param name="Whole">Over everything.</param>
/// <param name="Expression">Over the cell's own expression, type and unit.</param>
/// <param name="Reads">Over what the cells it reads say, and the cells those read.</param>
/// <param name="Functions">Over the author's functions it calls, and their callees.</param>
/// <param name="Library">Over the declarations of what it uses of the library.</param>
internal readonly record struct ReviewHash(string Whole, string Expression, string Reads, string Functions, string Library)
{
    private const int WholeDigits = 16, PartDigits = 4;

    /// <summary>From texts that say the same on every machine.</summary>
    public static ReviewHash Of(string whole, string expression, string reads, string functions, string library) =>
        new(Digits(whole, WholeDigits), Digits(expression, PartDigits), Digits(reads, PartDigits), Digits(functions, PartDigits), Digits(library, PartDigits));

    /// <summary>True for a hash as <see cref="ToString"/> writes it, or its first sixteen digits alone.</summary>
    public static bool IsHash(string text) =>
        text.Length is WholeDigits or WholeDigits + 1 + (4 * PartDigits) && text.Select((c, i) => i == WholeDigits ? c == '-' : c is (>= '0' and <= '9') or (>= 'a' and <= 'f')).All(good => good);

    /// <summary>What was changed since the hash in a mark was made; null where nothing was.</summary>
    public string? Change(string marked)
    {
        if (marked.AsSpan(0, WholeDigits).SequenceEqual(Whole)) return null;
        if (marked.Length == WholeDigits) return "it, or something it depends on, was changed";
        List<string> changed = [];
        if (Part(marked, 0) != Expression) changed.Add("the expression");
        if (Part(marked, 1) != Reads) changed.Add("a cell it depends on");
        if (Part(marked, 2) != Functions) changed.Add("a function of the workbook");
        if (Part(marked, 3) != Library) changed.Add("the library");
        return changed.Count == 0 ? "it, or something it depends on, was changed" : $"{Listed(changed)} {(changed.Count == 1 ? "was" : "were")} changed";
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Whole}-{Expression}{Reads}{Functions}{Library}";

    /// <summary>The SHA-256 of a text's UTF-8, in hexadecimal.</summary>
    public static string Sha(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)));

    private static string Listed(List<string> words) => words.Count == 1 ? words[0] : $"{string.Join(", ", words[..^1])} and {words[^1]}";

    private static string Part(string marked, int part) => marked.Substring(WholeDigits + 1 + (part * PartDigits), PartDigits);

    private static string Digits(string text, int digits) => Sha(text)[..digits];
}
