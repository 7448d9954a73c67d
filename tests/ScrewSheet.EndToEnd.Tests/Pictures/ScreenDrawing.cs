using System.Globalization;
using System.Text;

namespace ScrewSheet.EndToEnd.Tests.Pictures;

/// <summary>Draws a screen as a picture that scales.</summary>
internal static class ScreenDrawing
{
    private const double Across = 8.4, Down = 18, Edge = 12;
    private const string Ground = "#fbfaf7", Letters = "#222222";

    /// <summary>The picture, as the text of an SVG file.</summary>
    /// <param name="captured">What tmux hands out, with the codes of styles.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Lines.</param>
    /// <param name="title">What it shows, for those who do not see it.</param>
    public static string Draw(string captured, int width, int height, string title)
    {
        double wide = (width * Across) + (2 * Edge), high = (height * Down) + (2 * Edge);
        StringBuilder svg = new();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {wide:0.#} {high:0.#}\" width=\"{wide:0.#}\" height=\"{high:0.#}\" role=\"img\">\n<title>{Escaped(title)}</title>\n");
        svg.Append(CultureInfo.InvariantCulture, $"<rect width=\"100%\" height=\"100%\" rx=\"8\" fill=\"{Ground}\" stroke=\"#cccccc\"/>\n<g font-family=\"ui-monospace, 'DejaVu Sans Mono', Menlo, Consolas, monospace\" font-size=\"14\" xml:space=\"preserve\" style=\"white-space:pre\">\n");
        var lines = StyledScreen.Read(captured);
        for (int line = 0; line < lines.Count; line++)
        {
            int column = 0;
            foreach ((string text, Look look) in lines[line])
            {
                Piece(svg, text, look, column, line);
                column += new StringInfo(text).LengthInTextElements;
            }
        }
        return svg.Append("</g>\n</svg>\n").ToString();
    }

    private static void Piece(StringBuilder svg, string text, Look look, int column, int line)
    {
        double x = Edge + (column * Across), y = Edge + (line * Down), wide = new StringInfo(text).LengthInTextElements * Across;
        string colour = look.Colour ?? Letters;
        if (look.IsReversed) svg.Append(CultureInfo.InvariantCulture, $"<rect x=\"{x:0.#}\" y=\"{y:0.#}\" width=\"{wide:0.#}\" height=\"{Down:0.#}\" fill=\"{colour}\"/>\n");
        if (text.Trim().Length == 0) return;
        string style = (look.IsBold ? " font-weight=\"bold\"" : "") + (look.IsFaint && !look.IsReversed ? " opacity=\"0.65\"" : "") + (look.IsUnderlined ? " text-decoration=\"underline\"" : "");
        // each piece is held to its columns, whatever the letters of the viewer are
        int lead = text.Length - text.TrimStart().Length;
        string shown = text.Trim();
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x + (lead * Across):0.#}\" y=\"{y + 13.5:0.#}\" textLength=\"{new StringInfo(shown).LengthInTextElements * Across:0.#}\" lengthAdjust=\"spacingAndGlyphs\" fill=\"{(look.IsReversed ? Ground : colour)}\"{style}>{Escaped(shown)}</text>\n");
    }

    // a viewer draws several blanks as one unless they are of the kind that is kept
    private static string Escaped(string text) => text.Replace(' ', '\u00A0').Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
}
