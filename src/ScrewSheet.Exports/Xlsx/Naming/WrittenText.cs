using System.Text.RegularExpressions;

namespace ScrewSheet.Exports.Xlsx.Naming;

/// <summary>Text as the format holds it (ECMA-376, Part 1, 22.9.2.19, ST_Xstring).</summary>
internal static partial class WrittenText
{
    /// <summary>There <c>_x202E_</c> is a character by its number, so an author's own underscore before such a number is written by number too.</summary>
    public static string Of(string text) => text.Contains("_x", StringComparison.Ordinal) ? ByNumber().Replace(text, "_x005F_") : text;

    [GeneratedRegex("_(?=x[0-9A-Fa-f]{4}_)")]
    private static partial Regex ByNumber();
}
