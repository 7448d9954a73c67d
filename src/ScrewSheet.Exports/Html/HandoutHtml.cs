using System.Globalization;
using System.Text;
using ScrewSheet.Exports.Pages;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Html;

/// <summary>Handouts as one HTML file: no script, nothing fetched, made for paper and for a phone.</summary>
public static class HandoutHtml
{
    /// <summary>The whole file, in UTF-8 without a byte-order mark when written so, with line feeds.</summary>
    public static string Write(HandoutRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        Page page = new PageBuilder(request).Build();
        StringBuilder html = new();
        string title = HtmlText.Of(page.Title);
        html.Append(CultureInfo.InvariantCulture, $"<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\">\n");
        html.Append(CultureInfo.InvariantCulture, $"<title>{title}</title>\n<style>\n{Style.Of(page.IsLetter)}</style>\n</head>\n<body>\n<header>\n<h1>{title}</h1>\n");
        string by = string.Join(", ", new[] { page.Author, page.Date }.Where(part => part.Length > 0).Select(HtmlText.Of));
        if (by.Length > 0) html.Append(CultureInfo.InvariantCulture, $"<p class=\"by\">{by}</p>\n");
        if (page.Blanks) html.Append("<p class=\"by\">Name: ______________________________ Date: ______________</p>\n<p>Put the numbers in and work the results out.</p>\n");
        html.Append("</header>\n<main>\n");
        Cautions(html, page);
        foreach (string paragraph in page.About) html.Append(CultureInfo.InvariantCulture, $"<p>{HtmlText.Of(paragraph)}</p>\n");
        Functions(html, page);
        BlockWriter blocks = new(html);
        foreach (Section section in page.Sections) blocks.Write(section);
        Checks(html, page);
        Sources(html, page);
        html.Append("</main>\n<footer>\n<p>" + StandingCaution.Sentence);
        if (page.MadeWith.Length > 0) html.Append(CultureInfo.InvariantCulture, $" Made with {HtmlText.Of(page.MadeWith)}.");
        return html.Append("</p>\n</footer>\n</body>\n</html>\n").ToString();
    }

    private static void Cautions(StringBuilder html, Page page)
    {
        html.Append("<section class=\"cautions\" aria-labelledby=\"cautions\">\n<h2 id=\"cautions\">Cautions</h2>\n<ul>\n");
        foreach (string caution in page.Cautions) html.Append(CultureInfo.InvariantCulture, $"<li>{HtmlText.Of(caution)}</li>\n");
        html.Append("</ul>\n");
        if (page.OwnCautions.Length > 0)
        {
            html.Append("<p>In this workbook:</p>\n<ul>\n");
            foreach (string caution in page.OwnCautions) html.Append(CultureInfo.InvariantCulture, $"<li>{HtmlText.Of(caution)}</li>\n");
            html.Append("</ul>\n");
        }
        html.Append("</section>\n");
    }

    private static void Functions(StringBuilder html, Page page)
    {
        if (page.Functions.IsEmpty) return;
        html.Append("<section>\n<h2>Functions of this workbook</h2>\n");
        foreach ((Notation head, Notation body) in page.Functions) html.Append(CultureInfo.InvariantCulture, $"<p class=\"math\">{MathWriter.Of(Pieces.OfChain(head, [body], BlockWriter.PieceWidth))}</p>\n");
        html.Append("</section>\n");
    }

    private static void Checks(StringBuilder html, Page page)
    {
        if (page.Checks.IsEmpty) return;
        html.Append("<section>\n<h2>Checks</h2>\n<div class=\"wide\"><table class=\"checks\">\n<caption>What must hold, and whether it does</caption>\n<thead><tr><th scope=\"col\">Step</th><th scope=\"col\">Check</th><th scope=\"col\">Outcome</th></tr></thead>\n<tbody>\n");
        foreach (CheckRow check in page.Checks)
        {
            string outcome = check.Fails ? $"<strong>{check.Outcome}</strong>" : check.Outcome;
            html.Append(CultureInfo.InvariantCulture, $"<tr><th scope=\"row\"><a href=\"#step-{check.Step}\">{check.Step}</a></th><td>{HtmlText.Of(check.Label)}<br><span class=\"small\">{HtmlText.Of(check.Expression)}</span></td><td>{outcome}</td></tr>\n");
        }
        html.Append("</tbody>\n</table></div>\n</section>\n");
    }

    private static void Sources(StringBuilder html, Page page)
    {
        if (page.Sources.IsEmpty) return;
        html.Append("<section>\n<h2>Sources</h2>\n<ol class=\"sources\">\n");
        foreach (SourceRow source in page.Sources) html.Append(CultureInfo.InvariantCulture, $"<li id=\"source-{source.Number}\">{HtmlText.Of(source.Work)}. <span class=\"small\">For {HtmlText.Of(source.UsedBy)}.</span></li>\n");
        html.Append("</ol>\n</section>\n");
    }
}
