using ScrewSheet.Exports.Tables;
using ScrewSheet.Exports.Xlsx.Charts;
using ScrewSheet.Exports.Xlsx.Formulas;
using ScrewSheet.Exports.Xlsx.Pages;
using ScrewSheet.Exports.Xlsx.Sheets;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;

namespace ScrewSheet.Exports.Xlsx;

/// <summary>
/// A calculated workbook as an xlsx file that recalculates (ECMA-376): givens to type over, results and what-if tables as formulas wherever the formula language of the standard
/// has a form for them, and a first sheet that says what does not follow and why.
/// </summary>
public static class XlsxExport
{
    private const int ChartsApart = ChartBuilder.Rows + 1;

    /// <summary>Writes the file.</summary>
    /// <param name="request">What is exported.</param>
    /// <param name="output">Where to; a stream that can be written. The same request gives the same bytes.</param>
    /// <returns>How much of it is live, and what is not.</returns>
    public static XlsxReport Write(XlsxRequest request, Stream output)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(output);
        Book book = new(request);
        Page charts = new(book.Sheets.Add("Charts"));
        List<Page> pages = [];
        foreach (Sheet sheet in request.Calculation.Workbook.Sheets) pages.Add(Make(book, sheet, charts));
        if (!book.Workings.IsEmpty) pages.Add(book.Workings.Page);
        if (charts.Charts.Count > 0) pages.Add(charts);
        pages.Insert(0, FrontPage.Make(book));
        IEnumerable<(string, string, CellAddress)> names = book.Names.All.Where(name => PlacedCells.IsPlaced(name.Key.Address)).Select(name => (name.Value, book.SheetNames[name.Key.Sheet], name.Key.Address));
        BookWriter.Write(pages, names, request.Calculation.Workbook.Head, output);
        return new XlsxReport(book.LiveResults, book.Results, book.LiveEntries, book.Entries, [.. book.FixedResults], [.. book.Left]);
    }

    private static Page Make(Book book, Sheet sheet, Page charts)
    {
        Page page = new SheetPage(book).Make(sheet, book.SheetNames[sheet.Name]);
        IReadOnlyList<PlotLine> plots = PlotText.Of(sheet);
        foreach (ComputedTable table in book.Request.Tables.Where(table => table.Sheet == sheet.Name))
        {
            if (TablePage.Add(book, page, table) is not { } shape) continue;
            foreach (PlotLine plot in plots.Where(plot => plot.Table == table.Anchor)) page.Charts.AddRange(ChartBuilder.Of(shape, page.Name, plot.At, plot.Title));
            if (table.Axes.Length == 1 && plots.All(plot => plot.Table != table.Anchor)) charts.Charts.AddRange(ChartBuilder.Of(shape, page.Name, new CellAddress(1, 1 + (charts.Charts.Count * ChartsApart)), null));
        }
        SheetPage.Widen(page, sheet);
        return page;
    }
}
