using System.Text;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Naming;

/// <summary>Names of sheets as ECMA-376 allows them (Part 1, 18.2.19): 1 to 31 characters, none of <c>[ ] : * ? / \</c>, no apostrophe at either end, one of each whatever the case of its letters.</summary>
internal sealed class SheetNames
{
    private const int Longest = 31;
    private const string Forbidden = "[]:*?/\\";

    private readonly HashSet<string> taken = new(StringComparer.OrdinalIgnoreCase);

    /// <summary>A name that is allowed and not taken yet; as asked for where that is both.</summary>
    public string Add(string wanted)
    {
        string plain = Plain(wanted), name = Cut(plain, Longest);
        for (int again = 2; !taken.Add(name); again++)
        {
            string ending = $" {again}";
            name = Cut(plain, Longest - ending.Length) + ending;
        }
        return name;
    }

    /// <summary>The name as formulas write it.</summary>
    public static string Quoted(string name) => $"'{name.Replace("'", "''", StringComparison.Ordinal)}'";

    private static string Plain(string wanted)
    {
        StringBuilder plain = new();
        foreach (char c in VisibleText.Of(wanted)) plain.Append(Forbidden.Contains(c, StringComparison.Ordinal) ? '_' : c);
        string name = plain.ToString().Trim().Trim('\'');
        // one word is kept for a list of changes by programs that read the format
        return name.Length == 0 || name.Equals("History", StringComparison.OrdinalIgnoreCase) ? name + "_" : name;
    }

    private static string Cut(string name, int length)
    {
        if (name.Length <= length) return name;
        return name[..(char.IsHighSurrogate(name[length - 1]) ? length - 1 : length)].TrimEnd().TrimEnd('\'');
    }
}
