using System.Globalization;
using System.Xml.Linq;
using DocumentFormat.OpenXml.Packaging;
using ScrewSheet.Exports.Xlsx.Charts;
using static ScrewSheet.Exports.Xlsx.Afterwards.Markup;

namespace ScrewSheet.Exports.Xlsx.Afterwards;

/// <summary>Writes charts (ECMA-376, Part 1, 21.2) and the drawing that places them on a sheet (20.5). Lines are black or grey, told apart by dashes and markers.</summary>
internal static class ChartWriter
{
    private const int Wide = 8;
    // another than ClosedXML gives out, which are rId and a number
    private const string Relation = "rIdCharts";
    private static readonly string[] Dashes = ["solid", "dash", "sysDot", "dashDot", "lgDash", "lgDashDot"], Symbols = ["circle", "square", "triangle", "diamond", "x", "plus"], Inks = ["000000", "595959"];

    /// <summary>Adds the charts of a sheet.</summary>
    /// <returns>The relation to the drawing; null where there are none.</returns>
    public static string? Add(WorksheetPart sheet, IReadOnlyList<Chart> charts)
    {
        if (charts.Count == 0) return null;
        DrawingsPart drawing = sheet.AddNewPart<DrawingsPart>(Relation);
        XElement root = new(D + "wsDr", new XAttribute(XNamespace.Xmlns + "xdr", D), new XAttribute(XNamespace.Xmlns + "a", A));
        for (int i = 0; i < charts.Count; i++)
        {
            ChartPart part = drawing.AddNewPart<ChartPart>($"rId{i + 1}");
            Markup.Write(part, Space(charts[i]));
            root.Add(Anchor(charts[i], drawing.GetIdOfPart(part), i));
        }
        Markup.Write(drawing, root);
        return Relation;
    }

    private static XElement Anchor(Chart chart, string relation, int index) => new(D + "twoCellAnchor",
        Corner("from", chart.At.Column - 1, chart.At.Row - 1), Corner("to", chart.At.Column - 1 + Wide, chart.At.Row - 1 + ChartBuilder.Rows),
        new XElement(D + "graphicFrame", new XAttribute("macro", ""),
            new XElement(D + "nvGraphicFramePr", new XElement(D + "cNvPr", new XAttribute("id", index + 2), new XAttribute("name", $"Chart {index + 1}"), new XAttribute("descr", $"{chart.Title}: {chart.YTitle} over {chart.XTitle}")), new XElement(D + "cNvGraphicFramePr")),
            new XElement(D + "xfrm", new XElement(A + "off", new XAttribute("x", 0), new XAttribute("y", 0)), new XElement(A + "ext", new XAttribute("cx", 0), new XAttribute("cy", 0))),
            new XElement(A + "graphic", new XElement(A + "graphicData", new XAttribute("uri", C.NamespaceName),
                new XElement(C + "chart", new XAttribute(XNamespace.Xmlns + "c", C), new XAttribute(XNamespace.Xmlns + "r", R), new XAttribute(R + "id", relation))))),
        new XElement(D + "clientData"));

    private static XElement Corner(string name, int column, int row) => new(D + name, new XElement(D + "col", column), new XElement(D + "colOff", 0), new XElement(D + "row", row), new XElement(D + "rowOff", 0));

    private static XElement Space(Chart chart) => new(C + "chartSpace", new XAttribute(XNamespace.Xmlns + "c", C), new XAttribute(XNamespace.Xmlns + "a", A),
        Value("roundedCorners", 0),
        new XElement(C + "chart",
            Title(chart.Title, 1200), Value("autoTitleDeleted", 0),
            new XElement(C + "plotArea", new XElement(C + "layout"),
                new XElement(C + "scatterChart", Value("scatterStyle", "lineMarker"), Value("varyColors", 0), chart.Series.Select((series, i) => Series(chart, series, i)), Value("axId", 1), Value("axId", 2)),
                Axis(1, 2, "b", chart.XTitle), Axis(2, 1, "l", chart.YTitle)),
            chart.Series.Length < 2 ? null : new XElement(C + "legend", Value("legendPos", "r"), Value("overlay", 0)),
            Value("plotVisOnly", 1), Value("dispBlanksAs", "gap")));

    private static XElement Series(Chart chart, ChartSeries series, int index)
    {
        XElement ink = new(A + "solidFill", new XElement(A + "srgbClr", new XAttribute("val", Inks[index / Dashes.Length % Inks.Length])));
        return new XElement(C + "ser", Value("idx", index), Value("order", index), new XElement(C + "tx", new XElement(C + "v", series.Name)),
            new XElement(C + "spPr", new XElement(A + "ln", new XAttribute("w", 19050), ink, new XElement(A + "prstDash", new XAttribute("val", Dashes[index % Dashes.Length])))),
            new XElement(C + "marker", Value("symbol", Symbols[index % Symbols.Length]), Value("size", 5), new XElement(C + "spPr", new XElement(ink), new XElement(A + "ln", new XElement(ink)))),
            new XElement(C + "xVal", Numbers(chart.X)), new XElement(C + "yVal", Numbers(series.Y)), Value("smooth", 0));
    }

    private static XElement Numbers(ChartRange range) => new(C + "numRef", new XElement(C + "f", range.Reference),
        new XElement(C + "numCache", new XElement(C + "formatCode", "General"), Value("ptCount", range.Values.Length),
            range.Values.Select((value, i) => value is not { } number ? null : new XElement(C + "pt", new XAttribute("idx", i), new XElement(C + "v", number.ToString("R", CultureInfo.InvariantCulture))))));

    private static XElement Axis(int id, int other, string side, string title) => new(C + "valAx",
        Value("axId", id), new XElement(C + "scaling", Value("orientation", "minMax")), Value("delete", 0), Value("axPos", side), side == "l" ? new XElement(C + "majorGridlines") : null,
        Title(title, 1000), new XElement(C + "numFmt", new XAttribute("formatCode", "General"), new XAttribute("sourceLinked", 0)),
        Value("majorTickMark", "out"), Value("minorTickMark", "none"), Value("tickLblPos", "low"), Value("crossAx", other), Value("crosses", "autoZero"), Value("crossBetween", "midCat"));

    private static XElement Title(string words, int size) => new(C + "title",
        new XElement(C + "tx", new XElement(C + "rich", new XElement(A + "bodyPr"), new XElement(A + "p",
            new XElement(A + "pPr", new XElement(A + "defRPr", new XAttribute("sz", size), new XAttribute("b", 0))), new XElement(A + "r", new XElement(A + "rPr", new XAttribute("sz", size), new XAttribute("b", 0)), new XElement(A + "t", words))))),
        Value("overlay", 0));

    private static XElement Value(string name, object value) => new(C + name, new XAttribute("val", value));
}
