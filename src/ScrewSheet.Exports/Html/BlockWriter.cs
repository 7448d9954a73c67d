using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using ScrewSheet.Exports.Drawing;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Html;

/// <summary>The parts of a handout as HTML.</summary>
internal sealed class BlockWriter(StringBuilder html)
{
    /// <summary>What fits on a line of a phone, in characters; wider pieces are broken where they can be.</summary>
    public const int PieceWidth = 26;

    private const int ShortTable = 12, ShortGivens = 6;

    private const string Word = " class=\"word\"";

    private int plots;

    /// <summary>A sheet.</summary>
    public void Write(Section section)
    {
        string title = section.Title.Length > 0 ? HtmlText.Of(section.Title) : HtmlText.Of(section.Name);
        html.Append(CultureInfo.InvariantCulture, $"<section>\n<h2>{title}</h2>\n");
        foreach (Block block in section.Blocks) Write(block);
        html.Append("</section>\n");
    }

    private void Write(Block block)
    {
        switch (block)
        {
            case ProseBlock prose: html.Append(CultureInfo.InvariantCulture, $"<p{(prose.IsLead ? " class=\"lead\"" : "")}>{HtmlText.Of(prose.Text)}</p>\n"); break;
            case GivensBlock givens: Write(givens); break;
            case StepBlock step: new StepWriter(html).Write(step); break;
            case TableBlock table: Write(table); break;
            case PlotBlock plot: Write(plot); break;
            case MissingBlock missing: html.Append(CultureInfo.InvariantCulture, $"<p class=\"caution\"><strong>Caution:</strong> {HtmlText.Of(missing.Text)}</p>\n"); break;
            default: throw new InvalidOperationException($"{block.GetType().Name} is no known part of a handout.");
        }
    }

    private void Write(GivensBlock givens)
    {
        bool tolerance = givens.Rows.Any(row => row.Tolerance.Length + row.Range.Length > 0);
        html.Append(CultureInfo.InvariantCulture, $"<div class=\"{Box(givens.Rows.Length, ShortGivens)}\"><table class=\"givens\">\n<caption>Given</caption>\n<thead><tr><th scope=\"col\">What</th><th scope=\"col\">Name</th><th scope=\"col\">Value</th>");
        if (tolerance) html.Append("<th scope=\"col\">Tolerance and range</th>");
        html.Append("</tr></thead>\n<tbody>\n");
        foreach (GivenRow row in givens.Rows)
        {
            string label = row.Label.Length > 0 ? HtmlText.Of(row.Label) : MathWriter.Inline(row.Name), from = row.Source.Length > 0 ? $"<br><span class=\"small\">{HtmlText.Of(row.Source)}</span>" : "";
            html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\">{label}{from}</th><td>{MathWriter.Inline(row.Name)}</td><td class=\"figure\">{HtmlText.Of(LinearText.Of(row.Value))}</td>");
            string range = row.Range.Length > 0 ? $"within {row.Range}" : "";
            if (tolerance) html.Append(CultureInfo.InvariantCulture, $"<td>{string.Join("<br>", new[] { row.Tolerance, range }.Where(part => part.Length > 0).Select(HtmlText.Of))}</td>");
            html.Append("</tr>\n");
        }
        html.Append("</tbody>\n</table></div>\n");
    }

    private void Write(TableBlock table)
    {
        html.Append(CultureInfo.InvariantCulture, $"<div class=\"{Box(table.Rows.Length, ShortTable)}\"><table class=\"figures\">\n<caption>{HtmlText.Of(table.Caption)}</caption>\n<thead>\n");
        bool[] words = [.. table.Rows.Take(1).SelectMany(row => row.Heads.Concat(row.Entries)).Select(IsWord)];
        foreach (ImmutableArray<TableHead> row in table.Heads)
        {
            html.Append("<tr>");
            for (int i = 0; i < row.Length; i++)
            {
                (string text, int columns) = (row[i].Text, row[i].Columns);
                if (text.Length == 0) html.Append("<td></td>");
                else if (columns > 1) html.Append(CultureInfo.InvariantCulture, $"<th scope=\"colgroup\" colspan=\"{columns}\">{HtmlText.Of(text)}</th>");
                else html.Append(CultureInfo.InvariantCulture, $"<th scope=\"col\"{(i < words.Length && words[i] ? Word : "")}>{HtmlText.Of(text)}</th>");
            }
            html.Append("</tr>\n");
        }
        html.Append("</thead>\n<tbody>\n");
        foreach (TableRow row in table.Rows)
        {
            html.Append("<tr>");
            foreach (string head in row.Heads) html.Append(CultureInfo.InvariantCulture, $"<th scope=\"row\"{(IsWord(head) ? Word : "")}>{Figure(head)}</th>");
            foreach (string entry in row.Entries) html.Append(CultureInfo.InvariantCulture, $"<td{(IsWord(entry) ? Word : "")}>{(entry == "FAILS" ? "<strong>FAILS</strong>" : Figure(entry))}</td>");
            html.Append("</tr>\n");
        }
        html.Append("</tbody>\n</table></div>\n");
        foreach (string remark in table.Remarks) html.Append(CultureInfo.InvariantCulture, $"<p class=\"small\">{HtmlText.Of(remark)}</p>\n");
    }

    private void Write(PlotBlock plot)
    {
        html.Append("<figure>\n");
        foreach (Plot panel in plot.Panels)
        {
            string id = string.Create(CultureInfo.InvariantCulture, $"plot-{++plots}");
            html.Append(SvgPlot.Write(panel, $"{plot.Caption}: {panel.Up} over {panel.Across}", plot.Description, id)).Append('\n');
        }
        html.Append(CultureInfo.InvariantCulture, $"<figcaption>{HtmlText.Of(plot.Caption)}</figcaption>\n</figure>\n");
    }

    // words are read from the left, figures compared from the right
    private static bool IsWord(string text) => text.Length > 0 && char.IsLetter(text[0]) && text is not ("holds" or "FAILS" or "fault");

    // a short table stands on one page; a long one goes on under its heads
    private static string Box(int rows, int most) => rows <= most ? "wide short" : "wide";

    private static string Figure(string text) => HtmlText.Of(text.Length > 1 && text[0] == '-' && char.IsAsciiDigit(text[1]) ? LinearText.Numeral(text) : text);
}
