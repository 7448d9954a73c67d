using System.Xml.Linq;

namespace ScrewSheet.Exports.Xlsx.Afterwards;

/// <summary>The namespaces of ECMA-376 and how small parts are put together.</summary>
internal static class Markup
{
    /// <summary>Sheets.</summary>
    public static readonly XNamespace S = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

    /// <summary>Relations between parts.</summary>
    public static readonly XNamespace R = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <summary>Drawings.</summary>
    public static readonly XNamespace A = "http://schemas.openxmlformats.org/drawingml/2006/main";

    /// <summary>Charts.</summary>
    public static readonly XNamespace C = "http://schemas.openxmlformats.org/drawingml/2006/chart";

    /// <summary>Drawings on sheets.</summary>
    public static readonly XNamespace D = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";

    private static readonly XNamespace Core = "http://schemas.openxmlformats.org/package/2006/metadata/core-properties", Terms = "http://purl.org/dc/elements/1.1/";

    /// <summary>What a file is called and whose it is (Part 2, 11).</summary>
    public static XElement Description(string title, string author) => new(Core + "coreProperties", new XAttribute(XNamespace.Xmlns + "dc", Terms), new XElement(Terms + "title", title), new XElement(Terms + "creator", author));

    /// <summary>Writes a small part.</summary>
    public static void Write(DocumentFormat.OpenXml.Packaging.OpenXmlPart part, XElement root)
    {
        using Stream stream = part.GetStream(FileMode.Create, FileAccess.Write);
        new XDocument(new XDeclaration("1.0", "utf-8", "yes"), root).Save(stream, SaveOptions.DisableFormatting);
    }
}
