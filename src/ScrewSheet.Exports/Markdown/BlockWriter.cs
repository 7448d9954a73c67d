using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Markdown;

/// <summary>The parts of a handout as Markdown.</summary>
internal sealed class BlockWriter(StringBuilder text)
{
    /// <summary>How wide a line of mathematics may be, in characters.</summary>
    public const int Width = 84;

    /// <summary>A sheet.</summary>
    public void Write(Section section)
    {
        text.Append(CultureInfo.InvariantCulture, $"## {MarkdownText.Of(section.Title.Length > 0 ? section.Title : section.Name)}\n\n");
        foreach (Block block in section.Blocks) Write(block);
    }

    /// <summary>Mathematics in lines that stay lines.</summary>
    public static string Lines(ImmutableArray<Notation> pieces) => string.Join("  \n", StepText.Wrapped(pieces, Width, 4).Select(line => line.StartsWith(' ') ? "&emsp;&emsp;" + MarkdownText.Of(line.Trim()) : MarkdownText.Of(line)));

    private void Write(Block block)
    {
        switch (block)
        {
            case ProseBlock prose: text.Append(prose.IsLead ? $"**{MarkdownText.Of(prose.Text)}**\n\n" : $"{MarkdownText.Of(prose.Text)}\n\n"); break;
            case GivensBlock givens: Write(givens); break;
            case StepBlock step: new StepWriter(text).Write(step); break;
            case TableBlock table: Write(table); break;
            case PlotBlock plot: text.Append(CultureInfo.InvariantCulture, $"**{MarkdownText.Of(plot.Caption)}** (drawn in the HTML handout): {MarkdownText.Of(plot.Description)}\n\n"); break;
            case MissingBlock missing: text.Append(CultureInfo.InvariantCulture, $"**Caution:** {MarkdownText.Of(missing.Text)}\n\n"); break;
            default: throw new InvalidOperationException($"{block.GetType().Name} is no known part of a handout.");
        }
    }

    private void Write(GivensBlock givens)
    {
        text.Append("| Given | Name | Value | Tolerance | Range | Where from |\n|---|---|---|---|---|---|\n");
        foreach (GivenRow row in givens.Rows)
            text.Append(CultureInfo.InvariantCulture, $"| {Join(row.Label, LinearText.Of(row.Name), LinearText.Of(row.Value), row.Tolerance, row.Range, row.Source)} |\n");
        text.Append('\n');
    }

    private void Write(TableBlock table)
    {
        text.Append(CultureInfo.InvariantCulture, $"**{MarkdownText.Of(table.Caption)}**\n\n");
        if (table.Heads.Length > 1) text.Append(CultureInfo.InvariantCulture, $"Across: {MarkdownText.Of(table.Heads[0][^1].Text)}\n\n");
        text.Append(CultureInfo.InvariantCulture, $"| {Join([.. table.Heads[^1].Select(head => head.Text)])} |\n|{string.Concat(table.Heads[^1].Select(_ => "---:|"))}\n");
        foreach (TableRow row in table.Rows) text.Append(CultureInfo.InvariantCulture, $"| {Join([.. row.Heads, .. row.Entries])} |\n");
        text.Append('\n');
        foreach (string remark in table.Remarks) text.Append(CultureInfo.InvariantCulture, $"{MarkdownText.Of(remark)}\n\n");
    }

    private static string Join(params string[] cells) => string.Join(" | ", cells.Select(MarkdownText.Of));
}
