using System.Globalization;
using System.Xml;
using ScrewSheet.Exports.Xlsx.Pages;

namespace ScrewSheet.Exports.Xlsx.Parts;

/// <summary>Writes the part of one sheet (ECMA-376, Part 1, 18.3), cell after cell.</summary>
/// <param name="xml">Where to.</param>
/// <param name="page">The sheet.</param>
/// <param name="styles">The looks.</param>
internal sealed class SheetWriter(XmlWriter xml, Page page, StyleTable styles)
{
    private const string Main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main", Relations = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <summary>Writes it.</summary>
    /// <param name="drawing">The relation to its charts, or null.</param>
    /// <param name="comments">The relation to the boxes of its comments, or null.</param>
    public void Write(string? drawing, string? comments)
    {
        xml.WriteStartDocument(true);
        xml.WriteStartElement("worksheet", Main);
        xml.WriteAttributeString("xmlns", "r", null, Relations);
        View();
        Columns();
        xml.WriteStartElement("sheetData", Main);
        Rows();
        xml.WriteEndElement();
        Marks();
        Limits();
        Related("drawing", drawing);
        Related("legacyDrawing", comments);
        xml.WriteEndElement();
        xml.WriteEndDocument();
    }

    private void View()
    {
        if (page.FrozenRows == 0) return;
        Start("sheetViews");
        Start("sheetView", ("workbookViewId", "0"));
        Start("pane", ("ySplit", Text(page.FrozenRows)), ("topLeftCell", $"A{page.FrozenRows + 1}"), ("activePane", "bottomLeft"), ("state", "frozen"));
        for (int i = 0; i < 3; i++) xml.WriteEndElement();
    }

    private void Columns()
    {
        if (page.Widths.Count == 0) return;
        Start("cols");
        foreach ((int column, double width) in page.Widths)
        {
            Start("col", ("min", Text(column)), ("max", Text(column)), ("width", width.ToString("0.##", CultureInfo.InvariantCulture)), ("customWidth", "1"));
            xml.WriteEndElement();
        }
        xml.WriteEndElement();
    }

    private void Rows()
    {
        int row = 0;
        foreach (PageCell cell in page.Cells)
        {
            if (cell.At.Row != row)
            {
                if (row > 0) xml.WriteEndElement();
                row = cell.At.Row;
                Start("row", ("r", Text(row)));
            }
            Cell(cell);
        }
        if (row > 0) xml.WriteEndElement();
    }

    private void Cell(PageCell cell)
    {
        Start("c", ("r", cell.At.ToString()), ("s", Text(styles.Of(cell))));
        bool isUnknown = cell is { Formula: not null, Value: Content.None };
        string? type = cell.Value switch { Content.Words => cell.Formula is null ? "inlineStr" : "str", Content.Truth => "b", Content.None when !isUnknown => "e", _ => null };
        if (type is not null) xml.WriteAttributeString("t", type);
        if (cell.Formula is { } formula) xml.WriteElementString("f", Main, Markup.Text(formula));
        switch (cell.Value)
        {
            case Content.Number number: xml.WriteElementString("v", Main, number.Value.ToString("R", CultureInfo.InvariantCulture)); break;
            case Content.Truth truth: xml.WriteElementString("v", Main, truth.Value ? "1" : "0"); break;
            case Content.Words words when cell.Formula is not null: xml.WriteElementString("v", Main, Markup.Text(words.Value)); break;
            case Content.Words words: Inline(words.Value); break;
            case Content.None when !isUnknown: xml.WriteElementString("v", Main, "#N/A"); break;
        }
        xml.WriteEndElement();
    }

    private void Inline(string words)
    {
        Start("is");
        Start("t");
        if (words.Length > 0 && (words[0] == ' ' || words[^1] == ' ')) xml.WriteAttributeString("xml", "space", null, "preserve");
        xml.WriteString(Markup.Text(words));
        xml.WriteEndElement();
        xml.WriteEndElement();
    }

    /// <summary>A check that fails and one that holds are marked; the words in the cell say the same without colour.</summary>
    private void Marks()
    {
        string[] checks = [.. page.Cells.Where(cell => cell.IsCheck).Select(cell => cell.At.ToString())];
        if (checks.Length == 0) return;
        Start("conditionalFormatting", ("sqref", string.Join(' ', checks)));
        Mark(StyleTable.Fails, "0", "1");
        Mark(StyleTable.Holds, "1", "2");
        xml.WriteEndElement();
    }

    private void Mark(int look, string value, string priority)
    {
        Start("cfRule", ("type", "cellIs"), ("dxfId", Text(look)), ("priority", priority), ("operator", "equal"));
        xml.WriteElementString("formula", Main, value);
        xml.WriteEndElement();
    }

    /// <summary>What a given may be, refused on entry as it is in the workbook.</summary>
    private void Limits()
    {
        PageCell[] limited = [.. page.Cells.Where(cell => cell.Within is not null)];
        if (limited.Length == 0) return;
        Start("dataValidations", ("count", Text(limited.Length)));
        foreach (PageCell cell in limited)
        {
            (double from, double to, string text) = cell.Within!.Value;
            string message = $"Outside its limits: {text}.";
            Start("dataValidation", ("type", "decimal"), ("operator", "between"), ("allowBlank", "0"), ("showErrorMessage", "1"), ("errorTitle", "Outside its limits"), ("error", message.Length <= 225 ? message : message[..225]), ("sqref", cell.At.ToString()));
            xml.WriteElementString("formula1", Main, from.ToString("R", CultureInfo.InvariantCulture));
            xml.WriteElementString("formula2", Main, to.ToString("R", CultureInfo.InvariantCulture));
            xml.WriteEndElement();
        }
        xml.WriteEndElement();
    }

    private void Related(string element, string? relation)
    {
        if (relation is null) return;
        xml.WriteStartElement(element, Main);
        xml.WriteAttributeString("r", "id", Relations, relation);
        xml.WriteEndElement();
    }

    private void Start(string element, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        xml.WriteStartElement(element, Main);
        foreach ((string name, string value) in attributes) xml.WriteAttributeString(name, value);
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
