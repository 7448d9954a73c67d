using System.Text;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Html;

/// <summary>Text as HTML: what a page would obey is written as what it shows, what a reader would not see by its number.</summary>
internal static class HtmlText
{
    /// <summary>The text between tags or in an attribute's double quotes.</summary>
    public static string Of(string text)
    {
        string visible = VisibleText.Of(text);
        if (visible.AsSpan().IndexOfAny("&<>\"'") < 0) return visible;
        StringBuilder html = new(visible.Length + 16);
        foreach (char c in visible)
        {
            html.Append(c switch { '&' => "&amp;", '<' => "&lt;", '>' => "&gt;", '"' => "&quot;", '\'' => "&#39;", _ => c.ToString() });
        }
        return html.ToString();
    }
}
