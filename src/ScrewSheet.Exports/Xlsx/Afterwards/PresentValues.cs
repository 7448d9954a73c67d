using System.Globalization;
using System.Text;
using System.Xml;
using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Exports.Xlsx.Pages;

namespace ScrewSheet.Exports.Xlsx.Afterwards;

/// <summary>
/// Copies the part of a sheet (ECMA-376, Part 1, 18.3) node by node and puts values into its cells and the relations to its drawings where they belong. Both the part and the page
/// go row by row, so that one pass is enough and nothing but the cell at hand is held.
/// </summary>
/// <param name="page">What the sheet shows.</param>
/// <param name="charts">The relation to its charts, or null.</param>
/// <param name="comments">The relation to the boxes of its comments, or null.</param>
internal sealed class PresentValues(Page page, string? charts, string? comments)
{
    private const string Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static readonly string Main = Markup.S.NamespaceName;

    // what may stand after a drawing, in the order of the standard
    private static readonly string[] AfterDrawing = ["legacyDrawingHF", "picture", "oleObjects", "controls", "webPublishItems", "tableParts", "extLst"];

    private readonly IEnumerator<PageCell> valued = page.Cells.Where(IsValued).GetEnumerator();
    private string? next;
    private bool isDrawn;

    /// <summary>Copies it.</summary>
    /// <exception cref="InvalidOperationException">A cell of the page is not in the part.</exception>
    public void Copy(Stream from, Stream to)
    {
        using XmlReader reader = XmlReader.Create(from, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit, CloseInput = false });
        using XmlWriter writer = XmlWriter.Create(to, new XmlWriterSettings { Encoding = new UTF8Encoding(false), NewLineHandling = NewLineHandling.None, CloseOutput = false });
        Advance();
        reader.Read();
        while (!reader.EOF)
        {
            if (reader.NodeType == XmlNodeType.Element && reader.LocalName == "c" && reader.GetAttribute("r") == next && reader.NamespaceURI == Main) Cell(reader, writer);
            else
            {
                if (!isDrawn && IsAfterDrawing(reader)) Draw(reader.Prefix, writer);
                Shallow(reader, writer);
                reader.Read();
            }
        }
        if (next is not null) throw new InvalidOperationException($"{page.Name} has no cell {next}, or not in its order.");
    }

    private static bool IsValued(PageCell cell) => cell.Formula is null ? cell.Value is Content.Number or Content.None : cell.Value is not Content.None;

    private void Advance() => next = valued.MoveNext() ? valued.Current.At.ToString() : null;

    private void Cell(XmlReader reader, XmlWriter writer)
    {
        Content value = valued.Current.Value;
        string prefix = reader.Prefix;
        writer.WriteStartElement(prefix, "c", Main);
        writer.WriteAttributeString("r", next);
        if (reader.GetAttribute("s") is { } style) writer.WriteAttributeString("s", style);
        if (value switch { Content.Words => "str", Content.Truth => "b", Content.None => "e", _ => null } is { } type) writer.WriteAttributeString("t", type);
        CopyFormula(reader, writer);
        writer.WriteElementString(prefix, "v", Main, Text(value));
        writer.WriteEndElement();
        Advance();
    }

    /// <summary>Goes past the cell and keeps nothing of what is in it but its formula.</summary>
    private static void CopyFormula(XmlReader reader, XmlWriter writer)
    {
        bool isEmpty = reader.IsEmptyElement;
        reader.Read();
        if (isEmpty) return;
        while (reader.NodeType != XmlNodeType.EndElement)
        {
            if (reader.LocalName == "f") writer.WriteNode(reader, defattr: false);
            else reader.Skip();
        }
        reader.Read();
    }

    private static string Text(Content value) => value switch
    {
        Content.Number number => number.Value.ToString("R", CultureInfo.InvariantCulture),
        Content.Truth truth => truth.Value ? "1" : "0",
        Content.Words words => WrittenText.Of(words.Value),
        _ => Sheets.SheetWriter.NoValue,
    };

    private static bool IsAfterDrawing(XmlReader reader) => reader.Depth <= 1 && reader.NamespaceURI == Main
        && (reader.NodeType == XmlNodeType.Element ? AfterDrawing.Contains(reader.LocalName) : reader is { NodeType: XmlNodeType.EndElement, Depth: 0 });

    private void Draw(string prefix, XmlWriter writer)
    {
        foreach ((string element, string? relation) in ((string, string?)[])[("drawing", charts), ("legacyDrawing", comments)])
        {
            if (relation is null) continue;
            writer.WriteStartElement(prefix, element, Main);
            writer.WriteAttributeString("r", "id", Relations, relation);
            writer.WriteEndElement();
        }
        isDrawn = true;
    }

    private static void Shallow(XmlReader reader, XmlWriter writer)
    {
        switch (reader.NodeType)
        {
            case XmlNodeType.Element:
                writer.WriteStartElement(reader.Prefix, reader.LocalName, reader.NamespaceURI);
                writer.WriteAttributes(reader, defattr: false);
                if (reader.IsEmptyElement) writer.WriteEndElement();
                break;
            case XmlNodeType.EndElement: writer.WriteEndElement(); break;
            case XmlNodeType.Text: writer.WriteString(reader.Value); break;
            case XmlNodeType.Whitespace or XmlNodeType.SignificantWhitespace: writer.WriteWhitespace(reader.Value); break;
            case XmlNodeType.XmlDeclaration: writer.WriteStartDocument(standalone: true); break;
        }
    }
}
