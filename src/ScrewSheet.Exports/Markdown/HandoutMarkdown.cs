using System.Globalization;
using System.Text;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Markdown;

/// <summary>Handouts as Markdown: mathematics in lines of text, tables with strokes, plots named and left out.</summary>
public static class HandoutMarkdown
{
    /// <summary>The whole file, with line feeds.</summary>
    public static string Write(HandoutRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        Page page = new PageBuilder(request).Build();
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"# {MarkdownText.Of(page.Title)}\n\n");
        string by = string.Join(", ", new[] { page.Author, page.Date }.Where(part => part.Length > 0).Select(MarkdownText.Of));
        if (by.Length > 0) text.Append(by).Append("\n\n");
        if (page.Blanks) text.Append("Name: \\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_ Date: \\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\n\nPut the numbers in and work the results out.\n\n");
        text.Append("## Cautions\n\n");
        foreach (string caution in page.Cautions) text.Append(CultureInfo.InvariantCulture, $"- {MarkdownText.Of(caution)}\n");
        if (page.OwnCautions.Length > 0) text.Append("\nIn this workbook:\n\n");
        foreach (string caution in page.OwnCautions) text.Append(CultureInfo.InvariantCulture, $"- {MarkdownText.Of(caution)}\n");
        text.Append('\n');
        foreach (string paragraph in page.About) text.Append(CultureInfo.InvariantCulture, $"{MarkdownText.Of(paragraph)}\n\n");
        Functions(text, page);
        BlockWriter blocks = new(text);
        foreach (Section section in page.Sections) blocks.Write(section);
        Checks(text, page);
        Sources(text, page);
        text.Append("---\n\n" + StandingCaution.Sentence);
        if (page.MadeWith.Length > 0) text.Append(CultureInfo.InvariantCulture, $" Made with {MarkdownText.Of(page.MadeWith)}.");
        return text.Append('\n').ToString();
    }

    private static void Functions(StringBuilder text, Page page)
    {
        if (page.Functions.IsEmpty) return;
        text.Append("## Functions of this workbook\n\n");
        foreach ((Notation head, Notation body) in page.Functions) text.Append(BlockWriter.Lines(Pieces.OfChain(head, [body], BlockWriter.Width))).Append("\n\n");
    }

    private static void Checks(StringBuilder text, Page page)
    {
        if (page.Checks.IsEmpty) return;
        text.Append("## Checks\n\n| Step | Check | Outcome |\n|---|---|---|\n");
        foreach (CheckRow check in page.Checks)
        {
            string outcome = check.Fails ? $"**{check.Outcome}**" : MarkdownText.Of(check.Outcome);
            text.Append(CultureInfo.InvariantCulture, $"| {check.Step} | {MarkdownText.Of(check.Label)}: {MarkdownText.Of(check.Expression)} | {outcome} |\n");
        }
        text.Append('\n');
    }

    private static void Sources(StringBuilder text, Page page)
    {
        if (page.Sources.IsEmpty) return;
        text.Append("## Sources\n\n");
        foreach (SourceRow source in page.Sources) text.Append(CultureInfo.InvariantCulture, $"{source.Number}. {MarkdownText.Of(source.Work)}. For {MarkdownText.Of(source.UsedBy)}.\n");
        text.Append('\n');
    }
}
