using System.Globalization;
using System.Text;
using ScrewSheet.Exports.Html;
using ScrewSheet.Exports.Steps;

namespace ScrewSheet.Exports.Drawing;

/// <summary>A plot as SVG, readable in black and white: curves differ by dashes and marks, and a legend names them.</summary>
internal static class SvgPlot
{
    private const double Left = 64, Right = 16, Top = 14, Bottom = 50, Wide = 600, High = 300, LegendRow = 20, LegendColumn = 260;

    private static readonly string[] Dashes = ["", "7 4", "2 3", "9 3 2 3", "12 5", "4 2"];

    /// <summary>The picture.</summary>
    /// <param name="plot">What is drawn.</param>
    /// <param name="title">Its name for those who do not see it.</param>
    /// <param name="description">What it shows.</param>
    /// <param name="id">A name no other picture of the page has.</param>
    public static string Write(Plot plot, string title, string description, string id)
    {
        Scale across = Scale.Over(plot.Curves.SelectMany(curve => curve.Points).Select(point => point.X)), up = plot.Blanks ? new Scale(0, 5, 1) : Scale.Over(plot.Curves.SelectMany(curve => curve.Points).Select(point => point.Y).OfType<double>());
        bool legend = plot.Curves.Length > 1;
        double tall = Top + High + Bottom + (legend ? Math.Ceiling(plot.Curves.Length / 2.0) * LegendRow : 0), wide = Left + Wide + Right;
        StringBuilder svg = new();
        svg.Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"plot\" viewBox=\"0 0 {wide:0} {tall:0}\" role=\"img\" aria-labelledby=\"{id}-t {id}-d\">\n");
        svg.Append(CultureInfo.InvariantCulture, $"<title id=\"{id}-t\">{HtmlText.Of(title)}</title>\n<desc id=\"{id}-d\">{HtmlText.Of(description)}</desc>\n");
        Grid(svg, across, up, plot);
        if (!plot.Blanks) for (int i = 0; i < plot.Curves.Length; i++) Draw(svg, plot.Curves[i], i, across, up);
        if (legend) for (int i = 0; i < plot.Curves.Length; i++) Legend(svg, plot.Curves[i].Name, i);
        return svg.Append("</svg>").ToString();
    }

    private static void Grid(StringBuilder svg, Scale across, Scale up, Plot plot)
    {
        svg.Append("<g fill=\"#000\" stroke=\"none\" font-size=\"14\">\n");
        foreach (double tick in across.Ticks)
        {
            string x = Number(X(across, tick));
            svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{x} {Number(Top)}V{Number(Top + High)}\" stroke=\"#ccc\" stroke-width=\"1\"/><text x=\"{x}\" y=\"{Number(Top + High + 18)}\" text-anchor=\"middle\">{LinearText.Numeral(across.Figure(tick))}</text>\n");
        }
        foreach (double tick in up.Ticks)
        {
            string y = Number(Y(up, tick));
            string figure = plot.Blanks ? "" : $"<text x=\"{Number(Left - 8)}\" y=\"{Number(Y(up, tick) + 5)}\" text-anchor=\"end\">{LinearText.Numeral(up.Figure(tick))}</text>";
            svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{Number(Left)} {y}H{Number(Left + Wide)}\" stroke=\"#ccc\" stroke-width=\"1\"/>{figure}\n");
        }
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{Number(Left)} {Number(Top)}V{Number(Top + High)}H{Number(Left + Wide)}\" fill=\"none\" stroke=\"#000\" stroke-width=\"1.5\"/>\n");
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{Number(Left + (Wide / 2))}\" y=\"{Number(Top + High + 42)}\" text-anchor=\"middle\" font-size=\"15\">{HtmlText.Of(plot.Across)}</text>\n");
        double middle = Top + (High / 2);
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"14\" y=\"{Number(middle)}\" text-anchor=\"middle\" font-size=\"15\" transform=\"rotate(-90 14 {Number(middle)})\">{HtmlText.Of(plot.Up)}</text>\n</g>\n");
    }

    private static void Draw(StringBuilder svg, Curve curve, int index, Scale across, Scale up)
    {
        StringBuilder path = new();
        bool down = false;
        foreach ((double x, double? y) in curve.Points)
        {
            if (y is { } value) path.Append(down ? "L" : "M").Append(Number(X(across, x))).Append(' ').Append(Number(Y(up, value)));
            down = y is not null;
        }
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"{path}\" fill=\"none\" stroke=\"#000\" stroke-width=\"1.8\"{Dash(index)}/>\n");
        foreach ((double x, double? y) in curve.Points)
            if (y is { } value) svg.Append(Mark(index, X(across, x), Y(up, value)));
        svg.Append('\n');
    }

    private static void Legend(StringBuilder svg, string name, int index)
    {
        double x = Left + (index % 2 * LegendColumn), y = Top + High + Bottom + 4 + (index / 2 * LegendRow);
        svg.Append(CultureInfo.InvariantCulture, $"<path d=\"M{Number(x)} {Number(y)}H{Number(x + 44)}\" fill=\"none\" stroke=\"#000\" stroke-width=\"1.8\"{Dash(index)}/>{Mark(index, x + 22, y)}<text x=\"{Number(x + 54)}\" y=\"{Number(y + 5)}\" font-size=\"14\">{HtmlText.Of(name)}</text>\n");
    }

    private static string Dash(int index) => Dashes[index % Dashes.Length] is { Length: > 0 } dash ? $" stroke-dasharray=\"{dash}\"" : "";

    private static string Mark(int index, double x, double y)
    {
        const double r = 4;
        string at = $"{Number(x)} {Number(y)}", fill = index % 2 == 0 ? "#000" : "#fff";
        string shape = (index % 6) switch
        {
            0 or 1 => $"<circle cx=\"{Number(x)}\" cy=\"{Number(y)}\" r=\"{Number(r)}\"",
            2 or 3 => $"<path d=\"M{Number(x - r)} {Number(y - r)}h{Number(2 * r)}v{Number(2 * r)}h{Number(-2 * r)}z\"",
            _ => $"<path d=\"M{at}m0 {Number(-1.3 * r)}l{Number(1.2 * r)} {Number(2.1 * r)}h{Number(-2.4 * r)}z\"",
        };
        return $"{shape} fill=\"{fill}\" stroke=\"#000\" stroke-width=\"1.4\"/>";
    }

    private static double X(Scale scale, double value) => Left + (scale.Place(value) * Wide);

    private static double Y(Scale scale, double value) => Top + ((1 - scale.Place(value)) * High);

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
