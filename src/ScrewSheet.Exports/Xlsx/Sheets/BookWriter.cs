using ClosedXML.Excel;
using ScrewSheet.Exports.Xlsx.Afterwards;
using ScrewSheet.Exports.Xlsx.Pages;
using ScrewSheet.Quantities.Units;
using ScrewSheet.Workbooks.Format;
using ScrewSheet.Workbooks.Model;
using ScrewSheet.Workbooks.Results;

namespace ScrewSheet.Exports.Xlsx.Sheets;

/// <summary>Makes the file: sheets, cells, looks and marks with ClosedXML, then what that has no way to write (<see cref="Completion"/>).</summary>
internal static class BookWriter
{
    // every formula gets its present value afterwards, and programs work all of them out when they open the file: neither needs an order of calculation.
    // Joining like ranges compares each with each, and there is nothing to join
    private static readonly SaveOptions Plainly = new()
    {
        EvaluateFormulasBeforeSaving = false, GenerateCalculationChain = false, ConsolidateConditionalFormatRanges = false, ConsolidateDataValidationRanges = false, ValidatePackage = false,
    };

    /// <summary>Writes a file of these sheets. The same sheets give the same bytes: nothing in it comes from the clock or from the machine.</summary>
    /// <param name="pages">The sheets, in order.</param>
    /// <param name="names">What the defined names mean.</param>
    /// <param name="head">Title, author and units.</param>
    /// <param name="output">Where to.</param>
    public static void Write(IReadOnlyList<Page> pages, IEnumerable<(string Name, string Sheet, CellAddress At)> names, Head head, Stream output)
    {
        string author = VisibleText.Of(head.Author.Length > 0 ? head.Author : "ScrewSheet");
        using MemoryStream package = new();
        Save(pages, author, head.Units == UnitSystem.US ? XLPaperSize.LetterPaper : XLPaperSize.A4Paper, package);
        Completion.Of(package, pages, names, VisibleText.Of(head.Title), author);
        package.Position = 0;
        package.CopyTo(output);
    }

    private static void Save(IReadOnlyList<Page> pages, string author, XLPaperSize paper, Stream package)
    {
        // without an author the library takes the name of whoever is logged in
        using XLWorkbook book = new() { Author = author, FullCalculationOnLoad = true };
        Looks looks = new();
        foreach (Page page in pages) SheetWriter.Write(book.AddWorksheet(page.Name), page, looks, paper);
        book.SaveAs(package, Plainly);
    }
}
