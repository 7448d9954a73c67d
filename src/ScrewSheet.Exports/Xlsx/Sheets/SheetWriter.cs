using System.Globalization;
using ClosedXML.Excel;
using ScrewSheet.Exports.Xlsx.Naming;
using ScrewSheet.Exports.Xlsx.Pages;

namespace ScrewSheet.Exports.Xlsx.Sheets;

/// <summary>Writes one sheet.</summary>
internal static class SheetWriter
{
    /// <summary>What stands in a cell of no value until the standard's word for it is put there afterwards.</summary>
    public const string NoValue = "#N/A";

    private const int LongestMessage = 225;

    /// <summary>Writes it.</summary>
    /// <param name="sheet">Where to.</param>
    /// <param name="page">What it shows.</param>
    /// <param name="looks">The looks of cells.</param>
    /// <param name="paper">What it is printed on.</param>
    public static void Write(IXLWorksheet sheet, Page page, Looks looks, XLPaperSize paper)
    {
        foreach ((int column, double width) in page.Widths) sheet.Column(column).Width = width;
        if (page.FrozenRows > 0) sheet.SheetView.FreezeRows(page.FrozenRows);
        sheet.PageSetup.PaperSize = paper;
        sheet.PageSetup.PagesWide = 1;
        foreach (PageCell shown in page.Cells)
        {
            IXLCell cell = sheet.Cell(shown.At.Row, shown.At.Column);
            Fill(cell, shown);
            looks.Dress(cell, shown);
            if (shown.Within is not null) Limit(cell, shown.Within.Value);
        }
        Mark(sheet, page, "0", holds: false);
        Mark(sheet, page, "1", holds: true);
    }

    private static void Fill(IXLCell cell, PageCell shown)
    {
        if (shown.Formula is { } formula)
        {
            cell.FormulaA1 = WrittenText.Of(formula);
            return;
        }
        switch (shown.Value)
        {
            case Content.Number number: cell.SetValue(number.Value); break;
            case Content.Truth truth: cell.SetValue(truth.Value); break;
            case Content.Words words: cell.SetValue(words.Value); break;
            case Content.None: cell.SetValue(NoValue); break;
        }
    }

    private static void Mark(IXLWorksheet sheet, Page page, string value, bool holds)
    {
        PageCell[] checks = [.. page.Cells.Where(cell => cell.IsCheck)];
        if (checks.Length == 0) return;
        IXLConditionalFormat format = sheet.Cell(checks[0].At.Row, checks[0].At.Column).AddConditionalFormat();
        foreach (PageCell check in checks.Skip(1)) format.Ranges.Add(sheet.Cell(check.At.Row, check.At.Column));
        Looks.Mark(format.WhenEquals(value), holds);
    }

    /// <summary>What a given may be, refused on entry as it is in the workbook.</summary>
    private static void Limit(IXLCell cell, (double From, double To, string Text) within)
    {
        IXLDataValidation limits = cell.NewDataValidation;
        limits.AllowedValues = XLAllowedValues.Decimal;
        limits.Operator = XLOperator.Between;
        limits.MinValue = within.From.ToString("R", CultureInfo.InvariantCulture);
        limits.MaxValue = within.To.ToString("R", CultureInfo.InvariantCulture);
        limits.IgnoreBlanks = false;
        limits.ErrorTitle = "Outside its limits";
        string message = $"Outside its limits: {within.Text}.";
        limits.ErrorMessage = message.Length <= LongestMessage ? message : message[..LongestMessage];
    }
}
