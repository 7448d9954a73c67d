using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace ScrewSheet.Exports.Xlsx.Parts;

/// <summary>The namespaces of ECMA-376 and how small parts are put together.</summary>
internal static partial class Markup
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

    /// <summary>Text as the format holds it (ST_Xstring, Part 1, 22.9.2.19): there <c>_x202E_</c> is a character by its number, so an author's own underscore before such a number is written by number too.</summary>
    public static string Text(string text) => text.Contains("_x", StringComparison.Ordinal) ? ByNumber().Replace(text, "_x005F_") : text;

    /// <summary>Writes a small part.</summary>
    public static void Write(DocumentFormat.OpenXml.Packaging.OpenXmlPart part, XElement root)
    {
        using Stream stream = part.GetStream(FileMode.Create, FileAccess.Write);
        new XDocument(new XDeclaration("1.0", "utf-8", "yes"), root).Save(stream, SaveOptions.DisableFormatting);
    }

    [GeneratedRegex("_(?=x[0-9A-Fa-f]{4}_)")]
    private static partial Regex ByNumber();
}
