using System.Text;
using System.Xml;
using System.Xml.Linq;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Exports.Xlsx.Pages;
using ScrewSheet.Workbooks.Model;
using static ScrewSheet.Exports.Xlsx.Parts.Markup;

namespace ScrewSheet.Exports.Xlsx.Parts;

/// <summary>Puts the parts of a file together (ECMA-376, Part 1, 12.3 and 18.2).</summary>
internal static class PackageWriter
{
    /// <summary>Writes a file of these sheets.</summary>
    /// <param name="pages">The sheets, in order.</param>
    /// <param name="names">What the defined names mean.</param>
    /// <param name="head">Title and author.</param>
    /// <param name="output">Where to; it must be able to seek.</param>
    public static void Write(IReadOnlyList<Page> pages, IEnumerable<(string Name, string Sheet, CellAddress At)> names, Head head, Stream output)
    {
        using SpreadsheetDocument document = SpreadsheetDocument.Create(output, SpreadsheetDocumentType.Workbook);
        // comments and their boxes are long and alike: they pack well however little time is spent on it
        document.CompressionOption = System.IO.Packaging.CompressionOption.SuperFast;
        WorkbookPart workbook = document.AddWorkbookPart();
        StyleTable styles = new();
        XElement sheets = new(S + "sheets");
        string author = Workbooks.Results.VisibleText.Of(head.Author.Length > 0 ? head.Author : "ScrewSheet");
        for (int i = 0; i < pages.Count; i++)
        {
            WorksheetPart part = workbook.AddNewPart<WorksheetPart>();
            string? drawing = ChartWriter.Add(part, pages[i].Charts), comments = CommentWriter.Add(part, pages[i], author);
            using (Stream stream = part.GetStream(FileMode.Create, FileAccess.Write))
            using (XmlWriter xml = XmlWriter.Create(stream, new XmlWriterSettings { Encoding = new UTF8Encoding(false), NewLineHandling = NewLineHandling.None }))
                new SheetWriter(xml, pages[i], styles).Write(drawing, comments);
            sheets.Add(new XElement(S + "sheet", new XAttribute("name", pages[i].Name), new XAttribute("sheetId", i + 1), new XAttribute(R + "id", workbook.GetIdOfPart(part))));
        }
        Markup.Write(workbook.AddNewPart<WorkbookStylesPart>(), styles.Sheet());
        Markup.Write(workbook, new XElement(S + "workbook", new XAttribute(XNamespace.Xmlns + "r", R), sheets, Names(names), new XElement(S + "calcPr", new XAttribute("calcId", 0), new XAttribute("fullCalcOnLoad", 1))));
        document.PackageProperties.Title = Workbooks.Results.VisibleText.Of(head.Title);
        document.PackageProperties.Creator = author;
    }

    private static XElement? Names(IEnumerable<(string Name, string Sheet, CellAddress At)> names)
    {
        XElement[] defined = [.. names.OrderBy(name => name.Name, StringComparer.OrdinalIgnoreCase).Select(name =>
            new XElement(S + "definedName", new XAttribute("name", name.Name), $"{SheetNames.Quoted(name.Sheet)}!${CellAddress.ColumnName(name.At.Column)}${name.At.Row}"))];
        return defined.Length == 0 ? null : new XElement(S + "definedNames", defined);
    }
}
