using System.Globalization;
using System.Text;
using System.Xml;
using DocumentFormat.OpenXml.Packaging;
using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Exports.Xlsx.Pages;

namespace ScrewSheet.Exports.Xlsx.Afterwards;

/// <summary>Writes comments (ECMA-376, Part 1, 18.7) and the hidden boxes they open in, which the standard keeps in the older drawing language of its Part 4.</summary>
internal static class CommentWriter
{
    // others than ClosedXML gives out, which are rId and a number
    private const string Relation = "rIdComments", BoxRelation = "rIdBoxes";
    private const int Wide = 4, LineLength = 52, MostLines = 24;
    private static readonly string Main = Markup.S.NamespaceName;

    /// <summary>Adds the comments of a sheet.</summary>
    /// <returns>The relation to their boxes; null where there are none.</returns>
    public static string? Add(WorksheetPart sheet, Page page, string author)
    {
        PageCell[] commented = [.. page.Cells.Where(cell => cell.Comment is { Length: > 0 })];
        if (commented.Length == 0) return null;
        using (Stream stream = sheet.AddNewPart<WorksheetCommentsPart>(Relation).GetStream(FileMode.Create, FileAccess.Write)) Comments(stream, commented, author);
        using (Stream stream = sheet.AddNewPart<VmlDrawingPart>(BoxRelation).GetStream(FileMode.Create, FileAccess.Write))
        using (StreamWriter text = new(stream, new UTF8Encoding(false))) Boxes(text, commented);
        return BoxRelation;
    }

    private static void Comments(Stream stream, PageCell[] commented, string author)
    {
        using XmlWriter xml = XmlWriter.Create(stream, new XmlWriterSettings { Encoding = new UTF8Encoding(false), NewLineHandling = NewLineHandling.None });
        xml.WriteStartDocument(true);
        xml.WriteStartElement("comments", Main);
        xml.WriteStartElement("authors", Main);
        xml.WriteElementString("author", Main, WrittenText.Of(author));
        xml.WriteEndElement();
        xml.WriteStartElement("commentList", Main);
        foreach (PageCell cell in commented)
        {
            xml.WriteStartElement("comment", Main);
            xml.WriteAttributeString("ref", cell.At.ToString());
            xml.WriteAttributeString("authorId", "0");
            xml.WriteStartElement("text", Main);
            xml.WriteStartElement("r", Main);
            xml.WriteStartElement("t", Main);
            xml.WriteAttributeString("xml", "space", null, "preserve");
            xml.WriteString(WrittenText.Of(cell.Comment!));
            for (int i = 0; i < 4; i++) xml.WriteEndElement();
        }
        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteEndDocument();
    }

    private static void Boxes(TextWriter text, PageCell[] commented)
    {
        text.Write("<xml xmlns:v=\"urn:schemas-microsoft-com:vml\" xmlns:o=\"urn:schemas-microsoft-com:office:office\" xmlns:x=\"urn:schemas-microsoft-com:office:excel\">");
        text.Write("<o:shapelayout v:ext=\"edit\"><o:idmap v:ext=\"edit\" data=\"1\"/></o:shapelayout>");
        text.Write("<v:shapetype id=\"_x0000_t202\" coordsize=\"21600,21600\" o:spt=\"202\" path=\"m,l,21600r21600,l21600,xe\"><v:stroke joinstyle=\"miter\"/><v:path gradientshapeok=\"t\" o:connecttype=\"rect\"/></v:shapetype>");
        for (int i = 0; i < commented.Length; i++) Box(text, commented[i], i);
        text.Write("</xml>");
    }

    private static void Box(TextWriter text, PageCell cell, int index)
    {
        (int column, int row) = (cell.At.Column - 1, cell.At.Row - 1);
        int left = Math.Min(column + 1, PlacedCells.LastColumn - 1 - Wide);
        int lines = Math.Clamp(cell.Comment!.Split('\n').Sum(line => 1 + (line.Length / LineLength)) + 1, 3, MostLines);
        text.Write(string.Create(CultureInfo.InvariantCulture, $"<v:shape id=\"_x0000_s{1025 + index}\" type=\"#_x0000_t202\" style=\"position:absolute;visibility:hidden\" fillcolor=\"#ffffe1\" o:insetmode=\"auto\">"));
        text.Write("<v:fill color2=\"#ffffe1\"/><v:path o:connecttype=\"none\"/><v:textbox/><x:ClientData ObjectType=\"Note\"><x:MoveWithCells/><x:SizeWithCells/>");
        text.Write(string.Create(CultureInfo.InvariantCulture, $"<x:Anchor>{left}, 15, {Math.Max(row - 1, 0)}, 4, {left + Wide}, 15, {Math.Max(row - 1, 0) + lines}, 4</x:Anchor>"));
        text.Write(string.Create(CultureInfo.InvariantCulture, $"<x:AutoFill>False</x:AutoFill><x:Row>{row}</x:Row><x:Column>{column}</x:Column></x:ClientData></v:shape>"));
    }
}
