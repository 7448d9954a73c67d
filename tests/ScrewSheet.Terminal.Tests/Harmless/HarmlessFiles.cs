using System.Globalization;
using System.IO.Compression;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml;
using System.Xml.Linq;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;

namespace ScrewSheet.Terminal.Tests.Harmless;

/// <summary>Reads what the program wrote as other programs do and gives back its words; fails where anything in it would be obeyed.</summary>
internal static partial class HarmlessFiles
{
    // what a spreadsheet program takes for the beginning of a formula, narrow and wide, and the tab and returns that some strip first: common practice, no source
    private const string FormulaSigns = "=+-@\t\r\n＝＋－＠";

    private static readonly XNamespace Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>HTML: text stays text, nothing outside is asked for, nothing runs.</summary>
    public static string Html(string html)
    {
        Seen.Only("HTML", html);
        IHtmlDocument page = new HtmlParser().ParseDocument(html);
        Assert.Empty(page.QuerySelectorAll("script, img, iframe, object, embed, link, form, base, input, audio, video, meta[http-equiv]").Where(element => element.GetAttribute("http-equiv") is not "Content-Security-Policy").Select(element => element.OuterHtml));
        foreach (IAttr attribute in page.All.SelectMany(element => element.Attributes))
        {
            Assert.False(attribute.Name.StartsWith("on", StringComparison.OrdinalIgnoreCase), attribute.Name);
            if (attribute.LocalName is "href" or "src" or "action" or "data") Assert.StartsWith("#", attribute.Value, StringComparison.Ordinal);
            if (attribute.Name == "style") Assert.DoesNotContain("url", attribute.Value, StringComparison.OrdinalIgnoreCase);
        }
        string words = page.DocumentElement.TextContent;
        Seen.Only("HTML, as shown", words);
        return words + string.Concat(page.All.SelectMany(element => element.Attributes).Select(attribute => attribute.Value));
    }

    /// <summary>Markdown: no tag, no link, no image, nothing unseen.</summary>
    public static string Markdown(string markdown)
    {
        Seen.Only("Markdown", markdown);
        Assert.DoesNotMatch(@"<(script|img|/title|!--)", markdown);
        Assert.DoesNotMatch(@"(?<!\\)\]\((javascript|http)", markdown);
        Assert.DoesNotContain("http://", markdown, StringComparison.Ordinal);
        return markdown.Replace("\\", "", StringComparison.Ordinal);
    }

