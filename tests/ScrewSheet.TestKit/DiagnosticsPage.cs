using System.Globalization;
using System.Text;

namespace ScrewSheet.TestKit;

/// <summary><c>docs/diagnostics.md</c>: each project that words faults holds one section of it, a table between two comments.</summary>
public static class DiagnosticsPage
{
    private const string FilePath = "docs/diagnostics.md";

    /// <summary>Fails unless the section lists exactly these faults; with SCREWSHEET_WRITE=1 it is written, at the end of the page where it is new.</summary>
    /// <param name="section">The section's name, such as the project's.</param>
    /// <param name="faults">Code and summary of each, in order.</param>
    public static void Holds(string section, IEnumerable<(int Code, string Summary)> faults)
    {
        string begin = $"<!-- faults of {section} -->", end = $"<!-- end of {section} -->";
        StringBuilder table = new();
        table.Append(begin).Append("\n| code | what it means |\n|---|---|\n");
        foreach ((int code, string summary) in faults) table.Append(CultureInfo.InvariantCulture, $"| {code} | {summary} |\n");
        table.Append(end);
        string full = Path.Combine(GoldenFile.Root, FilePath), page = File.Exists(full) ? File.ReadAllText(full).ReplaceLineEndings("\n") : "# Faults\n";
        int from = page.IndexOf(begin, StringComparison.Ordinal), to = page.IndexOf(end, StringComparison.Ordinal);
        string expected = from < 0 || to < from ? $"{page.TrimEnd('\n')}\n\n## {section}\n\n{table}\n" : page[..from] + table + page[(to + end.Length)..];
        GoldenFile.Holds(FilePath, expected);
    }
}
