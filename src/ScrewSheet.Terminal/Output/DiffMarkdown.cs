using System.Text;
using ScrewSheet.Workbooks.Comparing;

namespace ScrewSheet.Terminal.Output;

/// <summary>The differences of two versions in Markdown: a table for each kind.</summary>
internal static class DiffMarkdown
{
    /// <summary>Writes the page.</summary>
    public static void Write(Comparison comparison, DiffNames names, TextWriter output)
    {
        output.Write($"# {Harmless(names.Before)} → {Harmless(names.After)}\n");
        foreach (DiffSection section in DiffPage.Of(comparison))
        {
            output.Write($"\n## {section.Title}\n\n| where | what | before | after | |\n|---|---|---|---|---|\n");
            foreach (DiffRow row in section.Rows) output.Write($"| {Harmless(row.Where)} | {Harmless(row.What)} | {Harmless(row.Before ?? "")} | {Harmless(row.After ?? "")} | {Harmless(row.Note)} |\n");
        }
        output.Write($"\n{DiffPage.Summary(comparison)}\n");
    }

    /// <summary>A text in which nothing is markup.</summary>
    private static string Harmless(string text)
    {
        StringBuilder plain = new(text.Length);
        foreach (char c in PlainText.Of(text))
        {
            if (c is '<') plain.Append("&lt;");
            else if (c is '&') plain.Append("&amp;");
            else if (c is '\\' or '|' or '*' or '_' or '`' or '[' or ']' or '#' or '~' or '$' or '>') plain.Append('\\').Append(c);
            else plain.Append(c);
        }
        return plain.ToString();
    }
}
