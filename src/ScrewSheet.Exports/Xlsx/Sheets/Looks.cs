using ClosedXML.Excel;
using ScrewSheet.Exports.Xlsx.Pages;

namespace ScrewSheet.Exports.Xlsx.Sheets;

/// <summary>
/// The looks of cells: each combination of role, number format and apostrophe is put together on the first cell that has it and handed to the others whole. Setting its parts
/// on every cell would look each of them up again.
/// </summary>
internal sealed class Looks
{
    private static readonly XLColor GivenGround = XLColor.FromArgb(0xFF, 0xF7, 0xDB), HeadGround = XLColor.FromArgb(0xE7, 0xE9, 0xEC);

    private readonly Dictionary<(Role, string, bool), IXLStyle> known = [];

    /// <summary>Gives a cell its look.</summary>
    public void Dress(IXLCell cell, PageCell shown)
    {
        // text that looks like a formula, and text of no letters, which without the mark would be no text but an empty cell
        bool isMarkedAsText = shown is { Formula: null, Value: Content.Words { Value: var words } } && (words.Length == 0 || HarmlessStart.LooksLikeFormula(words));
        var key = (shown.Role, shown.NumberFormat, isMarkedAsText);
        if (known.TryGetValue(key, out IXLStyle? look))
        {
            cell.Style = look;
            return;
        }
        IXLStyle style = cell.Style;
        style.Alignment.WrapText = false;
        style.IncludeQuotePrefix = isMarkedAsText;
        if (shown.NumberFormat != NumberFormats.General) style.NumberFormat.Format = shown.NumberFormat;
        Set(style, shown.Role);
        known.Add(key, cell.Style);
    }

    /// <summary>A check that fails, and one that holds; the words in the cell say the same without colour.</summary>
    public static void Mark(IXLStyle style, bool holds)
    {
        style.Font.Bold = !holds;
        style.Font.FontColor = holds ? XLColor.FromArgb(0x0B, 0x5A, 0x1E) : XLColor.FromArgb(0x9C, 0x00, 0x06);
        style.Fill.BackgroundColor = holds ? XLColor.FromArgb(0xDD, 0xF3, 0xE1) : XLColor.FromArgb(0xFF, 0xC7, 0xCE);
    }

    private static void Set(IXLStyle style, Role role)
    {
        switch (role)
        {
            case Role.Title: (style.Font.Bold, style.Font.FontSize) = (true, 14); break;
            case Role.Heading: style.Font.Bold = true; break;
            case Role.Head:
                style.Font.Bold = true;
                style.Fill.BackgroundColor = HeadGround;
                style.Alignment.Vertical = XLAlignmentVerticalValues.Top;
                Box(style, XLBorderStyleValues.Thin);
                break;
            case Role.Given:
                style.Fill.BackgroundColor = GivenGround;
                Box(style, XLBorderStyleValues.Thin);
                break;
            case Role.Fixed:
                style.Font.Italic = true;
                Box(style, XLBorderStyleValues.Dotted);
                break;
        }
    }

    private static void Box(IXLStyle style, XLBorderStyleValues line) => (style.Border.LeftBorder, style.Border.RightBorder, style.Border.TopBorder, style.Border.BottomBorder) = (line, line, line, line);
}