    /// <summary>CSV: each field by itself.</summary>
    public static string Csv(string what, string csv)
    {
        Seen.Only(what, csv);
        foreach (string field in Fields(csv))
        {
            string start = field.TrimStart();
            bool number = double.TryParse(field, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
            if (start.Length > 0 && !number) Assert.False(FormulaSigns.Contains(start[0], StringComparison.Ordinal) || FormulaSigns.Contains(field[0], StringComparison.Ordinal), $"{what}: a field begins like a formula: {field}");
        }
        return csv;
    }

    /// <summary>JSON: as a stream it is harmless; what it holds is what was written.</summary>
    public static string Json(string what, string json)
    {
        Seen.Only(what, json);
        using JsonDocument document = JsonDocument.Parse(json);
        StringBuilder words = new();
        Collect(document.RootElement, words);
        return words.ToString();
    }

    /// <summary>A workbook of ECMA-376: texts are texts, by number nothing is hidden in them, no formula holds a stranger's words outside quotes, nothing outside is asked for.</summary>
    public static string Xlsx(byte[] bytes)
    {
        StringBuilder words = new();
        using ZipArchive package = new(new MemoryStream(bytes));
        bool[] quoted = QuotedStyles(package);
        string[] shared = SharedTexts(package);
        foreach (ZipArchiveEntry entry in package.Entries)
        {
            Assert.DoesNotMatch("(?i)externalLink|vbaProject|oleObject|activeX|macrosheet", entry.FullName);
            XDocument part = Read(entry);
            foreach (string text in part.DescendantNodes().OfType<XText>().Select(node => node.Value).Concat(part.Descendants().Attributes().Select(attribute => attribute.Value)))
            {
                // drawings are of another schema, whose texts have no characters by number
                Seen.Only(entry.FullName, (part.Root!.Name.Namespace == Main ? Unescaped(text) : text).Replace("\r\n", "\n", StringComparison.Ordinal));
                words.Append(text);
            }
            Assert.DoesNotContain("External", part.Descendants().Attributes("TargetMode").Select(attribute => attribute.Value));
            Assert.Empty(part.Descendants(Main + "hyperlink"));
            foreach (XElement formula in part.Descendants().Where(element => element.Name.LocalName is "f" or "definedName" or "formula1" or "formula2" or "formula"))
                Assert.Empty(HostileBook.Found(InQuotes().Replace(formula.Value, "")));
            // names of sheets: ECMA-376, Part 1, 18.2.19; the letters left out: common practice, no source
            foreach (XElement sheet in part.Descendants(Main + "sheet")) Assert.Matches(@"^(?!')[^\[\]:*?/\\]{1,31}(?<!')$", sheet.Attribute("name")!.Value);
            foreach (XElement name in part.Descendants(Main + "definedName")) Assert.Matches(@"^[\p{L}_][\p{L}\p{Nd}_.]*$", name.Attribute("name")!.Value);
            foreach (XElement cell in part.Descendants(Main + "c")) Cell(cell, shared, quoted);
        }
        return words.ToString();
    }

    /// <summary>A cell whose text looks like a formula must say that it is none (quotePrefix, 18.8.45).</summary>
    private static void Cell(XElement cell, string[] shared, bool[] quoted)
    {
        if (cell.Element(Main + "f") is not null) return;
        string? text = cell.Attribute("t")?.Value switch
        {
            "s" => shared[int.Parse(cell.Element(Main + "v")!.Value, CultureInfo.InvariantCulture)],
            "inlineStr" => string.Concat(cell.Descendants(Main + "t").Select(t => t.Value)),
            "str" => cell.Element(Main + "v")?.Value,
            _ => null,
        };
        if (text?.TrimStart() is not { Length: > 0 } start || !FormulaSigns.Contains(start[0], StringComparison.Ordinal)) return;
        Assert.True(quoted[int.Parse(cell.Attribute("s")?.Value ?? "0", CultureInfo.InvariantCulture)], $"{cell.Attribute("r")?.Value} begins like a formula and is not marked as text: {text}");
    }

    private static bool[] QuotedStyles(ZipArchive package) =>
        [.. Read(package.GetEntry("xl/styles.xml")!).Descendants(Main + "cellXfs").Elements(Main + "xf").Select(style => style.Attribute("quotePrefix")?.Value is "1" or "true")];

    private static string[] SharedTexts(ZipArchive package) => package.GetEntry("xl/sharedStrings.xml") is { } part
        ? [.. Read(part).Descendants(Main + "si").Select(item => string.Concat(item.Descendants(Main + "t").Select(t => t.Value)))] : [];

    private static XDocument Read(ZipArchiveEntry entry)
    {
        using Stream stream = entry.Open();
        using XmlReader reader = XmlReader.Create(stream, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null });
        return XDocument.Load(reader);
    }

    /// <summary>ST_Xstring (22.9.2.19): <c>_x202E_</c> is a character.</summary>
    private static string Unescaped(string text) => ByNumber().Replace(text, match => ((char)int.Parse(match.Groups[1].Value, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString());

    private static void Collect(JsonElement element, StringBuilder words)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Object: foreach (JsonProperty property in element.EnumerateObject()) Collect(property.Value, words); break;
            case JsonValueKind.Array: foreach (JsonElement item in element.EnumerateArray()) Collect(item, words); break;
            case JsonValueKind.String: words.Append(element.GetString()).Append('\n'); break;
        }
    }

    /// <summary>The fields as RFC 4180 reads them.</summary>
    private static IEnumerable<string> Fields(string csv)
    {
        StringBuilder field = new();
        bool inside = false;
        for (int i = 0; i < csv.Length; i++)
        {
            if (csv[i] == '"' && inside && i + 1 < csv.Length && csv[i + 1] == '"') field.Append(csv[i++]);
            else if (csv[i] == '"') inside = !inside;
            else if (inside || csv[i] is not (',' or '\n')) field.Append(csv[i]);
            else
            {
                yield return field.ToString();
                field.Clear();
            }
        }
        yield return field.ToString();
    }

    [GeneratedRegex("_x([0-9A-Fa-f]{4})_")]
    private static partial Regex ByNumber();

    [GeneratedRegex("\"[^\"]*\"")]
    private static partial Regex InQuotes();
}
