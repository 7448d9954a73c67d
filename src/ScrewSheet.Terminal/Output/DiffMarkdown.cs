using ScrewSheet.Exports.Markdown;
using ScrewSheet.Workbooks.Comparing;

namespace ScrewSheet.Terminal.Output;

/// <summary>The differences of two versions in Markdown: a table for each kind.</summary>
internal static class DiffMarkdown
{
    /// <summary>Writes the page.</summary>
    public static void Write(Comparison comparison, DiffNames names, TextWriter output)
    {
        output.Write($"# {MarkdownText.Of(names.Before)} → {MarkdownText.Of(names.After)}\n");
        foreach (DiffSection section in DiffPage.Of(comparison))
        {
            output.Write($"\n## {section.Title}\n\n| where | what | before | after | |\n|---|---|---|---|---|\n");
            foreach (DiffRow row in section.Rows) output.Write($"| {MarkdownText.Of(row.Where)} | {MarkdownText.Of(row.What)} | {MarkdownText.Of(row.Before ?? "")} | {MarkdownText.Of(row.After ?? "")} | {MarkdownText.Of(row.Note)} |\n");
        }
        output.Write($"\n{DiffPage.Summary(comparison)}\n");
    }
}
