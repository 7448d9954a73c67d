using System.Text;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Markdown;

/// <summary>Text as Markdown: signs that would be obeyed get a stroke before them, what would be a tag is shown.</summary>
public static class MarkdownText
{
    /// <summary>The text as it stands in a paragraph or a table.</summary>
    public static string Of(string text)
    {
        StringBuilder markdown = new();
        string visible = VisibleText.Of(text);
        for (int i = 0; i < visible.Length; i++)
        {
            char c = visible[i];
            if (c == '<') markdown.Append("&lt;");
            else if (c == '&') markdown.Append("&amp;");
            else if (c == ':' && i + 2 < visible.Length && visible[i + 1] == '/' && visible[i + 2] == '/') markdown.Append("&#58;");
            else if (c == '@') markdown.Append("&#64;");
            else if (IsObeyed(visible, i)) markdown.Append('\\').Append(c);
            else markdown.Append(c);
        }
        return markdown.ToString();
    }

    // points, brackets and strokes inside a sentence are left alone
    private static bool IsObeyed(string text, int at) => text[at] switch
    {
        '\\' or '`' or '*' or '_' or '[' or ']' or '|' or '~' or '>' or '{' or '}' or '$' => true,
        '#' or '+' or '-' => at == 0,
        '!' => at + 1 < text.Length && text[at + 1] == '[',
        '.' or ')' => at > 0 && text[..at].All(char.IsAsciiDigit) && (at + 1 == text.Length || text[at + 1] == ' '),
        _ => false,
    };
}
